package longnight.outdoors;

/**
 * A weather series, instantaneous values to be interpolated linearly. Arrays have equal length, at least 2.
 *
 * @param time          seconds from the start of the night (negative before it), strictly rising
 * @param airCelsius    air temperature at 1.5 to 2 m [degC]
 * @param relativeHumidity over liquid water at all temperatures [1], 0 to 1
 * @param wind10        10-minute mean wind at 10 m in the open [m/s]
 * @param cloud         cloud fraction [1], 0 to 1
 * @param precipitation liquid-equivalent rate [mm/h] from this time on (step, not interpolated)
 * @param pressure      station pressure [Pa]; NaN where unknown (then from altitude)
 * @param skyLongwave   downward long-wave radiation of the whole sky [W/m2]; NaN where unknown (then from air and cloud)
 */
public record Weather(
        double[] time,
        double[] airCelsius,
        double[] relativeHumidity,
        double[] wind10,
        double[] cloud,
        double[] precipitation,
        double[] pressure,
        double[] skyLongwave) {}
