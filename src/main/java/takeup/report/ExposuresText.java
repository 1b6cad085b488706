package takeup.report;

import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Stops;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;

/** A frame of several exposures that is still open, in words: {@code 1 of 2, 1.0 under}. */
public final class ExposuresText {
    private ExposuresText() {}

    /** How many of its exposures are on the frame, {@code 1 of 2}; empty where no more are awaited. */
    public static Optional<String> count(Roll roll, Frame frame) {
        boolean isOpen = roll.doubleAwaited()
                && roll.newest().isPresent()
                && roll.newest().get() == frame;
        int made = 1 + frame.further().size();
        return isOpen ? Optional.of(made + " of " + (made + roll.exposuresAwaited())) : Optional.empty();
    }

    /** The same with the sum so far, {@code 1 of 2, 1.0 under}, which is no verdict yet. */
    public static Optional<String> soFar(Roll roll, Frame frame) {
        Optional<String> count = count(roll, frame);
        OptionalDouble part = ExposureResult.part(roll, frame);
        return count.isEmpty() || part.isEmpty()
                ? count
                : Optional.of(count.get() + ", " + Stops.error(part.getAsDouble()));
    }

    /** The bias that makes each of so many equal exposures its part of the whole, in stops below 0. */
    public static double biasPerPart(int exposures) {
        return -Stops.of(exposures);
    }
}
