package takeup.exposure;

import java.util.List;
import java.util.OptionalDouble;
import takeup.text.Plain;

/**
 * A film's behaviour in long exposures, with what its publisher changes in the development for the contrast that they
 * raise: 10 % less for 1 s. The times are those of the film's own model; this adds the percentages to them.
 *
 * @param times the film's model, without a change of its own
 * @param points metered seconds, rising, and percent of the developing time
 */
public record DevelopmentChange(Reciprocity times, List<Point> points) implements Reciprocity {
    public DevelopmentChange {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("one point of developmentPercent at least");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).seconds() > points.get(i - 1).seconds())) {
                throw new IllegalArgumentException("the times of developmentPercent rise");
            }
        }
        if (times instanceof DevelopmentChange) {
            throw new IllegalArgumentException("one list of developmentPercent, not two");
        }
    }

    /**
     * One published change.
     *
     * @param seconds the metered time, above 0
     * @param percent of the developing time, -90 to 100; below 0 is less
     */
    public record Point(double seconds, double percent) {
        public Point {
            if (!(seconds > 0 && seconds <= 1e6 && percent >= -90 && percent <= 100)) {
                throw new IllegalArgumentException(
                        "a change of development is a time above 0 seconds and -90 to 100 percent");
            }
        }
    }

    /**
     * Straight in the logarithm of the time between the points; nothing below the first, the last one past the last.
     */
    @Override
    public OptionalDouble developmentPercent(double metered) {
        if (Stops.above(Stops.of(points.get(0).seconds() / metered), 0)) {
            return OptionalDouble.empty();
        }
        for (int end = 1; end < points.size(); end++) {
            Point a = points.get(end - 1);
            Point b = points.get(end);
            if (metered < b.seconds()) {
                double share = Stops.of(metered / a.seconds()) / Stops.of(b.seconds() / a.seconds());
                return OptionalDouble.of(a.percent() + Math.max(0, share) * (b.percent() - a.percent()));
            }
        }
        return OptionalDouble.of(points.get(points.size() - 1).percent());
    }

    @Override
    public OptionalDouble corrected(double metered) {
        return times.corrected(metered);
    }

    @Override
    public double worth(double exposed) {
        return times.worth(exposed);
    }

    @Override
    public boolean beyond(double metered, double factor) {
        return times.beyond(metered, factor);
    }

    @Override
    public OptionalDouble openStops(double metered) {
        return times.openStops(metered);
    }

    /** A change in words: {@code develop 10 % less}; whole percent. */
    public static String words(double percent) {
        return "develop " + Plain.decimals(Math.abs(percent), 0) + " % " + (percent > 0 ? "more" : "less");
    }

    /** The same as advice for a whole roll, on which other frames may stand. */
    public static String wholeRoll(double percent) {
        return "if the whole roll is exposed so long, " + words(percent);
    }
}
