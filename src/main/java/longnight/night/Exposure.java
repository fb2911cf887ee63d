package longnight.night;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import longnight.body.Body;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.clothing.Stacks;
import longnight.clothing.law.WholeBody;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.outdoors.Surroundings;

/**
 * One dry exposure, minute by minute: the engine's own network and working step, 30 s steps, surface exchange taken afresh
 * every minute. For holding the engine against measured people. Index 0 of every series is the start; powers are means over
 * the minute that ends there.
 */
public final class Exposure {

    /** Radiant part of the standard's film [W/(m2 K)]: customary, no source. */
    private static final double RADIATION = 4.5;

    /** What is known of every minute. */
    public enum Series {
        /** [W]. */
        HEAT_MADE,
        /** [W]. */
        HEAT_LOST,
        /** Area mean [degC]. */
        MEAN_SKIN,
        /** Chest, back and pelvis [degC]. */
        TRUNK_SKIN,
        /** Arms and legs without hands and feet [degC]. */
        LIMB_SKIN,
        /** [degC]. */
        HAND_SKIN,
        /** [degC]. */
        FOOT_SKIN,
        /** Coldest skin of all but the feet [degC]. */
        COLDEST_OTHER,
        /** What a rectal probe reads [degC]. */
        RECTAL,
        /** [degC]. */
        BLOOD,
        /** Capacity-weighted core [degC]. */
        CORE,
        /** Heat in the body, from an arbitrary level [J]. */
        STORED,
        /** Share asleep [1]. */
        ASLEEP
    }

    /**
     * What is done to a person.
     *
     * @param person       who
     * @param outfit       what is worn
     * @param standardFilm true to use the surface film of ISO 11079:2007 in place of the one that the air makes: for totals
     *     measured on a manikin
     * @param posture      held throughout
     * @param bedtime      local clock at which the person lies down, free to sleep, the daily rhythm running [s after midnight];
     *     NaN for one awake, the rhythm stopped
     * @param imposedHeat  heat production held [W/m2]; NaN for the person's own
     * @param warmCore     core and blood at the start above the set level [K], 0 to 1
     * @param surroundings where; the exposure lasts as long as they do
     */
    public record Setup(
            Person person,
            Outfit outfit,
            boolean standardFilm,
            Posture posture,
            double bedtime,
            double imposedHeat,
            double warmCore,
            Surroundings surroundings) {}

    private final Network net;
    private final double[] state;
    private final Map<Series, double[]> series = new EnumMap<>(Series.class);

    private Exposure(Network net, double warmCore) {
        this.net = net;
        int minutes = (int) Math.round(net.plan.duration() / 60);
        for (Series each : Series.values()) {
            series.put(each, new double[minutes + 1]);
        }
        state = net.start();
        for (int i = 0; i < BodySegment.COUNT; i++) {
            if (BodySegment.values()[i].isTrunk() || BodySegment.values()[i] == BodySegment.HEAD) {
                state[Body.CORE + i] += warmCore;
            }
        }
        state[Body.BLOOD] += warmCore;
        run(minutes);
    }

    /** Runs it with a given model. */
    public static Exposure run(Setup setup, ModelChoice choice) {
        Body body = Body.of(setup.person, choice.body(), choice.options());
        boolean night = !Double.isNaN(setup.bedtime);
        NightPlan plan = NightPlan.still(
                night ? setup.bedtime : 0,
                setup.surroundings.lastTime(),
                setup.posture,
                night,
                night,
                setup.imposedHeat);
        Network net = new Network(
                body,
                Stacks.compile(setup.outfit, setup.posture, body.segmentAreas(), choice.clothing()),
                setup.surroundings,
                plan,
                plan.firstOfNight(),
                0,
                choice.clothing(),
                false,
                setup.standardFilm ? standardFilms() : null);
        return new Exposure(net, setup.warmCore);
    }

    private static Network.Films standardFilms() {
        double[] convection = new double[BodySegment.COUNT];
        double[] radiation = new double[BodySegment.COUNT];
        Arrays.fill(convection, 1 / WholeBody.STILL_AIR - RADIATION);
        Arrays.fill(radiation, RADIATION);
        return new Network.Films(convection, radiation);
    }

    private void run(int minutes) {
        WorkingStep step = new WorkingStep(net);
        double[] made = of(Series.HEAT_MADE);
        double[] lost = of(Series.HEAT_LOST);
        double[] stored = of(Series.STORED);
        note(0);
        for (int m = 1; m <= minutes; m++) {
            double from = 60.0 * (m - 1);
            net.relinearise(from + 30, state);
            step.prepare(30);
            step.clear();
            step.advance(from, 30, state);
            step.advance(from + 30, 30, state);
            note(m);
            made[m] = step.made / 60;
            lost[m] = made[m] - (stored[m] - stored[m - 1]) / 60;
        }
        made[0] = made[1];
        lost[0] = lost[1];
    }

    private void note(int m) {
        Body body = net.body;
        double[] area = body.segmentAreas();
        double[] capacity = body.capacities();
        double[] sum = new double[3];
        double[] of = new double[3];
        double coldest = Double.POSITIVE_INFINITY;
        for (BodySegment segment : BodySegment.values()) {
            int s = segment.ordinal();
            double t = state[Body.SKIN + s];
            add(sum, of, 0, area[s], t);
            if (segment.isTrunk()) {
                add(sum, of, 1, area[s], t);
            } else if (segment.isLimb()) {
                add(sum, of, 2, area[s], t);
            }
            coldest = segment == BodySegment.FOOT ? coldest : Math.min(coldest, t);
        }
        put(Series.MEAN_SKIN, m, sum[0] / of[0]);
        put(Series.TRUNK_SKIN, m, sum[1] / of[1]);
        put(Series.LIMB_SKIN, m, sum[2] / of[2]);
        put(Series.COLDEST_OTHER, m, coldest);
        put(Series.HAND_SKIN, m, state[Body.SKIN + BodySegment.HAND.ordinal()]);
        put(Series.FOOT_SKIN, m, state[Body.SKIN + BodySegment.FOOT.ordinal()]);
        put(Series.RECTAL, m, body.rectal(state));
        put(Series.BLOOD, m, state[Body.BLOOD]);
        put(Series.CORE, m, body.coreMean(state));
        put(Series.ASLEEP, m, state[net.sleep]);
        double stored = 0;
        for (int i = 0; i < Body.NODES; i++) {
            stored += capacity[i] * state[i];
        }
        put(Series.STORED, m, stored);
    }

    private static void add(double[] sum, double[] of, int i, double area, double t) {
        sum[i] += area * t;
        of[i] += area;
    }

    private void put(Series which, int m, double value) {
        of(which)[m] = value;
    }

    /** One series; not to be changed. */
    public double[] of(Series which) {
        return Objects.requireNonNull(series.get(which));
    }

    /** Length [min]. */
    public int minutes() {
        return of(Series.RECTAL).length - 1;
    }

    /** Who was exposed, as the model makes him. */
    public Body body() {
        return net.body;
    }

    /** A copy of the state at the end; for tests. */
    double[] end() {
        return state.clone();
    }
}
