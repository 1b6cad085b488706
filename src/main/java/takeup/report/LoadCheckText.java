package takeup.report;

import takeup.advice.LoadChecks;
import takeup.kit.FilmSize;
import takeup.roll.LoadCheck;
import takeup.roll.Roll;

/** The questions of the load routine, and what to do after a no, in words. */
public final class LoadCheckText {
    private LoadCheckText() {}

    /** What is asked, whole: {@code 3 of 3: does the film advance? The rewind knob turns as you wind}. */
    public static String question(LoadChecks asked) {
        return count(asked) + ": " + asked(asked)
                + (asked.check() == LoadCheck.What.MOVING ? " " + whereToLook(asked) : "");
    }

    /** Which of the looks it is: {@code 1 of 3}; past the end, which frame it is. */
    public static String count(LoadChecks asked) {
        return switch (asked.check()) {
            case FILM -> "1 of 3";
            case METER -> "2 of 3";
            case MOVING ->
                asked.isPastEnd()
                        ? "frame " + asked.roll().lastPassed() + " of "
                                + asked.roll().film().framesNominal()
                        : "3 of 3";
        };
    }

    /** The question alone: {@code is it bw400 in 35, rated 400?}. */
    public static String asked(LoadChecks asked) {
        Roll roll = asked.roll();
        return switch (asked.check()) {
            case FILM ->
                "is it " + roll.film().stock().key() + " in " + roll.place() + ", rated "
                        + roll.film().index() + "?";
            case METER -> "does the meter say " + roll.film().index() + "?";
            case MOVING -> asked.isPastEnd() ? "does the film still advance?" : "does the film advance?";
        };
    }

    /** The same without the place, where room is short: the rating is what is to be confirmed. */
    public static String askedBriefly(LoadChecks asked) {
        return asked.check() == LoadCheck.What.FILM
                ? "is it " + asked.roll().film().stock().key() + ", rated "
                        + asked.roll().film().index() + "?"
                : asked(asked);
    }

    private static String whereToLook(LoadChecks asked) {
        Roll roll = asked.roll();
        if (roll.film().size() == FilmSize.F135) {
            return roll.camera().isAutomatic() ? "Its counter has gone on" : "The rewind knob turns as you wind";
        }
        if (!roll.film().size().isRoll()) {
            return "The next one is in place";
        }
        if (asked.isPastEnd()) {
            return "Winding has the pull of film";
        }
        return "Arrows on the marks, " + (roll.camera().backs().isEmpty() ? "wound to 1" : "slide out");
    }

    /** What is said after a no. */
    public static String afterNo(LoadChecks asked) {
        return switch (asked.check()) {
            case FILM ->
                "Say what it is: fix roll and the stock or the index (fix roll bw400 @400); undo takes the "
                        + "loading back.";
            case METER -> "Set the meter to " + asked.roll().film().index() + " now; yes once it says so.";
            case MOVING ->
                asked.roll().film().size() == FilmSize.F135
                        ? "Then what was fired may be on one frame or on none. Keep the back shut: rewind to "
                                + "the end, unload, and load a fresh roll while you watch the knob. lost marks "
                                + "the frames."
                        : "Then stop winding and keep it shut: the light gets in at once. Take another back or "
                                + "body; condition stuck tells the lab.";
        };
    }
}
