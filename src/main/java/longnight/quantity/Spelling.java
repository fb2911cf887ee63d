package longnight.quantity;

import java.util.Collection;
import java.util.Locale;

/** The nearest of the words we know, for "did you mean". */
public final class Spelling {
    private Spelling() {}

    /**
     * The known word nearest to a misspelt one.
     *
     * @return the word, or empty when none is near: more than a third of its letters wrong
     */
    public static String nearest(String word, Collection<String> known) {
        String best = "";
        int bestDistance = Integer.MAX_VALUE;
        for (String candidate : known) {
            int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            int tolerated = Math.max(1, Math.max(word.length(), candidate.length()) / 3);
            boolean somethingInCommon = distance < Math.max(word.length(), candidate.length());
            if (somethingInCommon && distance <= tolerated && distance < bestDistance) {
                best = candidate;
                bestDistance = distance;
            }
        }
        return best;
    }

    /** "did you mean X?" for the nearest known word; empty when none is near. */
    public static String suggestion(String word, Collection<String> known) {
        String nearest = nearest(word, known);
        return nearest.isEmpty() ? "" : "did you mean \"" + nearest + "\"?";
    }

    /**
     * Insertions, deletions, replacements and swaps of neighbours that turn one word into the other (optimal string
     * alignment; Damerau 1964, Commun ACM 7:171).
     */
    static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            cost[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            cost[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int replaced = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                cost[i][j] = Math.min(replaced, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], 1 + cost[i - 2][j - 2]);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
