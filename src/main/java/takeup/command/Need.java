package takeup.command;

import java.util.Optional;
import takeup.advice.LoadChecks;
import takeup.day.CameraPlace;
import takeup.history.ShootState;
import takeup.history.UndoHistory;
import takeup.report.StaysOn;
import takeup.roll.RollId;

/** What a word of the prompt needs before it can do anything. */
public enum Need {
    /** A camera in hand. */
    CAMERA,
    /** A camera in hand whose backs can be changed. */
    BACKS,
    /** A camera in hand with no film in it. */
    EMPTY_BACK,
    /** A film in the camera in hand. */
    FILM,
    /** A frame on the roll in hand. */
    FRAME,
    /** A frame on the roll in hand, or another roll that can be named. */
    FRAME_OF_ANY_ROLL,
    /** A roll, in hand or not. */
    ANY_ROLL,
    /** A camera whose setting is chosen by hand. */
    SETTABLE_CAMERA,
    /** Something on the camera in hand that stays from frame to frame: a filter, a bias. */
    SOMETHING_ON,
    /** A light reading of today. */
    LIGHT,
    /** A paper form that is being read. */
    PAPER,
    /** A line that can be taken back. */
    STEP_TO_UNDO,
    /** An undone line. */
    STEP_TO_REDO,
    /** A question that waits for an answer. */
    QUESTION;

    /** What is missing, and how to come by it; empty if it is there. */
    public Optional<String> missing(ShootState s, Optional<Outcome.NeedsConfirmation> question) {
        return switch (this) {
            case CAMERA -> camera(s);
            case BACKS ->
                camera(s)
                        .or(() -> s.cameraInHand()
                                .filter(it -> it.backs().isEmpty())
                                .map(it -> it.name() + " has no backs to change"));
            case EMPTY_BACK ->
                camera(s).or(() -> s.rollInHand().map(it -> it.id() + " is in " + it.place() + ": unload it first"));
            case FILM -> film(s);
            case FRAME -> frame(s);
            case FRAME_OF_ANY_ROLL ->
                (s.rollInHand().isPresent()
                                ? s.known().areSeveral()
                                : !s.known().isEmpty())
                        ? Optional.empty()
                        : frame(s);
            case ANY_ROLL -> s.known().isEmpty() ? film(s) : Optional.empty();
            case SETTABLE_CAMERA ->
                s.cameraInHand()
                        .filter(it -> it.isAutomatic())
                        .map(it -> it.name() + " sets itself: there is nothing to choose");
            case SOMETHING_ON ->
                camera(s)
                        .or(() -> when(
                                StaysOn.of(s.inHand()).isEmpty(),
                                "nothing is on "
                                        + s.placeInHand()
                                                .map(CameraPlace::camera)
                                                .orElse("the camera")
                                        + ": no filter, no tube, no bias, no hold, no flash"));
            case LIGHT -> when(s.day().light().isEmpty(), "no light reading today: take one first (m 5.6 125)");
            case PAPER -> when(s.day().paper().isEmpty(), "no paper is being read: paper r7 begins");
            case STEP_TO_UNDO -> when(new UndoHistory(s.history()).undo().isEmpty(), "nothing to undo");
            case STEP_TO_REDO -> when(new UndoHistory(s.history()).redo().isEmpty(), "nothing to redo");
            case QUESTION -> when(question.isEmpty() && LoadChecks.of(s).isEmpty(), "nothing was asked");
        };
    }

    /** What is missing where nothing was asked. */
    public Optional<String> missing(ShootState s) {
        return missing(s, Optional.empty());
    }

    private static Optional<String> when(boolean isMissing, String why) {
        return isMissing ? Optional.of(why) : Optional.empty();
    }

    private static Optional<String> camera(ShootState s) {
        return when(s.placeInHand().isEmpty(), "no camera in hand: type cam and its key");
    }

    private static Optional<String> film(ShootState s) {
        Optional<String> camera = camera(s);
        return camera.isPresent() || s.rollInHand().isPresent()
                ? camera
                : Optional.of(noFilm(s, s.placeInHand().orElseThrow()));
    }

    /** Why a place takes no frame. */
    static String noFilm(ShootState s, CameraPlace place) {
        Optional<RollId> unread = s.unreadableIn(place);
        return unread.isPresent()
                ? unread.get() + " cannot be read, and may be in " + place + ": takeup check says why; load asks first"
                : "no film in " + place + ": load a stock first (load cn400)";
    }

    private static Optional<String> frame(ShootState s) {
        Optional<String> film = film(s);
        return film.isPresent() || !s.rollInHand().orElseThrow().frames().isEmpty()
                ? film
                : Optional.of("no frame on " + s.rollInHand().get().id() + " yet: Space logs one");
    }
}
