package longnight.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import longnight.night.Scenario;
import longnight.proof.StandardTable;
import longnight.proof.StandardTable.Row;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The printed tables that come with the program, and the night on which it checks its arithmetic. */
public final class StandardReader {
    private static final String FOLDER = "/longnight/proof/standards/";

    private StandardReader() {}

    /** All tables. */
    public static List<StandardTable> shipped() {
        return Arrays.stream(StandardTable.Kind.values())
                .map(StandardReader::read)
                .toList();
    }

    /** One table. */
    public static StandardTable read(StandardTable.Kind kind) {
        String name = kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".csv";
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStream in = Objects.requireNonNull(StandardReader.class.getResourceAsStream(FOLDER + name), name)) {
            return new StandardTable(
                    kind,
                    format.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).stream()
                            .map(StandardReader::row)
                            .toList());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static Row row(CSVRecord line) {
        Map<String, Double> inputs = new LinkedHashMap<>();
        double expected = Double.NaN;
        for (Map.Entry<String, String> cell : line.toMap().entrySet()) {
            if (cell.getKey().startsWith("expected")) {
                expected = Double.parseDouble(cell.getValue());
            } else if (cell.getKey().contains("_")) {
                inputs.put(cell.getKey(), Double.parseDouble(cell.getValue()));
            }
        }
        return new Row(line.get("id"), inputs, expected, line.get("source"));
    }

    /** The night on which the program checks its arithmetic. */
    public static Scenario night() {
        return ScenarioReader.read(TextFile.SHIPPED.resolve(Path.of("night", "night.yaml")))
                .scenario();
    }
}
