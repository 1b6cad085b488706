package takeup.scans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.kit.Stock;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * What one scan is expected to show: a frame of a roll, or the two half frames that share a file.
 *
 * @param roll the roll
 * @param frames places in the roll's list of frames, from 0; one, or two neighbours
 * @param number what a count of pictures would say here
 * @param kind what became of the frame; of two frames the better
 * @param overStops stops above box speed, push added; of two their mean; empty where it cannot be known
 * @param isFarOff whether a lab that returns good frames only would leave it out: thinner or denser than the stock
 *     tolerates
 * @param aspect long side against short side of what the lab scans
 * @param slate what a slate that was photographed as this frame says
 */
public record Slot(
        RollId roll,
        List<Integer> frames,
        int number,
        Frame.Kind kind,
        OptionalDouble overStops,
        boolean isFarOff,
        double aspect,
        Optional<Slate> slate) {
    public Slot {
        frames = List.copyOf(frames);
    }

    /** A slot for each frame of a roll, in the order of the film. */
    public static List<Slot> of(Roll roll) {
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < roll.frames().size(); i++) {
            Frame frame = roll.frames().get(i);
            OptionalDouble over = overBoxStops(roll, frame);
            slots.add(new Slot(
                    roll.id(),
                    List.of(i),
                    frame.number(),
                    frame.kind(),
                    over,
                    isFarOff(roll.film().stock(), over),
                    roll.camera().frameSize().aspect(),
                    Optional.of(Slate.of(roll, frame))));
        }
        return slots;
    }

    /**
     * Two half frames to a file, as labs return them that scan the width of a whole 24x36.
     *
     * @param first the place of the frame that the first file begins with: 0, or -1 for one that nobody logged
     */
    static List<Slot> pairs(List<Slot> singles, int first) {
        List<Slot> pairs = new ArrayList<>();
        for (int i = first; i < singles.size(); i += 2) {
            Slot one = singles.get(Math.max(0, i));
            Slot other = singles.get(Math.min(singles.size() - 1, i + 1));
            List<Integer> both = one == other ? one.frames : List.of(one.frames.get(0), other.frames.get(0));
            boolean isKnown = one.overStops.isPresent() && other.overStops.isPresent();
            Frame.Kind kind =
                    one.kind == Frame.Kind.EXPOSED || other.kind == Frame.Kind.EXPOSED ? Frame.Kind.EXPOSED : one.kind;
            pairs.add(new Slot(
                    one.roll,
                    both,
                    pairs.size() + 1,
                    kind,
                    isKnown
                            ? OptionalDouble.of((one.overStops.getAsDouble() + other.overStops.getAsDouble()) / 2)
                            : OptionalDouble.empty(),
                    one.isFarOff && other.isFarOff,
                    2 / one.aspect,
                    other.kind == Frame.Kind.SLATE ? other.slate : one.slate));
        }
        return pairs;
    }

    /** Stops above box speed as developed; what a frame that nobody logged got is not known. */
    public static OptionalDouble overBoxStops(Roll roll, Frame frame) {
        OptionalDouble over = ExposureResult.of(roll, frame).overBoxStops();
        return over.isPresent()
                ? OptionalDouble.of(
                        over.getAsDouble() + roll.film().development().pushStops())
                : over;
    }

    private static boolean isFarOff(Stock stock, OptionalDouble over) {
        return over.isPresent()
                && (over.getAsDouble() < -stock.underStops() - 0.5 || over.getAsDouble() > stock.overStops() + 0.5);
    }
}
