package takeup.scans;

import java.util.Optional;
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

    public Slate {
        if (frame < 0 || frame > HIGHEST) {
            throw new IllegalArgumentException("a slate stands on a frame from 0 to " + HIGHEST);
        }
    }

    /** The slate on a frame, with the number under which it was first logged: no later correction moves that. */
    public static Slate of(Roll roll, Frame frame) {
        return new Slate(roll.id(), Math.max(0, Math.min(HIGHEST, frame.loggedAs())));
    }

    /** What stands in its code: {@code TAKEUP:R0007:1:} and a check. */
    public String text() {
        return ChecksummedCode.text(roll + ":" + frame);
    }

    /** The slate that a code's text is; empty for any other text. */
    public static Optional<Slate> read(String text) {
        Optional<String> body = ChecksummedCode.read(text);
        int colon = body.map(it -> it.indexOf(':')).orElse(-1);
        if (colon < 0) {
            return Optional.empty();
        }
        Optional<RollId> roll = RollId.parse(body.get().substring(0, colon));
        String digits = body.get().substring(colon + 1);
        if (roll.isEmpty()
                || digits.isEmpty()
                || digits.length() > 3
                || !digits.chars().allMatch(it -> it >= '0' && it <= '9')
                || Integer.parseInt(digits) > HIGHEST) {
            return Optional.empty();
        }
        return Optional.of(new Slate(roll.get(), Integer.parseInt(digits)));
    }

    @Override
    public String toString() {
        return roll + ", frame " + frame;
    }
}
