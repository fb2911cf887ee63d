package longnight.night;

import java.util.ArrayList;
import java.util.List;
import longnight.body.Body;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.clothing.PatchStack;
import longnight.clothing.Stacks;
import longnight.outdoors.OutdoorState;
import org.jspecify.annotations.Nullable;

/**
 * Runs nights. A scenario is compiled once; every run after that starts from the same compiled model, so the same question
 * gives the same digits whatever else runs beside it.
 */
public final class NightEngine {

    private final Scenario scenario;
    private final ModelChoice choice;
    private final Body body;
    private final List<PatchStack> stacks;
    private final double staticTotal;

    private NightEngine(Scenario scenario, ModelChoice choice) {
        this.scenario = scenario;
        this.choice = choice;
        body = Body.of(scenario.person(), choice.body(), choice.options());
        stacks = Stacks.compile(scenario.outfit(), scenario.plan().posture(), body.segmentAreas(), choice.clothing());
        staticTotal = Stacks.staticTotal(stacks);
    }

    /** Compiles a scenario with a given model. */
    public static NightEngine compile(Scenario scenario, ModelChoice choice) {
        return new NightEngine(scenario, choice);
    }

    /** Compiles and runs a scenario with the nominal model. */
    public static NightResult run(Scenario scenario, NumericalSettings settings) {
        return compile(scenario, ModelChoice.nominal()).run(settings);
    }

    /** Runs the compiled scenario. */
    public NightResult run(NumericalSettings settings) {
        if (!scenario.limits().isEmpty()) {
            return outside();
        }
        Runner runner = start(settings, null);
        double[] dusk = runner.state.clone();
        runner.run();
        return answer(runner, dusk);
    }

    /** A network at dusk, ready to run; for tests that look inside. */
    Runner start(NumericalSettings settings, Network.@Nullable Films films) {
        return new Runner(network(settings.water(), films), settings);
    }

    Network network(boolean water, Network.@Nullable Films films) {
        return new Network(
                body,
                stacks,
                scenario.surroundings(),
                scenario.plan(),
                Iso11079.basicFromTotal(staticTotal),
                choice.clothing(),
                water,
                films);
    }

    /** The question that this engine answers. */
    public Scenario scenario() {
        return scenario;
    }

    /** The compiled body. */
    public Body body() {
        return body;
    }

    /** The compiled clothing. */
    public List<PatchStack> stacks() {
        return stacks;
    }

    private NightResult answer(Runner runner, double[] dusk) {
        Network net = runner.network();
        Trace trace = runner.diary.trace();
        Ledger ledger = Auditor.audit(net, dusk, runner.state, runner.books, runner.endTime);
        Verdict verdict = VerdictRule.judge(trace, net, runner.stopped);
        int last = trace.time().length - 1;
        int worst = 0;
        int hardest = -1;
        for (int i = 0; i <= last; i++) {
            if (trace.coreHeatDeficit()[i] > trace.coreHeatDeficit()[worst]) {
                worst = i;
            }
            if (!Double.isNaN(trace.demand()[i]) && (hardest < 0 || trace.demand()[i] > trace.demand()[hardest])) {
                hardest = i;
            }
        }
        double debt = 0;
        double[] capacity = body.capacities();
        double[] neutral = body.neutralState();
        for (int i = 0; i < Body.NODES; i++) {
            debt += capacity[i] * (neutral[i] - runner.state[i]);
        }
        return new NightResult(
                scenario,
                verdict,
                body.restHeat(),
                body.bodyArea(),
                hardest < 0 ? Double.NaN : trace.demand()[hardest],
                hardest < 0 ? Double.NaN : trace.time()[hardest],
                trace.shortfall()[last],
                trace.coreHeatDeficit()[last],
                trace.coreHeatDeficit()[worst],
                trace.time()[worst],
                debt,
                body.peakHeat(),
                kitMass(),
                Iso11079.basicFromTotal(staticTotal),
                runner.diary.rows(),
                trace,
                ledger,
                scenario.guesses(),
                cautions(verdict),
                secondOpinion(),
                runner.stopped);
    }

    private NightResult outside() {
        double[] none = new double[0];
        Verdict verdict = new Verdict(
                Verdict.Outcome.OUTSIDE_THE_MODEL, Double.NaN, List.of(), List.of(), scenario.limits(), false);
        return new NightResult(
                scenario,
                verdict,
                body.restHeat(),
                body.bodyArea(),
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                body.peakHeat(),
                kitMass(),
                Iso11079.basicFromTotal(staticTotal),
                List.of(),
                new Trace(none, none, none, none, none, none, none, none, none, none, none, none, none),
                new Ledger(
                        0,
                        0,
                        new double[Way.values().length],
                        new double[body.segmentAreas().length],
                        0,
                        0,
                        0,
                        0,
                        0,
                        0,
                        0,
                        0),
                scenario.guesses(),
                cautions(verdict),
                null,
                Double.NaN);
    }

    private double kitMass() {
        if (!(scenario.outfit() instanceof Outfit.Kit kit)) {
            return Double.NaN;
        }
        double mass = 0;
        for (Garment garment : kit.pieces()) {
            mass += garment.spec().mass();
        }
        for (Pad pad : kit.pads()) {
            mass += pad.mass();
        }
        return mass;
    }

    private List<Caution> cautions(Verdict verdict) {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(Caution.PLANNING_AID);
        if (verdict.outcome() == Verdict.Outcome.OUTSIDE_THE_MODEL) {
            cautions.add(Caution.OUT_OF_RANGE);
        }
        if (verdict.extrapolated()) {
            cautions.add(Caution.EXTRAPOLATION);
        }
        for (Verdict.AtRisk risk : verdict.atRisk()) {
            Caution caution = risk.part() == Verdict.Part.FACE ? Caution.FACE : Caution.EXTREMITIES;
            if (!cautions.contains(caution)) {
                cautions.add(caution);
            }
        }
        cautions.add(Caution.DRY_ONLY);
        if (precipitationFalls()) {
            cautions.add(Caution.PRECIPITATION_IGNORED);
        }
        if (scenario.person().bodyFat() > 35) {
            cautions.add(Caution.HIGH_BODY_FAT);
        }
        if (scenario.person().age() > 65) {
            cautions.add(Caution.OLDER_PERSON);
        }
        for (Caution caution : scenario.cautions()) {
            if (!cautions.contains(caution)) {
                cautions.add(caution);
            }
        }
        return List.copyOf(cautions);
    }

    private boolean precipitationFalls() {
        OutdoorState state = new OutdoorState();
        for (double t = 0; t < scenario.plan().duration(); t += 900) {
            scenario.surroundings().at(t, state);
            if (state.precipitation > 0) {
                return true;
            }
        }
        return false;
    }

    /** From the night's mean weather at the body and the same kit. */
    private @Nullable SecondOpinion secondOpinion() {
        OutdoorState state = new OutdoorState();
        double air = 0;
        double radiant = 0;
        double wind = 0;
        double vapour = 0;
        int n = 0;
        double[] area = body.segmentAreas();
        for (double t = 450; t < scenario.plan().duration(); t += 900, n++) {
            scenario.surroundings().at(t, state);
            air += state.airCelsius;
            radiant += state.radiantCelsius;
            vapour += state.vapourPressure;
            for (int s = 0; s < area.length; s++) {
                wind += area[s] / body.bodyArea() * state.windAt[s];
            }
        }
        air /= n;
        radiant /= n;
        wind /= n;
        vapour /= n;
        double heat = body.restHeat() / body.bodyArea();
        double humidity = Math.min(1.0, vapour / (1000.0 * Iso11079.saturation(air)));
        double speed = Math.max(0.4, wind);
        Iso11079.Conditions at = new Iso11079.Conditions(heat, air, radiant, speed, 0.0, humidity);
        double basic = Iso11079.basicFromTotal(staticTotal);
        double available = Iso11079.resultant(basic, Stacks.airPermeability(stacks), speed, 0.0);
        return new SecondOpinion(
                heat,
                air,
                wind,
                Iso11079.required(Iso11079.Criterion.MINIMAL, at),
                Iso11079.required(Iso11079.Criterion.NEUTRAL, at),
                available,
                Iso11079.exposure(Iso11079.Criterion.MINIMAL, at, available),
                Iso11079.exposure(Iso11079.Criterion.NEUTRAL, at, available),
                at.insideRange() && basic > 0.078);
    }
}
