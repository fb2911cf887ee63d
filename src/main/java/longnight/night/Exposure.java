package longnight.night;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import longnight.body.Body;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.clothing.PatchStack;
import longnight.clothing.Stacks;
import longnight.clothing.law.WholeBody;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.outdoors.Surroundings;

/**
 * One exposure, minute by minute: the engine's own network and working step, 30 s steps, surface exchange and water taken
 * afresh every minute and more often while sweat runs. For holding the engine against measured people. Index 0 of every series is the start; powers are means over
 * the minute that ends there.
 */
public final class Exposure {

    /** Radiant part of the standard's film [W/(m2 K)]: customary, no source. */
    private static final double RADIATION = 4.5;

    private static final double MINUTE = 60;
    private static final double STEP = 30;

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
        ASLEEP,
        /** By air, radiation and ground, breath and vapour left out [W]. */
        DRY_LOST,
        /** Air [degC]. */
        AIR
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
     * @param soaked      share of what the cloth can hold that is in it at the start [1], 0 to 1; real garments only
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
            double soaked,
            Surroundings surroundings) {}

    private final Network net;
    private final double[] state;
    private final double clothing;
    private final Map<Series, double[]> series = new EnumMap<>(Series.class);

    private Exposure(Network net, double warmCore, double soaked) {
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
        soak(soaked);
        net.relinearise(0, state);
        clothing = net.calmTotal();
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
        boolean real = setup.outfit instanceof Outfit.Kit;
        List<PatchStack> stacks = Stacks.compile(
                setup.outfit,
                setup.posture,
                body.segmentAreas(),
                choice.clothing(),
                setup.surroundings.ground() != null);
        Network net = new Network(
                body,
                stacks,
                setup.surroundings,
                plan,
                plan.firstOfNight(),
                real ? Iso11079.basicFromTotal(Stacks.staticTotal(stacks)) : 0,
                choice.clothing(),
                real,
                setup.standardFilm ? standardFilms() : null);
        return new Exposure(net, setup.warmCore, setup.soaked);
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
        double[] dry = of(Series.DRY_LOST);
        double[] stored = of(Series.STORED);
        note(0);
        for (int m = 1; m <= minutes; m++) {
            Network.Books books = new Network.Books();
            minute(MINUTE * (m - 1), step, books);
            note(m);
            made[m] = books.made / MINUTE;
            lost[m] = made[m] - (stored[m] - stored[m - 1]) / MINUTE;
            dry[m] = (books.way[Way.AIR.ordinal()]
                            + books.way[Way.RADIATION.ordinal()]
                            + books.way[Way.GROUND.ordinal()])
                    / MINUTE;
        }
        for (double[] power : new double[][] {made, lost, dry}) {
            power[0] = power[1];
        }
    }

    private void soak(double share) {
        for (int p = 0; share > 0 && p < net.patches; p++) {
            for (int k = 0; k < net.chains[p].elements; k++) {
                net.water.liquid[net.node(p, k)] += share * net.stacks[p].area() * net.chains[p].hold[k];
            }
        }
    }

    /** One minute, in shorter looks while sweat or other water runs fast, as the night's runner does. */
    private void minute(double from, WorkingStep step, Network.Books books) {
        double longest = Math.min(MINUTE, net.longestLook(from, from + MINUTE, state, MINUTE));
        int looks = (int) Math.ceil(MINUTE / longest - 1e-6);
        double length = MINUTE / looks;
        int steps = (int) Math.ceil(length / STEP - 1e-6);
        for (int look = 0; look < looks; look++) {
            double begin = from + look * length;
            net.relinearise(begin + 0.5 * length, state);
            net.moveWater(begin, length, state);
            step.prepare(length / steps);
            step.clear();
            for (int i = 0; i < steps; i++) {
                step.advance(begin + i * length / steps, length / steps, state);
            }
            net.book(length, step.integral, step.made, books);
        }
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
        put(Series.AIR, m, net.around.airCelsius);
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

    /** Clothing with its still film at the start, as dry or wet as it then is, contact left out [m2 K/W]. */
    public double clothing() {
        return clothing;
    }

    /** Who was exposed, as the model makes him. */
    public Body body() {
        return net.body;
    }

    Network network() {
        return net;
    }

    /** A copy of the state at the end; for tests. */
    double[] end() {
        return state.clone();
    }
}
