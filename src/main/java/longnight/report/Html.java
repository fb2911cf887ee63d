package longnight.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

/**
 * A page set as one HTML file that needs nothing but itself: no script, no network. Pictures are vectors inside it, wide tables
 * scroll in a frame of their own, and print and dark screens have their own look.
 */
final class Html {
    /** A longer cell holds words and no figure. */
    private static final int WORDS = 20;

    private final StringBuilder out = new StringBuilder();

    private Html() {}

    /**
     * The whole file.
     *
     * @throws IllegalArgumentException when the page carries no caution
     */
    static String text(Page page) {
        if (page.cautions.isEmpty()) {
            throw new IllegalArgumentException("a page without cautions: " + page.title);
        }
        Html html = new Html();
        html.page(page);
        return html.out.toString();
    }

    private void page(Page page) {
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        out.append("<meta name=\"color-scheme\" content=\"light dark\">\n");
        out.append("<meta http-equiv=\"Content-Security-Policy\"")
                .append(" content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\">\n");
        element("title", "", page.title + ": " + page.about);
        out.append("<style>\n").append(style()).append("</style>\n</head>\n<body>\n<header>\n");
        element("p", "kind", page.title);
        element("h1", "", page.headline);
        if (!page.warning.isEmpty()) {
            element("p", "warning", page.warning);
        }
        element("p", "about", page.about);
        out.append("<p class=\"kind\"><a href=\"#cautions\">")
                .append(escaped(Prose.text("html.to-cautions")))
                .append("</a></p>\n</header>\n<main>\n");
        boolean open = false;
        for (Page.Part part : page.parts) {
            if (part instanceof Page.Heading heading) {
                out.append(open ? "</section>\n<section>\n" : "<section>\n");
                open = true;
                element("h2", "", heading.text());
            } else {
                part(part);
            }
        }
        out.append(open ? "</section>\n" : "");
        cautions(page);
        out.append("</main>\n<footer>\n");
        page.footer.forEach(line -> element("p", "", line));
        out.append("</footer>\n</body>\n</html>\n");
    }

    private void part(Page.Part part) {
        if (part instanceof Page.Text text) {
            element("p", "", text.text());
        } else if (part instanceof Page.Items items) {
            out.append("<ul>\n");
            items.items().forEach(item -> element("li", "", item));
            out.append("</ul>\n");
        } else if (part instanceof Page.Figure figure) {
            figure(figure);
        } else if (part instanceof Page.Grid grid) {
            grid(grid);
        }
    }

    private void figure(Page.Figure figure) {
        out.append("<figure>\n<img src=\"data:image/svg+xml;base64,")
                .append(Base64.getEncoder().encodeToString(figure.picture().inPage()))
                .append("\" alt=\"")
                .append(escaped(figure.words()))
                .append("\">\n");
        element("figcaption", "", figure.caption());
        out.append("</figure>\n");
    }

    private void grid(Page.Grid grid) {
        out.append("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"")
                .append(escaped(grid.caption()))
                .append("\">\n<table>\n");
        element("caption", "", grid.caption());
        out.append("<thead><tr>");
        for (int i = 0; i < grid.columns().size(); i++) {
            out.append("<th scope=\"col\"").append(words(grid, i)).append('>');
            out.append(escaped(grid.columns().get(i))).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : grid.rows()) {
            out.append("<tr><th scope=\"row\">").append(escaped(row.get(0))).append("</th>");
            for (int i = 1; i < row.size(); i++) {
                out.append("<td").append(words(grid, i)).append('>');
                out.append(escaped(row.get(i))).append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n</div>\n");
    }

    /** Columns of figures stand to the right, columns of words to the left. */
    private static String words(Page.Grid grid, int column) {
        boolean words = grid.rows().stream().anyMatch(row -> row.get(column).length() > WORDS);
        return words && column > 0 ? " class=\"words\"" : "";
    }

    private void cautions(Page page) {
        out.append("<section id=\"cautions\" class=\"cautions\">\n");
        element("h2", "", Prose.text("caution.heading"));
        for (Page.Paragraphs caution : page.cautions) {
            caution.texts().forEach(text -> element("p", "", text));
        }
        out.append("</section>\n");
    }

    private void element(String name, String type, String text) {
        out.append('<').append(name);
        if (!type.isEmpty()) {
            out.append(" class=\"").append(type).append('"');
        }
        out.append('>').append(escaped(text)).append("</").append(name).append(">\n");
    }

    /** Names come from files and may hold anything: nothing in them is markup. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        for (char c : Wording.clean(text).toCharArray()) {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.append(c);
            }
        }
        return safe.toString();
    }

    private static String style() {
        try (InputStream in = Html.class.getResourceAsStream("page.css")) {
            if (in == null) {
                throw new IllegalStateException("the style of pages is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
