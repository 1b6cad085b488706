package takeup.scans;

import java.util.stream.DoubleStream;

/** Sums of probabilities that are too small to be written as plain numbers: each is held as its natural logarithm. */
final class LogSum {
    /** Stands for the logarithm of a probability of 0. */
    static final double NEVER = -1e9;

    private LogSum() {}

    /** The logarithm of the sum of two probabilities. */
    static double add(double a, double b) {
        double high = Math.max(a, b);
        return high <= NEVER ? NEVER : high + Math.log1p(Math.exp(Math.min(a, b) - high));
    }

    /** The logarithm of the sum of all of them. */
    static double of(DoubleStream logarithms) {
        return logarithms.reduce(Double.NEGATIVE_INFINITY, LogSum::add);
    }

    /** The logarithm of a probability, which may be 0. */
    static double log(double probability) {
        return probability > 0 ? Math.log(probability) : NEVER;
    }
}
