package takeup.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Something about a roll that a lab must see before it opens it: {@code TORN}, {@code HALF-FRAME}, {@code EXPIRED}.
 * Printed on sheet and label as large as the process, whatever the lab's form asks for.
 *
 * @param word the one word in capitals; empty where only the photographer's own words say it
 * @param details the rest, in the photographer's own words; often empty
 */
record RollFlag(String word, String details) {
    private static final List<String> WORDS = List.of("torn", "opened", "stuck", "partial", "expired");
    /** Longer words of the photographer's own are details. */
    private static final int SHORT = 22;

    /** All of a roll: its unusual frame size first, then its conditions. */
    static List<RollFlag> of(RollFilm film, LabNotes notes) {
        List<RollFlag> flags = new ArrayList<>();
        film.special().ifPresent(it -> flags.add(new RollFlag(it.toUpperCase(Locale.ROOT), "")));
        notes.condition().forEach(it -> flags.add(of(PrintedText.of(it))));
        return flags;
    }

    /** {@code torn: third perforation} parted; {@code expired 2019-03} stays together. */
    private static RollFlag of(String condition) {
        for (String word : WORDS) {
            if (condition.equals(word) || condition.startsWith(word + ":") || condition.startsWith(word + " ")) {
                String rest = condition.substring(word.length());
                String details = rest.startsWith(":") ? rest.substring(1).strip() : rest.strip();
                String large = word.toUpperCase(Locale.ROOT);
                return word.equals("expired") && details.length() <= 10
                        ? new RollFlag((large + " " + details).strip(), "")
                        : new RollFlag(large, details);
            }
        }
        return condition.length() <= SHORT ? new RollFlag(condition, "") : new RollFlag("", condition);
    }

    /** The words alone, for one line: {@code HALF-FRAME · TORN}; the photographer's own long words are a note. */
    static String words(List<RollFlag> flags) {
        return String.join(
                " · ",
                flags.stream()
                        .map(it -> it.word.isEmpty() ? "SEE NOTE" : it.word)
                        .distinct()
                        .toList());
    }
}
