package longnight.proof;

import longnight.clothing.law.WholeBody;
import longnight.night.Exposure.Series;

/** What can be read off a run: at a minute, or as a mean over some. Minutes count from the end of the lead-in. */
public enum Reading {
    HEAT_MADE("W"),
    HEAT_MADE_PER_AREA("W/m2"),
    HEAT_MADE_PER_MASS("W/kg"),
    /** Heat made over heat made at rest: at the end of the lead-in; without one, the model's own at rest. */
    HEAT_MADE_OVER_REST(""),
    HEAT_MADE_OVER_BASAL(""),
    HEAT_LOST("W"),
    /** Losses less heat made, per area. */
    NET_LOSS("W/m2"),
    /** Heat gone from the body since the lead-in, per area. */
    DEBT("kJ/m2"),
    RECTAL("°C"),
    RECTAL_CHANGE("K"),
    BLOOD_CHANGE("K"),
    CORE("°C"),
    CORE_CHANGE("K"),
    MEAN_SKIN("°C"),
    TRUNK_SKIN("°C"),
    LIMB_SKIN("°C"),
    HAND_SKIN("°C"),
    FOOT_SKIN("°C"),
    /** Limb skin less trunk skin. */
    LIMB_LESS_TRUNK("K"),
    /** Mean skin less foot. */
    SKIN_LESS_FOOT("K"),
    /** Foot less the coldest other part. */
    FOOT_LESS_OTHERS("K"),
    ASLEEP(""),
    /** Rise of heat made since the lead-in over fall of mean skin, per area. */
    SLOPE_ON_SKIN("W/m2K"),
    /** The same times the root of body fat in percent: alike in all people if shivering goes as one over that root. */
    SLOPE_TIMES_ROOT_FAT("W/m2K"),
    /** Heat lost per area over rectal less mean skin. */
    CONDUCTANCE("W/m2K"),
    /** Mean skin less air over the heat that leaves dry: clothing, film and ground as the body finds them. */
    INSULATION("clo"),
    /** Body fat. */
    BODY_FAT("percent"),
    /** Clothing with its still film, as dry or wet as it is at the start, contact left out. */
    CLOTHING("clo"),
    /** Total insulation of a cover that was searched for. */
    COVER("clo"),
    /** First minute at which heat made over rest passes the level. */
    MINUTES_TO_LEVEL("min"),
    /** Hour of the lowest rectal. */
    HOUR_OF_LOWEST_RECTAL("h"),
    /** Lowest rectal. */
    LOWEST_RECTAL("°C"),
    /** Largest heat made over rest. */
    PEAK_OVER_REST("");

    private final String unit;

    Reading(String unit) {
        this.unit = unit;
    }

    /** Unit in which it is told, as written in files; empty for a pure number. */
    public String unit() {
        return unit;
    }

    /** Whether it is one figure for a whole run, not one of a minute. */
    public boolean isOfWholeRun() {
        return compareTo(BODY_FAT) >= 0;
    }

    double at(Run run, int minute, int since) {
        return switch (this) {
            case HEAT_MADE -> run.value(Series.HEAT_MADE, minute);
            case HEAT_MADE_PER_AREA -> run.value(Series.HEAT_MADE, minute) / run.area();
            case HEAT_MADE_PER_MASS -> run.value(Series.HEAT_MADE, minute) / run.mass();
            case HEAT_MADE_OVER_REST -> run.value(Series.HEAT_MADE, minute) / run.rest();
            case HEAT_MADE_OVER_BASAL -> run.value(Series.HEAT_MADE, minute) / run.basal();
            case HEAT_LOST -> run.value(Series.HEAT_LOST, minute);
            case NET_LOSS -> (run.value(Series.HEAT_LOST, minute) - run.value(Series.HEAT_MADE, minute)) / run.area();
            case DEBT -> -run.change(Series.STORED, since, minute) / 1e3 / run.area();
            case RECTAL -> run.value(Series.RECTAL, minute);
            case RECTAL_CHANGE -> run.change(Series.RECTAL, since, minute);
            case BLOOD_CHANGE -> run.change(Series.BLOOD, since, minute);
            case CORE -> run.value(Series.CORE, minute);
            case CORE_CHANGE -> run.change(Series.CORE, since, minute);
            case MEAN_SKIN -> run.value(Series.MEAN_SKIN, minute);
            case TRUNK_SKIN -> run.value(Series.TRUNK_SKIN, minute);
            case LIMB_SKIN -> run.value(Series.LIMB_SKIN, minute);
            case HAND_SKIN -> run.value(Series.HAND_SKIN, minute);
            case FOOT_SKIN -> run.value(Series.FOOT_SKIN, minute);
            case LIMB_LESS_TRUNK -> run.value(Series.LIMB_SKIN, minute) - run.value(Series.TRUNK_SKIN, minute);
            case SKIN_LESS_FOOT -> run.value(Series.MEAN_SKIN, minute) - run.value(Series.FOOT_SKIN, minute);
            case FOOT_LESS_OTHERS -> run.value(Series.FOOT_SKIN, minute) - run.value(Series.COLDEST_OTHER, minute);
            case ASLEEP -> run.value(Series.ASLEEP, minute);
            case SLOPE_ON_SKIN -> slope(run, since, minute);
            case SLOPE_TIMES_ROOT_FAT -> slope(run, since, minute) * Math.sqrt(run.fat());
            case CONDUCTANCE ->
                run.value(Series.HEAT_LOST, minute)
                        / run.area()
                        / (run.value(Series.RECTAL, minute) - run.value(Series.MEAN_SKIN, minute));
            case INSULATION ->
                (run.value(Series.MEAN_SKIN, minute) - run.value(Series.AIR, minute))
                        * run.area()
                        / run.value(Series.DRY_LOST, minute)
                        / WholeBody.CLO;
            default -> throw new IllegalStateException(this + " is of a whole run");
        };
    }

    double ofWhole(Run run, double level) {
        return switch (this) {
            case BODY_FAT -> run.fat();
            case CLOTHING -> run.clothing() / WholeBody.CLO;
            case COVER -> run.cover();
            case MINUTES_TO_LEVEL -> run.exceeds(Series.HEAT_MADE, level * run.rest());
            case HOUR_OF_LOWEST_RECTAL -> run.lowest(Series.RECTAL) / 60.0;
            case LOWEST_RECTAL -> run.value(Series.RECTAL, run.lowest(Series.RECTAL));
            case PEAK_OVER_REST -> run.peak(Series.HEAT_MADE) / run.rest();
            default -> throw new IllegalStateException(this + " is of a minute");
        };
    }

    private static double slope(Run run, int since, int minute) {
        return run.change(Series.HEAT_MADE, since, minute) / run.area() / -run.change(Series.MEAN_SKIN, since, minute);
    }
}
