package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import longnight.assumption.Guess;
import longnight.body.Person;
import longnight.night.Caution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PersonReaderTest {
    private final Findings findings = new Findings();

    /** Deurenberg, Weststrate and Seidell 1991: 80 kg, 1.78 m, 35 years, male: BMI 25.25 gives 22.2 % (by hand). */
    @ParameterizedTest
    @CsvSource({"middle, 22.15", "lean, 17.15", "round, 27.15"})
    void fatFromBuild(String build, double expected) {
        Person person = person("male", 35, 178, 80, "build: " + build);
        assertThat(person.bodyFat()).isCloseTo(expected, within(0.01)); // rounded by hand
        Guess guess = findings.guesses.get(0);
        assertThat(guess.quantity()).isEqualTo("body fat");
        assertThat(guess.value()).isCloseTo(expected / 100, within(1e-4));
        assertThat(guess.reason()).contains("Deurenberg").contains(build);
        assertThat(findings.cautions).containsExactly(Caution.PERSON_GUESSED);
    }

    /** Women carry 10.8 points more at the same height, mass and age, girls 3.6. */
    @Test
    void sexAndAgeOfTheFormula() {
        double woman = PersonReader.bodyFat(Person.Sex.FEMALE, 30, 1.7, 60);
        assertThat(woman - PersonReader.bodyFat(Person.Sex.MALE, 30, 1.7, 60)).isCloseTo(10.8, within(1e-9));
        double girl = PersonReader.bodyFat(Person.Sex.FEMALE, 12, 1.5, 42);
        assertThat(girl - PersonReader.bodyFat(Person.Sex.MALE, 12, 1.5, 42)).isCloseTo(3.6, within(1e-9));
        assertThat(girl).isCloseTo(1.51 * 42 / 2.25 - 0.70 * 12 + 1.4, within(1e-9));
    }

    /** Myers et al. 2017: a man of 40 and 80 kg (176.4 lb): 79.9 - 15.6 - 22.4 = 41.9 (by hand). */
    @Test
    void fitnessGuess() {
        assertThat(PersonReader.peakOxygen(Person.Sex.MALE, 40, 80)).isCloseTo(41.9, within(0.05));
        assertThat(PersonReader.peakOxygen(Person.Sex.FEMALE, 40, 80)).isCloseTo(28.2, within(0.05));
    }

    @Test
    void everythingGiven() {
        Person person = person("female", 34, 165, 58, "body-fat: 24 %\nfitness: 42 mL/kg/min\nheat-production: 95 %");
        assertThat(person).isEqualTo(new Person("somebody", Person.Sex.FEMALE, 34, 1.65, 58, 24, 42, 0.95));
        assertThat(findings.guesses).isEmpty();
        assertThat(findings.cautions).isEmpty();
    }

    private Person person(String sex, int age, int height, int mass, String rest) {
        String text = "name: somebody\nsex: %s\nage: %d years\nheight: %d cm\nmass: %d kg\n%s\n"
                .formatted(sex, age, height, mass, rest + (rest.contains("fitness") ? "" : "\nfitness: 40 mL/kg/min"));
        return PersonReader.read(
                new Section(YamlFile.read(new TextFile(Path.of("p.yaml"), text)), Tables.PERSON), findings);
    }
}
