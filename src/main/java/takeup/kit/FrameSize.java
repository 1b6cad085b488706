package takeup.kit;

import java.util.Optional;

/**
 * The size of one picture on the film: 24x36, 6x4.5, 6x6.
 *
 * <p>Gates in mm: liquisearch.com, "120 film", frame sizes; academickids.com, "135 film". 18x24 and 24x65 by their
 * names.
 */
public enum FrameSize {
    HALF("18x24", 18, 24),
    SMALL("24x36", 24, 36),
    PANORAMIC("24x65", 24, 65),
    SIX_BY_FOUR_AND_A_HALF("6x4.5", 41.5, 56),
    SIX_BY_SIX("6x6", 56, 56),
    SIX_BY_SEVEN("6x7", 56, 70),
    SIX_BY_EIGHT("6x8", 56, 77),
    SIX_BY_NINE("6x9", 56, 84),
    SIX_BY_TWELVE("6x12", 56, 118),
    SIX_BY_SEVENTEEN("6x17", 56, 168);

    private final String word;
    private final double diagonalMm;
    private final double aspect;

    FrameSize(String word, double shortMm, double longMm) {
        this.word = word;
        this.diagonalMm = Math.hypot(shortMm, longMm);
        this.aspect = longMm / shortMm;
    }

    /** The size of that name. */
    public static Optional<FrameSize> named(String word) {
        for (FrameSize size : values()) {
            if (size.word.equals(word)) {
                return Optional.of(size);
            }
        }
        return Optional.empty();
    }

    /** The diagonal of the picture, in mm: 43.27 for 24x36. */
    public double diagonalMm() {
        return diagonalMm;
    }

    /** The long side against the short one: 1.5 for 24x36, 1 for 6x6. */
    public double aspect() {
        return aspect;
    }

    /** The largest blur, in mm, that still counts as sharp: diagonal / 1500. */
    public double circleOfConfusionMm() {
        return diagonalMm / 1500;
    }

    /**
     * The longest time that can be held by hand, in seconds: 1 / (focal length x 43.27 / diagonal), the focal length as
     * on 35 mm film (steves-digicams, thread 166831; a rule of thumb of the trade).
     */
    public double handHeldLimit(double focalMm) {
        return 1 / (focalMm * SMALL.diagonalMm / diagonalMm);
    }

    @Override
    public String toString() {
        return word;
    }
}
