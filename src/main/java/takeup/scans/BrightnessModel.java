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
    private static final double TRUST = 0.8;

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
        double usual = Math.log(1 - black - white) + contrast(scan, 1, 0.25);
        return usual
                + TRUST
                        * (slot.overStops().isEmpty()
                                ? MatchProbabilities.normal(
                                        scan.tone().brightness(), middle, Math.hypot(spread, 0.8 * slope))
                                : MatchProbabilities.normal(
                                        scan.tone().brightness(),
                                        middle + slope * (slot.overStops().getAsDouble() - meanOver),
                                        spread));
    }

    /** The same as a scan that nobody logged. */
    double extra(Scan scan) {
        if (scan.tone().isBlack() || scan.tone().isWhite()) {
            return Math.log(0.1);
        }
        return Math.log(0.8)
                + contrast(scan, 1, 0.35)
                + TRUST * MatchProbabilities.normal(scan.tone().brightness(), middle, 1.5 * spread);
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
