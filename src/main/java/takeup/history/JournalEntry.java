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
        return as(RollEvent.Undone.class)
                .map(RollEvent.Undone::step)
                .or(() -> as(DayEvent.Undone.class).map(DayEvent.Undone::step));
    }

    /** The step that a redo brings back; empty for any other entry. */
    default Optional<Long> redoes() {
        return as(RollEvent.Redone.class)
                .map(RollEvent.Redone::step)
                .or(() -> as(DayEvent.Redone.class).map(DayEvent.Redone::step));
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
