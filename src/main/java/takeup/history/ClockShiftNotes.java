package takeup.history;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.day.DayEvent;
import takeup.kit.Warning;
import takeup.roll.ClockShift;
import takeup.roll.Exposure;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/**
 * Tells with a frame or a reading that the clock was moved before it. What the running program saw counts; across a
 * restart only a time that lies before the last one, and another offset, can be known. Steps are ordered by number, so
 * nothing else follows from it.
 */
public final class ClockShiftNotes {
    /** Times are written down in whole seconds, so one second less is none. */
    private static final long NONE = 1;

    private final List<JournalStep> steps;
    private final OffsetDateTime now;
    private final long drift;

    /**
     * Looks at the steps so far.
     *
     * @param drift by how many seconds the clock was moved since the last frame or reading, as far as is known
     */
    public ClockShiftNotes(ShootState before, OffsetDateTime now, long drift) {
        this.steps = before.history();
        this.now = now;
        this.drift = drift;
    }

    /** Whether a step is a frame or a reading: what a moved clock is told with. */
    public static boolean isMet(List<JournalEntry> entries) {
        return entries.stream().anyMatch(it -> isReading(it) || logged(it).isPresent());
    }

    /** Whether the last line was told so. */
    public static boolean stands(ShootState s) {
        if (s.history().isEmpty()) {
            return false;
        }
        return s.history().get(s.history().size() - 1).entries().stream()
                .anyMatch(it -> shift(it).isPresent()
                        || logged(it).flatMap(Exposure::clock).isPresent());
    }

    /** For a reading: writes the shift down beside it, and says it. */
    public Optional<Warning> reading(List<JournalEntry> entries) {
        Optional<ClockShift> met = met();
        met.ifPresent(it -> entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(it))));
        return met.map(it -> new Warning(Warning.Code.CLOCK, it.words("the last frame or reading")));
    }

    /**
     * For a frame of a roll: writes the shift down if it is new, and answers how the clock was moved since the frame
     * before.
     */
    public Optional<ClockShift> frame(Roll roll, List<JournalEntry> entries) {
        Optional<ClockShift> met = met();
        met.ifPresent(it -> entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(it))));
        long seconds = met.map(ClockShift::seconds).orElse(0L);
        Set<Long> decided = new HashSet<>();
        Set<Long> undone = new HashSet<>();
        for (int i = steps.size() - 1; i >= 0; i--) {
            JournalStep step = steps.get(i);
            for (JournalEntry entry : step.entries()) {
                if (UndoHistory.takenBack(entry) > 0 && decided.add(UndoHistory.takenBack(entry))) {
                    undone.add(UndoHistory.takenBack(entry));
                }
                decided.add(UndoHistory.putBack(entry));
            }
            if (!undone.contains(step.step()) && step.entries().stream().anyMatch(it -> isOn(it, roll.id()))) {
                return between(step.at(), seconds);
            }
            seconds += step.entries().stream()
                    .map(ClockShiftNotes::shift)
                    .flatMap(Optional::stream)
                    .mapToLong(ClockShift::seconds)
                    .sum();
        }
        return met;
    }

    /** Since the last frame or reading, whichever camera it was with. */
    private Optional<ClockShift> met() {
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (isMet(steps.get(i).entries())) {
                return between(steps.get(i).at(), drift);
            }
        }
        return drift == 0 ? Optional.empty() : Optional.of(new ClockShift(drift, now.getOffset(), now.getOffset()));
    }

    private Optional<ClockShift> between(OffsetDateTime then, long known) {
        long back = Duration.between(now, then).toSeconds();
        long seconds = back > NONE && known > -back ? -back : known;
        boolean isMoved = seconds != 0 || !then.getOffset().equals(now.getOffset());
        return isMoved ? Optional.of(new ClockShift(seconds, then.getOffset(), now.getOffset())) : Optional.empty();
    }

    private static boolean isReading(JournalEntry entry) {
        return entry instanceof JournalEntry.OnDay onDay
                && (onDay.event() instanceof DayEvent.LightMetered || onDay.event() instanceof DayEvent.FlashMetered);
    }

    private static Optional<ClockShift> shift(JournalEntry entry) {
        return entry instanceof JournalEntry.OnDay onDay && onDay.event() instanceof DayEvent.ClockShifted shifted
                ? Optional.of(shifted.shift())
                : Optional.empty();
    }

    private static Optional<Exposure> logged(JournalEntry entry) {
        if (!(entry instanceof JournalEntry.OnRoll onRoll)) {
            return Optional.empty();
        }
        return onRoll.event() instanceof RollEvent.Added added && added.origin() == RollEvent.Origin.LOGGED
                ? Optional.of(added.frame().exposure())
                : onRoll.event() instanceof RollEvent.ExposedAgain again
                        ? Optional.of(again.exposure())
                        : Optional.empty();
    }

    /** A frame of that roll, or its loading. */
    private static boolean isOn(JournalEntry entry, RollId roll) {
        return entry instanceof JournalEntry.OnRoll onRoll
                && onRoll.roll().equals(roll)
                && (onRoll.event() instanceof RollEvent.Loaded || logged(entry).isPresent());
    }
}
