package longnight.night;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import longnight.body.Body;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.clothing.PatchStack;
import longnight.clothing.Stacks;
import longnight.figure.Posture;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.Surroundings;
import org.jspecify.annotations.Nullable;

/**
 * Runs nights. A scenario is compiled once; every run after that starts from the same compiled model, so the same question
 * gives the same digits whatever else runs beside it.
 */
public final class NightEngine {

    /** Water from outside above which the caution about wetting stands [kg]. */
    private static final double WETTING = 0.02;

    /** How often a night that breaks down is run again in steps a quarter as long. */
    private static final int MOST_TRIES = 3;

    private final Scenario scenario;
    private final ModelChoice choice;
    private final Surroundings surroundings;
    private final Body body;
    private final Map<Dress, List<PatchStack>> dressed;
    private final List<PatchStack> stacks;
    /** What is worn in the longest phase of the night: that is what the kit's resistance is given for. */
    private final List<PatchStack> rests;

    private final double staticTotal;

    private NightEngine(Scenario scenario, ModelChoice choice, Body body) {
        this.scenario = scenario;
        this.choice = choice;
        surroundings = scenario.surroundings().with(choice.outdoors());
        this.body = body;
        dressed = new HashMap<>();
        for (Phase phase : scenario.plan().stretches()) {
            dressed.computeIfAbsent(dress(phase), key -> compileStacks(phase));
        }
        Phase night = scenario.plan().firstOfNight();
        stacks = stacksOf(night);
        Phase longest = night;
        for (Phase phase : scenario.plan().phases()) {
            if (phase.from() >= 0 && phase.to() - phase.from() > longest.to() - longest.from()) {
                longest = phase;
            }
        }
        rests = stacksOf(longest);
        staticTotal = Stacks.staticTotal(rests);
    }

    private NightEngine(NightEngine compiled, Surroundings surroundings) {
        scenario = compiled.scenario.withSurroundings(surroundings);
        choice = compiled.choice;
        this.surroundings = surroundings.with(choice.outdoors());
        body = compiled.body;
        dressed = compiled.dressed;
        stacks = compiled.stacks;
        rests = compiled.rests;
        staticTotal = compiled.staticTotal;
    }

    /**
     * The same person and clothes, compiled already, in other weather. The answers are those of a scenario compiled anew.
     *
     * @param surroundings on ground of some kind where the engine's own are, without where they are not
     */
    public NightEngine in(Surroundings surroundings) {
        if ((surroundings.ground() == null) != (scenario.surroundings().ground() == null)) {
            throw new IllegalArgumentException("clothes compiled for a person on the ground do not serve in mid air");
        }
        return new NightEngine(this, surroundings);
    }

    /** Compiles a scenario with a given model. */
    public static NightEngine compile(Scenario scenario, ModelChoice choice) {
        return compile(scenario, choice, Body.of(scenario.person(), choice.body(), choice.options()));
    }

    /**
     * The same with a body that was made before, for many kits of one person.
     *
     * @param body of the scenario's person under that choice
     */
    public static NightEngine compile(Scenario scenario, ModelChoice choice, Body body) {
        return new NightEngine(scenario, choice, body);
    }

    /** Compiles and runs a scenario with the nominal model; where water plays a part, also says what it cost. */
    public static NightResult run(Scenario scenario, NumericalSettings settings) {
        NightEngine engine = compile(scenario, ModelChoice.nominal());
        NightResult result = engine.weighDrill(engine.run(settings), settings);
        WaterReport water = result.water();
        if (water == null || !engine.isWetted(water)) {
            return result;
        }
        NightResult without = engine.run(settings.withoutWater());
        if (!Double.isNaN(result.stopped()) || !Double.isNaN(without.stopped())) {
            return result; // bills over different times cannot be compared
        }
        return result.with(water.costing(result.shortfallHeat() - without.shortfallHeat()), result.day());
    }

    /** Runs the same night without its warming drill and says what the drill was worth. */
    private NightResult weighDrill(NightResult with, NumericalSettings settings) {
        NightPlan plan = scenario.plan();
        DayReport day = with.day();
        if (day == null || plan.phases().stream().noneMatch(phase -> phase.drillShare() > 0)) {
            return with;
        }
        NightPlan still =
                plan.withPhases(plan.phases().stream().map(Phase::withoutDrill).toList());
        NightResult without = compile(scenario.withPlan(still), choice).run(settings);
        Ledger a = with.ledger();
        Ledger b = without.ledger();
        if (!Double.isNaN(with.stopped()) || !Double.isNaN(without.stopped())) {
            return with;
        }
        double kept = a.storedCore() + a.storedShell() - b.storedCore() - b.storedShell();
        return with.with(
                with.water(),
                new DayReport(
                        day.sweatingAfter(),
                        day.coolingAfter(),
                        a.made() - b.made(),
                        a.made() - b.made() - kept,
                        kept));
    }

    /** Whether water other than insensible vapour plays a part: rain, sweat, a damp start. */
    private boolean isWetted(WaterReport water) {
        boolean liquid = water.fromOutside() > 0 || water.drained() > 0;
        for (WaterReport.Layer layer : water.layers()) {
            liquid |= layer.liquidAtDusk() + layer.iceAtDusk() > 1e-4;
        }
        return liquid;
    }

    /** What is worn in which posture: stretches that share both share their patches. */
    private record Dress(Outfit outfit, Posture posture) {}

    private Dress dress(Phase phase) {
        return new Dress(phase.outfit() == null ? scenario.outfit() : phase.outfit(), phase.posture());
    }

    private List<PatchStack> stacksOf(Phase phase) {
        return Objects.requireNonNull(dressed.get(dress(phase)));
    }

    private List<PatchStack> compileStacks(Phase phase) {
        return Stacks.compile(
                dress(phase).outfit(),
                phase.posture(),
                body.segmentAreas(),
                choice.clothing(),
                surroundings.ground() != null);
    }

    /** Runs the compiled scenario. */
    public NightResult run(NumericalSettings settings) {
        if (!scenario.limits().isEmpty()) {
            return outside();
        }
        Runner runner = finished(settings, false);
        return answer(runner, settings);
    }

    /**
     * Runs the compiled scenario for its outline only, which takes less than the whole answer.
     *
     * @param times moments at which the course is wanted [s from dusk], rising
     * @throws IllegalStateException when the scenario lies outside the model's range
     */
    public Outline outline(NumericalSettings settings, double[] times) {
        if (!scenario.limits().isEmpty()) {
            throw new IllegalStateException("outside the model: " + scenario.limits());
        }
        Runner runner = finished(settings, true);
        Trace trace = runner.diary.trace();
        return Outline.of(
                trace,
                body.restHeat(),
                VerdictRule.judge(trace, runner.network(), runner.stopped),
                settings.water() ? runner.closet.held() : Double.NaN,
                runner.stopped,
                times);
    }

    /** Some people and models are stiffer than the usual; should the steps be too long, the night is run again in shorter ones. */
    private Runner finished(NumericalSettings settings, boolean brief) {
        NumericalSettings shorter = settings;
        for (int tries = 0; ; tries++) {
            try {
                Runner runner = start(shorter, brief);
                runner.run();
                return runner;
            } catch (ArithmeticException tooLong) {
                if (tries == MOST_TRIES) {
                    throw tooLong;
                }
                shorter = shorter.divided(4);
            }
        }
    }

    /** A runner before the first phase; for tests that look inside. */
    Runner start(NumericalSettings settings) {
        return start(settings, false);
    }

    private Runner start(NumericalSettings settings, boolean brief) {
        return new Runner(body, scenario.plan(), phase -> network(phase, settings.water()), choice, settings, brief);
    }

    Network network(Phase phase, boolean water) {
        List<PatchStack> worn = stacksOf(phase);
        return new Network(
                body,
                worn,
                surroundings,
                scenario.plan(),
                phase,
                Iso11079.basicFromTotal(Stacks.staticTotal(worn)),
                choice.clothing(),
                water,
                null);
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

    private NightResult answer(Runner runner, NumericalSettings settings) {
        Network net = runner.network();
        Trace trace = runner.diary.trace();
        Ledger ledger = Auditor.audit(body, runner);
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
                cautions(verdict, runner, settings.water()),
                secondOpinion(),
                settings.water() ? WaterBooks.report(runner, List.copyOf(worn().keySet()), runner.diary) : null,
                fuelReport(runner),
                new DayReport(runner.sweatingAfter, runner.coolingAfter, Double.NaN, Double.NaN, Double.NaN),
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
                cautions(verdict, null, true),
                null,
                null,
                null,
                null,
                Double.NaN);
    }

    /** Everything worn in any phase, in dressing order of the night and then of other phases. */
    private Map<String, Garment> worn() {
        Map<String, Garment> pieces = new LinkedHashMap<>();
        addPieces(scenario.outfit(), pieces);
        for (Phase phase : scenario.plan().phases()) {
            if (phase.outfit() != null) {
                addPieces(phase.outfit(), pieces);
            }
        }
        return pieces;
    }

    private static void addPieces(Outfit outfit, Map<String, Garment> pieces) {
        if (outfit instanceof Outfit.Kit kit) {
            kit.pieces().forEach(garment -> pieces.putIfAbsent(garment.spec().id(), garment));
        }
    }

    private FuelReport fuelReport(Runner runner) {
        double rest = body.restHeat() * runner.endTime;
        double[] flows = runner.flows;
        return new FuelReport(
                runner.books.made,
                runner.books.made - rest,
                runner.eaten,
                runner.storeAtDusk,
                runner.store / body.fuel().full(),
                runner.lowestPeak,
                flows[0] + flows[4],
                runner.sweatBefore);
    }

    private double kitMass() {
        if (!(scenario.outfit() instanceof Outfit.Kit kit)) {
            return Double.NaN;
        }
        double mass = 0;
        for (Garment garment : worn().values()) {
            mass += garment.spec().mass();
        }
        for (Pad pad : kit.pads()) {
            mass += pad.mass();
        }
        return mass;
    }

    private List<Caution> cautions(Verdict verdict, @Nullable Runner runner, boolean water) {
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
        if (!water) {
            cautions.add(Caution.DRY_ONLY);
            if (precipitationFalls()) {
                cautions.add(Caution.PRECIPITATION_IGNORED);
            }
        } else if (runner != null && runner.flows[1] > WETTING) {
            cautions.add(Caution.WETTING);
        }
        if (runner != null && runner.lowestPeak < 1) {
            cautions.add(Caution.FUEL_LOW);
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
            surroundings.at(t, state);
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
            surroundings.at(t, state);
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
        double available = Iso11079.resultant(basic, Stacks.airPermeability(rests), speed, 0.0);
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
