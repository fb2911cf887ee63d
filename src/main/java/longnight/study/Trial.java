package longnight.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import longnight.body.Body;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import longnight.night.Phase;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;

/** One person in one night, to be run in any clothes. */
final class Trial {

    private static final double DUSK = -1e-6;

    /** The window over which demand is taken [s]. */
    private static final double LEAST_NIGHT = 4 * 3600.0;

    /**
     * Steps of a bound: six times the usual ones, a divisor of the hour, or the window over which demand is taken is cut short
     * (numerical choice; tests look how much of the allowances it uses).
     */
    private static final NumericalSettings LONG = new NumericalSettings(360, 180, 1800, 360, false, false, 1e-6);

    private static final NumericalSettings LONG_WITH_WATER =
            new NumericalSettings(360, 180, 1800, 360, true, false, 1e-6);

    /** How often the weather is looked at [s]. */
    private static final double LOOK = 300;

    private static final double[] NO_TIMES = {};

    private final Scenario scenario;
    private final Map<Phase, Wearing> wearing = new HashMap<>();
    private final Body body;
    private final double[] areas;
    private final boolean calm;

    /** Up to when a night is run for a bound [s]; the demand of its first part is never above that of the whole. */
    private double enough;

    Trial(Scenario scenario) {
        this.scenario = scenario;
        if (!(scenario.outfit() instanceof Outfit.Kit night)) {
            throw new IllegalArgumentException("a night in laboratory clothing has no kit to choose");
        }
        for (Phase phase : scenario.plan().phases()) {
            wearing.put(phase, phase.outfit() instanceof Outfit.Kit kit ? Wearing.of(night, kit) : Wearing.ALL);
        }
        enough = scenario.plan().duration();
        ModelChoice nominal = ModelChoice.nominal();
        body = Body.of(scenario.person(), nominal.body(), nominal.options());
        areas = body.segmentAreas();
        calm = lookForCalm();
    }

    private NightEngine engine(Scenario dressed) {
        return NightEngine.compile(dressed, ModelChoice.nominal(), body);
    }

    /** How a phase dresses, and whether it lies before dusk. */
    record Stage(Phase phase, Wearing wearing, boolean before) {}

    Scenario scenario() {
        return scenario;
    }

    double[] areas() {
        return areas.clone();
    }

    List<Stage> stages() {
        List<Stage> stages = new ArrayList<>();
        for (Phase phase : scenario.plan().phases()) {
            stages.add(new Stage(phase, wearing.getOrDefault(phase, Wearing.ALL), phase.from() < DUSK));
        }
        return stages;
    }

    /** The night in a kit from the wardrobe, as the plan would wear it. */
    Scenario in(Outfit.Kit kit) {
        return dressed(kit, stage -> stage.wearing().of(kit), damp(kit));
    }

    /** The night in clothes made for each phase. */
    Scenario in(Function<Stage, Outfit> clothes) {
        List<Stage> stages = stages();
        Outfit night = stages.stream()
                .filter(stage -> !stage.before())
                .map(clothes)
                .findFirst()
                .orElseThrow();
        return dressed(night, clothes, Map.of());
    }

    NightResult run(Outfit.Kit kit, NumericalSettings settings) {
        return engine(in(kit)).run(settings);
    }

    /**
     * Whether long steps follow its water well enough: nobody arrives hot or damp, nothing falls, nobody exercises. Sweat, rain
     * and water that runs want short steps.
     */
    boolean isCalm() {
        return calm;
    }

    private boolean lookForCalm() {
        NightPlan plan = scenario.plan();
        OutdoorState state = new OutdoorState();
        boolean still = !beginsBefore()
                && plan.damp().isEmpty()
                && plan.phases().stream().allMatch(phase -> phase.drillShare() == 0);
        for (double t = 0; t <= plan.duration() && still; t += LOOK) {
            scenario.surroundings().at(t, state);
            still = !(state.precipitation > 0) && !(state.supercooledCloud > 0);
        }
        return still;
    }

    /** A kit's own night in long steps. */
    Outline inLongSteps(Outfit.Kit kit, boolean water) {
        return engine(in(kit)).outline(water ? LONG_WITH_WATER : LONG, NO_TIMES);
    }

    /** Runs a kit dry and learns when its demand is largest; bounds will go no further. */
    double scout(Outfit.Kit kit) {
        NightResult night = run(kit, NumericalSettings.dry());
        if (night.demandTime() >= LEAST_NIGHT) {
            enough = Math.min(enough, Math.max(LEAST_NIGHT, night.demandTime()));
        }
        return night.demand();
    }

    /** Demand of a kit's own dry night, or of its first part. */
    double demandDry(Outfit.Kit kit) {
        return demandDry(in(kit));
    }

    /** Demand of a dry night in clothes made for each phase, or of its first part. */
    double demandDry(Function<Stage, Outfit> clothes) {
        return demandDry(in(clothes));
    }

    /** Core-heat deficit at the end of a whole dry night [J]; NaN when it stopped early. */
    double deficitDry(Scenario night) {
        Outline result = engine(night).outline(LONG, NO_TIMES);
        return Double.isNaN(result.stopped()) ? result.deficitDawn() : Double.NaN;
    }

    /** Whether the plan begins before dusk: then clothes decide how warm the body comes into the night. */
    boolean beginsBefore() {
        return scenario.plan().start() < DUSK;
    }

    double demandDry(Scenario night) {
        Scenario first = enough < scenario.plan().duration() ? night.withPlan(upTo(night.plan(), enough)) : night;
        return engine(first).outline(LONG, NO_TIMES).demand();
    }

    private static NightPlan upTo(NightPlan plan, double end) {
        List<Phase> phases = new ArrayList<>();
        for (Phase phase : plan.phases()) {
            if (phase.from() < end - 1) {
                phases.add(phase.to() > end ? phase.during(phase.from(), end) : phase);
            }
        }
        return new NightPlan(
                plan.startOfDay(),
                end,
                plan.clockActive(),
                plan.imposedHeat(),
                phases,
                plan.intakes(),
                plan.heats(),
                plan.damp(),
                plan.fuel());
    }

    private Scenario dressed(Outfit night, Function<Stage, Outfit> clothes, Map<String, Double> damp) {
        NightPlan plan = scenario.plan();
        List<Phase> phases = new ArrayList<>();
        for (Stage stage : stages()) {
            phases.add(stage.phase().wearing(clothes.apply(stage)));
        }
        return scenario.withOutfit("", night)
                .withPlan(new NightPlan(
                        plan.startOfDay(),
                        plan.duration(),
                        plan.clockActive(),
                        plan.imposedHeat(),
                        phases,
                        plan.intakes(),
                        plan.heats(),
                        damp,
                        plan.fuel()));
    }

    /** What the plan says is damp, as far as the kit has it. */
    private Map<String, Double> damp(Outfit.Kit kit) {
        Set<String> ids = new java.util.HashSet<>();
        for (Garment piece : kit.pieces()) {
            ids.add(piece.spec().id());
        }
        Map<String, Double> damp = new HashMap<>(scenario.plan().damp());
        damp.keySet().retainAll(ids);
        return damp;
    }
}
