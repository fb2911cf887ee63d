package longnight.body;

/**
 * Who sits out the night. Immutable, SI, every component finite.
 *
 * @param name           name shown to people, not blank
 * @param sex            sex, for the resting-heat and fat formulas
 * @param age            age [years], 0 to 120 (the model was made for 18 to 65; below 14 and above 90 it has no answer)
 * @param height         height [m], 0.5 to 2.5 (no answer outside 1.2 to 2.2)
 * @param mass           body mass [kg], 10 to 300 (no answer outside 30 to 200)
 * @param bodyFat        body fat [percent], 4 to 60
 * @param peakOxygen     maximal oxygen uptake [mL/kg/min], 15 to 90
 * @param heatOffset     personal factor on heat production [1], 0.8 to 1.2, 1 for none
 */
public record Person(
        String name,
        Sex sex,
        double age,
        double height,
        double mass,
        double bodyFat,
        double peakOxygen,
        double heatOffset) {

    /** Sex as used by the resting-heat formula (Mifflin, St Jeor et al. 1990). */
    public enum Sex {
        FEMALE,
        MALE
    }

    public Person {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a person needs a name");
        }
        requireBetween("age [years]", age, 0, 120);
        requireBetween("height [m]", height, 0.5, 2.5);
        requireBetween("mass [kg]", mass, 10, 300);
        requireBetween("bodyFat [percent]", bodyFat, 4, 60);
        requireBetween("peakOxygen [mL/kg/min]", peakOxygen, 15, 90);
        requireBetween("heatOffset [1]", heatOffset, 0.8, 1.2);
    }

    /** The reference man of the node tables: 74.43 kg, 1.72 m, 15 % fat, 30 years (Tanabe et al. 2002). */
    public static Person reference() {
        return new Person("reference man", Sex.MALE, 30, 1.72, 74.43, 15, 45, 1);
    }

    /** The same person with another heat production against the usual [1], 0.8 to 1.2. */
    public Person withHeatOffset(double other) {
        return new Person(name, sex, age, height, mass, bodyFat, peakOxygen, other);
    }

    private static void requireBetween(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " is " + value + ", allowed " + low + " to " + high);
        }
    }
}
