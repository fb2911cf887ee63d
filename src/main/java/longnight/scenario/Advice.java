package longnight.scenario;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longnight.quantity.Spelling;

/** What somebody may have meant who wrote something else; for hints, never for reading. */
final class Advice {
    /** Words that people think of, and what our files call it. */
    private static final Map<String, String> OTHER_WORDS = Map.ofEntries(
            Map.entry("weight", "mass"),
            Map.entry("gender", "sex"),
            Map.entry("fat", "body-fat"),
            Map.entry("temperature", "air"),
            Map.entry("temp", "air"),
            Map.entry("low", "min"),
            Map.entry("high", "max"),
            Map.entry("start", "from"),
            Map.entry("end", "to"),
            Map.entry("position", "posture"),
            Map.entry("type", "kind"),
            Map.entry("material", "fabric"),
            Map.entry("insulation", "fill"),
            Map.entry("clothes", "worn"),
            Map.entry("clothing", "worn"),
            Map.entry("layers", "worn"),
            Map.entry("mat", "pads"),
            Map.entry("location", "site"),
            Map.entry("elevation", "altitude"));

    private static final Map<String, String> YES_NO =
            Map.of("true", "yes", "y", "yes", "on", "yes", "false", "no", "n", "no", "off", "no");

    private static final Pattern CLOCK =
            Pattern.compile("([0-9]{1,2})(?:[.:h ]?([0-9]{2}))?\\s*(am|pm|h|)\\.?", Pattern.CASE_INSENSITIVE);

    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "([0-9])\\s*(?:'|\u2019|\u2032|ft\\.?|feet)\\s*([0-9]{1,2})?\\s*(?:\"|''|\u201d|\u2033|in|inches)?");

    private Advice() {}

    /** For a key that a table does not know. */
    static String key(String written, List<String> known) {
        String other = OTHER_WORDS.getOrDefault(written.toLowerCase(Locale.ROOT), "");
        return known.contains(other) ? meant(other) : Spelling.suggestion(written, known);
    }

    /** For a word that is none of those allowed. */
    static String word(String written, List<String> allowed) {
        String near = Spelling.suggestion(written, allowed);
        if (!near.isEmpty()) {
            return near;
        }
        String lower = written.toLowerCase(Locale.ROOT);
        List<String> begun =
                allowed.stream().filter(word -> word.startsWith(lower)).toList();
        if (begun.size() == 1 && !lower.isEmpty()) {
            return meant(begun.get(0));
        }
        String answer = YES_NO.getOrDefault(lower, "");
        return allowed.contains(answer) ? meant(answer) : "";
    }

    /** For what is no clock time: 18.00, 1800, 6 pm. */
    static String clock(String written) {
        Matcher parts = CLOCK.matcher(written);
        if (!parts.matches()) {
            return "";
        }
        int hours = Integer.parseInt(parts.group(1));
        int minutes = parts.group(2) == null ? 0 : Integer.parseInt(parts.group(2));
        String half = parts.group(3).toLowerCase(Locale.ROOT);
        if (half.endsWith("m") && hours >= 1 && hours <= 12) {
            hours = hours % 12 + (half.equals("pm") ? 12 : 0);
        }
        return hours < 24 && minutes < 60 ? meant(String.format(Locale.ROOT, "%02d:%02d", hours, minutes)) : "";
    }

    /** For a length in feet and inches; empty for anything else. */
    static String feetAndInches(String written) {
        Matcher parts = FEET_AND_INCHES.matcher(written.strip());
        if (!parts.matches()) {
            return "";
        }
        int inches =
                12 * Integer.parseInt(parts.group(1)) + (parts.group(2) == null ? 0 : Integer.parseInt(parts.group(2)));
        return meant(inches + " in");
    }

    private static String meant(String text) {
        return "did you mean \"" + text + "\"?";
    }
}
