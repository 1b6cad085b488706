package takeup.session;

import java.util.Optional;
import takeup.advice.LoadChecks;
import takeup.history.ShootState;
import takeup.history.UndoHistory;
import takeup.roll.Roll;

/** Why a word of the prompt can do nothing now: what it needs first. */
final class Need {
    private Need() {}

    /** What is missing for a word, and how to come by it; empty if nothing is. */
    static Optional<String> of(String word, Session shoot) {
        ShootState s = shoot.afterPending().asOf(shoot.now());
        return switch (word) {
            case "set", "hold", "bias", "filter", "ext", "tube", "mag", "lens", "flash", "tripod", "time" -> camera(s);
            case "back" ->
                camera(s)
                        .or(() -> s.cameraInHand()
                                .filter(it -> it.backs().isEmpty())
                                .map(it -> it.name() + " has no backs to change"));
            case "load" ->
                camera(s).or(() -> s.rollInHand().map(it -> it.id() + " is in " + it.place() + ": unload it first"));
            case "4 125",
                    ".",
                    "unload",
                    "rewind",
                    "blank",
                    "unlogged",
                    "slate",
                    "tally",
                    "counter",
                    "push",
                    "pull",
                    "normal",
                    "double",
                    "frames" -> film(s);
            case ";", "n", "lost" -> frame(s);
            case "fix", "insert", "drop", "move" ->
                s.known().size() > (s.rollInHand().isPresent() ? 1 : 0) ? Optional.empty() : frame(s);
            case "note", "condition" -> s.known().isEmpty() ? film(s) : Optional.empty();
            case "why" ->
                film(s).or(() -> s.cameraInHand()
                                .filter(it -> it.isAutomatic())
                                .map(it -> it.name() + " sets itself: there is nothing to choose"))
                        .or(() -> s.day().light().isEmpty()
                                ? Optional.of("no light reading today: take one first (m 5.6 125)")
                                : Optional.empty());
            case "done" ->
                s.day().paper().isEmpty() ? Optional.of("no paper is being read: paper r7 begins") : Optional.empty();
            case "rating" ->
                film(s).or(() -> s.day().light().isEmpty()
                        ? Optional.of("no light reading today: take one first (m 5.6 125)")
                        : Optional.empty());
            case "undo" ->
                new UndoHistory(s.history()).undo().isEmpty() ? Optional.of("nothing to undo") : Optional.empty();
            case "redo" ->
                new UndoHistory(s.history()).redo().isEmpty() ? Optional.of("nothing to redo") : Optional.empty();
            case "yes", "no" ->
                shoot.question().isEmpty() && LoadChecks.of(s).isEmpty()
                        ? Optional.of("nothing was asked")
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    static Optional<String> camera(ShootState s) {
        return s.placeInHand().isEmpty() ? Optional.of("no camera in hand: type cam and its key") : Optional.empty();
    }

    static Optional<String> film(ShootState s) {
        return camera(s)
                .or(() -> s.rollInHand().isPresent()
                        ? Optional.empty()
                        : Optional.of("no film in "
                                + s.placeInHand().map(Object::toString).orElse("any camera")
                                + ": load a stock first (load cn400)"));
    }

    private static Optional<String> frame(ShootState s) {
        return film(s).or(() -> s.rollInHand()
                .filter(it -> it.frames().isEmpty())
                .map((Roll it) -> "no frame on " + it.id() + " yet: Space logs one"));
    }
}
