package longnight.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Check values of air, weather and surfaces, one line each in {@code environment-oracles.csv}. */
public final class EnvironmentOracles {

    private static final List<Row> ALL = read();

    private EnvironmentOracles() {}

    /**
     * One check value. It is met when the result lies within either tolerance, as the sheet of values says; NaN where a
     * tolerance is not given.
     */
    public record Row(
            String id,
            String quantity,
            String kind,
            Map<String, String> inputs,
            String expected,
            double absolute,
            double relative,
            String source) {

        public double in(String name) {
            return Double.parseDouble(inputs.get(name));
        }

        public double value() {
            return Double.parseDouble(expected);
        }

        /** Air temperature in K, whichever way the row gives it. */
        public double kelvin() {
            return inputs.containsKey("t_k") ? in("t_k") : in("t_c") + 273.15;
        }

        public void check(double actual) {
            double allowed = Math.max(
                    Double.isNaN(absolute) ? 0 : absolute, Double.isNaN(relative) ? 0 : relative * Math.abs(value()));
            assertThat(allowed)
                    .as("a row without tolerance cannot be checked: %s", id)
                    .isPositive();
            assertThat(Math.abs(actual - value()))
                    .as("%s %s: %s against %s", id, source, actual, expected)
                    .isLessThanOrEqualTo(allowed);
        }

        @Override
        public String toString() {
            return id + " " + quantity + " " + inputs + " = " + expected;
        }
    }

    /** All rows. */
    public static List<Row> all() {
        return ALL;
    }

    /** Rows of some quantities, at least one. */
    public static Stream<Row> of(String... quantities) {
        Set<String> wanted = Set.of(quantities);
        List<Row> rows =
                ALL.stream().filter(row -> wanted.contains(row.quantity())).toList();
        assertThat(rows.stream().map(Row::quantity).collect(Collectors.toSet())).isEqualTo(wanted);
        return rows.stream();
    }

    private static List<Row> read() {
        try (InputStreamReader in = new InputStreamReader(
                EnvironmentOracles.class.getResourceAsStream("/longnight/outdoors/environment-oracles.csv"),
                StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get().parse(in).stream()
                    .map(EnvironmentOracles::row)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(CSVRecord line) {
        Map<String, String> inputs = Arrays.stream(line.get("inputs").split(";"))
                .map(pair -> pair.split("=", 2))
                .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1]));
        return new Row(
                line.get("id"),
                line.get("quantity"),
                line.get("kind"),
                inputs,
                line.get("expected"),
                number(line.get("absolute")),
                number(line.get("relative")),
                line.get("source"));
    }

    private static double number(String text) {
        return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
    }
}
