package takeup.kit;

import java.util.Optional;

/** The size of the film itself: 135 cassettes, 120 and 220 roll film. */
public enum FilmSize {
    F135("135"),
    F120("120"),
    F220("220");

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

    @Override
    public String toString() {
        return word;
    }
}
