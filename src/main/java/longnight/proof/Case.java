package longnight.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.night.Exposure;
import longnight.outdoors.Chamber;
import longnight.outdoors.Ground;
import longnight.outdoors.OutdoorParameter;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.Surroundings;
import org.jspecify.annotations.Nullable;

/**
 * One run of an experiment: what was done to one person.
 *
 * @param person      who, as the source or the file says
 * @param wear        what is worn
 * @param posture     held throughout
 * @param bedtime     local clock at which a night begins [s after midnight]; NaN by day, awake, the daily rhythm stopped
 * @param imposedHeat heat production held [W/m2]; NaN for the person's own
 * @param wind        air speed at the body [m/s]
 * @param humidity    relative humidity [1]
 * @param naturalWind true for the turbulence of wind outdoors, false for a chamber's
 * @param ground      what a person in real garments sits or lies on; null for a mesh couch
 * @param groundCelsius temperature of that ground [degC]; NaN for the air's
 * @param steps       what the air is set to, one after the other
 */
public record Case(
        Person person,
        Wear wear,
        Posture posture,
        double bedtime,
        double imposedHeat,
        double wind,
        double humidity,
        boolean naturalWind,
        @Nullable Ground ground,
        double groundCelsius,
        List<Step> steps) {

    private static final double SEA_LEVEL = 101325; // Pa, standard atmosphere (ISO 2533:1975)
    private static final double LEAST_FAT = 4;
    private static final double MOST_FAT = 60;

    public Case {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a run without steps");
        }
    }

    /** What is worn in a laboratory. */
    public sealed interface Wear {}

    /**
     * Resistance by part, without the air film [m2 K/W]; an empty map is a nude person.
     *
     * @param resistance by zone
     */
    public record Parts(Map<Zone, Double> resistance) implements Wear {}

    /**
     * The same total resistance everywhere, with the film of the standard inside it [m2 K/W].
     *
     * @param resistance above that of the film
     */
    public record Total(double resistance) implements Wear {}

    /**
     * Real garments.
     *
     * @param kit    pieces and pads
     * @param soaked share of what the cloth can hold that is in it at the start [1], 0 to 1
     */
    public record Garments(Outfit.Kit kit, double soaked) implements Wear {}

    /**
     * A total that the source does not give: the one with which a reading ends where another run's does, and a little below.
     *
     * @param reading of which it is known how far it fell
     * @param less    how far below the other run's [its unit]
     * @param than    id of the other run
     * @param minute  when
     * @param thanMinute when of the other run
     */
    public record Cover(Reading reading, double less, String than, int minute, int thanMinute) implements Wear {}

    /**
     * A stretch of constant air.
     *
     * @param air     [degC]
     * @param radiant of the walls [degC]; NaN for the air's
     * @param minutes how long
     * @param lead    true for the time before the exposure that readings count from; only the first may be
     */
    public record Step(double air, double radiant, int minutes, boolean lead) {}

    /** Length of the lead-in [min]. */
    public int lead() {
        return steps.get(0).lead() ? steps.get(0).minutes() : 0;
    }

    /** Length of the exposure after the lead-in [min]. */
    public int minutes() {
        return steps.stream().mapToInt(Step::minutes).sum() - lead();
    }

    /** The person under a set of assumptions; fat stays within what a person of the model may have. */
    Person person(Experiment.Variant variant) {
        double fat = Math.min(MOST_FAT, Math.max(LEAST_FAT, person.bodyFat() + variant.fat()));
        return new Person(
                person.name(),
                person.sex(),
                person.age(),
                person.height(),
                person.mass() + variant.mass(),
                fat,
                person.peakOxygen(),
                person.heatOffset());
    }

    Exposure.Setup setup(Experiment.Variant variant, Outfit outfit, boolean film) {
        return new Exposure.Setup(
                person(variant),
                outfit,
                film,
                posture,
                bedtime,
                imposedHeat,
                variant.warm(),
                wear instanceof Garments garments ? garments.soaked : 0,
                surroundings(Double.isNaN(variant.wind()) ? wind : variant.wind()));
    }

    private Surroundings surroundings(double speed) {
        List<Chamber.Setting> settings = new ArrayList<>();
        double time = 0;
        for (Step step : steps) {
            settings.add(new Chamber.Setting(time, step.air, step.radiant, speed, humidity));
            time += 60.0 * step.minutes;
        }
        Chamber chamber = Chamber.stepwise(settings, time, SEA_LEVEL, ground);
        return naturalWind || !Double.isNaN(groundCelsius) ? new Place(chamber, naturalWind, groundCelsius) : chamber;
    }

    /** The same air with the turbulence of natural wind, or with a ground of a temperature of its own. */
    private record Place(Chamber chamber, boolean natural, double groundCelsius) implements Surroundings {
        @Override
        public void at(double time, OutdoorState out) {
            chamber.at(time, out);
            if (!Double.isNaN(groundCelsius)) {
                out.groundDeepCelsius = groundCelsius;
                out.groundSurfaceCelsius = groundCelsius;
            }
        }

        @Override
        public double firstTime() {
            return chamber.firstTime();
        }

        @Override
        public double lastTime() {
            return chamber.lastTime();
        }

        @Override
        public double[] knots() {
            return chamber.knots();
        }

        @Override
        public double[] jumps() {
            return chamber.jumps();
        }

        @Override
        public double turbulence() {
            return natural ? OutdoorParameter.TURBULENCE.nominal() : chamber.turbulence();
        }

        @Override
        public @Nullable Ground ground() {
            return chamber.ground();
        }
    }
}
