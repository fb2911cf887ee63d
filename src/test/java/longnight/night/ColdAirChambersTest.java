package longnight.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longnight.body.Body;
import longnight.figure.Posture;
import longnight.night.ChamberRun.Dress;
import longnight.night.ChamberRun.Man;
import longnight.night.ChamberRun.Phase;
import longnight.night.ColdAirExperiments.Band;
import longnight.night.ColdAirExperiments.Experiment;
import longnight.night.ColdAirExperiments.Kind;
import longnight.night.ColdAirExperiments.Quantity;
import longnight.night.ColdAirExperiments.Variant;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Eighteen published experiments in cold air against the nominal model. The model's constants were fitted to this very set:
 * agreement is a calibration and no validation. Bands are those of the set; none was widened for this engine.
 */
class ColdAirChambersTest {

    private static final Path DOCUMENT = Path.of("docs", "chambers.md");
    private static final Path FRESH = Path.of("target", "chambers-tables.md");

    /** One quantity with what the engine makes of it. */
    private record Row(
            Experiment experiment,
            Quantity quantity,
            double nominal,
            double low,
            double high,
            boolean anyGate,
            boolean anyGoal) {

        String id() {
            return experiment.source() + ": " + quantity.name();
        }
    }

    private static final List<Row> ROWS = new ArrayList<>();
    private static final ColdAirScore NOMINAL = ColdAirScore.of(ModelChoice.nominal());

    @BeforeAll
    static void runEverything() {
        List<Variant> variants = new ArrayList<>();
        for (double kilograms : new double[] {0, -10, 10}) {
            for (double percent : new double[] {0, -6, 6}) {
                for (double wind : new double[] {Double.NaN, 0.1, 0.3}) {
                    variants.add(new Variant(kilograms, percent, wind, ModelChoice.nominal()));
                }
            }
        }
        assertEquals(Variant.NOMINAL, variants.get(0));
        for (Experiment experiment : ColdAirExperiments.ALL) {
            List<double[]> answers =
                    variants.stream().map(v -> experiment.run().apply(v)).toList();
            for (int i = 0; i < experiment.quantities().size(); i++) {
                int at = i;
                Quantity quantity = experiment.quantities().get(i);
                double[] all = answers.stream().mapToDouble(a -> a[at]).toArray();
                double low = Double.POSITIVE_INFINITY;
                double high = Double.NEGATIVE_INFINITY;
                boolean gate = false;
                boolean goal = false;
                for (double value : all) {
                    low = value < low ? value : low;
                    high = value > high ? value : high;
                    gate |= quantity.gate().holds(value);
                    goal |= quantity.goal().holds(value);
                }
                ROWS.add(new Row(experiment, quantity, all[0], low, high, gate, goal));
            }
        }
    }

    @Test
    @DisplayName("every gate that the second calculation meets is met with the nominal assumptions; one gate is missed")
    void gates() {
        List<String> missed = new ArrayList<>();
        int gates = 0;
        for (Row row : ROWS) {
            Band gate = row.quantity.gate();
            if (!gate.exists()) {
                continue;
            }
            gates++;
            if (!gate.holds(row.nominal)) {
                missed.add(row.id());
                assertTrue(
                        !gate.holds(row.quantity.second()),
                        row.id() + " is " + row.nominal + ", allowed " + gate + ", second calculation "
                                + row.quantity.second());
            }
        }
        assertEquals(22, gates);
        // a known misfit: two weeks at 15.6 degC raised heat by 11 to 20 %, the 15 to 25 degC slope asks for more
        assertEquals(
                List.of("Iampietro, Bass and Buskirk 1957: heat made after 12 h at 15.6 over 26.7 degC [1]"), missed);
    }

    @Test
    @DisplayName("nominal values lie within the second calculation's own spread over mass, fat and wind")
    void insideTheSecondCalculation() {
        int compared = 0;
        for (Row row : ROWS) {
            if (row.quantity.spread().exists()) {
                compared++;
                assertTrue(
                        row.quantity.spread().holds(row.nominal),
                        row.id() + " is " + row.nominal + ", second calculation " + row.quantity.spread());
            }
        }
        assertEquals(8, compared);
    }

    @Test
    @DisplayName("pooled errors stay within the acceptance bands of the set: core 0.4 K, skin 1.8 K")
    void pooledErrors() {
        assertTrue(NOMINAL.rootMeanSquare(Kind.CORE) < 0.4, "core " + NOMINAL.rootMeanSquare(Kind.CORE));
        assertTrue(
                NOMINAL.rootMeanSquare(Kind.SKIN, Kind.SKIN_OWN) < 1.8,
                "skin " + NOMINAL.rootMeanSquare(Kind.SKIN, Kind.SKIN_OWN));
    }

    @Test
    @DisplayName("the minute-by-minute reader and the engine's own course end at the same temperatures")
    void sameAsTheEngine() {
        ChamberRun read = ChamberRun.day(
                Man.ORDINARY, Dress.even(0.05), Posture.CHAIR, 0.15, 0.5, new Phase(28, 60), new Phase(10, 120));
        Runner runner = new Runner(
                read.net.body, read.net.plan, phase -> read.net, ModelChoice.nominal(), NumericalSettings.dry());
        runner.run();
        for (int i = 0; i < Body.NODES; i++) {
            // steps of 60 s and exchange every 5 min against 30 s and 1 min
            assertEquals(read.state[i], runner.state[i], 0.02, "node " + i);
        }
    }

    @Test
    @DisplayName("where the cloth of shorts lies moves the core by about 0.1 K in 4 h")
    void placeOfShorts() {
        double[] change = new double[2];
        for (int i = 0; i < 2; i++) {
            Dress dress = i == 0 ? Dress.even(0.08) : Dress.shorts(0.08);
            ChamberRun run = ChamberRun.day(
                    new Man(78, 1.77, 15, 23), dress, Posture.CHAIR, 0.15, 0.5, new Phase(28, 60), new Phase(10, 240));
            change[i] = run.rectal[300] - run.rectal[60];
        }
        assertEquals(-0.1, change[1] - change[0], 0.05);
    }

    @Test
    @DisplayName("docs/chambers.md shows these very numbers")
    void documentIsFresh() throws IOException {
        List<String> fresh = new ArrayList<>(misses());
        fresh.addAll(score());
        fresh.addAll(table());
        Files.createDirectories(FRESH.getParent());
        Files.write(FRESH, fresh);
        List<String> printed = Files.readAllLines(DOCUMENT).stream()
                .filter(line -> line.startsWith("|"))
                .toList();
        assertEquals(
                String.join("\n", fresh),
                String.join("\n", printed),
                "tables of " + DOCUMENT + " are old; fresh ones are in " + FRESH);
    }

    // ---------------------------------------------------------------- pooled

    /** Share of goals met by some variant, every experiment counting once. */
    private static double goalsBySome() {
        double sum = 0;
        int n = 0;
        for (Experiment experiment : ColdAirExperiments.ALL) {
            double met = 0;
            int of = 0;
            for (Row row : ROWS) {
                if (row.experiment == experiment && row.quantity.goal().exists()) {
                    of++;
                    met += row.anyGoal ? 1 : 0;
                }
            }
            sum += of > 0 ? met / of : 0;
            n += of > 0 ? 1 : 0;
        }
        return sum / n;
    }

    // ---------------------------------------------------------------- print

    private static List<String> misses() {
        List<String> lines = new ArrayList<>();
        lines.add("| missed with the nominal assumptions | measured | allowed | ours | met by some variant |");
        lines.add("|---|---|---|---|---|");
        for (Row row : ROWS) {
            Quantity q = row.quantity;
            if (q.gate().exists() && !q.gate().holds(row.nominal)) {
                lines.add(miss(row, "**gate** ", q.gate(), row.anyGate));
            }
            if (q.goal().exists() && !q.goal().holds(row.nominal)) {
                lines.add(miss(row, "goal ", q.goal(), row.anyGoal));
            }
        }
        return lines;
    }

    private static String miss(Row row, String what, Band band, boolean any) {
        int d = row.quantity.decimals();
        return "| " + row.id() + " | " + number(row.quantity.measured(), d) + " | " + what + band(band) + " | "
                + number(row.nominal, d) + " | " + (any ? "yes" : "no") + " |";
    }

    private static List<String> score() {
        int gates = 0;
        int nominal = 0;
        int any = 0;
        for (Row row : ROWS) {
            if (row.quantity.gate().exists()) {
                gates++;
                nominal += row.quantity.gate().holds(row.nominal) ? 1 : 0;
                any += row.anyGate ? 1 : 0;
            }
        }
        return List.of(
                "| pooled | ours | second calculation |",
                "|---|---|---|",
                "| gates met, nominal / by some variant | " + nominal + " / " + any + " of " + gates
                        + " | all but 1 / all (of a longer list) |",
                String.format(
                        Locale.ROOT,
                        "| share of goals met, nominal / by some variant | %.2f / %.2f | 0.77 / 0.98 |",
                        NOMINAL.goals(),
                        goalsBySome()),
                String.format(
                        Locale.ROOT,
                        "| rectal change, bias / RMSD over %d values [K] | %+.2f / %.2f | +0.11 / 0.15 |",
                        ColdAirScore.count(Kind.CORE),
                        NOMINAL.bias(Kind.CORE),
                        NOMINAL.rootMeanSquare(Kind.CORE)),
                String.format(
                        Locale.ROOT,
                        "| mean skin, bias / RMSD over %d values [K] | %+.2f / %.2f | -0.24 / 1.50 |",
                        ColdAirScore.count(Kind.SKIN, Kind.SKIN_OWN),
                        NOMINAL.bias(Kind.SKIN, Kind.SKIN_OWN),
                        NOMINAL.rootMeanSquare(Kind.SKIN, Kind.SKIN_OWN)),
                String.format(
                        Locale.ROOT,
                        "| the same, making the heat that the source gives [K] | %+.2f / %.2f | |",
                        NOMINAL.bias(Kind.SKIN, Kind.SKIN_HELD),
                        NOMINAL.rootMeanSquare(Kind.SKIN, Kind.SKIN_HELD)),
                String.format(
                        Locale.ROOT,
                        "| heat made, bias / RMSD over %d values [%%] | %+.0f / %.0f | -1 / 17 (12 values) |",
                        ColdAirScore.count(Kind.HEAT),
                        100 * NOMINAL.bias(Kind.HEAT),
                        100 * NOMINAL.rootMeanSquare(Kind.HEAT)));
    }

    private static List<String> table() {
        List<String> lines = new ArrayList<>();
        lines.add("| experiment | quantity | measured | gate | goal | second calculation (range) | ours (range) "
                + "| gate nominal/any | goal nominal/any |");
        lines.add("|---|---|---|---|---|---|---|---|---|");
        Experiment last = null;
        for (Row row : ROWS) {
            Quantity q = row.quantity;
            int d = q.decimals();
            String second = number(q.second(), d) + (q.spread().exists() ? " (" + band(q.spread()) + ")" : "");
            String ours = number(row.nominal, d) + " (" + number(row.low, d) + " to " + number(row.high, d) + ")";
            lines.add("| " + (row.experiment == last ? "" : row.experiment.source()) + " | " + q.name() + " | "
                    + number(q.measured(), d) + " | " + band(q.gate()) + " | " + band(q.goal()) + " | "
                    + second.trim() + " | " + ours + " | " + met(q.gate(), row.nominal, row.anyGate) + " | "
                    + met(q.goal(), row.nominal, row.anyGoal) + " |");
            last = row.experiment;
        }
        return lines;
    }

    private static String met(Band band, double nominal, boolean any) {
        return band.exists() ? (band.holds(nominal) ? "met" : "**no**") + "/" + (any ? "met" : "no") : "";
    }

    private static String number(double value, int decimals) {
        if (Double.isNaN(value)) {
            return "";
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    private static String band(Band band) {
        if (!band.exists()) {
            return "";
        }
        if (Double.isNaN(band.low())) {
            return "below " + plain(band.high());
        }
        return Double.isNaN(band.high())
                ? "above " + plain(band.low())
                : plain(band.low()) + " to " + plain(band.high());
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
    }
}
