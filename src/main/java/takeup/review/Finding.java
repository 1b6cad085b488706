package takeup.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that the verdicts teach.
 *
 * @param kind what sort of thing
 * @param factor what it depends on
 * @param name which one: {@code bw400 rated 400}, {@code 35}
 * @param rating the stock and its index, where the factor is the rating
 * @param frames how many judged frames it rests on
 * @param stops how many stops more light the film got than the log says, with its range; of scatter its size
 * @param otherCauses what else all of these frames have in common, so that it may be that
 */
public record Finding(
        Kind kind,
        JudgedFrame.Factor factor,
        String name,
        Optional<JudgedFrame.Rating> rating,
        int frames,
        ConfidenceInterval stops,
        List<String> otherCauses) {
    /** What to do about it. */
    public enum Kind {
        /** Consistent: change the rating. */
        RATING,
        /** One body or lens only: that shutter, or that diaphragm. */
        EQUIPMENT,
        /** One way of reading light, or one kind of it: technique. */
        TECHNIQUE,
        /** One developer only: its strength, time or temperature. */
        DEVELOPMENT,
        /** Scattered: technique or equipment, and no rating helps. */
        SCATTER
    }

    public Finding {
        otherCauses = List.copyOf(otherCauses);
    }

    /** What the stock should be rated at from now on, to the nearest third of a stop; empty for other findings. */
    public OptionalDouble newIndex() {
        return rating.stream()
                .mapToDouble(it -> nearest(it.index() * Math.pow(2, stops.estimate())))
                .findFirst();
    }

    /** The mark nearest to a film speed, in thirds of a stop: 200 for 197. */
    public static double nearest(double wanted) {
        double best = wanted;
        double least = Double.MAX_VALUE;
        for (double decade = 0.1; decade <= 1000; decade *= 10) {
            for (double mark : new double[] {10, 12.5, 16, 20, 25, 32, 40, 50, 64, 80}) {
                double off = Math.abs(Math.log(decade * mark / wanted));
                if (off < least) {
                    least = off;
                    best = decade * mark;
                }
            }
        }
        if (best >= 100) {
            return Math.rint(best);
        }
        return best == 12.5 ? 12 : best;
    }
}
