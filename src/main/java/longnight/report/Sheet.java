package longnight.report;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * A tall sheet of blocks one below the other, wide enough for big type and as high as it needs to be, drawn as PNG and
 * as SVG from the same strokes. Three of its pixels are one on a narrow phone.
 */
final class Sheet {
    static final int WIDTH = 1080;
    static final int MARGIN = 36;
    static final float TITLE = 46;
    static final float HEADING = 37;
    static final float TEXT = 33;
    static final float SMALL = 29;

    static final Color PAPER = new Color(0xFBFAF6);
    static final Color INK = new Color(0x14181F);

    /** From this height on a block is a drawing, above which a column may end [px]. */
    private static final double DRAWING = 250;

    private static final int MOST_COLUMNS = 4;

    private static final String SVG = "http://www.w3.org/2000/svg";

    private final List<Block> blocks = new ArrayList<>();
    private double height = MARGIN;

    /** Heights at which a column may end and the next begin [px]: above headings, boxes and drawings without one. */
    private final TreeSet<Double> seams = new TreeSet<>();

    /** Where the bold line right above begins, which belongs to the drawing that may follow [px]; NaN when there is none. */
    private double headedFrom = Double.NaN;

    /** Something of a known height that draws itself with its upper left corner at (0, top). */
    private record Block(double top, Strokes strokes) {}

    /** Draws at a height on the sheet [px]. */
    interface Strokes {
        void draw(Graphics2D pen, double top);
    }

    /** Adds a block of a height [px]. */
    void block(double blockHeight, Strokes strokes) {
        if (blockHeight >= DRAWING) {
            seams.add(Double.isNaN(headedFrom) ? height : headedFrom);
        }
        if (blockHeight > 0) {
            headedFrom = Double.NaN;
        }
        blocks.add(new Block(height, strokes));
        height += blockHeight;
    }

    void space(double gap) {
        height += gap;
    }

    /** Adds a paragraph, broken to the width of the sheet. */
    void text(String text, Font font) {
        double from = height;
        if (font.isBold() && font.getSize2D() == HEADING) {
            seams.add(from);
        }
        text(text, font, MARGIN, WIDTH - 2.0 * MARGIN);
        headedFrom = font.isBold() && font.getSize2D() <= HEADING ? from : Double.NaN;
    }

    private void text(String text, Font font, double left, double width) {
        for (String line : wrapped(text, font, width)) {
            block(lineHeight(font), (pen, top) -> line(pen, line, font, left, top));
        }
    }

    /** Adds one entry of a key: a swatch of the area's look, then its text. */
    void key(String text, Font font, Color fill) {
        double size = 0.8 * lineHeight(font);
        block(0, (pen, top) -> {
            Shape swatch = new Rectangle2D.Double(MARGIN, top + 0.12 * size, 1.5 * size, size);
            pen.setPaint(fill);
            pen.fill(swatch);
            pen.setPaint(INK);
            pen.draw(swatch);
        });
        double left = MARGIN + 1.9 * size;
        text(text, font, left, WIDTH - MARGIN - left);
    }

    /** Adds one entry of a key: a stretch of a line's look, then its text. */
    void key(String text, Font font, Paint paint, Stroke stroke) {
        double length = 110;
        block(0, (pen, top) -> {
            double middle = top + 0.5 * lineHeight(font);
            pen.setPaint(paint);
            pen.setStroke(stroke);
            pen.draw(new Line2D.Double(MARGIN, middle, MARGIN + length, middle));
            pen.setPaint(INK);
        });
        double left = MARGIN + length + 20;
        text(text, font, left, WIDTH - MARGIN - left);
    }

    /** Adds a framed box: a heading and paragraphs in it. */
    void box(String heading, List<String> paragraphs) {
        Font bold = Fonts.bold(TEXT);
        Font plain = Fonts.plain(SMALL);
        double pad = 20;
        double width = WIDTH - 2.0 * MARGIN - 2 * pad;
        double inside = lineHeight(bold);
        for (String paragraph : paragraphs) {
            inside += wrapped(paragraph, plain, width).size() * lineHeight(plain) + 10;
        }
        double boxHeight = inside + 2 * pad;
        seams.add(height);
        block(0, (pen, top) -> {
            Rectangle2D frame = new Rectangle2D.Double(MARGIN, top, WIDTH - 2.0 * MARGIN, boxHeight);
            pen.setPaint(Color.WHITE);
            pen.fill(frame);
            pen.setPaint(INK);
            pen.setStroke(new java.awt.BasicStroke(3));
            pen.draw(frame);
        });
        space(pad);
        text(heading, bold, MARGIN + pad, width);
        for (String paragraph : paragraphs) {
            text(paragraph, plain, MARGIN + pad, width);
            space(10);
        }
        space(pad);
    }

    private static void line(Graphics2D pen, String line, Font font, double left, double top) {
        pen.setFont(font);
        pen.setPaint(INK);
        pen.drawString(line, (float) left, (float) (top + 0.78 * lineHeight(font)));
    }

    static double lineHeight(Font font) {
        return 1.24 * font.getSize2D();
    }

    /** Width of a text [px], the same on every drawing surface. */
    static double width(String text, Font font) {
        return font.getStringBounds(text, new FontRenderContext(null, true, true))
                .getWidth();
    }

    private static List<String> wrapped(String text, Font font, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text, font, width)) {
            if (line.length() > 0 && width(line + " " + word, font) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** Its words; one that is wider than the sheet in pieces that are not. */
    private static List<String> words(String text, Font font, double width) {
        List<String> words = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            while (width(rest, font) > width) {
                int end = rest.offsetByCodePoints(0, 1);
                while (width(rest.substring(0, rest.offsetByCodePoints(end, 1)), font) <= width) {
                    end = rest.offsetByCodePoints(end, 1);
                }
                words.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            words.add(rest);
        }
        return words;
    }

    int height() {
        return (int) Math.ceil(height + MARGIN);
    }

    private void draw(Graphics2D pen) {
        prepare(pen);
        pen.fill(new Rectangle2D.Double(0, 0, WIDTH, height()));
        for (Block block : blocks) {
            draw(pen, block);
        }
    }

    private static void draw(Graphics2D pen, Block block) {
        pen.setStroke(new java.awt.BasicStroke(2));
        block.strokes().draw(pen, block.top());
    }

    private static void prepare(Graphics2D pen) {
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setFont(Fonts.plain(TEXT));
        pen.setPaint(PAPER);
    }

    byte[] png() {
        return png(WIDTH, height(), this::draw);
    }

    /**
     * The same on a page of a given shape [px]: in as many columns as let it be largest, nothing cut in two.
     *
     * @param pageWidth  of the whole page
     * @param pageHeight of the whole page
     */
    byte[] png(int pageWidth, int pageHeight) {
        Columns columns = columns(pageWidth, pageHeight);
        return png(pageWidth, pageHeight, pen -> draw(pen, columns, pageWidth, pageHeight));
    }

    /** The columns that let it be largest on a page. */
    Columns columns(int pageWidth, int pageHeight) {
        Columns best = Columns.of(starts(), height, MARGIN, 1);
        for (int count = 2; count <= MOST_COLUMNS; count++) {
            Columns other = Columns.of(starts(), height, MARGIN, count);
            best = other.scale(WIDTH, pageWidth, pageHeight) > best.scale(WIDTH, pageWidth, pageHeight) ? other : best;
        }
        return best;
    }

    /** Where columns may begin, the upper edge first [px]. */
    private List<Double> starts() {
        List<Double> starts = new ArrayList<>(List.of((double) MARGIN));
        seams.stream().filter(seam -> seam > MARGIN).forEach(starts::add);
        return starts;
    }

    private void draw(Graphics2D pen, Columns columns, int pageWidth, int pageHeight) {
        double scale = columns.scale(WIDTH, pageWidth, pageHeight);
        List<Double> starts = columns.starts();
        prepare(pen);
        pen.fill(new Rectangle2D.Double(0, 0, pageWidth, pageHeight));
        pen.translate(0.5 * (pageWidth - scale * WIDTH * starts.size()), 0);
        pen.scale(scale, scale);
        for (int i = 0; i < starts.size(); i++) {
            double from = starts.get(i);
            double to = i + 1 < starts.size() ? starts.get(i + 1) : Double.POSITIVE_INFINITY;
            Graphics2D column = (Graphics2D) pen.create();
            column.translate((double) i * WIDTH, MARGIN - from);
            for (Block block : blocks) {
                if (block.top() >= from && block.top() < to) {
                    draw(column, block);
                }
            }
            column.dispose();
        }
    }

    private static byte[] png(int pixelsWide, int pixelsHigh, Consumer<Graphics2D> drawing) {
        BufferedImage image = new BufferedImage(pixelsWide, pixelsHigh, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        drawing.accept(pen);
        pen.dispose();
        ImageIO.setUseCache(false);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return bytes.toByteArray();
    }

    /**
     * The sheet as SVG with real text; it scales to whatever shows it.
     *
     * @param title       read out in place of the picture
     * @param description what the picture shows, in words
     */
    byte[] svg(String title, String description) {
        try {
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setComment(null);
            context.setPrecision(2);
            SVGGraphics2D pen = new SVGGraphics2D(context, false);
            draw(pen);
            Element root = pen.getRoot();
            root.setAttribute("viewBox", "0 0 " + WIDTH + " " + height());
            root.setAttribute("role", "img");
            root.insertBefore(element(document, "desc", description), root.getFirstChild());
            root.insertBefore(element(document, "title", title), root.getFirstChild());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            Writer writer = new OutputStreamWriter(bytes, StandardCharsets.UTF_8);
            pen.stream(root, writer, true, false);
            writer.flush();
            // Our face where it is installed, and otherwise whatever plain face the reader has.
            String text = bytes.toString(StandardCharsets.UTF_8)
                    .replaceAll(
                            "font-family:\\s*'?(Dialog|DejaVu Sans Bold|DejaVu Sans|sans-serif)'?",
                            "font-family:'DejaVu Sans', sans-serif");
            return text.getBytes(StandardCharsets.UTF_8);
        } catch (ParserConfigurationException fault) {
            throw new IllegalStateException(fault);
        } catch (SVGGraphics2DIOException fault) {
            throw new UncheckedIOException(fault);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static Element element(Document document, String name, String text) {
        Element element = document.createElementNS(SVG, name);
        element.setTextContent(text);
        return element;
    }
}
