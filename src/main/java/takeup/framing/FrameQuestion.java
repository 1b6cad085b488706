package takeup.framing;

import java.util.Optional;
import takeup.exposure.Stops;
import takeup.kit.Stock;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.text.English;

/**
 * What is asked before a typed line logs frames, where a slip of the fingers is likelier than the truth: a count that
 * cannot be on the roll, or light that no print can save. A single frame past the end is none of them, a roll gives one
 * more as often as not, and one that is past its end already was asked about; and a point alone, as the space bar, asks
 * nothing: it follows a shutter that was pressed.
 */
final class FrameQuestion {
    /** So many stops outside what the film tolerates are asked about. */
    private static final double FAR = 2;

    private FrameQuestion() {}

    /** The question about frames that were added to a roll; empty where there is none. */
    static Optional<String> of(int added, Roll before, Roll after) {
        Optional<String> count = count(added, before);
        return count.isPresent() ? count : light(before, after);
    }

    private static Optional<String> count(int added, Roll before) {
        int left = before.framesLeft();
        if (added < 2 || added <= left || left < 0) {
            return Optional.empty();
        }
        return Optional.of(before.id()
                + (left > 0 ? " has " + English.count(left, "frame") + " left" : " is at its end by the counter")
                + ", this line logs " + added);
    }

    /** The same setting in the same light is asked about once. */
    private static Optional<String> light(Roll before, Roll after) {
        Frame last = after.newest().orElseThrow();
        ExposureResult result = ExposureResult.of(after, last);
        if (last.kind() != Frame.Kind.EXPOSED || result.overBoxStops().isEmpty()) {
            return Optional.empty();
        }
        Stock stock = after.film().stock();
        double stops =
                result.overBoxStops().getAsDouble() + after.film().development().pushStops();
        boolean isFar = Stops.above(stops, stock.overStops() + FAR) || Stops.above(-stops, stock.underStops() + FAR);
        Optional<Frame> newest = before.newest();
        return isFar && (newest.isEmpty() || !isAlike(newest.get(), last))
                ? Optional.of((last.further().isEmpty() ? "this frame is " : "the exposures of this frame are ")
                        + result.light().words() + ", and the film tolerates "
                        + Stops.words(stops > 0 ? stock.overStops() : stock.underStops()))
                : Optional.empty();
    }

    private static boolean isAlike(Frame before, Frame now) {
        return before.kind() == now.kind()
                && before.further().isEmpty()
                && now.further().isEmpty()
                && before.exposure().setting().equals(now.exposure().setting())
                && before.exposure().light().equals(now.exposure().light())
                && before.exposure().flashLight().equals(now.exposure().flashLight());
    }
}
