package longnight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A grid as large as wanted, of kits and people nobody has: for runs that take their time. */
final class InventedGrid {
    private static final Path SCENARIOS = Path.of("scenarios");
    private static final String[] NIGHTS = {
        "cool-clearing",
        "damp-valley",
        "overcast-forest",
        "arrival-dry",
        "clear-valley",
        "sleet-front",
        "first-night",
        "windy-ridge"
    };
    private static final String[][] CHOICES = {
        {"thin-top", "wool-top"},
        {"thin-tights", "wool-tights"},
        {"fleece", ""},
        {"", "vest"},
        {"stretch-trousers", "denim-trousers"},
        {"wind-jacket", ""},
        {"", "batt-overtrousers", "deep-cold-overtrousers"},
        {"down-jacket", "batt-parka", "down-parka", "deep-cold-parka", "old-parka"},
        {"knit-cap", "fleece-balaclava"},
        {"liner-gloves"},
        {"", "mittens", "deep-cold-mittens"},
        {"wool-socks", "cotton-socks"},
        {"leather-boots", "felt-boots"}
    };
    private static final String[] PADS = {"sit-pad", "mat", ""};

    private InventedGrid() {}

    /** Writes a grid and all it names; arguments: folder, kits, people. */
    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2]));
    }

    /**
     * Writes a grid of eight nights and all it names.
     *
     * @param folder to be filled
     * @return the grid's file
     */
    static Path write(Path folder, int kits, int people) throws IOException {
        copy(SCENARIOS, folder);
        List<String> lines = new ArrayList<>(List.of("kits:"));
        for (int i = 0; i < kits; i++) {
            Files.writeString(folder.resolve("kits/invented-" + i + ".yaml"), kit(i));
            lines.add("  - kits/invented-" + i + ".yaml");
        }
        lines.add("nights:");
        for (String night : NIGHTS) {
            lines.add("  - " + night + ".yaml");
        }
        lines.add("people:");
        for (int i = 0; i < people; i++) {
            Files.writeString(folder.resolve("people/invented-" + i + ".yaml"), person(i));
            lines.add("  - people/invented-" + i + ".yaml");
        }
        return Files.write(folder.resolve("invented.yaml"), lines);
    }

    /** Steps through the choices with strides that have nothing in common, so that neighbours differ in much. */
    private static String kit(int number) {
        List<String> worn = new ArrayList<>();
        for (int i = 0; i < CHOICES.length; i++) {
            String piece = CHOICES[i][(number * (2 * i + 1) + number / 2 + number / 7) % CHOICES[i].length];
            if (!piece.isEmpty()) {
                worn.add(piece);
            }
        }
        return "name: invented " + number + "\nwardrobe: ../wardrobe.yaml\nworn: " + worn + "\npads: ["
                + PADS[number % PADS.length] + "]\n";
    }

    private static String person(int number) {
        return String.format(
                Locale.ROOT,
                "name: invented %d%nsex: %s%nage: %d years%nheight: %d cm%nmass: %d kg%nbody-fat: %d %%%nfitness: 42 mL/kg/min%n",
                number,
                number % 2 == 0 ? "male" : "female",
                20 + 5 * number,
                160 + 4 * number,
                56 + 5 * number,
                18 + number);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path there = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(there);
                } else {
                    Files.copy(file, there);
                }
            }
        }
    }
}
