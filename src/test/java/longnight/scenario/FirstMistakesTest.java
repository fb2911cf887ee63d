package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import longnight.quantity.UnitSystem;
import longnight.scenario.StartFolder.Question;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What goes wrong first when somebody changes the files of a first folder, and what they are then told. */
class FirstMistakesTest {
    @TempDir
    Path folder;

    @BeforeEach
    void start() throws Exception {
        Map<Question, String> answers = new EnumMap<>(Question.class);
        for (Question question : Question.values()) {
            answers.put(question, question.usual(UnitSystem.METRIC));
        }
        for (Map.Entry<String, String> file :
                StartFolder.write(answers, "Caution").entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            quoteCharacter = '`',
            value = {
                "people/me.yaml|mass: 68 kg|mass: 68|\"68\" has no unit|did you mean \"68 kg\" or \"68 lb\"?",
                "people/me.yaml|mass: 68 kg|mass:68 kg|no blank after the colon|write \"mass: 68 kg",
                "people/me.yaml|mass: 68 kg|weight: 68 kg|unknown key \"weight\"|did you mean \"mass\"?",
                "people/me.yaml|68 kg|68,5 kg|has a decimal comma|did you mean \"68.5 kg\"?",
                "people/me.yaml|170 cm|170 kg|is not a length|\"kg\" is a unit of a mass",
                "people/me.yaml|170 cm|5'7\"|is not a length|did you mean \"67 in\"?",
                "people/me.yaml|female|f|allowed is female, male|did you mean \"female\"?",
                "people/me.yaml|35 years|35 yrs|is not an age|did you mean \"35 years\"?",
                "night.yaml|from: 18:00|from: 18.00|write a clock time|did you mean \"18:00\"?",
                "night.yaml|from: 18:00|from: 1800|write a clock time|did you mean \"18:00\"?",
                "night.yaml|from: 18:00|from: 6 pm|write a clock time|did you mean \"18:00\"?",
                "night.yaml|  from: |\tfrom: |a tab|indent with blanks",
                "night.yaml|  to: |   to: |a line that is set in otherwise|in line 15",
                "night.yaml|title: \"A night at|title: A night: \"at|a second colon in one line|put a text with a colon in quotes",
                "night.yaml|sleep: yes|sleep: true|allowed is yes, no|did you mean \"yes\"?",
                "night.yaml|-5 °C|-5 degrees|is not a temperature|did you mean \"-5 °C\" or \"-5 °F\"?",
                "night.yaml|kit: kits|# kit: kits|a night without \"kit\"|write what is worn",
                "night.yaml|kits/typical.yaml |kits/typicall.yaml |there is no file|did you mean \"typical.yaml\"?",
                "kits/typical.yaml|- fleece|- fleec|unknown piece \"fleec\"|did you mean \"fleece\"?",
                "wardrobe.yaml|100 g/m2               #|3 oz #|which can be read in two ways|write \"3 oz/yd2\" for batt",
            })
    void is_told_what_was_read_and_what_was_probably_meant(
            String file, String old, String mistake, String found, String hint) throws Exception {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(old);
        Files.writeString(path, text.replace(old, mistake));
        InputFault fault =
                catchThrowableOfType(InputFault.class, () -> ScenarioReader.read(folder.resolve("night.yaml")));
        assertThat(fault).as("nothing was refused").isNotNull();
        assertThat(fault.getMessage()).contains(found, hint).doesNotContain("<block", "mapping", "\n");
        assertThat(fault.line()).isPositive();
    }

    @Test
    void the_folder_in_place_of_the_night() {
        InputFault fault = catchThrowableOfType(InputFault.class, () -> ScenarioReader.read(folder));
        assertThat(fault.getMessage()).endsWith("did you mean \"" + folder.resolve("night.yaml") + "\"?");
    }

    @ParameterizedTest
    @CsvSource({"wardrobe.yaml, wardrobe", "people/me.yaml, person", "kits/warm.yaml, kit"})
    void another_file_in_place_of_the_night(String file, String kind) {
        InputFault fault = catchThrowableOfType(InputFault.class, () -> ScenarioReader.read(folder.resolve(file)));
        assertThat(fault.getMessage()).contains("this is a " + kind + " file, no night; name a night file");
    }
}
