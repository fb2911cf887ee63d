package longnight.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import longnight.outdoors.Weather;
import org.jspecify.annotations.Nullable;

/** Files of ours written rather than read: a weather, and a night file with another weather in it. */
public final class NightFiles {
    private static final double DAY = 86400;

    private NightFiles() {}

    /**
     * A weather as a file that a night file names.
     *
     * @param weather    the series
     * @param startOfDay clock time of its time 0 [s after midnight]
     * @param name       shown in results
     * @param remarks    put first, each on a line of its own
     */
    public static String weather(Weather weather, double startOfDay, String name, List<String> remarks) {
        StringBuilder text = new StringBuilder();
        remarks.forEach(remark -> text.append("# ").append(oneLine(remark)).append('\n'));
        text.append("name: ").append(quoted(name)).append("\ntable:\n");
        for (int i = 0; i < weather.time().length; i++) {
            text.append(String.format(
                    Locale.ROOT,
                    "  - {time: \"%s\", air: \"%.1f degC\", wind: \"%.1f m/s\", humidity: \"%.0f %%\", ",
                    clock(startOfDay + weather.time()[i]),
                    weather.airCelsius()[i] + 0.0,
                    weather.wind10()[i],
                    100 * weather.relativeHumidity()[i]));
            text.append(String.format(
                    Locale.ROOT,
                    "cloud: \"%.0f %%\", precipitation: \"%.2f mm/h\"",
                    100 * weather.cloud()[i],
                    weather.precipitation()[i]));
            if (allKnown(weather.pressure())) {
                text.append(String.format(Locale.ROOT, ", pressure: \"%.0f Pa\"", weather.pressure()[i]));
            }
            if (allKnown(weather.skyLongwave())) {
                text.append(String.format(Locale.ROOT, ", sky-radiation: \"%.0f W/m2\"", weather.skyLongwave()[i]));
            }
            text.append("}\n");
        }
        return text.toString();
    }

    /**
     * A night file with another weather and title; everything else as it stands, files named from the new place.
     *
     * @param template the night file
     * @param instead  files that took the place of its sections
     * @param folder   in which the new file will lie
     * @param title    of the new night
     * @param weather  name of the weather's file, seen from there
     * @param remarks  put first
     * @throws InputFault when the template cannot be read
     */
    public static String night(
            Path template, Instead instead, Path folder, String title, String weather, List<String> remarks) {
        Value root = YamlFile.read(TextFile.read(template, Place.of(template)));
        StringBuilder text = new StringBuilder();
        remarks.forEach(remark -> text.append("# ").append(oneLine(remark)).append('\n'));
        text.append("title: ").append(quoted(title)).append('\n');
        if (root instanceof Value.Entries night) {
            for (Value.Entry entry : night.entries()) {
                String key = entry.key().text();
                if (key.equals("site")) {
                    text.append("site: ")
                            .append(site(entry.value(), night, folder))
                            .append('\n');
                } else if (!Set.of("title", "weather").contains(key)) {
                    text.append(key)
                            .append(": ")
                            .append(section(key, entry.value(), instead, folder))
                            .append('\n');
                }
            }
            if (instead.kit() != null
                    && night.entries().stream()
                            .noneMatch(entry -> entry.key().text().equals("kit"))) {
                text.append("kit: ").append(quoted(seen(instead.kit(), folder))).append('\n');
            }
        }
        return text.append("weather: ").append(quoted(weather)).append('\n').toString();
    }

    private static String section(String key, Value value, Instead instead, Path folder) {
        @Nullable Path other = key.equals("person") ? instead.person() : key.equals("kit") ? instead.kit() : null;
        if (other != null) {
            return quoted(seen(other, folder));
        }
        return written(value, folder, value instanceof Value.Text);
    }

    /** A site may have its altitude from the weather's record, which now goes. */
    private static String site(Value site, Value.Entries night, Path folder) {
        Value whole = site instanceof Value.Text name ? YamlFile.read(TextFile.read(name)) : site;
        @Nullable Value weather = find(night, "weather");
        if (find(whole, "altitude") != null || weather == null) {
            return written(site, folder, site instanceof Value.Text);
        }
        Value given = weather instanceof Value.Text name ? YamlFile.read(TextFile.read(name)) : weather;
        if (!(find(given, "record") instanceof Value.Text record) || !(whole instanceof Value.Entries entries)) {
            return written(site, folder, site instanceof Value.Text);
        }
        String altitude = String.format(
                Locale.ROOT, "%.0f m", EpwRecord.read(TextFile.read(record)).altitude());
        String rest = written(entries, folder);
        return "{\"altitude\": " + quoted(altitude) + (rest.length() > 2 ? ", " : "") + rest.substring(1);
    }

    private static @Nullable Value find(Value section, String key) {
        return section instanceof Value.Entries entries
                ? entries.entries().stream()
                        .filter(entry -> entry.key().text().equals(key))
                        .map(Value.Entry::value)
                        .findFirst()
                        .orElse(null)
                : null;
    }

    private static String written(Value value, Path folder, boolean isFile) {
        return isFile ? quoted(seen(fileOf((Value.Text) value), folder)) : written(value, folder);
    }

    /** In one line, files seen from the new place. */
    private static String written(Value value, Path folder) {
        if (value instanceof Value.Text text) {
            return quoted(text.text());
        }
        if (value instanceof Value.Items items) {
            return "["
                    + String.join(
                            ", ",
                            items.values().stream()
                                    .map(item -> written(item, folder))
                                    .toList()) + "]";
        }
        List<String> entries = ((Value.Entries) value)
                .entries().stream()
                        .map(entry -> quoted(entry.key().text()) + ": "
                                + (entry.key().text().equals("wardrobe") && entry.value() instanceof Value.Text name
                                        ? quoted(seen(fileOf(name), folder))
                                        : written(entry.value(), folder)))
                        .toList();
        return "{" + String.join(", ", entries) + "}";
    }

    private static Path fileOf(Value.Text name) {
        return name.place().file().resolveSibling(name.text());
    }

    private static String seen(Path file, Path folder) {
        Path from = folder.toAbsolutePath().normalize();
        Path to = file.toAbsolutePath().normalize();
        return from.getRoot() != null && from.getRoot().equals(to.getRoot())
                ? from.relativize(to).toString().replace('\\', '/')
                : to.toString();
    }

    private static boolean allKnown(double[] values) {
        for (double value : values) {
            if (Double.isNaN(value)) {
                return false;
            }
        }
        return true;
    }

    private static String clock(double seconds) {
        long minutes = Math.floorMod(Math.round((seconds % DAY + DAY) % DAY / 60), 1440L);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    private static String quoted(String text) {
        return "\"" + oneLine(text).replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\x{2028}\\x{2029}]", " ");
    }
}
