package longnight.report;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * One picture, to be drawn as pixels and as vectors from the same strokes.
 *
 * @param frame   what stands around the drawing where it travels alone
 * @param content draws what is between
 */
record Picture(Frame frame, Consumer<Sheet> content) {

    /** A slide, 16 to 9 [px]. */
    private static final int SLIDE_WIDTH = 1920;

    private static final int SLIDE_HEIGHT = 1080;

    /** A sheet of A4 upright, 200 to the inch [px]. */
    private static final int PRINT_WIDTH = 1654;

    private static final int PRINT_HEIGHT = 2339;

    /**
     * What stands around a drawing, because pictures travel alone.
     *
     * @param title    what kind of picture it is
     * @param headline the answer, in large type
     * @param warning  in bold below it; empty for none
     * @param about    whose night, kit and weather
     * @param cautions one paragraph each, boxed at the foot; never empty
     */
    record Frame(String title, String headline, String warning, String about, List<String> cautions) {
        Frame {
            if (cautions.isEmpty()) {
                throw new IllegalArgumentException("a picture without cautions: " + title);
            }
        }
    }

    /** The answer above, cautions below, and the content between them. */
    static Picture framed(Frame frame, Consumer<Sheet> content) {
        return new Picture(frame, content);
    }

    /** Endings of a picture's files: tall, as a slide, for print, as vectors with real text. */
    static final String TALL = ".png";

    static final String SLIDE = "-slide.png";
    static final String PRINT = "-print.png";
    static final String VECTORS = ".svg";

    /** Makes all its files; they are told with their endings. */
    void draw(BiConsumer<String, byte[]> files) {
        Sheet sheet = whole();
        files.accept(TALL, sheet.png());
        files.accept(SLIDE, sheet.png(SLIDE_WIDTH, SLIDE_HEIGHT));
        files.accept(PRINT, sheet.png(PRINT_WIDTH, PRINT_HEIGHT));
        files.accept(VECTORS, svg(sheet));
    }

    /** Vectors with real text. */
    byte[] svg() {
        return svg(whole());
    }

    /** The content alone as vectors, for a page that says the answer and carries the cautions itself. */
    byte[] inPage() {
        Fonts.install();
        Sheet sheet = new Sheet();
        content.accept(sheet);
        return svg(sheet);
    }

    Sheet whole() {
        Fonts.install();
        Sheet sheet = new Sheet();
        sheet.text(frame.title(), Fonts.plain(Sheet.HEADING));
        sheet.space(6);
        sheet.text(frame.headline(), Fonts.bold(Sheet.TITLE));
        sheet.space(6);
        if (!frame.warning().isEmpty()) {
            sheet.text(frame.warning(), Fonts.bold(Sheet.TEXT));
        }
        sheet.text(frame.about(), Fonts.plain(Sheet.TEXT));
        sheet.space(24);
        content.accept(sheet);
        sheet.box(Prose.text("caution.heading"), frame.cautions());
        return sheet;
    }

    /** A picture saved out of a page still has the cautions in its description. */
    private byte[] svg(Sheet sheet) {
        String description =
                Prose.text("chart.description", frame.headline(), frame.warning(), String.join(" ", frame.cautions()));
        return sheet.svg(frame.title() + ": " + frame.about(), description);
    }
}
