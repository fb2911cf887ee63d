package longnight.clothing;

import static longnight.clothing.GarmentKind.BASE_TOP;
import static longnight.clothing.GarmentKind.BOOTS;
import static longnight.clothing.GarmentKind.MID_TOP;
import static longnight.clothing.GarmentKind.PARKA;
import static longnight.clothing.GarmentKind.SHOES;
import static longnight.clothing.GarmentKind.SOCKS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class DressingTest {

    @Test
    @DisplayName("clashes are found with both pieces")
    void clashes() {
        assertEquals(
                new Dressing.Clash(0, 2, Dressing.Reason.SECOND_PARKA),
                Dressing.firstClash(List.of(PARKA, SOCKS, PARKA), false));
        assertEquals(
                new Dressing.Clash(0, 1, Dressing.Reason.SECOND_FOOTWEAR),
                Dressing.firstClash(List.of(SHOES, BOOTS), false));
        assertEquals(
                new Dressing.Clash(0, 1, Dressing.Reason.WRONG_ORDER),
                Dressing.firstClash(List.of(MID_TOP, BASE_TOP), false));
        assertNull(Dressing.firstClash(List.of(PARKA, PARKA), true));
    }

    @Test
    @DisplayName("every kind has its place, and the usual order never clashes")
    void order() {
        List<GarmentKind> all = Arrays.stream(GarmentKind.values())
                .sorted(Comparator.comparingInt(Dressing::rank))
                .toList();
        assertEquals(
                GarmentKind.values().length,
                all.stream().map(Dressing::rank).distinct().count());
        assertEquals(0, Dressing.rank(all.get(0)));
        assertNull(Dressing.firstClash(all, true));
    }
}
