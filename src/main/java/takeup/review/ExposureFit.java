package takeup.review;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * How far the film got more or less light than the log says, from verdicts: an ordered probit with known limits. A
 * frame is thin where log + offset + scatter lies below what the stock tolerates under, dense where it lies above what
 * it tolerates over (the limits are the stock's latitude, by its file). Scatter is normal. The model is McCullagh's for
 * ordered categories ("Regression Models for Ordinal Data", J. R. Statist. Soc. B 42, 1980), its intervals are those of
 * the likelihood ratio (NIST/SEMATECH e-Handbook, 8.2.3.3, Likelihood ratio tests).
 */
final class ExposureFit {
    /** One verdict in thirty is assumed to be a wrong key, so that a single outlier decides nothing. Opinion. */
    private static final double SLIP = 0.03;

    private static final double LEAST_SCATTER = 0.15;
    private static final double MOST_SCATTER = 4;
    private static final double MOST_OFFSET = 6;

    private final List<Map.Entry<JudgedFrame, Integer>> cases;
    private final double[] offsets;

    /**
     * Cases with their counts.
     *
     * @param offsets what is already known to be added to each case, in stops
     */
    ExposureFit(List<Map.Entry<JudgedFrame, Integer>> cases, double[] offsets) {
        this.cases = cases;
        this.offsets = offsets;
    }

    /** How many different cases there are. */
    int size() {
        return offsets.length;
    }

    /** The same cases with so many stops more. */
    ExposureFit shifted(double stops) {
        double[] more = offsets.clone();
        for (int i = 0; i < more.length; i++) {
            more[i] += stops;
        }
        return new ExposureFit(cases, more);
    }

    /** Log likelihood of all verdicts if the marked cases got so many stops more. */
    double likelihood(double offset, double scatter, boolean[] marked) {
        double sum = 0;
        for (int i = 0; i < offsets.length; i++) {
            JudgedFrame each = cases.get(i).getKey();
            double light = each.overStops() + offsets[i] + (marked[i] ? offset : 0);
            double thin = ConfidenceInterval.normal((-each.latitude().under() - light) / scatter);
            double dense = ConfidenceInterval.normal((light - each.latitude().over()) / scatter);
            double share = switch (each.verdict()) {
                case THIN -> thin;
                case GOOD -> Math.max(0, 1 - thin - dense);
                case DENSE -> dense;
            };
            sum += cases.get(i).getValue() * Math.log((1 - SLIP) * share + SLIP / 3);
        }
        return sum;
    }

    /** The likeliest offset of the marked cases. */
    double offset(double scatter, boolean[] marked) {
        return highest(it -> likelihood(it, scatter, marked), -MOST_OFFSET, MOST_OFFSET);
    }

    /** The likeliest scatter, in stops. */
    double scatter() {
        boolean[] none = new boolean[offsets.length];
        return Math.exp(
                highest(it -> likelihood(0, Math.exp(it), none), Math.log(LEAST_SCATTER), Math.log(MOST_SCATTER)));
    }

    /** The offset of the marked cases with the range in which no likelihood ratio speaks against it. */
    ConfidenceInterval offsetInterval(double scatter, boolean[] marked) {
        return interval(it -> likelihood(it, scatter, marked), offset(scatter, marked), -MOST_OFFSET, MOST_OFFSET);
    }

    /** The scatter with its range. */
    ConfidenceInterval scatterInterval() {
        boolean[] none = new boolean[offsets.length];
        ConfidenceInterval log = interval(
                it -> likelihood(0, Math.exp(it), none),
                Math.log(scatter()),
                Math.log(LEAST_SCATTER),
                Math.log(MOST_SCATTER));
        return new ConfidenceInterval(Math.exp(log.estimate()), Math.exp(log.low()), Math.exp(log.high()));
    }

    private static ConfidenceInterval interval(DoubleUnaryOperator likelihood, double best, double low, double high) {
        double floor =
                likelihood.applyAsDouble(best) - ConfidenceInterval.chiSquared(ConfidenceInterval.CONFIDENCE, 1) / 2;
        return new ConfidenceInterval(best, edge(likelihood, floor, best, low), edge(likelihood, floor, best, high));
    }

    /**
     * Where the likelihood falls to the floor on the way from the best value to an end; the end where it never does.
     */
    private static double edge(DoubleUnaryOperator likelihood, double floor, double best, double end) {
        if (likelihood.applyAsDouble(end) >= floor) {
            return end;
        }
        double inside = best;
        double outside = end;
        for (int i = 0; i < 30; i++) {
            double middle = (inside + outside) / 2;
            if (likelihood.applyAsDouble(middle) >= floor) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return (inside + outside) / 2;
    }

    /** A coarse look over the whole range, then a narrowing about the best. */
    private static double highest(DoubleUnaryOperator of, double low, double high) {
        int steps = 24;
        double best = low;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= steps; i++) {
            double at = low + (high - low) * i / steps;
            double value = of.applyAsDouble(at);
            // Of equals the one nearest to the middle: no evidence moves nothing.
            if (value > most + 1e-9
                    || value > most - 1e-9 && Math.abs(at - (low + high) / 2) < Math.abs(best - (low + high) / 2)) {
                most = value;
                best = at;
            }
        }
        double reach = (high - low) / steps;
        for (int i = 0; i < 14; i++) {
            reach /= 2;
            for (double at : new double[] {best - reach, best + reach}) {
                double value = at < low || at > high ? Double.NEGATIVE_INFINITY : of.applyAsDouble(at);
                if (value > most) {
                    most = value;
                    best = at;
                }
            }
        }
        return best;
    }
}
