package longnight.night;

import static longnight.DocTable.format;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longnight.body.Body;
import longnight.body.BodyParameter;
import longnight.night.ChamberRun.Dress;
import longnight.night.ChamberRun.Man;
import longnight.night.ChamberRun.Phase;
import longnight.night.ChamberRun.Subject;
import longnight.night.ColdAirExperiments.Kind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What moving a constant of the body does to all experiments in cold air, and whether the experiments carry a change. */
class CalibrationTest {

    private static final Path DOCUMENT = Path.of("docs", "calibration.md");

    /** What the moved constants were before. */
    private static final Map<BodyParameter, Double> BEFORE = Map.of(BodyParameter.SHIVER_RATE_GAIN, 10.0);

    private record Move(BodyParameter parameter, double value) {}

    private static final List<Move> MOVES = List.of(
            new Move(BodyParameter.SHIVER_RATE_GAIN, 10),
            new Move(BodyParameter.SHIVER_RATE_GAIN, 57.77),
            new Move(BodyParameter.SHIVER_ON, 30.5),
            new Move(BodyParameter.SHIVER_ON, 32),
            new Move(BodyParameter.SHIVER_SKIN_SLOPE, 6),
            new Move(BodyParameter.SHIVER_TRUNK_WEIGHT, 0.4),
            new Move(BodyParameter.SHIVER_TRUNK_WEIGHT, 1),
            new Move(BodyParameter.SHIVER_ON_PER_FAT, 0),
            new Move(BodyParameter.SHIVER_ON_PER_FAT, -0.15),
            new Move(BodyParameter.SHIVER_CORE_GAIN, 110),
            new Move(BodyParameter.WARM_CORE_BRAKE, 0.4),
            new Move(BodyParameter.WARM_CORE_BAND, 0),
            new Move(BodyParameter.NON_SHIVERING, 0.1),
            new Move(BodyParameter.VESSEL_GAIN, 7),
            new Move(BodyParameter.VESSEL_GAIN, 11.5),
            new Move(BodyParameter.VESSEL_CORE_WEIGHT, 2),
            new Move(BodyParameter.SKIN_FLOOR, 0.12),
            new Move(BodyParameter.FAT_FLOOR, 0.2),
            new Move(BodyParameter.LIMB_DEEP_FLOOR, 0.12),
            new Move(BodyParameter.LIMB_DEEP_DIVISOR, 0.2),
            new Move(BodyParameter.LIMB_SHIVER_FLOW, 0.2),
            new Move(BodyParameter.LIMB_SKIN_CONSTRICTION, 2.3),
            new Move(BodyParameter.THIGH_LINK, 0),
            new Move(BodyParameter.THIGH_LINK, 0.4),
            new Move(BodyParameter.LEG_FLOW, 0.5),
            new Move(BodyParameter.LEG_FLOW, 1),
            new Move(BodyParameter.REST_SITTING, 1.2),
            new Move(BodyParameter.REST_LYING, 1.15),
            new Move(BodyParameter.SLEEP_SKIN_LOW, 26),
            new Move(BodyParameter.CLOCK, 0.3));

    @Test
    void constants_one_at_a_time() throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("| constant | misfit | gates missed | goals | core bias / RMSD | skin RMSD | heat RMSD | debt "
                + "| heat, 18 degC | heat, 15.6 degC | onsets | slope | cold night: heat, foot, core |");
        lines.add("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        lines.add(row("nominal", Map.of()));
        for (Move move : MOVES) {
            String name =
                    move.parameter.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
            lines.add(row(
                    name + " " + plain(move.parameter.span().nominal()) + " to " + plain(move.value),
                    Map.of(move.parameter, move.value)));
        }
        check("| constant |", lines);
    }

    private static String row(String name, Map<BodyParameter, Double> constants) {
        ColdAirScore s = ColdAirScore.of(Calibration.model(constants));
        return format(
                "| %s | %.2f | %d | %.2f | %+.2f / %.2f | %.2f | %.0f | %.0f | %.2f | %.2f | %.0f, %.0f | %.1f "
                        + "| %.2f, %.0f, %.2f |",
                name,
                sum(s),
                s.gatesMissed(),
                s.goals(),
                s.bias(Kind.CORE),
                s.rootMeanSquare(Kind.CORE),
                s.rootMeanSquare(Kind.SKIN, Kind.SKIN_HELD),
                100 * s.rootMeanSquare(Kind.HEAT),
                s.value("Hardy", 0),
                s.value("Hardy", 3),
                s.value("Iampietro", 0),
                s.value("Spurr", 0),
                s.value("Spurr", 1),
                s.value("Timbal", 0),
                s.value("Irving", 0),
                s.value("Irving", 1),
                s.value("Irving", 3));
    }

    private static double sum(ColdAirScore score) {
        double sum = 0;
        for (int e = 0; e < ColdAirExperiments.ALL.size(); e++) {
            sum += score.misfit(e);
        }
        return sum;
    }

    /**
     * Fits the moved constants anew, on all experiments and with each of them left out. Other constants, by name and comma:
     * {@code -Dcalibrate=SHIVER_RATE_GAIN,SHIVER_ON}; then the table is only left in {@code target}.
     */
    @Test
    @Tag("long")
    void every_experiment_left_out_once() throws IOException {
        String asked = System.getProperty("calibrate", "SHIVER_RATE_GAIN");
        List<BodyParameter> free =
                Arrays.stream(asked.split(",")).map(BodyParameter::valueOf).toList();
        Calibration calibration = new Calibration(BEFORE, free);
        ColdAirScore before = ColdAirScore.of(Calibration.model(BEFORE));
        Map<BodyParameter, Double> best = calibration.fit(-1);
        ColdAirScore after = ColdAirScore.of(Calibration.model(best));
        List<String> lines = new ArrayList<>();
        lines.add("| left out | misfit before | fitted with it | fitted without it | constants without it |");
        lines.add("|---|---|---|---|---|");
        double left = 0;
        for (int e = 0; e < ColdAirExperiments.ALL.size(); e++) {
            Map<BodyParameter, Double> without = calibration.fit(e);
            double misfit = ColdAirScore.of(Calibration.model(without)).misfit(e);
            left += misfit;
            lines.add(format(
                    "| %s | %.2f | %.2f | %.2f | %s |",
                    ColdAirExperiments.ALL.get(e).source(),
                    before.misfit(e),
                    after.misfit(e),
                    misfit,
                    constants(free, without)));
        }
        lines.add(format(
                "| sum (last column: fitted to all) | %.2f | %.2f | %.2f | %s |",
                sum(before), sum(after), left, constants(free, best)));
        if (asked.equals("SHIVER_RATE_GAIN")) {
            check("| left out |", lines);
        } else {
            Files.write(Path.of("target", "calibration.md"), lines);
        }
    }

    private static String constants(List<BodyParameter> free, Map<BodyParameter, Double> values) {
        Map<String, String> named = new TreeMap<>();
        for (BodyParameter p : free) {
            named.put(p.name(), format("%.3g", values.get(p)));
        }
        return String.join(", ", named.values());
    }

    /** Own set level: clock and the sleep really had. 15 kJ are a quarter of a kelvin over the core. */
    @Test
    void a_warm_night_cools_the_core_and_leaves_no_deficit() {
        for (int minutes : new int[] {300, 360, 420}) {
            ChamberRun run = ChamberRun.night(
                    new Subject(Man.ORDINARY, ModelChoice.nominal(), Double.NaN),
                    Dress.total(1.2 * 0.155),
                    0.1,
                    0.5,
                    new Phase(26.5, minutes));
            double[] neutral = run.body.neutralState();
            double[] capacity = run.body.capacities();
            double deficit = 0;
            for (int i = 0; i < Body.NODES; i++) {
                if (Body.isCoreNode(i)) {
                    deficit += capacity[i] * (neutral[i] + run.net.control.setShift - run.state[i]) / 1000;
                }
            }
            assertThat(run.rectal[0] - run.rectal[minutes])
                    .as("fall in %d min", minutes)
                    .isBetween(0.9, 1.4);
            assertThat(deficit).as("deficit at %d min [kJ]", minutes).isBetween(-15.0, 15.0);
        }
    }

    // ---------------------------------------------------------------- page

    /** Holds the table that begins so against the page, or writes it there with {@code -Ddocs.write=true}. */
    private static void check(String head, List<String> fresh) throws IOException {
        List<String> page = new ArrayList<>(Files.readAllLines(DOCUMENT));
        int from = 0;
        while (!page.get(from).startsWith(head)) {
            from++;
        }
        int to = from;
        while (to < page.size() && page.get(to).startsWith("|")) {
            to++;
        }
        if (Boolean.getBoolean("docs.write")) {
            page.subList(from, to).clear();
            page.addAll(from, fresh);
            Files.write(DOCUMENT, page);
            return;
        }
        assertThat(page.subList(from, to))
                .as("%s, rewrite it with -Ddocs.write=true", DOCUMENT)
                .isEqualTo(fresh);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
    }
}
