package longnight.night;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import longnight.assumption.ParameterSet;
import longnight.body.Body;
import longnight.body.BodyOptions;
import longnight.body.BodyParameter;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.outdoors.Chamber;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The reference man, nude in still air at 50 % humidity, against a second, independent calculation of the same equations:
 * basal heat of the table, first-form vessels, law B ungated by the core (full skin share), cap 400 W, no clock, no sleep.
 * The rows test arithmetic, not physiology. Tolerances 0.05 K core, 0.1 K skin, 2 W: rounding of the printed rows.
 */
class NudeTrialRunTest {

    private static final ParameterSet<BodyParameter> FIRST_FORM = ParameterSet.nominal(BodyParameter.class)
            .with(BodyParameter.REST_SITTING, 1.0)
            .with(BodyParameter.VESSEL_GAIN, 11.5)
            .with(BodyParameter.VESSEL_CORE_WEIGHT, 1.0)
            .with(BodyParameter.SKIN_FLOOR, 0.15)
            .with(BodyParameter.LIMB_DEEP_FLOOR, 0.4)
            .with(BodyParameter.LIMB_SHIVER_FLOW, 1.0)
            .with(BodyParameter.LIMB_SKIN_CONSTRICTION, 1.0)
            .with(BodyParameter.THIGH_LINK, 0)
            .with(BodyParameter.RECTAL_MUSCLE, 0)
            .with(BodyParameter.NON_SHIVERING, 0)
            .with(BodyParameter.LAW_B_SKIN_SHARE, 1.0)
            .with(BodyParameter.LAW_B_GATE, 30.0);
    private static final BodyOptions OPTIONS =
            new BodyOptions(BodyOptions.Law.GATED, BodyOptions.Limbs.SKIN_DIVISOR, 83.554, 400.0 - 83.554);

    static Runner nude(double air, double hours, ParameterSet<BodyParameter> p, BodyOptions options) {
        Body body = Body.of(Person.reference(), p, options);
        return nude(body, air, hours);
    }

    static Runner nude(Body body, double air, double hours) {
        NightPlan plan = NightPlan.still(0, hours * 3600, Posture.STANDING, false, false, Double.NaN);
        Network net = new Network(
                body,
                longnight.clothing.Stacks.compile(
                        new Outfit.Given(Map.of(), 0.38),
                        Posture.STANDING,
                        body.segmentAreas(),
                        ParameterSet.nominal(longnight.clothing.ClothingParameter.class)),
                Chamber.stepwise(
                        List.of(new Chamber.Setting(0, air, Double.NaN, 0.1, 0.5)), hours * 3600, 101325, null),
                plan,
                plan.firstOfNight(),
                0,
                ParameterSet.nominal(longnight.clothing.ClothingParameter.class),
                false,
                new Network.Films(Body.stillConvection(), Body.stillRadiation()));
        Runner runner = new Runner(body, plan, phase -> net, ModelChoice.nominal(), NumericalSettings.dry());
        runner.run();
        return runner;
    }

    @ParameterizedTest(name = "{0} degC, {1} h")
    @CsvSource({
        // air, hours, blood change, rectal change, mean skin, heat, hand, foot, debt
        "18, 2, -0.49, -0.43, 28.3, 154, 24.8, 22.9, 232",
        "15, 2, -0.40, -0.38, 27.5, 194, 23.0, 20.7, 229",
        "10, 2, -0.38, -0.33, 25.9, 235, 20.1, 17.1, 256",
        "10, 4, -0.46, -0.44, 25.7, 243, 19.8, 15.8, 272",
        "5, 2, -0.64, -0.55, 24.1, 274, 17.0, 13.4, 323",
        "5, 4, -0.80, -0.78, 23.8, 288, 16.7, 11.8, 347",
        "0, 2, -0.98, -0.85, 22.3, 313, 14.0, 9.7, 396"
    })
    void coldRows(
            double air,
            double hours,
            double bloodChange,
            double rectalChange,
            double skin,
            double heat,
            double hand,
            double foot,
            double debt) {
        Runner run = nude(air, hours, FIRST_FORM, OPTIONS);
        Body body = run.network().body;
        double[] t = run.state;
        double[] neutral = body.neutralState();
        double now = 0;
        for (int i = 0; i < Body.NODES; i++) {
            now += body.capacities()[i] * (neutral[i] - t[i]);
        }
        System.out.printf(
                "%4.0f degC %1.0f h: blood %.3f rectal %.3f skin %.2f heat %.1f hand %.2f foot %.2f debt %.0f%n",
                air,
                hours,
                t[Body.BLOOD] - neutral[Body.BLOOD],
                body.rectal(t) - body.rectal(neutral),
                run.network().control.meanSkin,
                run.network().control.made,
                t[Body.SKIN + BodySegment.HAND.ordinal()],
                t[Body.SKIN + BodySegment.FOOT.ordinal()],
                now / 1000 / body.bodyArea());
        assertEquals(bloodChange, t[Body.BLOOD] - neutral[Body.BLOOD], 0.05, "blood");
        assertEquals(rectalChange, body.rectal(t) - body.rectal(neutral), 0.05, "rectal");
        assertEquals(skin, run.network().control.meanSkin, 0.1, "mean skin");
        assertEquals(heat, run.network().control.made, 2.0, "heat");
        assertEquals(hand, t[Body.SKIN + BodySegment.HAND.ordinal()], 0.15, "hand");
        assertEquals(foot, t[Body.SKIN + BodySegment.FOOT.ordinal()], 0.15, "foot");
        assertEquals(debt, now / 1000 / body.bodyArea(), 5, "debt");
    }

    @Test
    @DisplayName("neutral: 29.37 degC, blood 36.79, head 37.09, pelvis 37.21, skin 33.90; nothing moves in 12 h")
    void neutralStaysPut() {
        Body body = Body.of(Person.reference(), FIRST_FORM, OPTIONS, 29.37);
        double[] neutral = body.neutralState();
        assertEquals(36.79, neutral[Body.BLOOD], 0.02);
        assertEquals(37.09, neutral[Body.CORE], 0.02);
        assertEquals(37.21, neutral[Body.CORE + BodySegment.PELVIS.ordinal()], 0.02);
        Runner run = nude(body, 29.37, 12);
        double worst = 0;
        for (int i = 0; i < Body.NODES; i++) {
            worst = Math.max(worst, Math.abs(run.state[i] - neutral[i]));
        }
        assertEquals(33.90, run.network().control.meanSkin, 0.02);
        assertEquals(83.55, run.network().control.made, 0.01);
        assertEquals(0, worst, 0.01, "largest drift of any node in 12 h");
    }

    @Test
    @DisplayName("own neutral state with awake heat: operative near 29.0 degC, constant for 12 h")
    void recommendedNeutralStaysPut() {
        Body body = Body.of(Person.reference(), ParameterSet.nominal(BodyParameter.class), BodyOptions.nominal());
        assertEquals(29.0, body.neutralOperative(), 0.06);
        assertEquals(36.8, body.neutralState()[Body.BLOOD], 1e-6);
        Runner run = nude(body, body.neutralOperative(), 12);
        for (int i = 0; i < Body.NODES; i++) {
            assertEquals(body.neutralState()[i], run.state[i], 0.01, "node " + i);
        }
    }
}
