package takeup.kit;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** The size of the film itself: 135 cassettes, 120, 220 and 127 roll film, sheets in holders, packs of instant film. */
public enum FilmSize {
    F135("135"),
    F120("120"),
    F220("220"),
    F127("127"),
    SHEET("sheet"),
    INSTANT("instant");

    private final String word;

    FilmSize(String word) {
        this.word = word;
    }

    /** The film size of that name. */
    public static Optional<FilmSize> named(String word) {
        for (FilmSize size : values()) {
            if (size.word.equals(word)) {
                return Optional.of(size);
            }
        }
        return Optional.empty();
    }

    /** All names: {@code 135, 120, 220, 127, sheet, instant}. */
    public static String words() {
        return Arrays.stream(values()).map(FilmSize::toString).collect(Collectors.joining(", "));
    }

    /** Whether one frame after the other is wound on. */
    public boolean isRoll() {
        return this != SHEET && this != INSTANT;
    }

    @Override
    public String toString() {
        return word;
    }
}
