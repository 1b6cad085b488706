package takeup.kit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import takeup.text.Plain;

/**
 * The size of one picture on the film: 24x36, 6x4.5, 6x6, or one of the photographer's own, 100x125.
 *
 * <p>Gates in mm: liquisearch.com, "120 film", frame sizes; academickids.com, "135 film". 18x24 and 24x65 by their
 * names.
 */
public final class FrameSize {
    public static final FrameSize HALF = new FrameSize("18x24", 18, 24);
    public static final FrameSize SMALL = new FrameSize("24x36", 24, 36);
    public static final FrameSize PANORAMIC = new FrameSize("24x65", 24, 65);
    public static final FrameSize SIX_BY_FOUR_AND_A_HALF = new FrameSize("6x4.5", 41.5, 56);
    public static final FrameSize SIX_BY_SIX = new FrameSize("6x6", 56, 56);
    public static final FrameSize SIX_BY_SEVEN = new FrameSize("6x7", 56, 70);
    public static final FrameSize SIX_BY_EIGHT = new FrameSize("6x8", 56, 77);
    public static final FrameSize SIX_BY_NINE = new FrameSize("6x9", 56, 84);
    public static final FrameSize SIX_BY_TWELVE = new FrameSize("6x12", 56, 118);
    public static final FrameSize SIX_BY_SEVENTEEN = new FrameSize("6x17", 56, 168);

    private static final List<FrameSize> NAMED = List.of(
            HALF,
            SMALL,
            PANORAMIC,
            SIX_BY_FOUR_AND_A_HALF,
            SIX_BY_SIX,
            SIX_BY_SEVEN,
            SIX_BY_EIGHT,
            SIX_BY_NINE,
            SIX_BY_TWELVE,
            SIX_BY_SEVENTEEN);

    private final String word;
    private final double shortMm;
    private final double longMm;

    private FrameSize(String word, double shortMm, double longMm) {
        this.word = word;
        this.shortMm = shortMm;
        this.longMm = longMm;
    }

    /** The sizes that have a name. */
    static List<FrameSize> named() {
        return NAMED;
    }

    /** The size of that name. */
    public static Optional<FrameSize> named(String word) {
        for (FrameSize size : NAMED) {
            if (size.word.equals(word)) {
                return Optional.of(size);
            }
        }
        return Optional.empty();
    }

    /** The size of a picture that so many mm are the sides of, by its name where it has one. */
    static FrameSize ofMm(double side, double other) {
        double least = Math.min(side, other);
        double most = Math.max(side, other);
        return NAMED.stream()
                .filter(it -> it.shortMm == least && it.longMm == most)
                .findFirst()
                .orElseGet(() -> new FrameSize(Plain.number(least) + "x" + Plain.number(most), least, most));
    }

    /** Whether it is known by its two sides alone. */
    boolean isOwn() {
        return !NAMED.contains(this);
    }

    /** The short side and the long one, in mm. */
    List<Double> sidesMm() {
        return List.of(shortMm, longMm);
    }

    /** The diagonal of the picture, in mm: 43.27 for 24x36. */
    public double diagonalMm() {
        return Math.hypot(shortMm, longMm);
    }

    /** The long side against the short one: 1.5 for 24x36, 1 for 6x6. */
    public double aspect() {
        return longMm / shortMm;
    }

    /** The largest blur, in mm, that still counts as sharp: diagonal / 1500. */
    public double circleOfConfusionMm() {
        return diagonalMm() / 1500;
    }

    /**
     * The longest time that can be held by hand, in seconds: 1 / (focal length x 43.27 / diagonal), the focal length as
     * on 35 mm film (steves-digicams, thread 166831; a rule of thumb of the trade).
     */
    public double handHeldLimit(double focalMm) {
        return 1 / (focalMm * SMALL.diagonalMm() / diagonalMm());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FrameSize size && shortMm == size.shortMm && longMm == size.longMm;
    }

    @Override
    public int hashCode() {
        return Objects.hash(shortMm, longMm);
    }

    @Override
    public String toString() {
        return word;
    }
}
