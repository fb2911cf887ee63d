package longnight.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import longnight.assumption.Guess;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.figure.Posture;
import longnight.night.Caution;
import longnight.night.DayReport;
import longnight.night.FuelReport;
import longnight.night.HeatBrought;
import longnight.night.HourRow;
import longnight.night.Intake;
import longnight.night.Ledger;
import longnight.night.March;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.Phase;
import longnight.night.Scenario;
import longnight.night.SecondOpinion;
import longnight.night.Trace;
import longnight.night.Verdict;
import longnight.night.Verdict.AtRisk;
import longnight.night.Verdict.Crossing;
import longnight.night.Verdict.Line;
import longnight.night.Verdict.Outcome;
import longnight.night.Verdict.Part;
import longnight.night.WaterReport;
import longnight.night.Way;
import longnight.outdoors.Ground;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.Surroundings;

/** Invented results of the right shape, to look at and to test pages with. Two lumps of heat stand in for the body. */
public final class NightFixture {
    private static final double REST = 92;
    private static final double AREA = 1.86;
    private static final double CORE_CAPACITY = 125e3;
    private static final double SHELL_CAPACITY = 110e3;
    private static final double DUSK = 18.5 * 3600;
    private static final double STEP = 60;

    private NightFixture() {}

    /** Clothes keep almost all. */
    public static NightResult easy() {
        return night(1.15, 400, Outcome.HOLDS_EASILY, 12);
    }

    /** Shivers through. */
    public static NightResult shivering() {
        return night(1.75, 400, Outcome.HOLDS_BY_SHIVERING, 12);
    }

    /** Does not hold. */
    public static NightResult failing() {
        return night(2.9, 95, Outcome.DOES_NOT_HOLD, 12);
    }

    /** Stops at 32 degC core. */
    public static NightResult stopped() {
        return night(4.6, 60, Outcome.OUTSIDE_THE_MODEL, 12);
    }

    /** Shorter than the window of the demand. */
    public static NightResult brief() {
        return night(1.2, 400, Outcome.HOLDS_EASILY, 3);
    }

    /** Rain until midnight after a march, frost after it, a hot drink in the second hour; a drill that was not worth it. */
    public static NightResult wet() {
        NightResult dry = shivering();
        List<HourRow> hours = new ArrayList<>();
        for (HourRow row : dry.hours()) {
            double hour = row.time() / 3600;
            hours.add(withWays(row, hour <= 6 ? 12.4 : 0, hour == 2 ? -8.7 : 0));
        }
        Ledger books = dry.ledger();
        double[] ways = books.lostByWay().clone();
        ways[Way.PRECIPITATION.ordinal()] = 12.4 * 6 * 3600;
        ways[Way.BROUGHT.ordinal()] = -8.7 * 3600;
        ways[Way.AIR.ordinal()] -= ways[Way.PRECIPITATION.ordinal()] + ways[Way.BROUGHT.ordinal()];
        List<Caution> cautions = new ArrayList<>(dry.cautions());
        cautions.remove(Caution.DRY_ONLY);
        cautions.addAll(List.of(Caution.WETTING, Caution.FUEL_LOW));
        double night = dry.scenario().plan().duration();
        List<Phase> phases = List.of(
                new Phase(
                        "march",
                        -3 * 3600,
                        -1800,
                        Posture.STANDING,
                        false,
                        new March(1.1, 8, 14, 1.2),
                        0,
                        0,
                        null,
                        0,
                        1,
                        false),
                Phase.still("halt", -1800, 0, Posture.SITTING_LEGS_OUT, false),
                new Phase("night", 0, night, Posture.SITTING_KNEES_UP, true, null, 0.1, 3, null, 0.1, 0.5, true));
        NightPlan plan = new NightPlan(
                DUSK,
                night,
                true,
                Double.NaN,
                phases,
                List.of(new Intake(-1200, 1.2e6, 0.8e6, 0, 0), new Intake(5400, 0, 0, 0.3, 70)),
                List.of(new HeatBrought("flask", 3600, 0.7, 75, 0, 0)),
                Map.of("base-top", 0.4),
                0.9);
        return new NightResult(
                dry.scenario().withPlan(plan),
                dry.verdict(),
                dry.restHeat(),
                dry.bodyArea(),
                dry.demand(),
                dry.demandTime(),
                dry.shortfallHeat(),
                dry.coreHeatDeficitDawn(),
                dry.coreHeatDeficitWorst(),
                dry.worstTime(),
                dry.wholeBodyDebt(),
                dry.maximalShivering(),
                dry.kitMass(),
                dry.kitResistance(),
                hours,
                dry.trace(),
                new Ledger(
                        books.made(),
                        books.rest(),
                        ways,
                        books.lostByPart(),
                        books.breath(),
                        books.storedCore(),
                        books.storedShell(),
                        books.storedClothing(),
                        books.turnedOver(),
                        books.heatClosure(),
                        books.partClosure(),
                        books.payerClosure()),
                dry.guessed(),
                cautions,
                dry.secondOpinion(),
                water(dry.trace().time()),
                new FuelReport(5.2e6, 1.24e6, 1.2e6, 0.83, 0.24, 0.87, 0.81, 0.42),
                new DayReport(1320, 2460, 210e3, 198e3, 12e3),
                dry.stopped());
    }

    private static HourRow withWays(HourRow r, double precipitation, double brought) {
        double[] ways = r.lostByWay().clone();
        ways[Way.PRECIPITATION.ordinal()] = ways[0] - ways[0] + precipitation; // no number at dusk
        ways[Way.BROUGHT.ordinal()] = ways[0] - ways[0] + brought;
        ways[Way.AIR.ordinal()] -= precipitation + brought;
        return new HourRow(
                r.time(),
                r.clock(),
                r.airCelsius(),
                r.windAtBody(),
                r.heatMade(),
                ways,
                r.lostByPart(),
                r.losses(),
                r.shortfall(),
                r.paidByHeatMade(),
                r.paidByShell(),
                r.paidByCore(),
                r.coreHeatDeficit(),
                r.letGo(),
                r.demand(),
                r.coreCelsius(),
                r.rectalCelsius(),
                r.meanSkin(),
                r.hand(),
                r.foot(),
                r.sleep(),
                r.shivering());
    }

    /** Seven pieces of which five get wet; the hood comes out of the pack in the second hour. */
    private static WaterReport water(double[] time) {
        String[] ids = {"base-top", "pullover", "parka", "trousers", "hood", "socks", "mitts"};
        double[] dusk = {0.061, 0.034, 0.002, 0.012, 0, 0.006, 0};
        double[] most = {0.061, 0.048, 0.31, 0.142, 0.09, 0.021, 0.001};
        double[] dawn = {0.012, 0.019, 0.22, 0.088, 0.05, 0.017, 0.001};
        double[][] trace = new double[ids.length][time.length];
        List<WaterReport.Layer> layers = new ArrayList<>();
        double end = time[time.length - 1];
        for (int i = 0; i < ids.length; i++) {
            for (int t = 0; t < time.length; t++) {
                double u = time[t] / end;
                trace[i][t] = u < 0.45
                        ? dusk[i] + (most[i] - dusk[i]) * u / 0.45
                        : most[i] + (dawn[i] - most[i]) * (u - 0.45) / 0.55;
                if (ids[i].equals("hood") && time[t] < 5400) {
                    trace[i][t] = Double.NaN;
                }
            }
            layers.add(new WaterReport.Layer(
                    ids[i], 0.1 + 0.08 * i, dusk[i], 0, 0.01, 0.7 * dawn[i], 0.3 * dawn[i], 0.012));
        }
        return new WaterReport(layers, 0.52, 0.48, 0.55, 0.133, 0.185, 0.502, 0.105, 620e3, 3e-17, trace, time.clone());
    }

    /** The wet night with another cost of being wet. */
    static NightResult costing(double joules) {
        NightResult wet = wet();
        return wet.with(Objects.requireNonNull(wet.water()).costing(joules), wet.day());
    }

    /** The same night with other guesses. */
    static NightResult guessing(NightResult r, List<Guess> guesses) {
        return new NightResult(
                r.scenario(),
                r.verdict(),
                r.restHeat(),
                r.bodyArea(),
                r.demand(),
                r.demandTime(),
                r.shortfallHeat(),
                r.coreHeatDeficitDawn(),
                r.coreHeatDeficitWorst(),
                r.worstTime(),
                r.wholeBodyDebt(),
                r.maximalShivering(),
                r.kitMass(),
                r.kitResistance(),
                r.hours(),
                r.trace(),
                r.ledger(),
                guesses,
                r.cautions(),
                r.secondOpinion(),
                r.water(),
                r.fuel(),
                r.day(),
                r.stopped());
    }

    /** Out of the model's range before it began: nothing reckoned. */
    public static NightResult unrun() {
        double no = Double.NaN;
        double[] none = {};
        return new NightResult(
                scenario(12),
                new Verdict(
                        Outcome.OUTSIDE_THE_MODEL, no, List.of(), List.of(), List.of("air down to -46 degC"), false),
                no,
                no,
                no,
                no,
                no,
                no,
                no,
                no,
                no,
                no,
                no,
                no,
                List.of(),
                new Trace(none, none, none, none, none, none, none, none, none, none, none, none, none),
                new Ledger(no, no, none, none, no, no, no, no, no, no, no, no),
                guesses(),
                List.of(Caution.PLANNING_AID, Caution.OUT_OF_RANGE),
                null,
                null,
                null,
                null,
                no);
    }

    /**
     * @param load      losses over heat at rest at the end of the night
     * @param shivering largest extra heat made [W]
     */
    private static NightResult night(double load, double shivering, Outcome outcome, int hours) {
        List<double[]> rows = new ArrayList<>();
        double core = 36.9;
        double shell = 32.5;
        double shortfall = 0;
        double made = 0;
        double[] window = new double[hours * 60 + 1];
        double stopped = Double.NaN;
        for (int i = 0; i <= hours * 60; i++) {
            double t = i * STEP;
            double shift = -0.35 * (1 - Math.cos(Math.PI * Math.min(1, t / 36000))) / 2 * 2;
            double losses = REST * (1 + (load - 1) * (1 - Math.exp(-t / 5400))) * (0.9 + 0.02 * (shell - 25));
            double wanted = Math.max(0, 60 * (33 - shell) * 0.5 + 250 * (36.8 + shift - core));
            double extra = Math.min(shivering, wanted);
            double flow = (core - shell) * 16;
            window[i] = losses;
            double demand = Double.NaN;
            if (i >= 240) {
                demand = Arrays.stream(window, i - 239, i + 1).average().orElseThrow() / REST;
            }
            double paidCore = CORE_CAPACITY * (36.9 - core);
            rows.add(new double[] {
                t,
                shortfall,
                made,
                shortfall - made - paidCore,
                paidCore,
                CORE_CAPACITY * (36.9 + shift - core),
                CORE_CAPACITY * (36.9 + shift - 35),
                CORE_CAPACITY * (36.9 + shift - 32),
                demand,
                core,
                shell - 2,
                shell - 12,
                shell - 16,
                losses,
                extra
            });
            if (core < 32) {
                stopped = t;
                break;
            }
            shortfall += (losses - REST) * STEP;
            made += extra * STEP;
            core += (REST + extra - flow) * STEP / CORE_CAPACITY;
            shell += (flow - losses) * STEP / SHELL_CAPACITY;
        }
        double[][] columns = new double[13][];
        for (int c = 0; c < 13; c++) {
            int column = c;
            columns[c] = rows.stream().mapToDouble(r -> r[column]).toArray();
        }
        Trace trace = new Trace(
                columns[0],
                columns[1],
                columns[2],
                columns[3],
                columns[4],
                columns[5],
                columns[6],
                columns[7],
                columns[8],
                columns[9],
                columns[10],
                columns[11],
                columns[12]);
        double[] last = rows.get(rows.size() - 1);
        int worst = 0;
        int hardest = -1;
        for (int i = 0; i < rows.size(); i++) {
            worst = columns[5][i] > columns[5][worst] ? i : worst;
            if (!Double.isNaN(columns[8][i]) && (hardest < 0 || columns[8][i] > columns[8][hardest])) {
                hardest = i;
            }
        }
        return new NightResult(
                scenario(hours),
                verdict(outcome, trace),
                REST,
                AREA,
                hardest < 0 ? Double.NaN : columns[8][hardest],
                hardest < 0 ? Double.NaN : columns[0][hardest],
                last[1],
                last[5],
                columns[5][worst],
                columns[0][worst],
                612e3 * AREA,
                505,
                4.31,
                0.512,
                hourRows(rows),
                trace,
                ledger(rows),
                guesses(),
                cautions(outcome),
                new SecondOpinion(
                        55,
                        -13.4,
                        1.2,
                        0.58,
                        0.66,
                        0.49,
                        3.4,
                        Double.POSITIVE_INFINITY,
                        outcome == Outcome.HOLDS_EASILY),
                null,
                null,
                null,
                stopped);
    }

    private static final double[] WAYS = {0.34, 0.27, 0.12, 0.09, 0.16, 0.02, 0, 0};
    private static final double[] PARTS = {0.13, 0.1, 0.1, 0.14, 0.07, 0.05, 0.06, 0.16, 0.11, 0.08};

    private static double[] shares(double[] shares, double whole) {
        return Arrays.stream(shares).map(share -> share * whole).toArray();
    }

    private static List<HourRow> hourRows(List<double[]> rows) {
        List<HourRow> hours = new ArrayList<>();
        for (int i = 0; i < rows.size(); i += 60) {
            double[] r = rows.get(i);
            boolean dusk = i == 0;
            double losses = dusk ? Double.NaN : r[13];
            hours.add(new HourRow(
                    r[0],
                    (DUSK + r[0]) % 86400,
                    -6.2 - 9.5 * Math.sin(Math.PI * Math.min(1, r[0] / 50000)),
                    1.2 + 0.4 * Math.sin(r[0] / 4000),
                    dusk ? Double.NaN : REST + r[14],
                    shares(WAYS, losses),
                    shares(PARTS, losses * 0.84),
                    losses,
                    r[1],
                    r[2],
                    r[3],
                    r[4],
                    r[5],
                    r[4] - r[5],
                    r[8],
                    r[9],
                    r[9] + 0.2,
                    r[10],
                    r[11],
                    r[12],
                    0.4,
                    r[14]));
        }
        return hours;
    }

    private static Ledger ledger(List<double[]> rows) {
        double lost = rows.stream().mapToDouble(r -> r[13] * STEP).sum();
        double made = rows.stream().mapToDouble(r -> (REST + r[14]) * STEP).sum();
        double[] last = rows.get(rows.size() - 1);
        double[] ways = shares(new double[] {0.36, 0.29, 0.13, 0.1, 0.17, -0.05, 0, 0}, lost);
        double[] parts = shares(PARTS, 0.83 * lost);
        return new Ledger(
                made,
                REST * last[0],
                ways,
                parts,
                0.17 * lost,
                -last[4],
                -last[3],
                -0.05 * lost,
                made + lost,
                3.1e-13,
                7e-14,
                0);
    }

    private static Verdict verdict(Outcome outcome, Trace trace) {
        List<AtRisk> atRisk =
                List.of(new AtRisk(Part.FEET, 4.2 * 3600, -1.3, Double.NaN), new AtRisk(Part.FACE, 1800, -2, 28));
        boolean beyond = outcome == Outcome.OUTSIDE_THE_MODEL;
        List<Crossing> reasons = new ArrayList<>();
        if (beyond || outcome == Outcome.DOES_NOT_HOLD) {
            for (int i = 0; i < trace.time().length && reasons.isEmpty(); i++) {
                if (trace.demand()[i] > 2) {
                    reasons.add(new Crossing(Line.DEMAND, trace.time()[i]));
                }
            }
            reasons.add(new Crossing(Line.CORE_HEAT_DEFICIT, 18000));
        }
        return new Verdict(
                outcome,
                reasons.isEmpty() ? Double.NaN : reasons.get(0).time(),
                reasons,
                outcome == Outcome.HOLDS_EASILY ? List.of() : atRisk,
                beyond ? List.of("core-below-32") : List.of(),
                beyond);
    }

    private static List<Caution> cautions(Outcome outcome) {
        List<Caution> cautions = new ArrayList<>(List.of(Caution.PLANNING_AID));
        if (outcome == Outcome.OUTSIDE_THE_MODEL) {
            cautions.add(Caution.EXTRAPOLATION);
        }
        if (outcome != Outcome.HOLDS_EASILY) {
            cautions.add(Caution.EXTREMITIES);
            cautions.add(Caution.FACE);
        }
        cautions.add(Caution.DRY_ONLY);
        cautions.add(Caution.PERSON_GUESSED);
        cautions.add(Caution.TYPICAL_YEAR);
        return cautions;
    }

    private static List<Guess> guesses() {
        List<Guess> guesses = new ArrayList<>();
        guesses.add(Guess.number("Ilse", "body fat", 24, "percent", "engineering estimate, no source"));
        guesses.add(Guess.number("Ilse", "peak oxygen uptake", 38, "mL/kg/min", "engineering estimate, no source"));
        guesses.add(Guess.word("site", "surface", "snow", "common practice, no source"));
        for (String garment : List.of("base-top", "base-bottom", "pullover", "trousers", "parka", "hood", "mitts")) {
            guesses.add(Guess.number(garment, "resistance", 0.031 * garment.length(), "m2K/W", "from memory"));
            guesses.add(Guess.number(garment, "thickness", 0.0013 * garment.length(), "m", "from memory"));
            guesses.add(Guess.word(garment, "face", "medium", "common practice, no source"));
            guesses.add(Guess.number(garment, "vapour resistance", 4.2 * garment.length(), "m2Pa/W", "from memory"));
        }
        return guesses;
    }

    private static Scenario scenario(int hours) {
        Ground snow = new Ground("snow", 0.2, 4e5, 1, true);
        Surroundings surroundings = new Surroundings() {
            @Override
            public void at(double time, OutdoorState out) {
                out.airCelsius = -12;
            }

            @Override
            public double firstTime() {
                return 0;
            }

            @Override
            public double lastTime() {
                return hours * 3600.0;
            }

            @Override
            public double turbulence() {
                return 1.3;
            }

            @Override
            public Ground ground() {
                return snow;
            }
        };
        return new Scenario(
                "Ilse above the Graukar, light kit",
                "Graukar col, clear night",
                "light winter kit",
                new Person("Ilse", Person.Sex.FEMALE, 41, 1.68, 64, 24, 38, 1),
                new Outfit.Kit(List.of(), List.of(new Pad("sit-pad", "sit pad", 0.18, 0.09, 0.06, 900))),
                surroundings,
                NightPlan.still(DUSK, hours * 3600.0, Posture.SITTING_KNEES_UP, true, true, Double.NaN),
                guesses(),
                List.of(),
                List.of());
    }
}
