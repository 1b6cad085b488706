package takeup.exposure;

import java.util.Optional;
import java.util.OptionalDouble;
import takeup.text.Plain;

/**
 * What a film makes of a metered time, and how good that answer is: the film's own figure, a generic table's (for
 * reversal film a range), a guess past the last published point in two figures at most, or no figure at all.
 *
 * @param metered the time in seconds before reciprocity
 * @param film how the film loses speed
 */
public record LongExposure(double metered, Reciprocity film) {
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    /** What a generic table is good for, in words. */
    public static final String GENERIC = "generic: yours may differ by up to 2 stops; give its maker's figures";

    /** The time to set, in seconds; empty where no time is long enough, or nobody can tell. */
    public OptionalDouble seconds() {
        return isUnknown() ? OptionalDouble.empty() : film.corrected(metered);
    }

    /** Whether anything is lost, or nobody knows. */
    public boolean isNeeded() {
        return isLossy() || isGuess() || seconds().isEmpty();
    }

    private boolean isLossy() {
        OptionalDouble corrected = film.corrected(metered);
        return corrected.isPresent() && Stops.above(Stops.of(corrected.getAsDouble() / metered), 0);
    }

    /** Whether the time lies past the last published point. */
    public boolean isGuess() {
        return film.beyond(metered);
    }

    /** Whether it lies past ten times that point, where a figure would be made up. */
    public boolean isUnknown() {
        return film.beyond(metered, 10);
    }

    /** Whether the loss is that of a table for all films of a kind. */
    public boolean isGeneric() {
        return isLossy() && GenericReciprocity.of(film).isPresent();
    }

    /** The least that may be needed, in seconds, where a range is known rather than a figure. */
    public OptionalDouble leastSeconds() {
        Optional<GenericReciprocity> generic = GenericReciprocity.of(film);
        return isLossy() && generic.isPresent() ? generic.get().leastCorrected(metered) : OptionalDouble.empty();
    }

    /** What is needed, in words: {@code 2s}, {@code 12s to 32s}, {@code about 35 h}; "" where there is no figure. */
    public String needs() {
        if (seconds().isEmpty()) {
            return "";
        }
        String most = needs(seconds().getAsDouble());
        if (leastSeconds().isEmpty()) {
            return most;
        }
        String least = needs(leastSeconds().getAsDouble());
        return least.equals(most) ? most : least + " to " + most.replace("about ", "");
    }

    private String needs(double seconds) {
        return isGuess() ? "about " + guessWords(seconds) : ExposureTime.words(seconds);
    }

    /** What to do instead, in words: {@code , or 8s and open 1.4 stops}; "" where that is not given. */
    public String orOpen() {
        OptionalDouble open = film.openStops(metered);
        if (open.isEmpty() || seconds().isEmpty()) {
            return "";
        }
        String stops = Stops.words(open.getAsDouble());
        String least = leastSeconds().isPresent()
                ? Stops.tenths(GenericReciprocity.of(film).orElseThrow().leastOpened(metered)) + " to "
                : "";
        return "open " + least + stops;
    }

    /** A time that is a guess, as it is set: to two figures. */
    public static double guess(double seconds) {
        double unit = unit(seconds);
        return Plain.rounded(seconds / unit, 2) * unit;
    }

    private static double unit(double seconds) {
        if (seconds < 100) {
            return 1;
        }
        return seconds < 100 * MINUTE ? MINUTE : HOUR;
    }

    private static String guessWords(double seconds) {
        double unit = unit(seconds);
        String number = Plain.number(Plain.rounded(seconds / unit, 2));
        if (unit == HOUR) {
            return number + " h";
        }
        return number + (unit == MINUTE ? " min" : " s");
    }
}
