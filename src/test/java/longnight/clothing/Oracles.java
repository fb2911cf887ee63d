package longnight.clothing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** Check values for dry clothing, each with its kind, inputs, expectation, tolerance and source. */
public final class Oracles {
    private static final List<JsonNode> ALL = load();

    private Oracles() {}

    /** Rows whose id begins so, at least one. */
    public static Stream<JsonNode> of(String prefix) {
        List<JsonNode> rows = ALL.stream()
                .filter(row -> row.path("id").asText().startsWith(prefix))
                .toList();
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("no row begins with " + prefix);
        }
        return rows.stream();
    }

    public static JsonNode one(String id) {
        return of(id).filter(row -> row.path("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Absolute tolerance of a row around a value. */
    public static double tolerance(JsonNode row, double value) {
        JsonNode tolerance = row.path("tolerance");
        if (tolerance.has("abs")) {
            return tolerance.path("abs").asDouble();
        }
        if (tolerance.has("rel")) {
            return tolerance.path("rel").asDouble() * Math.abs(value);
        }
        throw new IllegalArgumentException(row.path("id") + " has no tolerance");
    }

    public static String name(JsonNode row) {
        return row.path("id").asText() + " (" + row.path("kind").asText() + "): "
                + row.path("source").asText();
    }

    private static List<JsonNode> load() {
        try (InputStream in = Oracles.class.getResourceAsStream("/longnight/clothing/oracles.json")) {
            JsonNode root = new ObjectMapper().readTree(in);
            return StreamSupport.stream(root.spliterator(), false).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
