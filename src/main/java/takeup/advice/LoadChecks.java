package takeup.advice;

import java.util.Optional;
import java.util.OptionalLong;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.history.UndoHistory;
import takeup.kit.FilmSize;
import takeup.roll.LoadCheck;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/**
 * The load routine: three looks after the first roll of the day in each camera or back, each answered with one key. It
 * stands until it is answered or another line is written, and that is worked out from what happened. Past the end by
 * more than two frames the last look is asked for again. It never speaks of opening the back.
 *
 * @param roll the roll that it is about
 * @param beat what is looked at now
 */
public record LoadChecks(Roll roll, LoadCheck.What beat) {
    /** A roll of 36 seldom gives more than 38: past these the film may be standing still. */
    public static final int PAST = 2;

    /** The look that is asked for now; empty if none is. */
    public static Optional<LoadChecks> of(ShootState s) {
        if (s.history().isEmpty() || s.rollInHand().isEmpty()) {
            return Optional.empty();
        }
        Optional<JournalStep> done = last(s);
        Roll roll = s.rollInHand().get();
        if (done.isEmpty()) {
            return Optional.empty();
        }
        JournalStep last = done.get();
        for (JournalEntry entry : last.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll && onRoll.roll().equals(roll.id())) {
                Optional<LoadCheck.What> next = next(onRoll.event(), roll, last, s);
                if (next.isPresent()) {
                    return Optional.of(new LoadChecks(roll, next.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** The last line that changed anything and was not taken back: an answer that was undone is asked for again. */
    private static Optional<JournalStep> last(ShootState s) {
        JournalStep newest = s.history().get(s.history().size() - 1);
        if (newest.isUndoable()) {
            return Optional.of(newest);
        }
        OptionalLong step = new UndoHistory(s.history()).undo();
        for (int i = s.history().size() - 1; i >= 0 && step.isPresent(); i--) {
            if (s.history().get(i).step() == step.getAsLong()) {
                return Optional.of(s.history().get(i));
            }
        }
        return Optional.empty();
    }

    private static Optional<LoadCheck.What> next(RollEvent event, Roll roll, JournalStep last, ShootState s) {
        if (event instanceof RollEvent.Loaded || event instanceof RollEvent.Reloaded) {
            return s.day().routine() && isFirst(CameraPlace.of(roll), last, s)
                    ? Optional.of(LoadCheck.What.FILM)
                    : Optional.empty();
        }
        if (event instanceof RollEvent.LoadChecked checked) {
            boolean again = checked.answer() == LoadCheck.Answer.NO && checked.what() == LoadCheck.What.METER;
            boolean goesOn = checked.answer() == LoadCheck.Answer.YES;
            return switch (checked.what()) {
                case FILM -> goesOn ? Optional.of(LoadCheck.What.METER) : Optional.empty();
                case METER ->
                    goesOn
                            ? Optional.of(LoadCheck.What.MOVING)
                            : again ? Optional.of(LoadCheck.What.METER) : Optional.empty();
                case MOVING -> Optional.empty();
            };
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

    /** Whether no other roll was put in there on the same day before. */
    private static boolean isFirst(CameraPlace place, JournalStep loading, ShootState s) {
        for (JournalStep step : s.history()) {
            if (step.step() < loading.step()
                    && step.at().toLocalDate().equals(loading.at().toLocalDate())
                    && step.entries().stream().anyMatch(it -> puts(it, s).equals(Optional.of(place)))) {
                return false;
            }
        }
        return true;
    }

    /** The place that an entry put a film in, or took one out of. */
    private static Optional<CameraPlace> puts(JournalEntry entry, ShootState s) {
        if (entry instanceof JournalEntry.OnRoll onRoll && onRoll.event() instanceof RollEvent.Loaded loaded) {
            boolean counts = Optional.ofNullable(s.rolls().get(onRoll.roll()))
                    .map(it -> it.state() != Roll.State.WITHDRAWN)
                    .orElse(false);
            return counts ? Optional.of(new CameraPlace(loaded.camera().key(), loaded.back())) : Optional.empty();
        }
        if (entry instanceof JournalEntry.OnRoll onRoll && onRoll.event() instanceof RollEvent.Reloaded again) {
            return Optional.of(new CameraPlace(again.camera().key(), again.back()));
        }
        return entry instanceof JournalEntry.OnDay onDay
                        && onDay.event() instanceof DayEvent.RollClosed touched
                        && touched.film().isPresent()
                ? Optional.of(touched.place())
                : Optional.empty();
    }

    /** What is asked, whole: {@code 3 of 3: does the film move? The rewind knob turns as you wind}. */
    public String question() {
        String hint = beat == LoadCheck.What.MOVING ? " " + look(roll) : "";
        return count() + ": " + asked() + hint;
    }

    /** Which of the looks it is: {@code 1 of 3}; past the end, which frame it is. */
    public String count() {
        return switch (beat) {
            case FILM -> "1 of 3";
            case METER -> "2 of 3";
            case MOVING ->
                isPastEnd(roll)
                        ? "frame " + (roll.next() - 1) + " of " + roll.film().framesNominal()
                        : "3 of 3";
        };
    }

    /** The question alone: {@code is it bw400 in 35, rated 400?}. */
    public String asked() {
        return switch (beat) {
            case FILM ->
                "is it " + roll.film().stock().key() + " in " + roll.place() + ", rated "
                        + roll.film().index() + "?";
            case METER -> "does the meter say " + roll.film().index() + "?";
            case MOVING -> isPastEnd(roll) ? "does the film still move?" : "does the film move?";
        };
    }

    /** The same without the place, where room is short: the rating is what is to be confirmed. */
    public String askedBriefly() {
        return beat == LoadCheck.What.FILM
                ? "is it " + roll.film().stock().key() + ", rated "
                        + roll.film().index() + "?"
                : asked();
    }

    private static boolean isPastEnd(Roll roll) {
        return roll.framesLeft() < -PAST;
    }

    /** Where it can be seen, by the kind of camera. */
    private static String look(Roll roll) {
        if (roll.film().size() == FilmSize.F135) {
            return roll.camera().isAutomatic() ? "Its counter has gone on" : "The rewind knob turns as you wind";
        }
        return isPastEnd(roll)
                ? "Winding has the pull of film"
                : roll.camera().backs().isEmpty()
                        ? "Arrows on the marks, wound to 1"
                        : "Arrows on the marks, slide out";
    }

    /** What was answered on a roll: {@code film yes, meter yes}. */
    public static String answers(Roll roll) {
        return String.join(
                ", ",
                roll.loadChecks().stream()
                        .map(it -> it.what() + " " + it.answer())
                        .toList());
    }

    /** What is said after a no. */
    public String afterNo() {
        return switch (beat) {
            case FILM ->
                "Say what it is: fix roll and the stock or the index (fix roll bw400 @400); undo takes the "
                        + "loading back.";
            case METER -> "Set the meter to " + roll.film().index() + " now; yes once it says so.";
            case MOVING ->
                roll.film().size() == FilmSize.F135
                        ? "Then what was fired may be on one frame or on none. Keep the back shut: rewind to "
                                + "the end, unload, and load a fresh roll while you watch the knob. lost marks "
                                + "the frames."
                        : "Then stop winding and keep it shut: the light gets in at once. Take another back or "
                                + "body; condition stuck tells the lab.";
        };
    }
}
