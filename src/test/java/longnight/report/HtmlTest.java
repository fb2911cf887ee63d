package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import longnight.night.NightResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class HtmlTest {
    static Stream<NightResult> nights() {
        return Stream.of(NightFixture.easy(), NightFixture.wet(), NightFixture.stopped(), NightFixture.unrun());
    }

    @ParameterizedTest
    @MethodSource("nights")
    void a_page_needs_nothing_but_itself(NightResult night) {
        String html = Html.text(NightPage.of(night));
        assertThat(html)
                .doesNotContainPattern("<script|<link|<iframe|@import|url\\(")
                .doesNotContainPattern("(src|href)=\"(?!data:|#)");
    }

    @ParameterizedTest
    @MethodSource("nights")
    void headings_tables_and_pictures_can_be_followed_without_seeing_them(NightResult night) throws Exception {
        Document page = parsed(Html.text(NightPage.of(night)));
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        assertThat(page.getElementsByTagName("h1").getLength()).isEqualTo(1);
        for (Element picture : all(page, "img")) {
            assertThat(picture.getAttribute("alt")).hasSizeGreaterThan(40);
        }
        for (Element table : all(page, "table")) {
            assertThat(all(table, "caption")).hasSize(1);
            int columns = all(all(table, "thead").get(0), "th").size();
            for (Element row : all(all(table, "tbody").get(0), "tr")) {
                assertThat(all(row, "th")).hasSize(1);
                assertThat(all(row, "th").get(0).getAttribute("scope")).isEqualTo("row");
                assertThat(all(row, "td")).hasSize(columns - 1);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<script>alert(1)</script>", "a\" onload=\"x", "../../x", "\u202Eright to left", "\uD83E\uDD76"})
    void names_are_shown_and_never_obeyed(String name) throws Exception {
        Page page = new Page("kind", name, name, name).text(name).caution(name);
        page.heading(name).add(new Page.Items(List.of(name)));
        page.add(new Page.Grid(name, List.of(name, name), List.of(List.of(name, name))));
        page.add(new Page.Figure(
                name,
                name,
                Picture.framed(new Picture.Frame(name, name, name, name, List.of(name)), sheet -> sheet.space(9))));
        Document set = parsed(Html.text(page));
        assertThat(set.getElementsByTagName("script").getLength()).isZero();
        String shown = name.replace('\u202E', ' '); // nothing turns the order of what stands around it
        assertThat(all(set, "h1").get(0).getTextContent()).isEqualTo(shown);
        assertThat(all(set, "img").get(0).getAttribute("alt")).isEqualTo(shown);
        assertThat(all(set, "img").get(0).hasAttribute("onload")).isFalse();
    }

    /** The page says the answer and the cautions once; a picture in it that said them again would only be in the way. */
    @Test
    void pictures_inside_a_page_leave_cautions_to_the_page_but_keep_them_in_their_description() {
        Picture picture = Charts.coreHeatDeficit(NightFixture.failing());
        String caution = Wording.shortText(longnight.night.Caution.PLANNING_AID);
        String inside = new String(picture.inPage(), StandardCharsets.UTF_8);
        assertThat(inside).doesNotContain(">" + Prose.text("caution.heading") + "<");
        assertThat(inside.substring(0, inside.indexOf("</desc"))).contains(caution.substring(0, 40));
        assertThat(new String(picture.svg(), StandardCharsets.UTF_8))
                .contains(">" + Prose.text("caution.heading") + "<");
    }

    @Test
    void no_page_goes_out_without_cautions() {
        Page page = new Page("kind", "answer", "", "about");
        assertThatThrownBy(() -> Html.text(page)).hasMessageContaining("without cautions");
    }

    @Test
    void the_same_night_gives_the_same_page() {
        assertThat(Html.text(NightPage.of(NightFixture.wet()))).isEqualTo(Html.text(NightPage.of(NightFixture.wet())));
    }

    /** Our pages are also well-formed XML once the void elements are closed. */
    private static Document parsed(String html) throws Exception {
        String xml = html.replace("<!DOCTYPE html>\n", "").replaceAll("(<(?:meta|img)\\b[^>]*)>", "$1/>");
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> all(Document in, String name) {
        return list(in.getElementsByTagName(name));
    }

    private static List<Element> all(Element in, String name) {
        return list(in.getElementsByTagName(name));
    }

    private static List<Element> list(NodeList nodes) {
        return java.util.stream.IntStream.range(0, nodes.getLength())
                .mapToObj(i -> (Element) nodes.item(i))
                .toList();
    }
}
