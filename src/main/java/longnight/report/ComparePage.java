package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longnight.night.NightResult;
import longnight.study.ComparedBand;
import longnight.study.Comparison;
import longnight.study.Pressure;
import longnight.study.Spread;
import longnight.study.Stress;

/** A comparison on the terminal: a table, and below it a sentence on each. */
public final class ComparePage {
    private static final int NAME = 25;

    private ComparePage() {}

    /** The whole page, lines ended by a line feed. */
    public static String page(Comparison.Answer answer, Units units) {
        List<String> lines = new ArrayList<>();
        Console.wrap(Compared.about(answer), 0, lines);
        Console.wrap((Compared.headline(answer) + " " + Compared.atRisk(answer)).strip(), 0, lines);
        lines.add("");
        table(answer, units, lines);
        bands(answer, units, lines);
        lines.add("");
        for (int i = 0; i < answer.all().size(); i++) {
            Console.wrap(sentence(i, answer.all().get(i), units), 3, lines);
        }
        if (answer.varied() == Comparison.Varied.NIGHTS) {
            pressures(answer, units, lines);
        }
        lines.add("");
        Compared.notes(answer, units).stream().skip(1).forEach(note -> Console.wrap(note, 2, lines));
        String texts = Compared.cautions(answer).stream()
                .map(caution -> Wording.shortText(caution, units))
                .collect(Collectors.joining(" "));
        Console.wrap(Prose.text("caution.heading") + ": " + texts, 2, lines);
        return Console.plain(String.join("\n", lines) + "\n");
    }

    /** The same for browsers. */
    static AnswerPage html(Comparison.Answer answer, Units units) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < answer.all().size(); i++) {
            told.add(sentence(i, answer.all().get(i), units));
        }
        Compared.notes(answer, units).stream().skip(1).forEach(told::add);
        return new AnswerPage(
                Prose.text("html.compare.title"),
                Compared.headline(answer),
                Compared.atRisk(answer),
                Compared.about(answer),
                told,
                "",
                Compared.cautions(answer),
                answer.all().stream()
                        .flatMap(one -> one.result().guessed().stream())
                        .toList(),
                units);
    }

    private static String sentence(int index, Comparison.One one, Units units) {
        NightResult result = one.result();
        return Prose.text(
                        "compare.sentence",
                        Compared.letter(index),
                        one.name(),
                        Wording.verdict(result, units),
                        Wording.atRisk(result, units))
                .strip();
    }

    private static void table(Comparison.Answer answer, Units units, List<String> lines) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            rows.add(List.of(Prose.text(
                            "compare.table.head." + i,
                            units.unit(Measure.HEAT),
                            units.unit(Measure.TEMPERATURE),
                            units.unit(Measure.PIECE),
                            units.unit(Measure.LOAD))
                    .split("\\|", -1)));
        }
        for (int i = 0; i < answer.all().size(); i++) {
            rows.add(cells(i, answer.all().get(i), units));
        }
        lines.addAll(set(rows, Set.of(0, 1)));
    }

    /** In the order of the head; further figures of a row go at its end. */
    private static List<String> cells(int index, Comparison.One one, Units units) {
        NightResult result = one.result();
        boolean ran = Wording.hasRun(result);
        return List.of(
                name(index, one),
                Compared.verdict(result),
                Figures.decimals(result.demand(), 2),
                units.number(Measure.HEAT, result.shortfallHeat()),
                units.deficitNumber(result.coreHeatDeficitDawn()),
                units.deficitNumber(result.coreHeatDeficitWorst()),
                ran && result.coreHeatDeficitWorst() >= Figures.DEAD_BAND
                        ? Wording.clock(result, result.worstTime())
                        : "-",
                units.number(Measure.TEMPERATURE, Summary.hand(result)),
                units.number(Measure.TEMPERATURE, Summary.foot(result)),
                units.number(Measure.PIECE, Summary.water(result)),
                units.number(Measure.LOAD, result.kitMass()),
                packed(result));
    }

    /** Litres, with a mark where some pieces do not tell theirs. */
    private static String packed(NightResult result) {
        String litres = Figures.decimals(1e3 * Summary.packed(result), 1);
        return litres.equals("-") || Summary.untold(result) == 0 ? litres : ">" + litres;
    }

    private static String name(int index, Comparison.One one) {
        String name = Compared.letter(index) + " " + Wording.clean(one.name());
        return name.length() <= NAME ? name : name.substring(0, NAME - 3) + "...";
    }

    /** The draws of each, and of its difference to the first. */
    private static void bands(Comparison.Answer answer, Units units, List<String> lines) {
        ComparedBand band = answer.band();
        if (band == null) {
            return;
        }
        lines.add("");
        String draws = String.valueOf(band.draws());
        Console.wrap(Prose.text("compare.band", draws, String.valueOf(band.seed()), Compared.letter(0)), 2, lines);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= 2; i++) {
            String head = Prose.text("compare.band.head." + i, units.unit(Measure.HEAT), Compared.letter(0));
            rows.add(List.of(head.split("\\|", -1)));
        }
        for (int i = 0; i < answer.all().size(); i++) {
            rows.add(bandCells(i, answer.all().get(i), band.all().get(i), units));
        }
        lines.addAll(set(rows, Set.of(0, 6)));
    }

    private static List<String> bandCells(int index, Comparison.One one, ComparedBand.Entry entry, Units units) {
        double heat = units.value(Measure.HEAT, 1);
        int decimals = units.decimals(Measure.HEAT);
        Spread demand = entry.demand().own();
        Spread bill = entry.shortfallHeat().own();
        boolean first = index == 0 || Double.isNaN(entry.shortfallHeat().more().low());
        return List.of(
                name(index, one),
                Double.isNaN(bill.low()) ? Figures.NONE : String.valueOf(entry.holding()),
                Figures.range(demand.low(), demand.high(), 2),
                Figures.range(heat * bill.low(), heat * bill.high(), decimals),
                first ? Figures.NONE : Compared.ends(entry.demand().more(), 1, 2),
                first ? Figures.NONE : Compared.ends(entry.shortfallHeat().more(), heat, decimals),
                first ? "" : Prose.text("compare.told." + Compared.told(entry).name()));
    }

    private static void pressures(Comparison.Answer answer, Units units, List<String> lines) {
        lines.add("");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                Prose.text("compare.stress.head", units.unit(Measure.HEAT)).split("\\|", -1)));
        for (int i = 0; i < answer.all().size(); i++) {
            Comparison.One one = answer.all().get(i);
            Pressure pressure = one.pressure();
            if (pressure == null) {
                continue;
            }
            List<String> cells = new ArrayList<>();
            cells.add(name(i, one));
            cells.add(units.number(Measure.HEAT, pressure.bill()));
            for (Stress stress : Stress.values()) {
                cells.add(units.number(Measure.HEAT, pressure.saved().getOrDefault(stress, Double.NaN)));
            }
            cells.add(Compared.limiting(pressure));
            rows.add(cells);
        }
        lines.addAll(set(rows, Set.of(0, rows.get(0).size() - 1)));
    }

    /** Rows as a table; a column is as wide as its widest cell. Columns of words begin, all others end, at one line. */
    static List<String> set(List<List<String>> rows, Set<Integer> words) {
        int columns = rows.get(0).size();
        int[] width = IntStream.range(0, columns)
                .map(k ->
                        rows.stream().mapToInt(row -> row.get(k).length()).max().orElse(0))
                .toArray();
        return rows.stream()
                .map(row -> {
                    StringBuilder line = new StringBuilder();
                    for (int k = 0; k < columns; k++) {
                        String cell = row.get(k);
                        String room = " ".repeat(width[k] - cell.length());
                        line.append(k == 0 ? "" : words.contains(k) || words.contains(k - 1) ? "  " : " ")
                                .append(words.contains(k) ? cell + room : room + cell);
                    }
                    return line.toString().stripTrailing();
                })
                .toList();
    }
}
