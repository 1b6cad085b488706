package takeup.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.exposure.ExposureTime;
import takeup.exposure.Scale;
import takeup.exposure.Stops;
import takeup.text.Plain;

/**
 * The shutter's dial: its marks, longest first, and the scale that its prints are read on.
 *
 * @param marks at least one, longest first
 * @param scale full, half or third stops; empty where the marks are irregular
 * @param bulb whether it can be held open for as long as one likes
 */
public record Shutter(List<ExposureTime> marks, Optional<Scale> scale, boolean bulb) {
    public Shutter {
        marks = List.copyOf(marks);
        if (marks.isEmpty()) {
            throw new IllegalArgumentException("a dial has at least one mark");
        }
    }

    /** The marks of a scale between two ends (seconds as printed), which are marks in any case. */
    public static Shutter between(double longest, double fastest, Scale scale, boolean bulb) {
        ExposureTime first = scale.timeOrAny(longest);
        ExposureTime last = scale.timeOrAny(fastest);
        if (!(first.exactSeconds() > last.exactSeconds())) {
            throw new IllegalArgumentException("the fastest time is the shorter one");
        }
        List<ExposureTime> marks = new ArrayList<>();
        marks.add(first);
        for (ExposureTime mark : scale.times()) {
            if (mark.stops() < first.stops() - 1e-9 && mark.stops() > last.stops() + 1e-9) {
                marks.add(mark);
            }
        }
        marks.add(last);
        return new Shutter(marks, Optional.of(scale), bulb);
    }

    /** Irregular marks as they are engraved, in seconds; a print on no scale is taken at face value. */
    public static Shutter of(List<Double> prints, boolean bulb) {
        List<ExposureTime> marks = new ArrayList<>();
        for (double print : prints) {
            ExposureTime mark = Scale.anyTime(print);
            if (!marks.isEmpty()
                    && mark.exactSeconds() >= marks.get(marks.size() - 1).exactSeconds()) {
                throw new IllegalArgumentException("the marks run from the longest to the fastest");
            }
            marks.add(mark);
        }
        return new Shutter(marks, Optional.empty(), bulb);
    }

    /** The same dial, of which some marks were measured: print in seconds, and what the shutter gives there. */
    Shutter measured(Map<Double, Double> secondsByPrint) {
        List<ExposureTime> measured = new ArrayList<>(marks);
        secondsByPrint.forEach((print, seconds) -> {
            ExposureTime mark = mark(print)
                    .orElseThrow(() -> new IllegalArgumentException(
                            ExposureTime.literal(print) + " is measured, and is no time of this dial"));
            measured.set(marks.indexOf(mark), new ExposureTime(mark.seconds(), seconds));
        });
        for (int at = 1; at < measured.size(); at++) {
            if (measured.get(at).exactSeconds() > measured.get(at - 1).exactSeconds()) {
                throw new IllegalArgumentException(measured.get(at) + " is longer, as it was measured, than "
                        + measured.get(at - 1) + " before it");
            }
        }
        return new Shutter(measured, scale, bulb);
    }

    /** The marks that were measured: print, and what the shutter gives there. */
    public Map<ExposureTime, ExposureTime> measuredMarks() {
        Map<ExposureTime, ExposureTime> measured = new LinkedHashMap<>();
        for (ExposureTime mark : marks) {
            ExposureTime nominal =
                    scale.flatMap(it -> it.time(mark.seconds())).orElseGet(() -> Scale.anyTime(mark.seconds()));
            if (nominal.exactSeconds() != mark.exactSeconds()) {
                measured.put(nominal, ExposureTime.literal(mark.exactSeconds()));
            }
        }
        return measured;
    }

    /** The mark of this dial with that printed time. */
    public Optional<ExposureTime> mark(double seconds) {
        for (ExposureTime mark : marks) {
            if (Math.abs(mark.seconds() - seconds) < 1e-6 * seconds) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    /**
     * What a time stands for here: a mark, a mark of the scale past the fastest, or its face value (also past the
     * longest).
     */
    public ExposureTime read(double seconds) {
        Optional<ExposureTime> mark = mark(seconds);
        if (mark.isPresent()) {
            return mark.get();
        }
        return seconds > longest().seconds()
                ? ExposureTime.literal(seconds)
                : scale.flatMap(it -> it.time(seconds)).orElseGet(() -> ExposureTime.literal(seconds));
    }

    /** The mark that a bare number on this dial means: {@code 125} is 1/125, {@code 1} is 1 s, {@code 0.8} is 0.8 s. */
    public Optional<ExposureTime> printed(double number) {
        for (ExposureTime mark : marks) {
            if (mark.seconds() <= 1 && mark.dial().equals(Plain.number(number))) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    /** The dial as far as a time: what is faster is left out; all of it where nothing would be left. */
    public Shutter notFasterThan(ExposureTime fastest) {
        List<ExposureTime> slower = marks.stream()
                .filter(it -> !Stops.above(fastest.stops(), it.stops()))
                .toList();
        return slower.isEmpty() ? this : new Shutter(slower, scale, bulb);
    }

    /** Whether a time is no mark of the dial but can be had on bulb, by the watch: from one second on. */
    public boolean isByTheWatch(ExposureTime time) {
        return bulb && time.exactSeconds() >= 1 && !isMark(time);
    }

    private boolean isMark(ExposureTime time) {
        for (ExposureTime mark : marks) {
            if (Math.abs(mark.stops() - time.stops()) < Stops.TOLERANCE) {
                return true;
            }
        }
        return false;
    }

    /** The slowest time of the dial. */
    public ExposureTime longest() {
        return marks.get(0);
    }

    /** The shortest time of the dial. */
    public ExposureTime fastest() {
        return marks.get(marks.size() - 1);
    }

    /** Half the distance, in stops, from the longest mark to the one before it; half a stop on a dial of one mark. */
    double halfStepAtLongest() {
        return marks.size() < 2 ? 0.5 : (longest().stops() - marks.get(1).stops()) / 2;
    }

    /**
     * The time to set for a wanted one: the nearest mark; with bulb, past the longest mark by more than half a step, or
     * from two seconds on where every mark is further off than a third of a stop, the time itself, to half a second up
     * to 10 s, a second up to a minute, then five seconds.
     *
     * @param moreLight where two marks are equally near, whether the longer one is taken
     */
    public ExposureTime nearest(double seconds, boolean moreLight) {
        double wanted = Stops.of(seconds);
        ExposureTime mark = nearestMark(wanted, moreLight);
        boolean isPast = Stops.above(wanted - longest().stops(), halfStepAtLongest());
        boolean isBetween = seconds >= 2 && Stops.above(Math.abs(mark.stops() - wanted), 1 / 3.0);
        return bulb && seconds > ExposureTime.SHORTEST_BULB && (isPast || isBetween)
                ? byTheWatch(seconds, moreLight)
                : mark;
    }

    private static ExposureTime byTheWatch(double seconds, boolean moreLight) {
        double step = ExposureTime.step(seconds);
        return ExposureTime.literal(
                Math.max(1, moreLight ? ExposureTime.counted(seconds) : Math.ceil(seconds / step - 0.5) * step));
    }

    private ExposureTime nearestMark(double wanted, boolean moreLight) {
        ExposureTime best = marks.get(0);
        for (ExposureTime mark : marks) {
            double gain = Math.abs(best.stops() - wanted) - Math.abs(mark.stops() - wanted);
            if (gain > Stops.TOLERANCE || gain >= -Stops.TOLERANCE && !moreLight && mark != best) {
                best = mark;
            }
        }
        return best;
    }
}
