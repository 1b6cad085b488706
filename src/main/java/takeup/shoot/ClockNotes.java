package takeup.shoot;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.day.DayEvent;
import takeup.kit.Warning;
import takeup.roll.ClockShift;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/**
 * Tells with a frame or a reading that the clock was moved before it. What the running program saw counts; across a
 * restart only a time that lies before the last one, and another offset, can be known. Steps are ordered by number, so
 * nothing else follows from it.
 */
final class ClockNotes {
    /** Times are written down in whole seconds, so one second less is none. */
    private static final long NONE = 1;

    private final Interpreter in;
    private final List<Happened> steps;

    ClockNotes(Interpreter in) {
        this.in = in;
        this.steps = in.original.happened();
    }

    /** Whether a step is a frame or a reading: what a moved clock is told with. */
    static boolean isMet(List<Entry> entries) {
        return entries.stream().anyMatch(it -> isReading(it) || logged(it).isPresent());
    }

    /** Whether the last line was told so. */
    static boolean stands(Situation s) {
        if (s.happened().isEmpty()) {
            return false;
        }
        return s.happened().get(s.happened().size() - 1).entries().stream()
                .anyMatch(it -> shift(it).isPresent()
                        || logged(it).flatMap(takeup.roll.Exposure::clock).isPresent());
    }

    /** For a reading: writes the shift down beside it, and says it. */
    Optional<Warning> reading(List<Entry> entries) {
        Optional<ClockShift> met = met();
        met.ifPresent(it -> entries.add(new Entry.OnDay(new DayEvent.ClockShifted(it))));
        return met.map(it -> new Warning(Warning.Code.CLOCK, it.words("the last frame or reading")));
    }

    /**
     * For a frame of a roll: writes the shift down if it is new, and answers how the clock was moved since the frame
     * before.
     */
    Optional<ClockShift> frame(Roll roll, List<Entry> entries) {
        Optional<ClockShift> met = met();
        met.ifPresent(it -> entries.add(new Entry.OnDay(new DayEvent.ClockShifted(it))));
        long seconds = met.map(ClockShift::seconds).orElse(0L);
        Set<Long> decided = new HashSet<>();
        Set<Long> undone = new HashSet<>();
        for (int i = steps.size() - 1; i >= 0; i--) {
            Happened step = steps.get(i);
            for (Entry entry : step.entries()) {
                if (UndoStack.takenBack(entry) > 0 && decided.add(UndoStack.takenBack(entry))) {
                    undone.add(UndoStack.takenBack(entry));
                }
                decided.add(UndoStack.putBack(entry));
            }
            if (!undone.contains(step.step()) && step.entries().stream().anyMatch(it -> isOn(it, roll.id()))) {
                return between(step.at(), seconds);
            }
            seconds += step.entries().stream()
                    .map(ClockNotes::shift)
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
                return between(steps.get(i).at(), in.drift);
            }
        }
        return in.drift == 0
                ? Optional.empty()
                : Optional.of(new ClockShift(in.drift, in.now.getOffset(), in.now.getOffset()));
    }

    private Optional<ClockShift> between(OffsetDateTime then, long known) {
        long back = Duration.between(in.now, then).toSeconds();
        long seconds = back > NONE && known > -back ? -back : known;
        boolean isMoved = seconds != 0 || !then.getOffset().equals(in.now.getOffset());
        return isMoved ? Optional.of(new ClockShift(seconds, then.getOffset(), in.now.getOffset())) : Optional.empty();
    }

    private static boolean isReading(Entry entry) {
        return entry instanceof Entry.OnDay onDay
                && (onDay.event() instanceof DayEvent.Lit || onDay.event() instanceof DayEvent.FlashLit);
    }

    private static Optional<ClockShift> shift(Entry entry) {
        return entry instanceof Entry.OnDay onDay && onDay.event() instanceof DayEvent.ClockShifted shifted
                ? Optional.of(shifted.shift())
                : Optional.empty();
    }

    private static Optional<takeup.roll.Exposure> logged(Entry entry) {
        if (!(entry instanceof Entry.OnRoll onRoll)) {
            return Optional.empty();
        }
        return onRoll.event() instanceof RollEvent.Added added && added.how() == RollEvent.How.LOGGED
                ? Optional.of(added.frame().exposure())
                : onRoll.event() instanceof RollEvent.ExposedAgain again
                        ? Optional.of(again.exposure())
                        : Optional.empty();
    }

    /** A frame of that roll, or its loading. */
    private static boolean isOn(Entry entry, RollId roll) {
        return entry instanceof Entry.OnRoll onRoll
                && onRoll.roll().equals(roll)
                && (onRoll.event() instanceof RollEvent.Loaded || logged(entry).isPresent());
    }
}
