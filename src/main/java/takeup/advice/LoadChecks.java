package takeup.advice;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.history.History;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.history.UndoHistory;
import takeup.roll.LoadCheck;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/**
 * The load routine: three looks after each loading, each answered with one key. It stands until it is answered or
 * another line is written, and that is worked out from what happened. Past the end by more than two frames the last
 * look is asked for again. It never speaks of opening the back.
 *
 * @param roll the roll that it is about
 * @param check what is looked at now
 */
public record LoadChecks(Roll roll, LoadCheck.What check) {
    /** A roll of 36 seldom gives more than 38: past these the film may be standing still. */
    public static final int PAST = 2;

    /** The look that is asked for now; empty if none is. */
    public static Optional<LoadChecks> of(ShootState s) {
        Optional<Roll> roll = s.rollInHand();
        Optional<JournalStep> step = roll.isPresent() ? lastChange(s.history()) : Optional.empty();
        if (step.isEmpty()) {
            return Optional.empty();
        }
        for (JournalEntry entry : step.get().entries()) {
            if (entry instanceof JournalEntry.OnRoll on && on.isOn(roll.get().id())) {
                Optional<LoadCheck.What> next = next(on.event(), roll.get(), s);
                if (next.isPresent()) {
                    return Optional.of(new LoadChecks(roll.get(), next.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a look was answered with no within the last second. */
    public static boolean isJustDenied(History history, OffsetDateTime now) {
        if (history.isEmpty()
                || Duration.between(history.newest().get().at(), now).toMillis() >= 1000) {
            return false;
        }
        for (JournalEntry entry : history.newest().get().entries()) {
            if (entry.event() instanceof RollEvent.LoadChecked check && check.answer() == LoadCheck.Answer.NO) {
                return true;
            }
        }
        return false;
    }

    /** The last line that changed anything and was not taken back: an answer that was undone is asked for again. */
    private static Optional<JournalStep> lastChange(History history) {
        Optional<JournalStep> newest = history.newest();
        if (newest.isEmpty() || newest.get().isUndoable()) {
            return newest;
        }
        Optional<Long> standing = new UndoHistory(history).undo();
        return standing.isPresent() ? history.step(standing.get()) : Optional.empty();
    }

    /** Whether the roll has gone on so far past its end that the film may be standing still. */
    public boolean isPastEnd() {
        return roll.framesLeft() < -PAST;
    }

    private static Optional<LoadCheck.What> next(RollEvent event, Roll roll, ShootState s) {
        if (event instanceof RollEvent.Loaded || event instanceof RollEvent.Reloaded) {
            return s.day().routine() ? Optional.of(LoadCheck.What.FILM) : Optional.empty();
        }
        if (event instanceof RollEvent.LoadChecked checked) {
            return next(checked);
        }
        if (event instanceof RollEvent.Added added && added.origin() == RollEvent.Origin.LOGGED) {
            // With the line whose frames pass the limit, and not again.
            int limit = roll.film().framesNominal() + PAST;
            return added.frame().number() <= limit + 1 && roll.next() - 1 > limit
                    ? Optional.of(LoadCheck.What.MOVING)
                    : Optional.empty();
        }
        return Optional.empty();
    }

    private static Optional<LoadCheck.What> next(RollEvent.LoadChecked checked) {
        boolean isYes = checked.answer() == LoadCheck.Answer.YES;
        return switch (checked.what()) {
            case FILM -> isYes ? Optional.of(LoadCheck.What.METER) : Optional.empty();
            case METER ->
                switch (checked.answer()) {
                    case YES -> Optional.of(LoadCheck.What.MOVING);
                    case NO -> Optional.of(LoadCheck.What.METER);
                    default -> Optional.empty();
                };
            case MOVING -> Optional.empty();
        };
    }
}
