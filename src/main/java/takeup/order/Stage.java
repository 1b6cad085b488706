package takeup.order;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Where an ordered roll is. */
public enum Stage {
    ORDERED("ordered", "ordered"),
    SENT("sent", "at the lab"),
    SCANS("scans", "scans back"),
    NEGATIVES("negatives", "negatives back");

    private final String word;
    private final String where;

    Stage(String word, String where) {
        this.word = word;
        this.where = where;
    }

    /** As it is typed, and written in files: {@code sent}. */
    public String word() {
        return word;
    }

    /** As it is shown: {@code at the lab}. */
    public String where() {
        return where;
    }

    /** The words that can be typed. */
    public static List<String> all() {
        return Arrays.stream(values()).map(Stage::word).toList();
    }

    /** The stage of that word. */
    public static Optional<Stage> named(String word) {
        return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
    }
}
