package longnight.scenario;

import longnight.assumption.Guess;
import longnight.body.Person;
import longnight.night.Caution;

/** A person from a section; body fat and fitness are estimated where they are not given. */
final class PersonReader {
    /**
     * Points of body fat that a build adds to the formula: engineering estimate, no source; a little more than the
     * formula's own standard error of 4.1 points.
     */
    enum Build {
        LEAN(-5),
        MIDDLE(0),
        ROUND(5);

        private final double fatPoints;

        Build(double fatPoints) {
            this.fatPoints = fatPoints;
        }
    }

    private PersonReader() {}

    static Person read(Section section, Findings findings) {
        String name = section.text("name");
        Person.Sex sex = section.word("sex", Person.Sex.class);
        double age = section.quantity("age");
        double height = section.quantity("height");
        double mass = section.quantity("mass");
        double bodyFat;
        if (section.has("body-fat")) {
            if (section.has("build")) {
                throw section.keyAt("build").fault("\"build\" beside \"body-fat\"", "write one of them");
            }
            bodyFat = 100 * section.quantity("body-fat");
        } else {
            Build build = section.has("build") ? section.word("build", Build.class) : Build.MIDDLE;
            bodyFat = clamp(bodyFat(sex, age, height, mass) + build.fatPoints, 4, 60);
            findings.guesses.add(Guess.number(
                    "person",
                    "body fat",
                    bodyFat / 100,
                    "1",
                    "from height, mass, age and sex (Deurenberg, Weststrate & Seidell 1991, Br J Nutr 65:105; from memory),"
                            + " build " + Key.wordOf(build)
                            + (section.has("build") ? "" : " as none was given")));
            findings.cautions.add(Caution.PERSON_GUESSED);
        }
        double fitness;
        if (section.has("fitness")) {
            fitness = section.quantity("fitness");
        } else {
            fitness = clamp(peakOxygen(sex, age, mass), 15, 90);
            findings.guesses.add(Guess.number(
                    "person",
                    "largest oxygen uptake",
                    fitness,
                    "mL/(kg min)",
                    "from sex, age and mass (Myers et al. 2017, Prog Cardiovasc Dis 60:21; from memory)"));
            findings.cautions.add(Caution.PERSON_GUESSED);
        }
        findings.limit("age", age, 14, 90, "years");
        findings.limit("height", height, 1.2, 2.2, "m");
        findings.limit("mass of the person", mass, 30, 200, "kg");
        return new Person(name, sex, age, height, mass, bodyFat, fitness, section.quantityOr("heat-production", 1));
    }

    /**
     * Body fat [percent] from the body mass index: 1.20 BMI + 0.23 age - 10.8 male - 5.4, for 15 years and younger 1.51
     * BMI - 0.70 age - 3.6 male + 1.4.
     *
     * <p><b>Source.</b> Deurenberg, Weststrate and Seidell (1991), Br J Nutr 65:105; coefficients from memory.
     */
    static double bodyFat(Person.Sex sex, double age, double height, double mass) {
        double index = mass / (height * height);
        double male = sex == Person.Sex.MALE ? 1 : 0;
        return age > 15 ? 1.20 * index + 0.23 * age - 10.8 * male - 5.4 : 1.51 * index - 0.70 * age - 3.6 * male + 1.4;
    }

    /**
     * Largest oxygen uptake [mL/(kg min)]: 79.9 - 0.39 age - 13.7 female - 0.127 mass in pounds.
     *
     * <p><b>Source.</b> Myers, Kaminsky et al. (2017), Prog Cardiovasc Dis 60:21; coefficients from memory.
     */
    static double peakOxygen(Person.Sex sex, double age, double mass) {
        double female = sex == Person.Sex.FEMALE ? 1 : 0;
        return 79.9 - 0.39 * age - 13.7 * female - 0.127 * mass / 0.45359237;
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
