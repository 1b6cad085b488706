package takeup.dispatch;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.command.KnownNames;
import takeup.history.ShootState;

/**
 * What Tab makes of a name behind {@code with}, or a place behind {@code at}: those of the day.
 *
 * @param begun the name as far as it is typed
 * @param fitting the names that begin so
 */
public record NameCompletion(String begun, List<String> fitting) {
    /** The commands whose lines hold names and places of people. */
    private static final List<String> OTHERS =
            List.of("shoot", "place", "plan", "note", "n", "load", "bag", "condition");

    /** Of what stands in front of the cursor; empty where it is no name. */
    public static Optional<NameCompletion> of(ShootState state, LocalDate today, String typed) {
        String small = typed.toLowerCase(Locale.ROOT);
        String first = small.strip().split("\\s+", 2)[0];
        if (typed.indexOf(';') >= 0 || OTHERS.contains(first) || first.equals("fix") && small.contains(" roll ")) {
            return Optional.empty();
        }
        int with = Math.max(last(small, "with"), first.equals("release") ? "release ".length() : -1);
        int at = last(small, "at");
        if (with < 0 && at < 0) {
            return Optional.empty();
        }
        int start =
                with > at ? Math.max(with, Math.max(small.lastIndexOf(',') + 1, small.lastIndexOf(" and ") + 5)) : at;
        while (start < typed.length() && typed.charAt(start) == ' ') {
            start++;
        }
        String begun = typed.substring(start);
        List<String> known = with > at ? KnownNames.people(state, today) : KnownNames.places(state, today);
        return Optional.of(new NameCompletion(
                begun,
                known.stream()
                        .filter(it ->
                                it.length() > begun.length() && it.regionMatches(true, 0, begun, 0, begun.length()))
                        .toList()));
    }

    /** Where what stands behind the last of these words begins; -1 where the word is not there. */
    private static int last(String small, String word) {
        int inside = small.lastIndexOf(" " + word + " ");
        return inside >= 0 ? inside + word.length() + 2 : small.startsWith(word + " ") ? word.length() + 1 : -1;
    }
}
