package takeup.history;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import takeup.day.CameraEvent;
import takeup.day.DayEvent;
import takeup.roll.RollEvent;

/**
 * All that one line did: one step of undo.
 *
 * @param step counted over all rolls and days of one writer
 * @param at when
 * @param entries what is written down, in that order
 */
public record JournalStep(long step, OffsetDateTime at, List<JournalEntry> entries) {
    public JournalStep {
        entries = List.copyOf(entries);
    }

    /** What happened in it, of that kind. */
    public <E> Stream<E> events(Class<E> kind) {
        return entries.stream().flatMap(it -> it.as(kind).stream());
    }

    /** What is written down of it, the last in front. */
    public Stream<JournalEntry> entriesNewestFirst() {
        List<JournalEntry> reversed = new ArrayList<>(entries);
        Collections.reverse(reversed);
        return reversed.stream();
    }

    /** Whether anything of that kind happened in it. */
    public boolean has(Class<?> kind) {
        for (JournalEntry entry : entries) {
            if (entry.is(kind)) {
                return true;
            }
        }
        return false;
    }

    /** Whether any of it is written down on the day. */
    boolean isOnDay() {
        return has(DayEvent.class);
    }

    /** Whether it takes back or brings back another step. */
    boolean isUndoOrRedo() {
        for (JournalEntry entry : entries) {
            if (entry.isUndoOrRedo()) {
                return true;
            }
        }
        return false;
    }

    /** Whether a light reading was taken, or a frame logged on any roll. */
    public boolean isFrameOrReading() {
        return isFrameOrReading(entries);
    }

    /** The same for entries that are not written yet. */
    public static boolean isFrameOrReading(List<JournalEntry> entries) {
        for (JournalEntry it : entries) {
            if (it.is(CameraEvent.LightMetered.class) || it.is(CameraEvent.FlashMetered.class) || isFrame(it)) {
                return true;
            }
        }
        return false;
    }

    /** Whether an entry logs a frame, or exposes one again. */
    static boolean isFrame(JournalEntry entry) {
        return entry.is(RollEvent.ExposedAgain.class)
                || entry.event() instanceof RollEvent.Added added && added.origin() == RollEvent.Origin.LOGGED;
    }

    /**
     * Whether undo can take it back: it changed something, and is itself no undo, redo or mere taking up of a camera.
     */
    public boolean isUndoable() {
        boolean isChange = false;
        for (JournalEntry entry : entries) {
            isChange |= entry.isChange();
        }
        return isChange && !isUndoOrRedo();
    }

    /** The same step with those of its entries alone. */
    JournalStep only(Predicate<JournalEntry> wanted) {
        return new JournalStep(step, at, entries.stream().filter(wanted).toList());
    }
}
