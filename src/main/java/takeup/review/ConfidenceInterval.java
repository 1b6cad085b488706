package takeup.review;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * An estimate with the range that it lies in: 0.25 (0.11 to 0.47).
 *
 * @param estimate the best guess
 * @param low the lower end
 * @param high the upper end
 */
public record ConfidenceInterval(double estimate, double low, double high) {
    /** The confidence of an interval where no other is given. */
    public static final double CONFIDENCE = 0.95;

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /**
     * A share of counted things, such as 3 thin of 12, by Wilson's method (NIST/SEMATECH e-Handbook of Statistical
     * Methods, 7.2.4.1, Confidence intervals: it recommends this one for small counts).
     */
    public static ConfidenceInterval share(int some, int all, double confidence) {
        double z = NORMAL.inverseCumulativeProbability(0.5 + confidence / 2);
        double share = (double) some / all;
        double middle = share + z * z / (2 * all);
        double reach = z * Math.sqrt(share * (1 - share) / all + z * z / (4.0 * all * all));
        double below = 1 + z * z / all;
        return new ConfidenceInterval(
                share, Math.max(0, (middle - reach) / below), Math.min(1, (middle + reach) / below));
    }

    /** A mean of measured values: mean ± t(1-α/2, n-1) s / √n (NIST/SEMATECH e-Handbook, 1.3.5.2). */
    public static ConfidenceInterval mean(double mean, double deviation, int count, double confidence) {
        double reach = t(0.5 + confidence / 2, count - 1) * deviation / Math.sqrt(count);
        return new ConfidenceInterval(mean, mean - reach, mean + reach);
    }

    /** A standard deviation of measured values: s √((n-1)/χ²) (NIST/SEMATECH e-Handbook, 1.3.5.8 and 7.2.3.1). */
    public static ConfidenceInterval deviation(double deviation, int count, double confidence) {
        double root = Math.sqrt(count - 1.0) * deviation;
        return new ConfidenceInterval(
                deviation,
                root / Math.sqrt(chiSquared(0.5 + confidence / 2, count - 1)),
                root / Math.sqrt(chiSquared(0.5 - confidence / 2, count - 1)));
    }

    /** Below this value lies that share of Student's t. */
    static double t(double share, double freedom) {
        return TDistribution.of(freedom).inverseCumulativeProbability(share);
    }

    /** Below this value lies that share of chi squared. */
    static double chiSquared(double share, double freedom) {
        return ChiSquaredDistribution.of(freedom).inverseCumulativeProbability(share);
    }

    /** Below this value lies that share of F. */
    static double f(double share, double above, double below) {
        return FDistribution.of(above, below).inverseCumulativeProbability(share);
    }

    /** The share of a normal distribution below so many deviations. */
    static double normal(double z) {
        return NORMAL.cumulativeProbability(z);
    }
}
