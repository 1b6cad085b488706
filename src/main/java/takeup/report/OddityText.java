package takeup.report;

import takeup.roll.CounterCheck;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.text.ClockText;
import takeup.text.English;

/** What is odd about a roll, and what to do, in a sentence. */
final class OddityText {
    private OddityText() {}

    static String words(Oddity odd) {
        RollId id = odd.id();
        return switch (odd.kind()) {
            case HELD_AND_UNKNOWN -> id + " is in your hand and is no roll known here";
            case HELD_OF_ANOTHER_DAY -> id + " is in your hand and is no roll of this day";
            case HELD_AND_IN_CAMERA ->
                id + " is in your hand, and by the log in "
                        + odd.roll().orElseThrow().place() + ": cam, then unload";
            case HELD_AND_WITHDRAWN -> id + " is in your hand, and its loading was taken back: what is on it?";
            default -> words(odd, odd.roll().orElseThrow());
        };
    }

    private static String words(Oddity odd, Roll roll) {
        String typed = odd.id().typed();
        return switch (odd.kind()) {
            case STILL_IN_CAMERA ->
                odd.id() + " is still in " + roll.place() + (roll.frames().isEmpty() ? " and has no frame" : "") + ", "
                        + RollText.left(roll) + ": unload it, or let it stay";
            case WITHOUT_FRAME ->
                odd.id() + " has no frame: keep it apart if it is unexposed; if it was shot and not written down, "
                        + "insert " + typed + " 1 unlogged x" + roll.film().framesNominal();
            case REWOUND ->
                odd.id() + " is rewound: load " + typed + " goes on with it, unload " + typed + " closes it";
            case FRAMES_NOT_LOGGED ->
                English.count(Oddity.framesNotLogged(roll), "frame") + " of " + odd.id()
                        + English.agree(Oddity.framesNotLogged(roll), " is", " are")
                        + " not written down: fix, or paper " + typed + ", while it is fresh";
            case DOUBLE_AWAITED ->
                odd.id() + " waits for a second exposure on frame "
                        + roll.newest().map(Frame::number).orElse(0);
            case COUNTER_AHEAD -> {
                int passed = Oddity.framesPassed(roll, odd.check().orElseThrow());
                yield counter(odd) + English.count(passed, "frame") + " went past that "
                        + English.agree(passed, "is", "are") + " not in the log";
            }
            case COUNTER_BEHIND -> {
                CounterCheck check = odd.check().orElseThrow();
                yield counter(odd) + "the log has " + English.count(check.expected() - check.shown(), "frame")
                        + " more than the camera";
            }
            default -> throw new IllegalStateException(odd.kind() + " needs no roll");
        };
    }

    private static String counter(Oddity odd) {
        CounterCheck check = odd.check().orElseThrow();
        return "on " + odd.id() + " the camera showed " + check.shown() + " where the log came to " + check.expected()
                + ", at " + ClockText.clock(check.at()) + ": ";
    }
}
