package takeup.review;

import java.util.List;

/**
 * One thing that the verdicts teach.
 *
 * @param kind what sort of thing
 * @param factor what it hangs on
 * @param name which one: {@code bw400 rated 400}, {@code 35}
 * @param frames how many judged frames speak of it
 * @param stops how many stops more light the film got than the log says, with its range; of scatter its size
 * @param otherCauses what else all of these frames have in common, so that it may be that
 */
public record Finding(
        Kind kind,
        JudgedFrame.Factor factor,
        String name,
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
        /** Scattered: technique or equipment, and no rating helps. */
        SCATTER
    }

    public Finding {
        otherCauses = List.copyOf(otherCauses);
    }

    /** What a stock that was rated so should be rated at from now on: the nearest third of a stop. */
    public double newIndex(double index) {
        return nearest(index * Math.pow(2, stops.estimate()));
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
        return best >= 100 ? Math.rint(best) : best == 12.5 ? 12 : best;
    }
}
