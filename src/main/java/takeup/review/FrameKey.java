package takeup.review;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import takeup.roll.Frame;

/**
 * Which frame of a roll is meant, in a way that outlives a later renumbering: its number, and when it was exposed.
 *
 * @param number its number when this was written
 * @param at when the frame was exposed; empty where that is not known
 */
public record FrameKey(int number, Optional<OffsetDateTime> at) {
    /** The key of a frame. */
    public static FrameKey of(Frame frame) {
        return new FrameKey(frame.number(), frame.exposure().at());
    }

    /**
     * The place of the frame in a roll's list as it is now, -1 if it is gone. A frame whose time nobody else has is
     * found under any number; of a burst with one time, and where no time is known, the number decides.
     */
    public int placeIn(List<Frame> frames) {
        int alike = 0;
        int last = -1;
        int numbered = -1;
        for (int i = 0; i < frames.size(); i++) {
            boolean isThen = at.isPresent() && frames.get(i).exposure().at().equals(at);
            if (isThen) {
                alike++;
                last = i;
            }
            if (frames.get(i).number() == number && (at.isEmpty() || isThen)) {
                numbered = i;
            }
        }
        return alike == 1 ? last : numbered;
    }

    // Written by hand, here and in JudgedFrame: the generated equals takes longer at its first use than to list rolls.
    @Override
    public boolean equals(Object other) {
        return other instanceof FrameKey key && number == key.number && at.equals(key.at);
    }

    @Override
    public int hashCode() {
        return 31 * number + at.hashCode();
    }
}
