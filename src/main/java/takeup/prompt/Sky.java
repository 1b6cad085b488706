package takeup.prompt;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import takeup.text.Plain;

/**
 * Common light that needs no meter: {@code m sky shade}, EV 12 at ISO 100; {@code m sky stage}, EV 8 to 9, of which the
 * middle is taken.
 *
 * <p>Daylight: armycommunications.tpub.com, SS0507, the f/16 rule; all others: ANSI PH2.7 as tabulated by
 * liquisearch.com, "Exposure value, tabulated". Candlelight: from memory. The sun from the side takes 1 EV, from behind
 * 2 (SS0507).
 */
public enum Sky {
    SNOW("snow", "light sand or snow in full sun", 16),
    SUN("sun", "full or slightly hazy sun", 15),
    HAZY("hazy", "hazy sun", 14),
    SIDE("side", "full sun from the side", 14),
    CLOUDY("cloudy", "cloudy bright", 13),
    BACK("back", "full sun from behind the subject", 13),
    BEFORE_SUNSET("before-sunset", "the sky just before sunset", 12, 14),
    OVERCAST("overcast", "heavy overcast", 12),
    SHADE("shade", "open shade in clear sunlight", 12),
    SUNSET("sunset", "the sky at sunset", 12),
    DUSK("dusk", "the sky just after sunset", 9, 11),
    GALLERY("gallery", "galleries", 8, 11),
    NEON("neon", "neon and bright signs", 9, 10),
    SPORTS("sports", "night sports", 9),
    FIRE("fire", "fires", 9),
    STAGE("stage", "stage shows", 8, 9),
    BRIGHT_STREET("bright-street", "bright street scenes at night", 8),
    STREET("street", "night street scenes and window displays", 7, 8),
    OFFICE("office", "offices and work areas", 7, 8),
    FAIR("fair", "fairs and amusement parks at night", 7),
    HOME("home", "home interiors", 5, 7),
    TRAFFIC("traffic", "night traffic", 5),
    TREE_LIGHTS("tree-lights", "Christmas tree lights", 4, 5),
    FLOODLIT("floodlit", "floodlit buildings", 3, 5),
    CANDLE("candle", "a face by candlelight", 4),
    SKYLINE("skyline", "distant views of lighted buildings", 2),
    MOON("moon", "a landscape under a full moon", -3, -2);

    private final String word;
    private final String scene;
    private final double low;
    private final double high;

    Sky(String word, String scene, double ev100) {
        this(word, scene, ev100, ev100);
    }

    Sky(String word, String scene, double low, double high) {
        this.word = word;
        this.scene = scene;
        this.low = low;
        this.high = high;
    }

    /** EV at ISO 100; the middle where the table has a range. */
    double ev100() {
        return (low + high) / 2;
    }

    /**
     * What the table says where it gives a range: {@code For stage shows the table gives EV 8 to 9; the middle is
     * taken}.
     */
    public Optional<String> range() {
        return low == high
                ? Optional.empty()
                : Optional.of("For " + scene + " the table gives EV " + Plain.number(low) + " to " + Plain.number(high)
                        + "; the middle is taken");
    }

    /** The rows of a plan: light that stands for a moment, not for where the sun is. */
    static Optional<Sky> ofMoment(String word) {
        return named(word).filter(it -> it != SIDE && it != BACK);
    }

    static Optional<Sky> named(String word) {
        return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
    }

    /**
     * What light from the side or from behind takes, in EV: {@code m sky hazy side}; only where the sun casts shadows.
     */
    Optional<Double> lossFrom(String where) {
        if (this != SNOW && this != SUN && this != HAZY) {
            return Optional.empty();
        }
        return switch (where) {
            case "side" -> Optional.of(1.0);
            case "back" -> Optional.of(2.0);
            default -> Optional.empty();
        };
    }

    /** The words of all of them, the brightest first. */
    public static List<String> words() {
        return Arrays.stream(values()).map(it -> it.word).toList();
    }

    /** What may follow {@code sky} and, after a sun that casts shadows, the side it comes from. */
    public static List<String> after(String before) {
        if (before.equals("sky")) {
            return words();
        }
        return named(before).flatMap(it -> it.lossFrom("side")).isPresent() ? List.of("side", "back") : List.of();
    }
}
