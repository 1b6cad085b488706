package takeup.session;

import java.util.Optional;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.report.SetupText;
import takeup.roll.RollEvent;

/**
 * The guide to the first frame of all: which step it is at, and the words for it. It only speaks; the prompt and every
 * key work as always. It is there while nothing was ever logged here and nobody sent it away, and that is worked out
 * from what happened.
 *
 * @param step 1 camera, 2 film, 3 light, 4 frame
 * @param title what is asked
 * @param hint how it is answered, and what is typed instead
 */
public record Guide(int step, String title, String hint) {
    /** How many steps there are. */
    public static final int STEPS = 4;

    /** The guide as it stands now; empty once it is over, and where nothing can be written. */
    public static Optional<Guide> of(Session session) {
        ShootState s = session.shown();
        if (session.settings().readOnly().isPresent() || !isFirst(s)) {
            return Optional.empty();
        }
        if (s.cameraInHand().isEmpty()) {
            return s.placeInHand().isPresent()
                    ? Optional.empty()
                    : Optional.of(new Guide(
                            1, "which camera is in your hand?", "Down chooses, Enter takes it. Or type it: cam 645"));
        }
        if (s.rollInHand().isEmpty()) {
            return Optional.of(new Guide(
                    2,
                    "which film is in it?",
                    "Down, Enter. Or type it, and your rating where it differs: load cn400 @200"));
        }
        if (s.day().light().isEmpty() && !s.cameraInHand().get().isAutomatic()) {
            return Optional.of(new Guide(
                    3,
                    "how much light is there?",
                    "Type what the meter says: m 5.6 125. Without one, Down and Enter take a sky:"));
        }
        return Optional.of(new Guide(
                4,
                "Space logs a frame with what is set",
                "Or type what differs and a note: " + SetupText.example(s) + " ; bow seat"));
    }

    /** All that ever happened is in memory, and there is no frame among it. */
    private static boolean isFirst(ShootState s) {
        return s.nextStep() == s.history().steps().size() + 1L
                && !hasEnded(s)
                && s.rolls().size() == s.known().size();
    }

    private static boolean hasEnded(ShootState s) {
        for (JournalStep step : s.history().steps()) {
            for (JournalEntry entry : step.entries()) {
                if (ends(entry)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean ends(JournalEntry entry) {
        return entry.is(RollEvent.Added.class)
                || entry.is(RollEvent.Unloaded.class)
                || entry.is(DayEvent.GuideDismissed.class);
    }
}
