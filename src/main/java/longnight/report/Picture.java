package longnight.report;

import java.util.List;
import java.util.function.Consumer;

/**
 * One picture, twice: the same strokes as pixels and as vectors.
 *
 * @param png pixels
 * @param svg vectors with real text
 */
record Picture(byte[] png, byte[] svg) {

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
        String description =
                Prose.text("chart.description", frame.headline(), frame.warning(), String.join(" ", frame.cautions()));
        return new Picture(sheet.png(), sheet.svg(frame.title() + ": " + frame.about(), description));
    }
}
