package takeup.history;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import takeup.day.DayEvent;
import takeup.day.PlanEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * The rolls of a day: those that were loaded or finished on it, and those that are in a camera. Up to six in the
 * morning the evening before counts too.
 */
public final class RollsOfDay {
    private static final Duration NIGHT = Duration.ofHours(6);

    private RollsOfDay() {}

    /** The day that a time belongs to: at 01:30 still that of the evening. */
    public static LocalDate date(OffsetDateTime now) {
        return now.minus(NIGHT).toLocalDate();
    }

    /**
     * The rolls that the day's journal names as finished, and that were not read yet: a handful, however large the
     * archive.
     */
    public static List<RollId> finishedUnread(ShootState s, OffsetDateTime now) {
        Set<RollId> unread = new LinkedHashSet<>();
        for (JournalStep step : s.history().since(date(now)).steps()) {
            for (JournalEntry entry : step.entries()) {
                if (entry.event() instanceof DayEvent.RollClosed closed
                        && closed.film().isPresent()
                        && !s.rolls().containsKey(closed.roll())) {
                    unread.add(closed.roll());
                }
            }
        }
        return List.copyOf(unread);
    }

    /**
     * The next roll that must be read in before all of the day is known; empty once it is. Numbers are given in the
     * order of loading, so going back from the newest ends at the first roll of an earlier day.
     *
     * @param letters those of the writer; another one's rolls are never read in
     * @param passed rolls that were read in, or cannot be read
     */
    public static Optional<RollId> unread(ShootState s, OffsetDateTime now, String letters, Set<RollId> passed) {
        for (RollId id : finishedUnread(s, now)) {
            if (!passed.contains(id)) {
                return Optional.of(id);
            }
        }
        for (RollId id : new TreeSet<>(s.known()).descendingSet()) {
            if (!id.letters().equals(letters)) {
                continue;
            }
            Roll roll = s.rolls().get(id);
            if (roll == null && !passed.contains(id)) {
                return Optional.of(id);
            }
            if (roll != null && roll.loadedAt().toLocalDate().isBefore(date(now))) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** The rolls of the day among those that were read, in the order of their numbers. */
    public static List<Roll> of(Collection<Roll> rolls, OffsetDateTime now) {
        LocalDate date = date(now);
        List<Roll> all = new ArrayList<>();
        for (Roll roll : rolls) {
            boolean isIn = roll.state() == Roll.State.OPEN || roll.state() == Roll.State.REWOUND;
            boolean finished = roll.finishedAt()
                    .map(it -> !it.toLocalDate().isBefore(date))
                    .orElse(false);
            if (isIn || finished || !roll.loadedAt().toLocalDate().isBefore(date)) {
                all.add(roll);
            }
        }
        return all;
    }

    /**
     * Numbers that were given on the day, or that its journal names, and whose rolls are not there or cannot be read.
     */
    public static List<RollId> missing(ShootState s, OffsetDateTime now, String letters) {
        int first = Integer.MAX_VALUE;
        int last = 0;
        int newest = 0;
        for (Roll roll : s.rolls().values()) {
            newest = roll.id().letters().equals(letters)
                    ? Math.max(newest, roll.id().number())
                    : newest;
            if (roll.id().letters().equals(letters)
                    && !roll.loadedAt().toLocalDate().isBefore(date(now))) {
                first = Math.min(first, roll.id().number());
                last = Math.max(last, roll.id().number());
            }
        }
        Set<RollId> all = new TreeSet<>(finishedUnread(s, now));
        s.history()
                .since(date(now))
                .events(PlanEvent.BagChanged.class)
                .flatMap(it -> it.into().stream())
                .filter(it -> !s.rolls().containsKey(it))
                .forEach(all::add);
        for (RollId id : s.known()) {
            boolean isNewer = id.letters().equals(letters)
                    && id.number() > newest
                    && !s.rolls().containsKey(id);
            if (isNewer) {
                all.add(id);
            }
        }
        for (int number = first; number < last; number++) {
            RollId id = new RollId(letters, number);
            if (!s.rolls().containsKey(id)) {
                all.add(id);
            }
        }
        return List.copyOf(all);
    }
}
