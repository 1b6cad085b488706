package takeup.scans;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * How bright the scans of one folder are: what one scan says about its frame's light, as a normal distribution about a
 * line. More light on the film is a brighter scan, unless the lab has corrected it away; that is why the slope is
 * weighed and not assumed.
 *
 * @param middle the brightness of a frame with middling light
 * @param spread how far scans of equal light lie apart
 * @param contrast the usual contrast
 * @param meanOver the middling light of the logged frames, in stops above box speed
 */
record BrightnessModel(double middle, double spread, double contrast, double meanOver) {
    /** The spread that is assumed, with the weight of four scans. Opinion: no source. */
    private static final double USUAL_SPREAD = 0.08;

    private static final int WEIGHT = 4;
    /**
     * Scans of one subject in a row are no independent witnesses, so brightness counts for less than it would. Opinion.
     */
    private static final double TRUST = 0.7;
    /** How bright a blown scan is, and one of a frame with hardly any light; opinion. */
    private static final double BLOWN = 0.9;

    private static final double DARK = 0.1;
    /** How often a scan looks like nothing that can be foretold; opinion. */
    private static final double ANYTHING = 0.02;

    /** A first look, before any scan has its frame. */
    static BrightnessModel of(List<Scan> scans, List<Slot> slots) {
        double[] bright = sorted(scans, Tone::brightness);
        double[] contrasts = sorted(scans, Tone::contrast);
        double[] over = slots.stream()
                .filter(it -> it.overStops().isPresent())
                .mapToDouble(it -> it.overStops().getAsDouble())
                .sorted()
                .toArray();
        double middle = median(bright, 0.45);
        return new BrightnessModel(
                middle, spread(bright, middle), Math.max(0.02, median(contrasts, 0.2)), median(over, 0));
    }

    private static double[] sorted(List<Scan> scans, ToDoubleFunction<Tone> of) {
        return scans.stream()
                .filter(BrightnessModel::isUsual)
                .mapToDouble(it -> of.applyAsDouble(it.tone()))
                .sorted()
                .toArray();
    }

    /** The same once scans have frames: what is left of the spread once the light is accounted for. */
    BrightnessModel fitted(List<Scan> scans, List<Slot> slots, int[] slotOf, double slope) {
        double[] known = IntStream.range(0, slotOf.length)
                .filter(it -> slotOf[it] >= 0
                        && isUsual(scans.get(it))
                        && slots.get(slotOf[it]).overStops().isPresent())
                .mapToDouble(it -> scans.get(it).tone().brightness()
                        - slope * (slots.get(slotOf[it]).overStops().getAsDouble() - meanOver))
                .sorted()
                .toArray();
        if (known.length < 3) {
            return this;
        }
        double level = median(known, middle);
        return new BrightnessModel(level, spread(known, level), contrast, meanOver);
    }

    private static double spread(double[] brightness, double middle) {
        double squares = WEIGHT * USUAL_SPREAD * USUAL_SPREAD;
        for (double each : brightness) {
            // A single odd frame, such as a pile, must not widen the spread of the others.
            double off = Math.min(0.25, Math.abs(each - middle));
            squares += off * off;
        }
        return Math.sqrt(squares / (WEIGHT + brightness.length));
    }

    private static boolean isUsual(Scan scan) {
        return !scan.tone().isBlack() && !scan.tone().isWhite();
    }

    private static double median(double[] sorted, double otherwise) {
        int middle = sorted.length / 2;
        if (sorted.length == 0) {
            return otherwise;
        }
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /** Natural logarithm of how likely a scan is, as a slot's, at so much brightness a stop. */
    double frame(Scan scan, Slot slot, double slope) {
        double black = MatchProbabilities.black(slot);
        double white = MatchProbabilities.white(slot);
        if (scan.tone().isBlack()) {
            return Math.log(black);
        }
        if (scan.tone().isWhite()) {
            return Math.log(white);
        }
        double share = Math.log(1 - black - white);
        if (slot.overStops().isEmpty()) {
            return share + look(scan, middle, Math.hypot(spread, 0.8 * slope), Tails.UNLOGGED);
        }
        double over = slot.overStops().getAsDouble();
        return share + look(scan, middle + slope * (over - meanOver), spread, Tails.of(over));
    }

    /** The same as a scan that nobody logged. */
    double extra(Scan scan) {
        if (scan.tone().isBlack() || scan.tone().isWhite()) {
            return Math.log(0.1);
        }
        return Math.log(0.8) + look(scan, middle, 1.5 * spread, Tails.UNLOGGED);
    }

    /**
     * How often a scan looks as if its light had nothing to say: blown, or without detail for want of light. The log
     * foretells both.
     */
    private record Tails(double blown, double dark) {
        private static final Tails UNLOGGED = new Tails(0.02, 0.03);
        private static final Tails USUAL = new Tails(0.01, 0.01);

        static Tails of(double over) {
            if (over >= 2) {
                return new Tails(over >= 2.7 ? 0.4 : 0.1, 0.002);
            }
            return over <= -1.5 ? new Tails(0.002, over <= -2.2 ? 0.4 : 0.1) : USUAL;
        }
    }

    /** Natural logarithm of how likely a scan's tones are; anything at all may be seen now and then. */
    private double look(Scan scan, double bright, double deviation, Tails tails) {
        double usual = 1 - tails.blown - tails.dark - ANYTHING;
        double tone = scan.tone().brightness();
        double high = MatchProbabilities.normal(tone, BLOWN, 0.07) + contrast(scan, 0.4, 0.35);
        double low = MatchProbabilities.normal(tone, DARK, 0.07) + contrast(scan, 0.4, 0.35);
        double plain = MatchProbabilities.normal(tone, bright, deviation) + contrast(scan, 1, 0.25);
        double sum = LogSum.add(
                LogSum.add(Math.log(usual) + plain, Math.log(ANYTHING)),
                LogSum.add(LogSum.log(tails.blown) + high, LogSum.log(tails.dark) + low));
        return TRUST * sum;
    }

    /** The same as many frames on top of each other: very bright, and flat. */
    double pile(Scan scan) {
        return TRUST * MatchProbabilities.normal(scan.tone().brightness(), 0.88, 0.1) + contrast(scan, 0.4, 0.25);
    }

    /** Whether a scan is bright and flat enough to be looked at as a pile. */
    boolean mayBePile(Scan scan) {
        return scan.tone().brightness() > middle + spread && scan.tone().contrast() < 0.85 * contrast;
    }

    private double contrast(Scan scan, double share, double deviation) {
        return MatchProbabilities.normal(scan.tone().contrast() / contrast, share, deviation);
    }
}
