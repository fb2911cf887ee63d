package longnight.report;

import java.util.List;
import java.util.function.Consumer;

/**
 * One picture, to be drawn as pixels and as vectors from the same strokes.
 *
 * @param frame   what stands around the drawing where it travels alone
 * @param content draws what is between
 */
record Picture(Frame frame, Consumer<Sheet> content) {

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

    /** Pixels. */
    byte[] png() {
        return whole().png();
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

    private Sheet whole() {
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
