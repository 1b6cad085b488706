package takeup.scans;

import java.util.OptionalInt;

/**
 * One way in which a folder may have come about, before its scans are laid beside the log.
 *
 * @param isReversed whether the film went through the scanner from its other end
 * @param layout how many frames share a file
 * @param isPiled whether the film stopped, and all further frames lie on the last one
 * @param isGoodOnly whether the lab returns good frames only
 * @param slope how much brighter a scan is for each stop more light on the film; 0 where the lab corrected all of it
 * @param offset if the numbers in the names mean frames: number in the name less number in the log
 */
record Hypothesis(
        boolean isReversed, Layout layout, boolean isPiled, boolean isGoodOnly, double slope, OptionalInt offset) {
    /** How many frames share a file. */
    enum Layout {
        SINGLE,
        PAIRS,
        PAIRS_FIRST_ALONE
    }

    /** Slopes that are weighed against each other, in lightness for each stop. Opinion: no source. */
    static final double[] SLOPES = {0, 0.04, 0.08, 0.13};

    /** The same film with another fate at the lab. */
    Hypothesis with(boolean piled, boolean goodOnly) {
        return new Hypothesis(isReversed, layout, piled, goodOnly, slope, offset);
    }

    /** The same with numbers in the names that mean frames. */
    Hypothesis numbered(int by) {
        return new Hypothesis(isReversed, layout, isPiled, isGoodOnly, slope, OptionalInt.of(by));
    }

    /**
     * Natural logarithm of how likely it is beforehand. All shares here are opinion; only their order of size matters.
     */
    double prior() {
        double sum = Math.log(isReversed ? 0.25 : 0.75)
                + Math.log(isPiled ? 0.1 : 0.9)
                + Math.log(isGoodOnly ? 0.4 : 0.6)
                + Math.log(slope == 0 ? 0.4 : 0.6 / (SLOPES.length - 1));
        if (layout != Layout.SINGLE) {
            sum += Math.log(layout == Layout.PAIRS ? 0.8 : 0.2);
        }
        if (offset.isPresent()) {
            sum += Math.log(
                    switch (Math.abs(offset.getAsInt())) {
                        case 0 -> 0.8;
                        case 1 -> 0.08;
                        default -> 0.02;
                    });
        }
        return sum;
    }
}
