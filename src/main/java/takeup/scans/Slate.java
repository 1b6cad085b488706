package takeup.scans;

import java.util.Optional;
import java.util.regex.Pattern;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * What a slate says: R0007, frame 1. It is photographed as that frame, so that a scan of it names the film and the
 * place on it.
 *
 * @param roll the roll
 * @param frame the number that the counter showed, 0 to 250
 */
public record Slate(RollId roll, int frame) {
    private static final int HIGHEST = 250;
    /** A roll and a frame: {@code R0007:1}. */
    private static final Pattern BODY = Pattern.compile("([^:]*):([0-9]{1,3})");

    public Slate {
        if (frame < 0 || frame > HIGHEST) {
            throw new IllegalArgumentException("a slate stands on a frame from 0 to " + HIGHEST);
        }
    }

    /** The slate on a frame, with the number under which it was first logged: no later correction moves that. */
    public static Slate of(Roll roll, Frame frame) {
        return new Slate(roll.id(), Math.max(0, Math.min(HIGHEST, frame.loggedAs())));
    }

    /** The text of its code: {@code TAKEUP:R0007:1:} and a check. */
    public String text() {
        return ChecksummedCode.text(roll + ":" + frame);
    }

    /** The slate that a code's text is; empty for any other text. */
    public static Optional<Slate> read(String text) {
        return ChecksummedCode.read(text)
                .map(BODY::matcher)
                .filter(it -> it.matches() && Integer.parseInt(it.group(2)) <= HIGHEST)
                .flatMap(it -> RollId.parse(it.group(1)).map(roll -> new Slate(roll, Integer.parseInt(it.group(2)))));
    }

    @Override
    public String toString() {
        return roll + ", frame " + frame;
    }
}
