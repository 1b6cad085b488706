package takeup.review;

import java.util.Arrays;
import java.util.Optional;

/**
 * The photographer's verdict on a frame by the texture of its shadows, in the negative or the scan: thin, good or
 * dense. The brightness of a scan is no verdict: it may be the lab's.
 */
public enum Density {
    /** Too little light: no texture left in the shadows. */
    THIN("thin"),
    /** As it should be. */
    GOOD("good"),
    /** Too much light: shadows full, highlights blocked. */
    DENSE("dense");

    private final String word;

    Density(String word) {
        this.word = word;
    }

    /** The verdict of that name. */
    public static Optional<Density> named(String word) {
        return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
    }

    @Override
    public String toString() {
        return word;
    }
}
