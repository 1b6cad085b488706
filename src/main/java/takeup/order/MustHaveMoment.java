package takeup.order;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A must-have moment by the clock: {@code 16:30-16:45 prize-giving}, or {@code 2026-09-12 16:30-16:45 prize-giving}
 * where rolls of several days go together. Both ends belong to it; it may run past midnight.
 *
 * @param day the day on which it begins; empty means any
 * @param from from this minute on
 * @param to to the end of this minute
 * @param name what it is
 */
public record MustHaveMoment(Optional<LocalDate> day, LocalTime from, LocalTime to, String name) {
    /** The moment that was typed; empty if it cannot be read. */
    public static Optional<MustHaveMoment> parse(String typed) {
        String[] words = typed.strip().split(" +", 2);
        boolean isDated = words[0].length() == 10 && words.length > 1;
        try {
            return isDated
                    ? parse(Optional.of(LocalDate.parse(words[0])), words[1])
                    : parse(Optional.empty(), typed.strip());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<MustHaveMoment> parse(Optional<LocalDate> day, String rest) {
        String[] words = rest.split(" +", 2);
        String[] ends = words[0].split("-", -1);
        if (ends.length != 2) {
            return Optional.empty();
        }
        String name = words.length < 2 ? words[0] : words[1];
        return Optional.of(new MustHaveMoment(day, LocalTime.parse(ends[0]), LocalTime.parse(ends[1]), name.strip()));
    }

    /** Whether a roll holds a picture that was taken in it, by the time of the place. */
    boolean isOn(ExposedRoll roll) {
        return roll.frames().stream()
                .anyMatch(it -> it.isPicture() && it.at().filter(this::holds).isPresent());
    }

    private boolean holds(OffsetDateTime at) {
        LocalTime minute = at.toLocalTime().withSecond(0).withNano(0);
        boolean isOvernight = to.isBefore(from);
        boolean isAfterMidnight = isOvernight && !minute.isAfter(to);
        boolean isIn =
                isOvernight ? isAfterMidnight || !minute.isBefore(from) : !minute.isBefore(from) && !minute.isAfter(to);
        return isIn
                && (day.isEmpty()
                        || day.get().equals(isAfterMidnight ? at.toLocalDate().minusDays(1) : at.toLocalDate()));
    }
}
