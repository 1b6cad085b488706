package takeup.order;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a lab can be asked for with a whole order, in free text: a scan size, negatives back or not, a colour
 * preference.
 */
public enum Wish {
    SCAN_SIZE("scanSize", "scan size"),
    FILE_TYPE("fileType", "file type"),
    BORDER("border", "border"),
    COLOUR("colour", "colour"),
    DENSITY("density", "density"),
    NEGATIVES("negatives", "negatives"),
    CUTTING("cutting", "cutting"),
    SLEEVES("sleeves", "sleeves"),
    PRINTS("prints", "prints"),
    DELIVERY("delivery", "delivery"),
    NOTES("notes", "notes");

    private final String field;
    private final String words;

    Wish(String field, String words) {
        this.field = field;
        this.words = words;
    }

    /** Its name in files: {@code scanSize}. */
    public String field() {
        return field;
    }

    /** Its name on paper: {@code scan size}. */
    public String words() {
        return words;
    }

    /** Its option of a command line: {@code --scan-size}. */
    public String option() {
        return "--" + words.replace(' ', '-');
    }

    static List<String> fields() {
        return Arrays.stream(values()).map(Wish::field).toList();
    }

    /** The wish of that option or field. */
    public static Optional<Wish> named(String name) {
        return Arrays.stream(values())
                .filter(it -> it.field.equals(name) || it.option().equals(name))
                .findFirst();
    }
}
