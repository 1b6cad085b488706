package takeup.history;

import java.util.Optional;
import takeup.day.DayEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** One thing that a line did, and where it is written down: on a roll, or on the day. */
public sealed interface JournalEntry {
    /** On a roll. */
    record OnRoll(RollId roll, RollEvent event) implements JournalEntry {}

    /** On the day. */
    record OnDay(DayEvent event) implements JournalEntry {}

    /** What happened. */
    Object event();

    /** What happened, if it is of that kind. */
    default <E> Optional<E> as(Class<E> kind) {
        return kind.isInstance(event()) ? Optional.of(kind.cast(event())) : Optional.empty();
    }

    /** Whether what happened is of that kind. */
    default boolean is(Class<?> kind) {
        return kind.isInstance(event());
    }

    /** Whether it is written down on that roll. */
    default boolean isOn(RollId roll) {
        return this instanceof OnRoll onRoll && onRoll.roll.equals(roll);
    }

    /** The step that an undo takes back; empty for any other entry. */
    default Optional<Long> undoes() {
        if (event() instanceof RollEvent.Undone undone) {
            return Optional.of(undone.step());
        }
        return event() instanceof DayEvent.Undone undone ? Optional.of(undone.step()) : Optional.empty();
    }

    /** The step that a redo brings back; empty for any other entry. */
    default Optional<Long> redoes() {
        if (event() instanceof RollEvent.Redone redone) {
            return Optional.of(redone.step());
        }
        return event() instanceof DayEvent.Redone redone ? Optional.of(redone.step()) : Optional.empty();
    }

    /** Whether it is an undo or a redo. */
    default boolean isUndoOrRedo() {
        return undoes().isPresent() || redoes().isPresent();
    }

    /** Whether it changed something that undo can take back: taking up another camera did not. */
    default boolean isChange() {
        return !isUndoOrRedo() && (this instanceof OnRoll || this instanceof OnDay onDay && onDay.event.isStep());
    }
}
