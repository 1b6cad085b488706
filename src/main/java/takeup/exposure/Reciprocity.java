package takeup.exposure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How a film loses speed in long exposures, by its own published numbers. Applied once and last, to the time that is
 * left after film speed, filters, extension and bias (creativelive.com, Gregory, lesson "Reciprocity failure").
 *
 * <p>All times are in seconds and above 0. Past the last published point the last line goes on, and {@link #beyond}
 * says so.
 */
public sealed interface Reciprocity
        permits Reciprocity.None, Reciprocity.Power, Reciprocity.Table, Reciprocity.Opening, DevelopmentChange {
    /** The time to set for a metered one; empty where no time is long enough. Never shorter than the metered time. */
    OptionalDouble corrected(double metered);

    /** The metered time that an exposure of this length is worth: the way back, for judging a logged frame. */
    double worth(double exposed);

    /** Whether the answer for a metered time lies past the last published point. */
    default boolean beyond(double metered) {
        return beyond(metered, 1);
    }

    /** Whether it lies past so many times that point. */
    boolean beyond(double metered, double times);

    /**
     * Stops to open the lens if the time is kept; empty where nothing is lost, and for a model that is given as times.
     */
    default OptionalDouble openStops(double metered) {
        return OptionalDouble.empty();
    }

    /**
     * What the publisher changes in the development for it, in percent, below 0 for less; empty where nothing is
     * published.
     */
    default OptionalDouble developmentPercent(double metered) {
        return OptionalDouble.empty();
    }

    /** Nothing is lost, as far as anybody published: up to a time, or without a limit. */
    record None(OptionalDouble upToSeconds) implements Reciprocity {
        @Override
        public OptionalDouble corrected(double metered) {
            return OptionalDouble.of(metered);
        }

        @Override
        public double worth(double exposed) {
            return exposed;
        }

        @Override
        public boolean beyond(double metered, double times) {
            return upToSeconds.isPresent() && past(metered, times * upToSeconds.getAsDouble());
        }
    }

    /**
     * tc = tm ^ exponent for tm above a threshold (Schwarzschild's law turned round: liquisearch.com, "Reciprocity").
     * Never shorter than the metered time, which the bare power would be below one second.
     */
    record Power(double exponent, double fromSeconds) implements Reciprocity {
        public Power {
            if (!(exponent >= 1 && exponent <= 3)) {
                throw new IllegalArgumentException("an exponent lies between 1 and 3, was " + exponent);
            }
            if (!(fromSeconds > 0 && Double.isFinite(fromSeconds))) {
                throw new IllegalArgumentException("a threshold is above 0 seconds, was " + fromSeconds);
            }
        }

        @Override
        public OptionalDouble corrected(double metered) {
            return OptionalDouble.of(
                    past(metered, fromSeconds) ? Math.max(metered, Math.pow(metered, exponent)) : metered);
        }

        @Override
        public double worth(double exposed) {
            if (!past(exposed, fromSeconds)) {
                return exposed;
            }
            return Math.min(exposed, Math.max(fromSeconds, Math.pow(exposed, 1 / exponent)));
        }

        @Override
        public boolean beyond(double metered, double times) {
            return false;
        }
    }

    /**
     * Corrected times for metered ones: straight lines between the points on log-log axes. The first point is [t, t].
     */
    record Table(List<Point> points) implements Reciprocity {
        public Table {
            points = List.copyOf(points);
            Point.checkRising(points);
            if (points.get(0).value() != points.get(0).seconds()) {
                throw new IllegalArgumentException(
                        "the first point is the end of the range that needs nothing: [t, t]");
            }
            for (int i = 1; i < points.size(); i++) {
                if (!(points.get(i).value() > points.get(i - 1).value()
                        && points.get(i).value() >= points.get(i).seconds())) {
                    throw new IllegalArgumentException(
                            "corrected times rise from point to point and are never shorter than metered ones");
                }
            }
        }

        @Override
        public OptionalDouble corrected(double metered) {
            return OptionalDouble.of(along(metered, true));
        }

        @Override
        public double worth(double exposed) {
            return along(exposed, false);
        }

        @Override
        public boolean beyond(double metered, double times) {
            return past(metered, times * points.get(points.size() - 1).seconds());
        }

        // Written by hand, here and in Point: the generated equals takes long at its first use.
        @Override
        public boolean equals(Object other) {
            return other instanceof Table table && points.equals(table.points);
        }

        @Override
        public int hashCode() {
            return points.hashCode();
        }

        private double along(double time, boolean forth) {
            if (time <= points.get(0).seconds()) {
                return time;
            }
            int end = 1;
            while (end < points.size() - 1 && time > from(points.get(end), forth)) {
                end++;
            }
            Point a = points.get(end - 1);
            Point b = points.get(end);
            double share =
                    (Stops.of(time) - Stops.of(from(a, forth))) / (Stops.of(from(b, forth)) - Stops.of(from(a, forth)));
            double answer = Stops.of(from(a, !forth)) + share * (Stops.of(from(b, !forth)) - Stops.of(from(a, !forth)));
            double found = Stops.factor(answer);
            return forth ? Math.max(time, found) : Math.min(time, found);
        }

        private static double from(Point point, boolean metered) {
            return metered ? point.seconds() : point.value();
        }
    }

    /**
     * Stops to open the lens for an exposure of each length, straight in the logarithm of the time. The first point is
     * [t, 0]. Stops of aperture are no time factor: a longer time runs into more failure, so the time to set is the
     * shortest that solves t = metered * 2^n(t).
     */
    record Opening(List<Point> points) implements Reciprocity {
        public Opening {
            points = List.copyOf(points);
            Point.checkRising(points);
            if (points.get(0).value() != 0) {
                throw new IllegalArgumentException(
                        "the first point is the end of the range that needs nothing: [t, 0]");
            }
            for (int i = 1; i < points.size(); i++) {
                if (!(points.get(i).value() >= points.get(i - 1).value()
                        && points.get(i).value() <= 20)) {
                    throw new IllegalArgumentException("stops to open rise from point to point and stay under 20");
                }
            }
        }

        /** Stops lost in an exposure that lasts so long: n(t). */
        public double lost(double seconds) {
            if (seconds <= points.get(0).seconds()) {
                return 0;
            }
            int end = 1;
            while (end < points.size() - 1 && seconds > points.get(end).seconds()) {
                end++;
            }
            return points.get(end - 1).value()
                    + slope(end) * (Stops.of(seconds) - points.get(end - 1).stops());
        }

        @Override
        public OptionalDouble openStops(double metered) {
            double lost = lost(metered);
            return lost > 0 ? OptionalDouble.of(lost) : OptionalDouble.empty();
        }

        /** Walks the lines f(x) = x - n(x), x = log2 t, for the first x at which f(x) = log2(metered). */
        @Override
        public OptionalDouble corrected(double metered) {
            double wanted = Stops.of(metered);
            if (!past(metered, points.get(0).seconds())) {
                return OptionalDouble.of(metered);
            }
            for (int end = 1; end < points.size(); end++) {
                double gain = 1 - slope(end);
                double start = points.get(end - 1).stops() - points.get(end - 1).value();
                double length = points.get(end).stops() - points.get(end - 1).stops();
                boolean last = end == points.size() - 1;
                if (gain > 1e-9 && wanted >= start - 1e-9 && (last || wanted <= start + gain * length + 1e-9)) {
                    return OptionalDouble.of(
                            Math.max(metered, Stops.factor(points.get(end - 1).stops() + (wanted - start) / gain)));
                }
            }
            return OptionalDouble.empty();
        }

        @Override
        public double worth(double exposed) {
            return exposed / Stops.factor(lost(exposed));
        }

        @Override
        public boolean beyond(double metered, double times) {
            double last = times * points.get(points.size() - 1).seconds();
            OptionalDouble corrected = corrected(metered);
            return past(metered, last) || corrected.isEmpty() || past(corrected.getAsDouble(), last);
        }

        private double slope(int end) {
            Point a = points.get(end - 1);
            Point b = points.get(end);
            return (b.value() - a.value()) / (b.stops() - a.stops());
        }
    }

    /** One published point: a time in seconds and what belongs to it (a corrected time, or stops to open). */
    record Point(double seconds, double value) {
        public Point {
            if (!(seconds > 0 && seconds <= 1e6 && value >= 0 && value <= 1e9)) {
                throw new IllegalArgumentException("a point is a time above 0 seconds and a value not below 0");
            }
        }

        private double stops() {
            return Stops.of(seconds);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Point point
                    && Double.compare(seconds, point.seconds) == 0
                    && Double.compare(value, point.value) == 0;
        }

        @Override
        public int hashCode() {
            return 31 * Double.hashCode(seconds) + Double.hashCode(value);
        }

        private static void checkRising(List<Point> points) {
            if (points.size() < 2) {
                throw new IllegalArgumentException("two points at least");
            }
            for (int i = 1; i < points.size(); i++) {
                if (!(points.get(i).seconds() > points.get(i - 1).seconds())) {
                    throw new IllegalArgumentException("the times of the points rise");
                }
            }
        }
    }

    private static boolean past(double seconds, double limit) {
        return Stops.above(Stops.of(seconds / limit), 0);
    }
}
