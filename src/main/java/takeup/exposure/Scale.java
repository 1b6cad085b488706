package takeup.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The marks that rings and dials are engraved with, in full, half or third stops, each with its exact value.
 *
 * <p>Prints of apertures: factbites F-number (full), medfmt.dustynegatives.org fstops (half),
 * largeformatphotography.info thread 8513 and kameraarkasi.org (third). Prints of times: scottlocklear.com
 * shutter-speed-chart from 1 s down; longer ones by the same rule, from memory. Electronically timed cameras give the
 * exact powers of two whatever is printed (scantips.com, fstop2).
 */
public enum Scale {
    FULL(
            1,
            -1,
            new double[] {0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32, 45, 64, 90, 128},
            new double[] {},
            -6,
            "60 30 15 8 4 2 1 /2 /4 /8 /15 /30 /60 /125 /250 /500 /1000 /2000 /4000 /8000"),
    HALF(
            2,
            0,
            new double[] {
                1, 1.2, 1.4, 1.7, 2, 2.4, 2.8, 3.3, 4, 4.8, 5.6, 6.7, 8, 9.5, 11, 13, 16, 19, 22, 27, 32, 38, 45, 54, 64
            },
            new double[] {3.4, 3.3, 4.7, 4.8, 6.8, 6.7, 9.6, 9.5, 13.5, 13},
            -5,
            "30 20 15 10 8 6 4 3 2 1.5 1 .7 /2 .3 /4 /6 /8 /10 /15 /20 /30 /45 /60 /90 /125 /180 /250 /350 /500 /750 "
                    + "/1000 /1500 /2000 /3000 /4000 /6000 /8000"),
    THIRD(
            3,
            0,
            new double[] {
                1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14,
                16, 18, 20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64, 72, 81, 90
            },
            new double[] {28, 29},
            -5,
            "30 25 20 15 13 10 8 6 5 4 3.2 2.5 2 1.6 1.3 1 .8 .6 /2 .4 .3 /4 /5 /6 /8 /10 /13 /15 /20 /25 /30 /40 /50 "
                    + "/60 /80 /100 /125 /160 /200 /250 /320 /400 /500 /640 /800 /1000 /1250 /1600 /2000 /2500 "
                    + "/3200 /4000 /5000 "
                    + "/6400 /8000");

    /** Where a number is a mark of several scales it is read as one of the first of these. */
    private static final List<Scale> BY_HABIT = List.of(FULL, THIRD, HALF);

    private final List<Aperture> apertures;
    private final double[] otherPrints;
    private final List<ExposureTime> times;

    Scale(int parts, double firstAv, double[] fNumbers, double[] otherPrints, double firstTv, String times) {
        this.otherPrints = otherPrints;
        List<Aperture> apertureMarks = new ArrayList<>();
        for (int i = 0; i < fNumbers.length; i++) {
            apertureMarks.add(Aperture.mark(fNumbers[i], firstAv + (double) i / parts));
        }
        this.apertures = List.copyOf(apertureMarks);
        List<ExposureTime> timeMarks = new ArrayList<>();
        int from = 0;
        for (int i = 0; from <= times.length(); i++) {
            int end = times.indexOf(' ', from);
            String print = times.substring(from, end < 0 ? times.length() : end);
            double seconds =
                    print.charAt(0) == '/' ? 1 / Double.parseDouble(print.substring(1)) : Double.parseDouble(print);
            timeMarks.add(new ExposureTime(seconds, Stops.factor(-(firstTv + (double) i / parts))));
            from = end < 0 ? times.length() + 1 : end + 1;
        }
        this.times = List.copyOf(timeMarks);
    }

    /** All apertures of the scale, widest first. */
    public List<Aperture> apertures() {
        return apertures;
    }

    /** All times of the scale, longest first. */
    public List<ExposureTime> times() {
        return times;
    }

    /** The mark with that print (f/6.8 is another print of the half stop f/6.7); empty for a number on no mark. */
    public Optional<Aperture> aperture(double print) {
        double known = print;
        for (int i = 0; i < otherPrints.length; i += 2) {
            if (same(print, otherPrints[i])) {
                known = otherPrints[i + 1];
            }
        }
        for (Aperture mark : apertures) {
            if (same(mark.fNumber(), known)) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    /** The mark with that printed time in seconds; empty for a time on no mark. */
    public Optional<ExposureTime> time(double seconds) {
        for (ExposureTime mark : times) {
            if (same(mark.seconds(), seconds)) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    /**
     * A mark of any scale, the full stops' first, then thirds, then halves; empty for a number on none, such as 11.5.
     */
    public static Optional<Aperture> anyMark(double print) {
        for (Scale scale : BY_HABIT) {
            Optional<Aperture> mark = scale.aperture(print);
            if (mark.isPresent()) {
                return mark;
            }
        }
        return Optional.empty();
    }

    /** A mark of any scale; at face value where the print is on none. */
    public static Aperture anyAperture(double print) {
        Optional<Aperture> mark = anyMark(print);
        return mark.isPresent() ? mark.get() : Aperture.literal(print);
    }

    /** The mark of this scale; where the print is on none of its marks, that of any. */
    public Aperture apertureOrAny(double print) {
        Optional<Aperture> mark = aperture(print);
        return mark.isPresent() ? mark.get() : anyAperture(print);
    }

    /**
     * A mark of any scale, the full stops' first, then thirds, then halves; at face value where the print is on none.
     */
    public static ExposureTime anyTime(double seconds) {
        for (Scale scale : BY_HABIT) {
            Optional<ExposureTime> mark = scale.time(seconds);
            if (mark.isPresent()) {
                return mark.get();
            }
        }
        return ExposureTime.literal(seconds);
    }

    /** The mark of this scale with that printed time; where it is on none of its marks, that of any. */
    public ExposureTime timeOrAny(double seconds) {
        Optional<ExposureTime> mark = time(seconds);
        return mark.isPresent() ? mark.get() : anyTime(seconds);
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) <= 1e-6 * b;
    }
}
