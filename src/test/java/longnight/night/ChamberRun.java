package longnight.night;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longnight.body.Body;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.clothing.Stacks;
import longnight.clothing.law.WholeBody;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.outdoors.Chamber;
import longnight.outdoors.Surroundings;
import org.jspecify.annotations.Nullable;

/**
 * One exposure in a climatic chamber, minute by minute: the engine's own network and working step, 30 s steps, surface
 * exchange taken afresh every minute. Index 0 of every series is the start; powers are means over the minute that ends there.
 */
final class ChamberRun {

    /** Who: mass [kg], height [m], body fat [percent], age [years]; male, sex matters only for resting heat. */
    record Man(double mass, double height, double fat, double age) {

        /** The build assumed where the source gives none. */
        static final Man ORDINARY = new Man(72, 1.76, 15, 23);

        /** Mass and fat moved; fat held within what a person of the model may have (4 to 60 percent). */
        Man moved(double kilograms, double percent) {
            return new Man(mass + kilograms, height, Math.min(60, Math.max(4, fat + percent)), age);
        }

        Person person() {
            return new Person("subject", Person.Sex.MALE, age, height, mass, fat, 45, 1);
        }
    }

    /**
     * A man as the model takes him.
     *
     * @param model constants and forms of the model
     * @param heat  total heat made, held by the laboratory [W]; NaN for the model's own
     */
    record Subject(Man man, ModelChoice model, double heat) {

        double mass() {
            return man.mass();
        }

        double fat() {
            return man.fat();
        }

        /** The same man making the heat that the source measured. */
        Subject making(double watts) {
            return new Subject(man, model, watts);
        }
    }

    /** Air and walls at one temperature [degC] for a time [min]. */
    record Phase(double air, double minutes) {}

    /**
     * How a person is dressed.
     *
     * @param outfit resistances by zone
     * @param films  surface coefficients held at given values; null when the chamber's air makes them
     */
    record Dress(Outfit outfit, Network.@Nullable Films films) {

        /** Index of moisture permeability of ordinary cloth [1], ISO 9920:2007 (from memory). */
        private static final double PERMEABILITY = 0.38;
        /** The film inside a laboratory total is that of ISO 11079:2007; its radiant part 4.5 W/(m2 K), customary, no source. */
        private static final double RADIATION = 4.5;

        private static final double CONVECTION = 1 / WholeBody.STILL_AIR - RADIATION;

        static Dress nude() {
            return new Dress(new Outfit.Given(Map.of(), PERMEABILITY), null);
        }

        /** The same clo of the whole body, but all of it on pelvis and thighs. */
        static Dress shorts(double clo) {
            // area shares of the 65-node table (Tanabe et al. 2002)
            double r = clo * WholeBody.CLO / ((0.221 + 0.418) / 1.869);
            return new Dress(new Outfit.Given(Map.of(Zone.PELVIS, r, Zone.THIGH, r), PERMEABILITY), null);
        }

        /** Intrinsic clo of the whole body, spread evenly: the sources do not say where their shorts end. */
        static Dress even(double clo) {
            return new Dress(everywhere(clo * WholeBody.CLO), null);
        }

        /** A total resistance with its surface film [m2 K/W], the same everywhere. */
        static Dress total(double resistance) {
            double low = 0;
            double high = resistance;
            for (int i = 0; i < 60; i++) {
                double r = 0.5 * (low + high);
                if (WholeBody.total(r) < resistance) {
                    low = r;
                } else {
                    high = r;
                }
            }
            double[] convection = new double[BodySegment.COUNT];
            double[] radiation = new double[BodySegment.COUNT];
            Arrays.fill(convection, CONVECTION);
            Arrays.fill(radiation, RADIATION);
            return new Dress(everywhere(low), new Network.Films(convection, radiation));
        }

        private static Outfit everywhere(double r) {
            Map<Zone, Double> on = new EnumMap<>(Zone.class);
            for (Zone zone : Zone.values()) {
                on.put(zone, r);
            }
            return new Outfit.Given(on, PERMEABILITY);
        }
    }

    /** Local clock at which the night studies go to bed [h]. */
    static final double BEDTIME = 22.5;

    final Body body;
    final int minutes;
    final double[] made;
    final double[] lost;
    final double[] skin;
    final double[] trunk;
    final double[] limbs;
    final double[] foot;
    final double[] coldestOther;
    final double[] rectal;
    final double[] blood;
    final double[] stored;
    final double[] sleep;
    /** State at the end. */
    final double[] state;

    final Network net;

    /** Awake, the daily rhythm stopped. */
    static ChamberRun day(Subject who, Dress dress, Posture posture, double wind, double humidity, Phase... phases) {
        return new ChamberRun(network(who, dress, posture, false, chamber(wind, humidity, phases)));
    }

    /** The same with the nominal model. */
    static ChamberRun day(Man man, Dress dress, Posture posture, double wind, double humidity, Phase... phases) {
        return day(new Subject(man, ModelChoice.nominal(), Double.NaN), dress, posture, wind, humidity, phases);
    }

    /** From bedtime on, lying, free to sleep, the daily rhythm running. */
    static ChamberRun night(Subject who, Dress dress, double wind, double humidity, Phase... phases) {
        return new ChamberRun(network(who, dress, Posture.LYING_SUPINE, true, chamber(wind, humidity, phases)));
    }

    /** Awake and standing, from the neutral state on, the daily rhythm stopped. */
    static ChamberRun outdoors(Subject who, Dress dress, double wind, double humidity, Phase... phases) {
        return new ChamberRun(network(who, dress, Posture.STANDING, false, chamber(wind, humidity, phases)));
    }

    private static Network network(
            Subject who, Dress dress, Posture posture, boolean night, Surroundings surroundings) {
        ModelChoice choice = who.model;
        Body body = Body.of(who.man.person(), choice.body(), choice.options());
        NightPlan plan = NightPlan.still(
                BEDTIME * 3600, surroundings.lastTime(), posture, night, night, who.heat / body.bodyArea());
        return new Network(
                body,
                Stacks.compile(dress.outfit, posture, body.segmentAreas(), choice.clothing()),
                surroundings,
                plan,
                plan.firstOfNight(),
                0,
                choice.clothing(),
                false,
                dress.films);
    }

    private static Chamber chamber(double wind, double humidity, Phase... phases) {
        List<Chamber.Setting> settings = new ArrayList<>();
        double time = 0;
        for (Phase phase : phases) {
            settings.add(new Chamber.Setting(time, phase.air, Double.NaN, wind, humidity));
            time += 60 * phase.minutes;
        }
        return Chamber.stepwise(settings, time, 101325, null);
    }

    private ChamberRun(Network network) {
        net = network;
        body = net.body;
        minutes = (int) Math.round(net.plan.duration() / 60);
        made = new double[minutes + 1];
        lost = new double[minutes + 1];
        skin = new double[minutes + 1];
        trunk = new double[minutes + 1];
        limbs = new double[minutes + 1];
        foot = new double[minutes + 1];
        coldestOther = new double[minutes + 1];
        rectal = new double[minutes + 1];
        blood = new double[minutes + 1];
        stored = new double[minutes + 1];
        sleep = new double[minutes + 1];
        state = net.start();
        WorkingStep step = new WorkingStep(net);
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
        double[] area = body.segmentAreas();
        double[] capacity = body.capacities();
        double trunkArea = 0;
        double limbArea = 0;
        coldestOther[m] = Double.POSITIVE_INFINITY;
        for (BodySegment segment : BodySegment.values()) {
            int s = segment.ordinal();
            double t = state[Body.SKIN + s];
            skin[m] += area[s] * t / body.bodyArea();
            if (segment.isTrunk()) {
                trunk[m] += area[s] * t;
                trunkArea += area[s];
            } else if (segment.isLimb()) {
                limbs[m] += area[s] * t;
                limbArea += area[s];
            }
            if (segment != BodySegment.FOOT) {
                coldestOther[m] = Math.min(coldestOther[m], t);
            }
        }
        trunk[m] /= trunkArea;
        limbs[m] /= limbArea;
        foot[m] = state[Body.SKIN + BodySegment.FOOT.ordinal()];
        rectal[m] = body.rectal(state);
        blood[m] = state[Body.BLOOD];
        sleep[m] = state[net.sleep];
        for (int i = 0; i < Body.NODES; i++) {
            stored[m] += capacity[i] * state[i];
        }
    }

    /** Mean over the minutes after {@code from} up to {@code to}. */
    static double mean(double[] series, int from, int to) {
        double sum = 0;
        for (int m = from + 1; m <= to; m++) {
            sum += series[m];
        }
        return sum / (to - from);
    }

    /** First minute after {@code from} at which a series exceeds a level, between minutes by a straight line; NaN if never. */
    static double exceeds(double[] series, double level, int from) {
        for (int m = from + 1; m < series.length; m++) {
            if (series[m] > level) {
                double before = m == from + 1 ? Math.min(level, series[from]) : series[m - 1];
                return m - from - (series[m] - level) / (series[m] - before);
            }
        }
        return Double.NaN;
    }

    /** Largest value after {@code from}. */
    static double peak(double[] series, int from) {
        double most = Double.NEGATIVE_INFINITY;
        for (int m = from + 1; m < series.length; m++) {
            most = Math.max(most, series[m]);
        }
        return most;
    }

    /** Minute of the smallest value. */
    static int lowest(double[] series) {
        int at = 0;
        for (int m = 1; m < series.length; m++) {
            at = series[m] < series[at] ? m : at;
        }
        return at;
    }
}
