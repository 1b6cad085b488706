package takeup.index;

import java.util.function.Function;
import takeup.review.Review;
import takeup.roll.Roll;

/**
 * A kind of entry that the index holds of each roll, in files of its own: who lists rolls does not read their frames.
 *
 * @param <T> what an entry is read as
 */
public interface IndexKind<T> {
    /** What its files are called, in small letters. */
    String name();

    /** What its entries hang on besides the program and the files of a roll; most often on nothing. */
    default String madeFor() {
        return "";
    }

    /**
     * The entry of a roll.
     *
     * @param loading the step that loaded it
     */
    String text(Roll roll, long loading, Review review);

    /** What an entry says; an IllegalArgumentException where it is none. */
    T read(String text);

    /** The same entries, in the same files, read as something else. */
    default <R> IndexKind<R> readAs(Function<String, R> reader) {
        IndexKind<T> kind = this;
        return new IndexKind<>() {
            @Override
            public String name() {
                return kind.name();
            }

            @Override
            public String madeFor() {
                return kind.madeFor();
            }

            @Override
            public String text(Roll roll, long loading, Review review) {
                return kind.text(roll, loading, review);
            }

            @Override
            public R read(String text) {
                return reader.apply(text);
            }
        };
    }
}
