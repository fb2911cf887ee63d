package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import longnight.night.NightResult;
import longnight.study.Comparison;
import longnight.study.Comparison.One;
import longnight.study.Comparison.Varied;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Six curves, six names, and no name upon another. */
class CurvesTest {
    @Test
    void names_keep_their_distance_and_their_order() {
        Random chance = new Random(7);
        for (int n = 1; n <= 6; n++) {
            for (int trial = 0; trial < 200; trial++) {
                double[] wanted = chance.doubles(n, 0, 20).map(Math::round).toArray();
                double[] places = Curves.spread(wanted, 3, 1, 19);
                double[] sorted = places.clone();
                Arrays.sort(sorted);
                assertThat(sorted[0]).isGreaterThanOrEqualTo(1 - 1e-9);
                assertThat(sorted[n - 1]).isLessThanOrEqualTo(19 + 1e-9);
                for (int i = 1; i < n; i++) {
                    assertThat(sorted[i] - sorted[i - 1]).isGreaterThanOrEqualTo(3 - 1e-9);
                }
                for (int i = 0; i < n; i++) {
                    for (int j = i + 1; j < n; j++) {
                        assertThat(places[i] > places[j]).isEqualTo(wanted[i] >= wanted[j]);
                    }
                }
            }
        }
        assertThat(Curves.spread(new double[] {2, 10}, 3, 1, 19)).containsExactly(2, 10);
    }

    /** The worst case: six nights that are the same, all curves in one line. */
    @Test
    void six_equal_kits_have_six_names_that_can_be_read() throws Exception {
        List<One> all = new ArrayList<>();
        NightResult night = NightFixture.shivering();
        for (int i = 0; i < 6; i++) {
            all.add(new One("kit with a name that is longer than its room " + i, night, null));
        }
        Picture picture = CompareChart.picture(new Comparison.Answer(Varied.KITS, all), Units.METRIC);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        NodeList texts = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(picture.svg()))
                .getElementsByTagName("text");
        List<Element> names = IntStream.range(0, texts.getLength())
                .mapToObj(i -> (Element) texts.item(i))
                .filter(text -> text.getTextContent().matches("[A-F] kit.*…"))
                .toList();
        assertThat(names).hasSize(12);
        for (List<Element> plot : List.of(names.subList(0, 6), names.subList(6, 12))) {
            double[] heights = plot.stream().mapToDouble(CurvesTest::y).toArray();
            for (int i = 1; i < 6; i++) {
                assertThat(heights[i] - heights[i - 1]).isGreaterThan(1.2 * Sheet.SMALL);
            }
            for (Element name : plot) {
                double right = Double.parseDouble(name.getAttribute("x"))
                        + Sheet.width(name.getTextContent(), Fonts.bold(Sheet.SMALL));
                assertThat(right).isLessThan(Sheet.WIDTH - Sheet.MARGIN);
            }
        }
        assertThat(y(names.get(0))).isCloseTo(y(names.get(5)) - 5 * Curves.NAME_STEP, within(8.0));
    }

    private static double y(Element text) {
        return Double.parseDouble(text.getAttribute("y"));
    }
}
