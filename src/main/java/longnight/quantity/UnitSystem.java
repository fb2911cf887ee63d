package longnight.quantity;

/** The units in which numbers are shown to people, with as many decimals as the numbers deserve. */
public enum UnitSystem {
    METRIC,
    IMPERIAL;

    /** Unit in which this system shows a dimension. */
    public Unit unitOf(Dimension dimension) {
        boolean metric = this == METRIC;
        return switch (dimension) {
            case TEMPERATURE -> metric ? Unit.CELSIUS : Unit.FAHRENHEIT;
            case TEMPERATURE_DIFFERENCE -> metric ? Unit.KELVIN_DIFFERENCE : Unit.FAHRENHEIT_DIFFERENCE;
            case LENGTH -> metric ? Unit.METRE : Unit.FOOT;
            case AREA -> metric ? Unit.SQUARE_METRE : Unit.SQUARE_FOOT;
            case VOLUME -> metric ? Unit.LITRE : Unit.CUBIC_INCH;
            case MASS -> metric ? Unit.KILOGRAM : Unit.POUND;
            case AREAL_MASS -> metric ? Unit.GRAM_PER_SQUARE_METRE : Unit.OUNCE_PER_SQUARE_YARD;
            case FILL_POWER -> Unit.CUBIC_INCH_PER_OUNCE;
            case SPEED -> metric ? Unit.METRE_PER_SECOND : Unit.MILE_PER_HOUR;
            case PRESSURE -> metric ? Unit.HECTOPASCAL : Unit.INCH_OF_MERCURY;
            case TIME -> Unit.HOUR;
            case ENERGY -> metric ? Unit.KILOJOULE : Unit.KILOCALORIE;
            case HEAT_PER_AREA -> Unit.KILOJOULE_PER_SQUARE_METRE;
            case AGE -> Unit.YEAR;
            case FRACTION -> Unit.PERCENT;
            case CLOUD -> Unit.PERCENT_OF_SKY;
            case THERMAL_RESISTANCE -> Unit.CLO;
            case EVAPORATIVE_RESISTANCE -> Unit.SQUARE_METRE_PASCAL_PER_WATT;
            case AIR_PERMEABILITY ->
                metric ? Unit.LITRE_PER_SQUARE_METRE_SECOND : Unit.CUBIC_FOOT_PER_MINUTE_SQUARE_FOOT;
            case HEAT_FLUX -> Unit.WATT_PER_SQUARE_METRE;
            case PRECIPITATION -> metric ? Unit.MILLIMETRE_PER_HOUR : Unit.INCH_PER_HOUR;
            case CONDUCTIVITY -> Unit.WATT_PER_METRE_KELVIN;
            case VOLUMETRIC_HEAT_CAPACITY -> Unit.KILOJOULE_PER_CUBIC_METRE_KELVIN;
            case AREAL_HEAT_CAPACITY -> Unit.JOULE_PER_SQUARE_METRE_KELVIN;
            case ANGLE -> Unit.DEGREE;
            case OXYGEN_UPTAKE -> Unit.MILLILITRE_PER_KILOGRAM_MINUTE;
        };
    }

    /** Decimals shown. */
    int decimals(Dimension dimension) {
        boolean metric = this == METRIC;
        return switch (dimension) {
            case TEMPERATURE, TEMPERATURE_DIFFERENCE, SPEED, TIME, EVAPORATIVE_RESISTANCE -> 1;
            case LENGTH, MASS, CONDUCTIVITY, THERMAL_RESISTANCE -> 2;
            case AREA -> 2;
            case VOLUME, AIR_PERMEABILITY, PRECIPITATION -> metric ? 1 : 2;
            case AREAL_MASS -> metric ? 0 : 1;
            case PRESSURE -> metric ? 0 : 2;
            case FILL_POWER,
                    ENERGY,
                    HEAT_PER_AREA,
                    AGE,
                    FRACTION,
                    CLOUD,
                    HEAT_FLUX,
                    VOLUMETRIC_HEAT_CAPACITY,
                    AREAL_HEAT_CAPACITY,
                    ANGLE,
                    OXYGEN_UPTAKE -> 0;
        };
    }
}
