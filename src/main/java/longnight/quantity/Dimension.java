package longnight.quantity;

/**
 * What a quantity measures. Each dimension has one unit in which the engine reckons; {@link Unit} lists the others.
 */
public enum Dimension {
    /** Temperature on a scale; the engine reckons in degrees Celsius. */
    TEMPERATURE("a temperature", "degC", "-12 °C"),
    /** A difference of temperatures, where 1 °C is 1 K. */
    TEMPERATURE_DIFFERENCE("a temperature difference", "K", "-4 K"),
    LENGTH("a length", "m", "1.72 m"),
    AREA("an area", "m2", "0.12 m2"),
    VOLUME("a volume", "m3", "8 L"),
    MASS("a mass", "kg", "85 g"),
    /** Mass of a sheet per area. */
    AREAL_MASS("a mass per area", "kg/m2", "100 g/m2"),
    /** Volume that a mass of down fills in the test cylinder. */
    FILL_POWER("a fill power", "m3/kg", "700 in3/oz"),
    SPEED("a speed", "m/s", "15 km/h"),
    PRESSURE("a pressure", "Pa", "985 hPa"),
    TIME("a length of time", "s", "12 h"),
    ENERGY("an energy", "J", "2500 kJ"),
    HEAT_PER_AREA("a heat per area", "J/m2", "1500 kJ/m2"),
    AGE("an age", "years", "34 years"),
    /** A share; the engine reckons from 0 to 1. */
    FRACTION("a share", "1", "80 %"),
    /** Share of the sky that is covered; the engine reckons from 0 to 1. */
    CLOUD("a cloud cover", "1", "3 oktas"),
    THERMAL_RESISTANCE("a thermal resistance", "m2K/W", "1.5 clo"),
    EVAPORATIVE_RESISTANCE("an evaporative resistance", "m2Pa/W", "15 m2Pa/W"),
    /** Volume flow of air through an area, at the pressure difference of the test (100 Pa). */
    AIR_PERMEABILITY("an air permeability", "L/(m2 s)", "8 L/m2/s"),
    HEAT_FLUX("a heat flow per area", "W/m2", "58 W/m2"),
    PRECIPITATION("a precipitation rate", "mm/h", "0.4 mm/h"),
    CONDUCTIVITY("a thermal conductivity", "W/(m K)", "0.2 W/mK"),
    VOLUMETRIC_HEAT_CAPACITY("a heat capacity per volume", "J/(m3 K)", "600 kJ/m3K"),
    AREAL_HEAT_CAPACITY("a heat capacity per area", "J/(m2 K)", "900 J/m2K"),
    ANGLE("an angle", "rad", "20°"),
    /** Oxygen uptake per body mass; the engine reckons as the trade does. */
    OXYGEN_UPTAKE("an oxygen uptake", "mL/(kg min)", "42 mL/kg/min");

    private final String meaning;
    private final String unit;
    private final String example;

    Dimension(String meaning, String unit, String example) {
        this.meaning = meaning;
        this.unit = unit;
        this.example = example;
    }

    /** The dimension in words, with its article: "a mass per area". */
    public String meaning() {
        return meaning;
    }

    /** The unit in which the engine reckons, as text. */
    public String engineUnit() {
        return unit;
    }

    /** A quantity as somebody might write it. */
    public String example() {
        return example;
    }
}
