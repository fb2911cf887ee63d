package longnight.report;

import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The files of one answer before they are written: texts, and pictures still to be drawn. */
public final class Bundle {
    private final List<String> names;
    private final Map<String, Supplier<Picture>> pictures = new LinkedHashMap<>();
    private final Map<String, Supplier<Page>> pages = new LinkedHashMap<>();
    private final Map<String, Supplier<byte[]>> sheets = new LinkedHashMap<>();
    private final Map<String, String> texts = new LinkedHashMap<>();
    private @Nullable String notes;

    /**
     * An empty bundle.
     *
     * @param names every file that an answer of this kind may ever have; the folder's owner for these names
     */
    Bundle(List<String> names) {
        this.names = all(names);
    }

    /** The same names, and for each picture those of its other shapes. */
    static List<String> all(List<String> names) {
        List<String> all = new ArrayList<>();
        for (String name : names) {
            all.add(name);
            if (name.endsWith(Picture.TALL)) {
                String picture = name.substring(0, name.length() - Picture.TALL.length());
                all.addAll(List.of(picture + Picture.SLIDE, picture + Picture.PRINT));
            }
        }
        return List.copyOf(all);
    }

    List<String> names() {
        return names;
    }

    /** Adds a picture, to be drawn when the bundle is written: tall, as a slide, for print and as vectors. */
    Bundle picture(String name, Supplier<Picture> drawing) {
        require(name + Picture.TALL);
        require(name + Picture.VECTORS);
        pictures.put(name, drawing);
        return this;
    }

    /** Adds a text. */
    Bundle file(String name, String text) {
        require(name);
        texts.put(name, text);
        return this;
    }

    /** Adds the text that also says why pictures are missing, should they. */
    Bundle notes(String name, String text) {
        notes = name;
        return file(name, text);
    }

    /** Adds a page with pictures in it; where none can be drawn it is left out, like the pictures themselves. */
    Bundle page(String name, Supplier<Page> page) {
        require(name);
        pages.put(name, page);
        return this;
    }

    /** Adds a file that is no text, to be made when the bundle is written; left out like a page where it cannot be made. */
    Bundle sheet(String name, Supplier<byte[]> sheet) {
        require(name);
        sheets.put(name, sheet);
        return this;
    }

    /** Adds the page of an answer about many nights, made of what the bundle holds when it is written. */
    Bundle report(AnswerPage page) {
        return page(AnswerPage.FILE, () -> page.made(pictures, texts));
    }

    private void require(String name) {
        if (!names.contains(name)) {
            throw new IllegalArgumentException(name + " is not among the files of this answer: " + names);
        }
    }

    /** Makes every file in memory; returns why pictures are missing, or null. */
    @Nullable
    String make(Map<String, byte[]> files) {
        @Nullable String note = draw(files);
        texts.forEach((name, text) -> files.put(
                name,
                (note != null && name.equals(notes) ? text + "\n" + note + "\n" : text)
                        .getBytes(StandardCharsets.UTF_8)));
        return note;
    }

    /**
     * Adds the pictures. A toolkit that lacks a library or a font fails with errors, not exceptions; the figures must reach the
     * reader all the same.
     */
    private @Nullable String draw(Map<String, byte[]> files) {
        Map<String, byte[]> drawn = new LinkedHashMap<>();
        try {
            pictures.forEach((name, drawing) -> {
                Picture picture = drawing.get();
                picture.draw((ending, file) -> drawn.put(name + ending, file));
            });
            sheets.forEach((name, sheet) -> drawn.put(name, sheet.get()));
            pages.forEach((name, page) -> drawn.put(name, Html.text(page.get()).getBytes(StandardCharsets.UTF_8)));
        } catch (Error | UncheckedIOException fault) {
            return Prose.text("chart.missing", fault.toString());
        }
        files.putAll(drawn);
        return null;
    }
}
