package longnight.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/**
 * One sheet of paper in black and white, set as PDF in one size of type. What stands on it is handed over as blocks; whether they
 * all fit is told before anything is drawn.
 */
final class Leaf implements AutoCloseable {
    /** Read by a headlamp with cold eyes: no smaller [pt]. */
    static final float SIZE = 12;

    /** Printers leave about so much white [pt]. */
    private static final float MARGIN = 17;

    /** Marks at the edges where the sheet is folded in half, and in half again. */
    private static final float FOLD_MARK = 11;

    /** No line of type lies on the fold across the middle [pt]. */
    private static final float FOLD = 2;

    private static final float ASCENT = 0.77f * SIZE;
    private static final float DESCENT = 0.24f * SIZE;
    private static final float GAP = 5;
    private static final float PENCIL = 19;
    private static final String MISSING = "\u25a1";

    private final PDDocument document = new PDDocument();
    private final Paper paper;
    private final PDType0Font plain;
    private final PDType0Font bold;

    /** Something on the sheet. */
    sealed interface Block {}

    /** A paragraph that begins with a word in bold. */
    record Paragraph(String head, String text) implements Block {}

    /** Empty lines to write on, several beside each other. */
    record Pencil(List<String> labels) implements Block {}

    /**
     * A table whose first column is in bold.
     *
     * @param heads lines of heads; an empty head belongs to the one before it
     * @param rows  of cells; a cell that begins with an exclamation mark is in bold, and a row whose first cell begins with a blank
     *     belongs to the row before it
     */
    record Grid(List<List<String>> heads, List<List<String>> rows) implements Block {}

    /**
     * How dense the type is.
     *
     * @param width share of the letters' usual width
     * @param pitch from line to line [pt]
     * @param gap   before a paragraph, besides [pt]
     */
    record Look(float width, float pitch, float gap) {}

    /** A piece of a line. */
    private record Run(String text, boolean isBold, float x, float y) {}

    private record Rule(float x1, float y1, float x2, float y2, float thickness) {}

    /** A sheet filled but not yet drawn. */
    record Filled(Look look, List<Run> runs, List<Rule> rules) {}

    Leaf(Paper paper) {
        this.paper = paper;
        plain = font("DejaVuSans.ttf");
        bold = font("DejaVuSans-Bold.ttf");
    }

    private PDType0Font font(String name) {
        try (InputStream in = Leaf.class.getResourceAsStream("fonts/" + name)) {
            if (in == null) {
                throw new IllegalStateException("The bundled font " + name + " is missing.");
            }
            return PDType0Font.load(document, in, true);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The sheet with all blocks on it, or nothing where they do not fit in this look. */
    Optional<Filled> fill(List<Block> blocks, Look look) {
        return new Filling(look).filled(blocks);
    }

    /**
     * The file.
     *
     * @param title    of the document
     * @param producer what made it
     * @param number   what the file is known by: the same for the same question
     * @param day      the date it carries; null for none
     */
    byte[] drawn(Filled filled, String title, String producer, long number, @Nullable Calendar day) {
        PDPage page = new PDPage(new PDRectangle(paper.width, paper.height));
        document.addPage(page);
        document.setDocumentId(number);
        document.getDocumentCatalog().setLanguage("en");
        PDDocumentInformation about = document.getDocumentInformation();
        about.setTitle(title);
        about.setProducer(producer);
        if (day != null) {
            about.setCreationDate(day);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            try (PDPageContentStream pen = new PDPageContentStream(document, page)) {
                draw(pen, filled);
            }
            document.save(out);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // memory does not fail
        }
        return out.toByteArray();
    }

    private void draw(PDPageContentStream pen, Filled filled) throws IOException {
        for (Rule rule : filled.rules()) {
            line(pen, rule);
        }
        float x = paper.width / 2;
        float y = paper.height / 2;
        line(pen, new Rule(0, y, FOLD_MARK, y, 1));
        line(pen, new Rule(paper.width - FOLD_MARK, y, paper.width, y, 1));
        line(pen, new Rule(x, 0, x, FOLD_MARK, 1));
        line(pen, new Rule(x, paper.height - FOLD_MARK, x, paper.height, 1));
        pen.beginText();
        pen.setHorizontalScaling(100 * filled.look().width());
        float lastX = 0;
        float lastY = 0;
        for (Run run : filled.runs()) {
            pen.setFont(run.isBold() ? bold : plain, SIZE);
            pen.newLineAtOffset(run.x() - lastX, run.y() - lastY);
            pen.showText(run.text());
            lastX = run.x();
            lastY = run.y();
        }
        pen.endText();
    }

    private static void line(PDPageContentStream pen, Rule rule) throws IOException {
        pen.setLineWidth(rule.thickness());
        pen.moveTo(rule.x1(), rule.y1());
        pen.lineTo(rule.x2(), rule.y2());
        pen.stroke();
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    // --- Letters ---

    /** A box for what the font has no letter for, and one line of it all. */
    private String shown(String text) {
        StringBuilder shown = new StringBuilder();
        Wording.clean(text).replace('\n', ' ').codePoints().forEach(letter -> {
            String one = Character.toString(letter);
            shown.append(has(one) ? one : MISSING);
        });
        return shown.toString();
    }

    private boolean has(String letter) {
        try {
            plain.encode(letter);
            bold.encode(letter);
            return true;
        } catch (IllegalArgumentException none) {
            return false;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** In the order in which it is drawn from left to right. */
    private static String ordered(String text) {
        char[] letters = text.toCharArray();
        if (!Bidi.requiresBidi(letters, 0, letters.length)) {
            return text;
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        byte[] levels = new byte[bidi.getRunCount()];
        String[] runs = new String[levels.length];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String run = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            runs[i] =
                    levels[i] % 2 == 0 ? run : new StringBuilder(run).reverse().toString();
        }
        Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
        return String.join("", runs);
    }

    private float width(String text, boolean isBold, Look look) {
        try {
            return (isBold ? bold : plain).getStringWidth(text) / 1000 * SIZE * look.width();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Puts blocks below each other. */
    private final class Filling {
        private final Look look;
        private final List<Run> runs = new ArrayList<>();
        private final List<Rule> rules = new ArrayList<>();
        private float y = paper.height - MARGIN;
        private boolean tooWide;

        Filling(Look look) {
            this.look = look;
        }

        Optional<Filled> filled(List<Block> blocks) {
            for (Block block : blocks) {
                if (block instanceof Paragraph paragraph) {
                    paragraph(paragraph);
                } else if (block instanceof Pencil pencil) {
                    pencil(pencil);
                } else if (block instanceof Grid grid) {
                    grid(grid);
                }
            }
            return tooWide || y < MARGIN ? Optional.empty() : Optional.of(new Filled(look, runs, rules));
        }

        /** The baseline of the next line of a height; never across the fold. */
        private float next(float height) {
            float baseline = y - (height - DESCENT);
            float fold = paper.height / 2;
            if (baseline + ASCENT > fold - FOLD && baseline - DESCENT < fold + FOLD) {
                y = fold - FOLD;
                baseline = y - (height - DESCENT);
            }
            y -= height;
            return baseline;
        }

        private void paragraph(Paragraph paragraph) {
            float right = paper.width - MARGIN;
            y -= look.gap();
            String head = shown(paragraph.head());
            float baseline = next(look.pitch());
            float x = MARGIN;
            if (!head.isEmpty()) {
                runs.add(new Run(head, true, x, baseline));
                x += width(head + " ", true, look);
            }
            StringBuilder line = new StringBuilder();
            float start = x;
            for (String word : words(shown(paragraph.text()))) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (!line.isEmpty() && start + width(ordered(longer), false, look) > right) {
                    runs.add(new Run(ordered(line.toString()), false, start, baseline));
                    baseline = next(look.pitch());
                    start = MARGIN;
                    line.setLength(0);
                    longer = word;
                }
                line.replace(0, line.length(), longer);
            }
            if (!line.isEmpty()) {
                runs.add(new Run(ordered(line.toString()), false, start, baseline));
                tooWide |= start + width(ordered(line.toString()), false, look) > right;
            }
        }

        /** Words no longer than fits on half a line. */
        private List<String> words(String text) {
            List<String> words = new ArrayList<>();
            for (String word : text.split(" +")) {
                String left = word;
                while (width(left, false, look) > paper.width / 2) {
                    int cut = left.offsetByCodePoints(0, Math.min(30, left.codePointCount(0, left.length())));
                    words.add(left.substring(0, cut));
                    left = left.substring(cut);
                }
                if (!left.isEmpty()) {
                    words.add(left);
                }
            }
            return words;
        }

        private void pencil(Pencil pencil) {
            float baseline = next(PENCIL);
            float each = (paper.width - 2 * MARGIN) / pencil.labels().size();
            for (int i = 0; i < pencil.labels().size(); i++) {
                String label = shown(pencil.labels().get(i));
                float x = MARGIN + i * each;
                float end = x + width(label, true, look) + GAP;
                runs.add(new Run(label, true, x, baseline));
                rules.add(new Rule(end, baseline - 1, x + each - GAP, baseline - 1, 0.6f));
                tooWide |= end + 40 > x + each;
            }
        }

        private void grid(Grid grid) {
            int columns = grid.rows().get(0).size();
            float first = 0;
            for (List<String> row : grid.rows()) {
                first = Math.max(first, width(shown(row.get(0)), true, look));
            }
            for (List<String> head : grid.heads()) {
                first = Math.max(first, width(shown(head.get(0)), true, look));
            }
            float left = MARGIN + first + GAP;
            float each = (paper.width - MARGIN - left) / (columns - 1);
            for (List<String> head : grid.heads()) {
                rule();
                cells(head, left, each, true);
            }
            for (List<String> row : grid.rows()) {
                if (!row.get(0).startsWith(" ")) {
                    rule();
                }
                cells(row, left, each, false);
            }
            rule();
            y -= 2;
        }

        private void rule() {
            rules.add(new Rule(MARGIN, y, paper.width - MARGIN, y, 0.4f));
        }

        private void cells(List<String> cells, float left, float each, boolean isHead) {
            float baseline = next(look.pitch());
            for (int i = 0; i < cells.size(); i++) {
                boolean marked = cells.get(i).startsWith("!");
                boolean isBold = isHead || i == 0 || marked;
                String text = ordered(shown(marked ? cells.get(i).substring(1) : cells.get(i)));
                if (text.isEmpty()) {
                    continue;
                }
                float x = i == 0 ? left - GAP - width(text, true, look) : left + (i - 1) * each;
                int spans = 1;
                while (isHead
                        && i > 0
                        && i + spans < cells.size()
                        && cells.get(i + spans).isEmpty()) {
                    spans++;
                }
                runs.add(new Run(text, isBold, x, baseline));
                tooWide |= i > 0 && width(text, isBold, look) > spans * each - 3;
            }
        }
    }
}
