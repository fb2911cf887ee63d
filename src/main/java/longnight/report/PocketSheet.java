package longnight.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.Collectors;
import longnight.night.Caution;
import longnight.report.Leaf.Block;
import longnight.report.Leaf.Look;
import longnight.study.Pocket;
import org.jspecify.annotations.Nullable;

/**
 * One night on one sheet of paper to take along. All type is of one size; letters move closer before anything is left out, and what is
 * left out is said on the sheet.
 */
final class PocketSheet {
    /** From what reads best to the closest that still does: engineering estimates, no source; looked at in print size. */
    private static final List<Look> LOOKS = List.of(
            new Look(0.90f, 14, 3),
            new Look(0.86f, 13.4f, 3),
            new Look(0.82f, 13, 3),
            new Look(0.79f, 12.7f, 2),
            new Look(0.76f, 12.4f, 1),
            new Look(0.73f, 12.2f, 0));

    /** What is given up, one more at each step; an empty line is not missed. */
    private enum Saving {
        NOTES,
        GUESSES,
        CAUTIONS,
        ROWS,
        VERDICT
    }

    private static final int LEAST_ROWS = 3;

    private final Pocket pocket;
    private final PocketWords words;
    private final Units units;
    private final String footer;

    private PocketSheet(Pocket pocket, Units units, String footer) {
        this.pocket = pocket;
        this.units = units;
        this.footer = footer;
        words = new PocketWords(pocket, units);
    }

    /**
     * The sheet as a file.
     *
     * @param fingerprint of the answer, hexadecimal
     * @param day         it carries; null for a line to write it on
     */
    static byte[] pdf(Pocket pocket, Units units, Paper paper, String fingerprint, @Nullable LocalDate day) {
        String made = Prose.text("pocket.made", MadeBy.version(), fingerprint, String.valueOf(pocket.nights()));
        PocketSheet sheet = new PocketSheet(pocket, units, made + (day == null ? "" : " " + day + "."));
        try (Leaf leaf = new Leaf(paper)) {
            return leaf.drawn(
                    sheet.filled(leaf, day),
                    Prose.text("pocket.title") + " " + sheet.words.who(),
                    "longnight " + MadeBy.version(),
                    Long.parseUnsignedLong(fingerprint, 16),
                    day == null ? null : calendar(day));
        }
    }

    private static Calendar calendar(LocalDate day) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        calendar.clear();
        calendar.set(day.getYear(), day.getMonthValue() - 1, day.getDayOfMonth());
        return calendar;
    }

    private Leaf.Filled filled(Leaf leaf, @Nullable LocalDate day) {
        List<Saving> savings = new ArrayList<>();
        for (int step = 0; step <= Saving.values().length; step++) {
            int least =
                    savings.contains(Saving.ROWS) ? LEAST_ROWS : pocket.rows().size();
            for (int rows = pocket.rows().size(); rows >= least; rows--) {
                for (Look look : LOOKS) {
                    Optional<Leaf.Filled> filled = leaf.fill(blocks(savings, rows, day), look);
                    if (filled.isPresent()) {
                        return filled.get();
                    }
                }
            }
            if (step < Saving.values().length) {
                savings.add(Saving.values()[step]);
            }
        }
        throw new IllegalStateException("the sheet cannot hold its cautions");
    }

    private List<Block> blocks(List<Saving> savings, int rows, @Nullable LocalDate day) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Leaf.Paragraph(Prose.text("pocket.title"), words.who()));
        if (!savings.contains(Saving.VERDICT)) {
            blocks.add(new Leaf.Paragraph("", Wording.verdict(pocket.asPlanned(), units)));
        }
        blocks.add(grid(rows));
        blocks.add(paragraph("legend", words.legend()));
        blocks.add(paragraph("kit", words.kit()));
        blocks.add(paragraph("when", words.onAndOff()));
        blocks.add(paragraph("helps", words.helps()));
        blocks.add(paragraph("omissions", words.omissions()));
        blocks.add(paragraph("eat", words.food() + " " + words.drill()));
        blocks.add(paragraph("guessed", words.guessed(savings.contains(Saving.GUESSES))));
        blocks.add(new Leaf.Paragraph(Prose.text("pocket.head.caution"), cautions(savings.contains(Saving.CAUTIONS))));
        blocks.add(new Leaf.Pencil(List.of(Prose.text("pocket.pencil.exit"), Prose.text("pocket.pencil.latest"))));
        blocks.add(new Leaf.Pencil(List.of(Prose.text("pocket.pencil.words"), Prose.text("pocket.pencil.call"))));
        blocks.add(new Leaf.Pencil(
                day == null
                        ? List.of(Prose.text("pocket.pencil.names"), Prose.text("pocket.pencil.date"))
                        : List.of(Prose.text("pocket.pencil.names"))));
        if (!savings.contains(Saving.NOTES)) {
            blocks.add(new Leaf.Pencil(List.of(Prose.text("pocket.pencil.notes"))));
        }
        blocks.add(new Leaf.Paragraph("", footer + left(savings, rows)));
        return blocks;
    }

    private static Block paragraph(String head, String text) {
        return new Leaf.Paragraph(Prose.text("pocket.head." + head), text);
    }

    private String left(List<Saving> savings, int rows) {
        List<String> left = savings.stream()
                .filter(saving -> saving != Saving.NOTES)
                .filter(saving -> saving != Saving.ROWS || rows < pocket.rows().size())
                .map(saving -> Prose.text("pocket.left." + saving.name()))
                .toList();
        return left.isEmpty() ? "" : " " + Prose.text("pocket.left", String.join("; ", left));
    }

    private String cautions(boolean isBrief) {
        return pocket.cautions().stream()
                .map(caution -> isBrief && caution != Caution.PLANNING_AID
                        ? Wording.shortText(caution, units)
                        : Wording.fullText(caution, units))
                .collect(Collectors.joining(" "));
    }

    /** With fewer rows the warmest are left out first, then the coldest, by turns. */
    private Leaf.Grid grid(int rows) {
        int all = pocket.rows().size();
        int first = (all - rows + 1) / 2;
        List<String> winds = new ArrayList<>(List.of(Prose.text("pocket.wind")));
        List<String> begun = new ArrayList<>(List.of(words.airUnit()));
        for (double wind : Pocket.WINDS) {
            winds.add(Prose.text("pocket.wind.head", words.wind(wind)));
            winds.add("");
            begun.add(Prose.text("pocket.dry"));
            begun.add(Prose.text("pocket.damp"));
        }
        List<List<String>> lines = new ArrayList<>();
        for (Pocket.Row row : pocket.rows().subList(first, first + rows)) {
            lines.add(line(row, 0, Prose.text("pocket.typical", words.air(row))));
            lines.add(line(row, 1, Prose.text("pocket.weakest")));
        }
        return new Leaf.Grid(List.of(winds, begun), lines);
    }

    private List<String> line(Pocket.Row row, int person, String head) {
        List<String> cells = new ArrayList<>(List.of(head));
        for (int wind = 0; wind < Pocket.WINDS.size(); wind++) {
            for (boolean damp : new boolean[] {false, true}) {
                Pocket.Cell cell = row.cell(person, wind, damp);
                cells.add((PocketWords.holds(cell) ? "" : "!") + words.cell(cell));
            }
        }
        return cells;
    }
}
