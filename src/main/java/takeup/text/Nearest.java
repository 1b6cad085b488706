package takeup.text;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word that a misspelt one was probably meant to be. */
public final class Nearest {
    private Nearest() {}

    /**
     * The nearest known word, by letters changed, added, dropped or swapped with their neighbour, each of which counts
     * one: {@code laod} is {@code load}. At most two, and at most a third of the longer word's letters (one in a word
     * of two), so that a word of another kind is answered with none: {@code banana} is not {@code blank}.
     */
    public static Optional<String> to(String typed, Collection<String> known) {
        String word = typed.toLowerCase(Locale.ROOT);
        String best = null;
        int bestDistance = Integer.MAX_VALUE;
        if (word.length() > 40) {
            return Optional.empty();
        }
        for (String candidate : known) {
            int longer = Math.max(word.length(), candidate.length());
            int most = longer < 2 ? 0 : Math.max(1, Math.min(2, longer / 3));
            int distance = distance(word, candidate.toLowerCase(Locale.ROOT));
            if (distance <= most && distance < bestDistance) {
                best = candidate;
                bestDistance = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    /** A question to add to a refusal: {@code ; did you mean load?}, or nothing. */
    public static String question(String typed, Collection<String> known) {
        return to(typed, known).map(it -> "; did you mean " + it + "?").orElse("");
    }

    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least = Math.min(least, cost[i - 2][j - 2] + 1);
                }
                cost[i][j] = least;
            }
        }
        return cost[a.length()][b.length()];
    }
}
