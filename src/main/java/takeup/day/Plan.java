package takeup.day;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The key moments that are planned, in order of time.
 *
 * @param moments each with a number of its own
 * @param last the highest number that was given
 */
public record Plan(List<KeyMoment> moments, int last) {
    /** Nothing planned. */
    public static final Plan NONE = new Plan(List.of(), 0);

    /** So long after its time a moment is still in the plan of a night that goes on past midnight. */
    private static final Duration KEPT = Duration.ofHours(6);

    public Plan {
        moments = moments.size() < 2 ? List.copyOf(moments) : inOrder(moments);
    }

    /** Put in one by one: of a day there are few, and a comparator is a class more for the start to load. */
    private static List<KeyMoment> inOrder(List<KeyMoment> moments) {
        List<KeyMoment> all = new ArrayList<>();
        for (KeyMoment moment : moments) {
            int at = all.size();
            while (at > 0 && isBefore(moment, all.get(at - 1))) {
                at--;
            }
            all.add(at, moment);
        }
        return List.copyOf(all);
    }

    private static boolean isBefore(KeyMoment one, KeyMoment other) {
        int order = one.at().compareTo(other.at());
        return order < 0 || order == 0 && one.number() < other.number();
    }

    /** With a moment; it takes the place of one with the same number. */
    public Plan with(KeyMoment moment) {
        List<KeyMoment> all = new ArrayList<>();
        for (KeyMoment other : moments) {
            if (other.number() != moment.number()) {
                all.add(other);
            }
        }
        all.add(moment);
        return new Plan(all, Math.max(last, moment.number()));
    }

    /** Without the moment of that number. */
    public Plan without(int number) {
        return new Plan(moments.stream().filter(it -> it.number() != number).toList(), last);
    }

    /** The moment of that number. */
    public Optional<KeyMoment> moment(int number) {
        return moments.stream().filter(it -> it.number() == number).findFirst();
    }

    /**
     * The moment to be ready for: the one that has just begun, until it is 15 minutes old or the next one begins; else
     * the first to come. Only those of the day, or before noon of the next, are looked at.
     */
    public Optional<KeyMoment> next(LocalDateTime now) {
        Optional<KeyMoment> on = Optional.empty();
        for (KeyMoment moment : moments) {
            if (moment.at().isAfter(now)) {
                boolean isToday =
                        moment.at().isBefore(now.toLocalDate().plusDays(1).atTime(12, 0));
                return on.isPresent() || !isToday ? on : Optional.of(moment);
            }
            on = moment.at().plus(KeyMoment.LASTS).isAfter(now) ? Optional.of(moment) : on;
        }
        return on;
    }

    /** The moments that are still to come, or on, up to noon of the day after a date. */
    public List<KeyMoment> ahead(LocalDateTime now, LocalDate date) {
        List<KeyMoment> ahead = new ArrayList<>();
        for (KeyMoment moment : moments) {
            if (moment.at().plus(KeyMoment.LASTS).isAfter(now)
                    && moment.at().isBefore(date.plusDays(1).atTime(12, 0))) {
                ahead.add(moment);
            }
        }
        return ahead;
    }

    /** What of it is still of use on a new day. */
    Plan carried(LocalDateTime now) {
        List<KeyMoment> kept = new ArrayList<>();
        for (KeyMoment moment : moments) {
            if (moment.at().plus(KEPT).isAfter(now)) {
                kept.add(moment);
            }
        }
        return new Plan(kept, last);
    }
}
