package longnight.proof;

import static longnight.DocTable.format;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longnight.body.BodyParameter;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.clothing.law.WholeBody;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.night.HourRow;
import longnight.night.NightEngine;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.Chamber;
import longnight.proof.Check.Pool;
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
        OpenSetScore s = OpenSetScore.of(Calibration.model(constants));
        return format(
                "| %s | %.2f | %d | %.2f | %+.2f / %.2f | %.2f | %.0f | %.0f | %.2f | %.2f | %.0f, %.0f | %.1f "
                        + "| %.2f, %.0f, %.2f |",
                name,
                sum(s),
                s.gatesMissed(),
                s.goals(),
                s.bias(Pool.CORE),
                s.rootMeanSquare(Pool.CORE),
                s.skinHeld(),
                100 * s.rootMeanSquare(Pool.HEAT),
                s.value("hardy", 0),
                s.value("hardy", 3),
                s.value("iampietro", 0),
                s.value("spurr", 0),
                s.value("spurr", 1),
                -s.value("timbal", 0),
                s.value("irving", 0),
                s.value("irving", 1),
                s.value("irving", 3));
    }

    private static double sum(OpenSetScore score) {
        double sum = 0;
        for (int e = 0; e < OpenSetScore.ALL.size(); e++) {
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
        OpenSetScore before = OpenSetScore.of(Calibration.model(BEFORE));
        Map<BodyParameter, Double> best = calibration.fit(-1);
        OpenSetScore after = OpenSetScore.of(Calibration.model(best));
        List<String> lines = new ArrayList<>();
        lines.add("| left out | misfit before | fitted with it | fitted without it | constants without it |");
        lines.add("|---|---|---|---|---|");
        double left = 0;
        for (int e = 0; e < OpenSetScore.ALL.size(); e++) {
            Map<BodyParameter, Double> without = calibration.fit(e);
            double misfit = OpenSetScore.of(Calibration.model(without)).misfit(e);
            left += misfit;
            lines.add(format(
                    "| %s | %.2f | %.2f | %.2f | %s |",
                    OpenSetScore.ALL.get(e).id(), before.misfit(e), after.misfit(e), misfit, constants(free, without)));
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
        Map<Zone, Double> cover = new EnumMap<>(Zone.class);
        for (Zone zone : Zone.values()) {
            cover.put(zone, 0.5 * WholeBody.CLO);
        }
        Chamber room =
                Chamber.stepwise(List.of(new Chamber.Setting(0, 26.5, Double.NaN, 0.1, 0.5)), 8 * 3600, 101325, null);
        NightResult night = NightEngine.run(
                new Scenario(
                        "a warm night",
                        "room",
                        "light cover",
                        new Person("man", Person.Sex.MALE, 23, 1.76, 72, 15, 45, 1),
                        new Outfit.Given(cover, 0.38),
                        room,
                        NightPlan.still(22.5 * 3600, 8 * 3600, Posture.LYING_SUPINE, true, true, Double.NaN),
                        List.of(),
                        List.of(),
                        List.of()),
                NumericalSettings.dry());
        HourRow dusk = night.hours().get(0);
        int seen = 0;
        for (HourRow row : night.hours()) {
            if (row.time() >= 5 * 3600 - 1 && row.time() <= 7 * 3600 + 1) {
                assertThat(dusk.rectalCelsius() - row.rectalCelsius())
                        .as("fall by %.0f s", row.time())
                        .isBetween(0.9, 1.4);
                assertThat(row.coreHeatDeficit() / 1e3)
                        .as("deficit at %.0f s [kJ]", row.time())
                        .isBetween(-15.0, 15.0);
                seen++;
            }
        }
        assertThat(seen).isGreaterThanOrEqualTo(2);
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
