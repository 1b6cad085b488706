package takeup.session;

import java.util.Optional;
import takeup.command.Need;

/** Why a key cannot act now, in words that say what would help. */
final class KeyObstacle {
    private KeyObstacle() {}

    /** Empty if it can. */
    static Optional<String> of(KeyAction action, Session session) {
        return switch (action) {
            case SAME_AGAIN, TALLY, SHOW_FRAMES -> Need.FILM.missing(session.afterPending());
            case CLEAR_WHAT_STAYS_ON -> missing(Need.SOMETHING_ON, session);
            case UNDO -> missing(Need.STEP_TO_UNDO, session);
            case REDO -> missing(Need.STEP_TO_REDO, session);
            case NEXT_CAMERA, CAMERA_BEFORE -> noOtherCamera(session);
            case CHOICE_ABOVE, CHOICE_BELOW -> noChoice(session);
            case OLDER_LINE -> nothingOlder(session);
            case NEWER_LINE -> nothingNewer(session);
            case DENY ->
                EnterKey.isLoadCheckAsked(session)
                        ? Optional.empty()
                        : Optional.of("no look of the load routine is asked");
            case STEP_BACK -> ActionKeys.whyNoStepBack(session);
            default -> Optional.empty();
        };
    }

    /** As the word of the key needs it; the footer of the first picture does not wait for the table of all words. */
    private static Optional<String> missing(Need need, Session session) {
        return need.missing(session.afterPending().asOf(session.now()));
    }

    private static Optional<String> noOtherCamera(Session session) {
        Optional<String> none = Need.CAMERA.missing(session.afterPending());
        if (none.isPresent()
                || session.afterPending().asOf(session.now()).placesInUse().size() >= 2) {
            return none;
        }
        return Optional.of("one camera or back in use today: cam and a key takes up another");
    }

    private static Optional<String> noChoice(Session session) {
        return session.choices().isEmpty() && session.picks().rows().isEmpty()
                ? Optional.of("no suggestions yet: load a film, then a reading (m 5.6 125)")
                : Optional.empty();
    }

    private static Optional<String> nothingOlder(Session session) {
        if (session.prompt().past().isEmpty()) {
            return Optional.of("nothing was typed yet");
        }
        return session.prompt().isOldest() ? Optional.of("nothing older was typed") : Optional.empty();
    }

    private static Optional<String> nothingNewer(Session session) {
        return session.prompt().recall() == 0 ? Optional.of("nothing newer was typed") : Optional.empty();
    }
}
