package longnight.night;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import longnight.body.Body;
import longnight.body.BodyParameter;
import longnight.body.law.Drink;
import longnight.body.law.Food;
import longnight.body.law.Fuel;
import longnight.body.law.HotBottle;
import longnight.figure.BodySegment;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/** Takes a plan from its first phase to dawn with either integrator and keeps the diary. */
final class Runner {

    private static final double LOWEST_CORE = 32.0;
    private static final double TINY = 1e-6;

    /** Nothing in a night is colder or hotter [degC]; air from -40 to 32, sky and heat of binding allowed for. */
    private static final double COLDEST = -100;

    private static final double HOTTEST = 100;
    private static final int FIRST_TRUNK_CORE = Body.CORE + BodySegment.CHEST.ordinal();
    private static final int LAST_TRUNK_CORE = Body.CORE + BodySegment.PELVIS.ordinal();
    private static final int CHEST_SKIN = Body.SKIN + BodySegment.CHEST.ordinal();
    /**
     * A wrapped bottle at the trunk to the skin [W/K] (engineering estimate). What leaves through the clothes over it is
     * already counted as that skin's loss.
     */
    private static final double BOTTLE_TO_SKIN = 1.0;

    private static final double BOTTLE_OUTSIDE = 0.0;

    /** Sweat from which a walker counts as sweating, 50 g/h [kg/s] (engineering estimate, no source). */
    private static final double SWEATING = 0.05 / 3600;

    /** One phase as it was run, for the auditor: raw states at both ends. */
    record Stretch(Network net, double[] start, double[] end, double waterHeatStart, double waterHeatEnd) {}

    private final NightPlan plan;
    private final NumericalSettings settings;
    private final boolean brief;
    private final Function<Phase, Network> networks;
    private final ModelChoice choice;
    private final Body body;
    private Network net;

    Network.Books books = new Network.Books();
    Diary diary;
    double[] state;
    /** State at dusk. */
    double[] dusk;

    final List<Stretch> stretches = new ArrayList<>();
    final Closet closet = new Closet();
    final Closet closetAtDusk = new Closet();
    /** Time at which the run stopped early [s]; NaN when it reached dawn. */
    double stopped = Double.NaN;

    double endTime;
    /** Carbohydrate left and not yet used [J]. */
    double store;

    double gut;
    double eaten;
    double storeAtDusk;
    double lowestPeak = 1;
    double sweatBefore;
    /** Water of all phases of the night [kg]: from the skin, from outside, to the air, drained, straight from breath and bare skin. */
    final double[] flows = new double[5];

    double heldAtDusk;
    double heldAtStart;
    /** Answers about the last march [s], NaN while unknown. */
    double sweatingAfter = Double.NaN;

    double coolingAfter = Double.NaN;
    private double marchBegan = Double.NaN;
    private double marchEnded = Double.NaN;
    private final double[] neutral;
    /** Water bound in pieces that came out of the pack during the night [kg]. */
    double entered;

    /** Temperature of each bottle [degC], NaN before it is there. */
    private final double[] bottleCelsius;

    Runner(
            Body body,
            NightPlan plan,
            Function<Phase, Network> networks,
            ModelChoice choice,
            NumericalSettings settings) {
        this(body, plan, networks, choice, settings, false);
    }

    /** @param brief true to let the diary keep the fine trace alone */
    Runner(
            Body body,
            NightPlan plan,
            Function<Phase, Network> networks,
            ModelChoice choice,
            NumericalSettings settings,
            boolean brief) {
        this.body = body;
        this.plan = plan;
        this.networks = networks;
        this.choice = choice;
        this.settings = settings;
        this.brief = brief;
        neutral = body.neutralState();
        bottleCelsius = new double[plan.heats().size()];
        Arrays.fill(bottleCelsius, Double.NaN);
        store = plan.fuel() * body.fuel().full();
        net = networks.apply(plan.stretches().get(0));
        state = net.start();
        plan.damp().forEach(new Handover(net)::dampen);
        diary = new Diary(net, plan, state, brief);
        dusk = state.clone();
    }

    Network network() {
        return net;
    }

    void run() {
        boolean first = true;
        heldAtStart = net.water.held();
        for (Phase phase : plan.stretches()) {
            if (!first) {
                closet.cool();
                new Handover(net).putInto(closet, state);
                Network next = networks.apply(phase);
                state = new Handover(next).continueFrom(net, state, closet);
                net = next;
                if (phase.from() > TINY) {
                    entered += net.entered;
                }
                diary.change(net, state);
            }
            first = false;
            if (Math.abs(phase.from()) < TINY) {
                atDusk();
            }
            if (!run(phase)) {
                break;
            }
        }
        new Handover(net).putInto(closet, state);
    }

    private void atDusk() {
        books = new Network.Books();
        stretches.clear();
        Arrays.fill(flows, 0);
        sweatBefore = net.sweatTotal + sweatBefore;
        new Handover(net).putInto(closet, state);
        closet.entries().forEach((key, entry) -> {
            Closet.Entry copy = closetAtDusk.of(key);
            copy.liquid = entry.liquid;
            copy.ice = entry.ice;
            copy.bound = entry.bound;
        });
        heldAtDusk = closet.held();
        storeAtDusk = store / body.fuel().full();
        dusk = state.clone();
        diary = new Diary(net, plan, state, brief);
        diary.note(0.0, state, books, true);
    }

    private boolean run(Phase phase) {
        Course course = new Course(plan, phase, net.surroundings, settings);
        Integrator integrator = settings.reference() ? new Reference() : new Working();
        double[] begin = state.clone();
        double waterHeat = net.water.heat();
        boolean ofNight = phase.from() > -TINY;
        boolean goes = true;
        for (int i = 0; i + 1 < course.stops.length && goes; i++) {
            double from = course.stops[i];
            double to = course.stops[i + 1];
            takeIn(from, to, from <= phase.from() + TINY && i == 0);
            double made = books.made;
            integrator.advance(from, to, course.stepsAfter(i));
            burn(from, to, (books.made - made) / (to - from));
            endTime = to;
            watch(phase, to);
            double core = body.coreMean(state);
            if (!isSound()) {
                throw new ArithmeticException("the reckoning broke down before " + to + " s");
            }
            boolean below = core < LOWEST_CORE;
            if (ofNight || below) {
                diary.note(to, state, books, course.isRow[i + 1] || below);
            }
            if (below) {
                stopped = to;
                goes = false;
            }
        }
        stretches.add(new Stretch(net, begin, state.clone(), waterHeat, net.water.heat()));
        flows[0] += net.water.skinTotal;
        flows[1] += net.water.outsideTotal;
        flows[2] += net.water.airTotal;
        flows[3] += net.water.dripTotal;
        flows[4] += net.straightTotal;
        if (!ofNight) {
            sweatBefore += net.sweatTotal;
        }
        return goes;
    }

    /** Whether every temperature is one that cloth, ground or body may have; where the reckoning breaks down, some soon are not. */
    private boolean isSound() {
        for (int i = 0; i < net.nodes; i++) {
            if (!(state[i] > COLDEST && state[i] < HOTTEST)) {
                return false;
            }
        }
        return true;
    }

    /** Notes when a march begins to wet the walker and when a halt begins to cool him. */
    private void watch(Phase phase, double time) {
        if (phase.march() != null) {
            if (time - marchBegan > phase.to() - phase.from() + TINY || Double.isNaN(marchBegan)) {
                marchBegan = phase.from();
                sweatingAfter = Double.NaN;
                coolingAfter = Double.NaN;
            }
            marchEnded = time;
            if (Double.isNaN(sweatingAfter) && net.sweatRate() > SWEATING) {
                sweatingAfter = time - marchBegan;
            }
        } else if (!Double.isNaN(marchEnded) && Double.isNaN(coolingAfter)) {
            double content = 0;
            for (int i = 0; i < Body.NODES; i++) {
                content += net.capacity[i] * (state[i] - neutral[i]);
            }
            if (content < 0) {
                coolingAfter = time - marchEnded;
            }
        }
    }

    /** Food, drink and warm things of the interval that begins now. */
    private void takeIn(double from, double to, boolean opening) {
        double digestion = 0;
        double share = choice.body().get(BodyParameter.DIGESTION_SHARE);
        double peak = choice.body().get(BodyParameter.DIGESTION_PEAK);
        for (Intake intake : plan.intakes()) {
            if (Math.abs(intake.time() - from) < TINY || opening && intake.time() < from && intake.time() > to) {
                gut += intake.carbohydrate();
                eaten += intake.energy();
                double heat =
                        intake.drink() > 0 ? Drink.heat(intake.drink(), intake.celsius(), state[Body.BLOOD]) : 0.0;
                // a drink warms or cools the trunk's cores at once, each alike
                double capacity = 0;
                for (int c = FIRST_TRUNK_CORE; c <= LAST_TRUNK_CORE; c++) {
                    capacity += net.capacity[c];
                }
                for (int c = FIRST_TRUNK_CORE; c <= LAST_TRUNK_CORE; c++) {
                    state[c] += heat / capacity;
                    books.part[c - Body.CORE] -= heat * net.capacity[c] / capacity;
                }
                books.way[Way.BROUGHT.ordinal()] -= heat;
            }
            double done = Food.givenOff(to - intake.time(), peak) - Food.givenOff(from - intake.time(), peak);
            digestion += share * intake.energy() * done / (to - from);
        }
        net.circumstances.digestion = digestion;
        net.circumstances.peakFactor = body.fuel().peakFactor(store);
        lowestPeak = Math.min(lowestPeak, net.circumstances.peakFactor);
        double brought = 0;
        for (int w = 0; w < bottleCelsius.length; w++) {
            HeatBrought warm = plan.heats().get(w);
            if (to <= warm.time() + TINY) {
                continue;
            }
            if (warm.bottle() > 0) {
                if (Double.isNaN(bottleCelsius[w])) {
                    bottleCelsius[w] = warm.celsius();
                }
                HotBottle bottle = new HotBottle(warm.bottle(), BOTTLE_TO_SKIN, BOTTLE_OUTSIDE);
                double skin = state[CHEST_SKIN];
                net.look(from);
                brought += bottle.given(bottleCelsius[w], skin, net.around.airCelsius, to - from) / (to - from);
                bottleCelsius[w] = bottle.after(bottleCelsius[w], skin, net.around.airCelsius, to - from);
            } else {
                double end = Math.min(to, warm.time() + warm.duration());
                double begin = Math.max(from, warm.time());
                brought += warm.heat() / warm.duration() * Math.max(0.0, end - begin) / (to - from);
            }
        }
        net.brought = brought;
    }

    private void burn(double from, double to, double rate) {
        Fuel fuel = body.fuel();
        double rest = body.restHeat();
        double food = fuel.fromFood(rate, rest, gut) * (to - from);
        store = Math.max(0.0, store - fuel.fromStore(rate, rest, gut, store) * (to - from));
        gut = Math.max(0.0, gut - food);
    }

    /** Takes the state over an interval, look by look: what sweat and water do is held constant in each. */
    private abstract class Integrator {

        void advance(double from, double to, int steps) {
            double longest = net.longestLook(from, to, state, settings.settlingBoundary());
            int looks = Math.max(1, (int) Math.ceil((to - from) / longest - TINY));
            double length = (to - from) / looks;
            int each = Math.max(1, (int) Math.ceil((double) steps / looks - TINY));
            for (int look = 0; look < looks; look++) {
                double begin = from + look * length;
                net.relinearise(begin + 0.5 * length, state);
                net.moveWater(begin, length, state);
                integrate(begin, length, each);
            }
        }

        abstract void integrate(double from, double length, int steps);
    }

    private final class Working extends Integrator {
        private final WorkingStep step = new WorkingStep(net);

        @Override
        void integrate(double from, double length, int steps) {
            double h = length / steps;
            step.prepare(h);
            step.clear();
            for (int i = 0; i < steps; i++) {
                step.advance(from + i * h, h, state);
            }
            net.book(length, step.integral, step.made, books);
        }
    }

    /** The same right-hand side, the surface exchange taken afresh at every stage, the books as extra rows of the state. */
    private final class Reference extends Integrator implements OrdinaryDifferentialEquation {
        private final int ways = books.way.length;
        private final int parts = books.part.length;
        private final double[] rate = new double[net.size];
        private final DormandPrince54Integrator integrator =
                new DormandPrince54Integrator(1e-9, 300.0, settings.tolerance(), settings.tolerance());

        @Override
        public int getDimension() {
            return net.size + 1 + ways + parts;
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            net.relinearise(time, y);
            net.rates(time, y, rate);
            double[] derivative = new double[getDimension()];
            for (int i = 0; i < net.nodes; i++) {
                derivative[i] = rate[i] / net.capacity[i];
            }
            System.arraycopy(rate, net.nodes, derivative, net.nodes, net.size - net.nodes);
            Network.Books flow = new Network.Books();
            net.book(1.0, y, net.control.made, flow);
            derivative[net.size] = flow.made;
            System.arraycopy(flow.way, 0, derivative, net.size + 1, ways);
            System.arraycopy(flow.part, 0, derivative, net.size + 1 + ways, parts);
            return derivative;
        }

        @Override
        void integrate(double from, double length, int steps) {
            double[] y = Arrays.copyOf(state, getDimension());
            // books are integrated from zero over each stretch, so that the tolerance bites on them
            ODEStateAndDerivative end = integrator.integrate(this, new ODEState(from, y), from + length);
            double[] at = end.getPrimaryState();
            System.arraycopy(at, 0, state, 0, net.size);
            books.made += at[net.size];
            for (int i = 0; i < ways; i++) {
                books.way[i] += at[net.size + 1 + i];
            }
            for (int i = 0; i < parts; i++) {
                books.part[i] += at[net.size + 1 + ways + i];
            }
        }
    }
}
