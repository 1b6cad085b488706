package takeup.scans;

import takeup.roll.Frame;

/**
 * How likely it is that a lab leaves a frame out, and what its scan then looks like. All shares are opinion: no source.
 */
final class MatchProbabilities {
    /** That a roll ends early, and its last frames are not there. */
    static final double ENDS_EARLY = 0.03;
    /** That the first frames are not there. */
    static final double BEGINS_LATE = 0.005;
    /** That a scan before the first or after the last logged frame is one that nobody logged: 00, 0, 37. */
    static final double EXTRA_AT_AN_END = 0.03;
    /** A further picture where the film has no room for it: rolls that were logged wrong. */
    static final double BEYOND_THE_FILM = 0.001;
    /** The same between two logged frames. */
    static final double EXTRA_BETWEEN = 0.001;
    /** That the frame after one that was left out is left out too: torn, or cut off with it. */
    static final double ONE_MORE_LEFT_OUT = 0.2;
    /** That a number in a name is right, where numbers mean frames. */
    static final double NUMBER_IS_RIGHT = 0.998;

    static final double NUMBER_IS_WRONG = 0.002 / 20;

    /** That a frame of one roll shows the slate of another, as a natural logarithm: it does not. */
    private static final double ANOTHER_ROLLS = -40;

    private MatchProbabilities() {}

    /** That no scan comes back for a slot; some labs return good frames only. */
    static double leftOut(Slot slot, boolean isGoodOnly) {
        return switch (slot.kind()) {
            case BLANK -> isGoodOnly ? 0.97 : 0.4;
            case LOST -> isGoodOnly ? 0.9 : 0.3;
            case UNLOGGED -> 0.02;
            case EXPOSED, SLATE -> {
                if (!slot.isFarOff()) {
                    yield 0.006;
                }
                yield isGoodOnly ? 0.9 : 0.02;
            }
        };
    }

    static double black(Slot slot) {
        return switch (slot.kind()) {
            case BLANK -> 0.9;
            case LOST -> 0.3;
            case UNLOGGED -> 0.02;
            case EXPOSED, SLATE -> slot.overStops().orElse(0) < -3 ? 0.4 : 0.001;
        };
    }

    static double white(Slot slot) {
        if (slot.kind() == Frame.Kind.LOST) {
            return 0.3;
        }
        return slot.overStops().orElse(0) > 5 ? 0.1 : 0.002;
    }

    /** Natural logarithm of a normal density. */
    static double normal(double value, double mean, double deviation) {
        double z = (value - mean) / deviation;
        return -0.5 * z * z - Math.log(deviation) - 0.5 * Math.log(2 * Math.PI);
    }

    /**
     * How likely a scan with its slate, or without one, is in a slot, as a natural logarithm. A slate may be too spoilt
     * to be read, and may have been logged with the space bar; it is never read wrong.
     */
    static double slate(Scan scan, Slot slot) {
        boolean isOne = slot.kind() == Frame.Kind.SLATE;
        if (scan.slate().isEmpty()) {
            return isOne ? Math.log(0.1) : 0;
        }
        if (!scan.slate().get().roll().equals(slot.roll())) {
            return ANOTHER_ROLLS;
        }
        if (scan.slate().equals(slot.slate())) {
            return isOne ? 0 : Math.log(0.2);
        }
        return Math.log(isOne ? 0.05 : 0.0005);
    }

    /** That a scan has the shape of what its slot would be scanned as. */
    static double shape(Scan scan, Slot slot) {
        boolean fits = Scan.haveLikeSides(scan.aspect(), slot.aspect());
        boolean isPair = slot.frames().size() > 1;
        double divided = scan.tone().isDivided() == isPair ? 0.9 : 0.1;
        return Math.log(fits ? 0.9 : 0.1) + Math.log(divided);
    }
}
