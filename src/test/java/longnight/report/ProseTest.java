package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ProseTest {
    /** A text that gained a slot would else reach people with "{1}" in it. Tests run with assertions on. */
    @Test
    void a_slot_that_nothing_fills_is_found() {
        assertThat(Prose.text("page.who", "a", "b", "c {0}")).isEqualTo("a | b | c {0}");
        assertThatThrownBy(() -> Prose.text("page.who", "a", "b")).hasMessageContaining("page.who has slots");
        assertThatThrownBy(() -> Prose.text("page.who")).hasMessageContaining("page.who has slots");
    }
}
