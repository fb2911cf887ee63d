package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is done to a file, it reads or is refused with a place; nothing else comes out. Shipped files are scrambled in
 * one to three places: a byte replaced, a piece cut out, a piece of another line put in, a number exchanged.
 */
class ScrambledFilesTest {
    private static final int ROUNDS = 1950;
    private static final List<String> NUMBERS = List.of(
            "0", "-0", "-1", "1e9", "-1e9", "1e-9", "1e308", "0.5", "100", "1000", "9".repeat(400), "−7", "NaN", "");

    @TempDir
    private Path folder;

    @Test
    void readsOrIsRefused() throws IOException {
        copy(Path.of("scenarios"));
        List<String> nights = List.of(
                "clear-valley.yaml",
                "damp-valley.yaml",
                "windy-ridge.yaml",
                "laboratory.yaml",
                "overcast-forest.yaml",
                "sleet-front.yaml",
                "arrival-wet.yaml",
                "second-night.yaml");
        List<String> scrambled = List.of(
                "clear-valley.yaml",
                "damp-valley.yaml",
                "windy-ridge.yaml",
                "laboratory.yaml",
                "overcast-forest.yaml",
                "sleet-front.yaml",
                "arrival-wet.yaml",
                "second-night.yaml",
                "wardrobe.yaml",
                "wardrobe.yaml",
                "kits/heavy.yaml",
                "people/instructor.yaml",
                "weather/windy-ridge.csv");
        Random chance = new Random(20260117);
        int read = 0;
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            String name = scrambled.get(round % scrambled.size());
            Path file = folder.resolve(name);
            byte[] good = Files.readAllBytes(file);
            byte[] bad = scramble(good, chance);
            Files.write(file, bad);
            String night = nights.contains(name) ? name : "windy-ridge.yaml";
            try {
                ScenarioReader.read(folder.resolve(night));
                read++;
            } catch (InputFault fault) {
                refused++;
                assertThat(fault.getMessage()).startsWith(fault.file() + (fault.line() > 0 ? ":" + fault.line() : ""));
                assertThat(fault.found()).isNotBlank();
                assertThat(fault.allowed()).isNotBlank();
                assertThat(fault.line()).isPositive();
            } catch (RuntimeException | StackOverflowError fault) {
                throw new AssertionError(
                        "round " + round + ", " + name + ":\n" + new String(bad, StandardCharsets.UTF_8), fault);
            }
            Files.write(file, good);
        }
        // Neither half of the question went unasked.
        assertThat(read).isGreaterThan(150);
        assertThat(refused).isGreaterThan(150);
    }

    private static byte[] scramble(byte[] good, Random chance) {
        StringBuilder text = new StringBuilder(new String(good, StandardCharsets.ISO_8859_1));
        for (int times = 1 + chance.nextInt(3); times > 0; times--) {
            int at = chance.nextInt(text.length() - 20);
            switch (chance.nextInt(4)) {
                case 0 -> text.setCharAt(at, (char) chance.nextInt(256));
                case 1 -> text.delete(at, at + 1 + chance.nextInt(20));
                case 2 -> {
                    int from = chance.nextInt(text.length() - 20);
                    text.insert(at, text.substring(from, from + chance.nextInt(20)));
                }
                default -> {
                    int digit = at;
                    while (digit < text.length() && !Character.isDigit(text.charAt(digit))) {
                        digit++;
                    }
                    int end = digit;
                    while (end < text.length() && (Character.isDigit(text.charAt(end)) || text.charAt(end) == '.')) {
                        end++;
                    }
                    String number = NUMBERS.get(chance.nextInt(NUMBERS.size()));
                    text.replace(
                            digit,
                            end,
                            new String(number.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1));
                }
            }
        }
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private void copy(Path from) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(f -> !f.toString().endsWith(".epw")).toList()) {
                Path to = folder.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                }
            }
        }
    }
}
