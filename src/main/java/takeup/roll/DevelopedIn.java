package takeup.roll;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.text.Plain;

/**
 * How a roll was developed, at home or by a lab: fine-grain 1+1, 9m45s at 20C. {@link Development} is what was asked
 * for.
 *
 * @param developer with its dilution, as it was typed
 * @param seconds how long
 * @param celsius at what temperature
 * @param agitation how it was agitated
 * @param by who did it
 * @param on which day
 */
public record DevelopedIn(
        String developer,
        OptionalInt seconds,
        OptionalDouble celsius,
        Optional<String> agitation,
        Optional<String> by,
        Optional<LocalDate> on) {
    public DevelopedIn {
        if (developer.isBlank()) {
            throw new IllegalArgumentException("a developer has a name");
        }
    }

    /** The same done to another roll, by somebody and on a day. */
    public DevelopedIn again(Optional<String> other, Optional<LocalDate> day) {
        return new DevelopedIn(developer, seconds, celsius, agitation, other.or(() -> by), day);
    }

    /** {@code fine-grain 1+1, 9m45s at 20C}. */
    public String recipe() {
        String how = (seconds.isPresent() ? time(seconds.getAsInt()) : "")
                + (celsius.isPresent() ? " at " + Plain.number(celsius.getAsDouble()) + "C" : "");
        return developer + (how.isEmpty() ? "" : ", " + how.strip());
    }

    /** All of it. */
    public String words() {
        List<String> all = new ArrayList<>(List.of(recipe()));
        agitation.ifPresent(it -> all.add("agitation " + it));
        by.ifPresent(it -> all.add("by " + it));
        on.ifPresent(it -> all.add("on " + it));
        return String.join(", ", all);
    }

    private static String time(int seconds) {
        int minutes = seconds / 60;
        int rest = seconds % 60;
        return (minutes > 0 ? minutes + "m" : "") + (rest > 0 || minutes == 0 ? rest + "s" : "");
    }
}
