package takeup.prompt;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A sky whose light the daylight rule gives: {@code m sky shade}, EV 12 at ISO 100 (armycommunications.tpub.com,
 * SS0507; ANSI PH2.7 table).
 */
public enum Sky {
    SNOW("snow", 16),
    SUN("sun", 15),
    HAZY("hazy", 14),
    CLOUDY("cloudy", 13),
    OVERCAST("overcast", 12),
    SHADE("shade", 12);

    private final String word;
    private final double ev100;

    Sky(String word, double ev100) {
        this.word = word;
        this.ev100 = ev100;
    }

    /** EV at ISO 100. */
    double ev100() {
        return ev100;
    }

    static Optional<Sky> named(String word) {
        return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
    }

    /** The words of all skies, the brightest first. */
    public static List<String> words() {
        return Arrays.stream(values()).map(it -> it.word).toList();
    }
}
