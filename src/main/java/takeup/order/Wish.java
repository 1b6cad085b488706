package takeup.order;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a lab can be asked for with a whole order, in free text: a scan size, negatives back or not, a day by which it
 * is wanted. Which there are is common practice on labs' forms, without a source.
 */
public enum Wish {
    SERVICE("service", "service"),
    SCAN_SIZE("scanSize", "scan size"),
    FILE_TYPE("fileType", "file type"),
    BORDER("border", "border"),
    COLOUR("colour", "colour"),
    COLOUR_REFERENCE("colourReference", "colour reference"),
    DENSITY("density", "density"),
    NEGATIVES("negatives", "negatives"),
    CUTTING("cutting", "cutting"),
    MAY_CUT("mayBeCut", "may be cut"),
    SLEEVES("sleeves", "sleeves"),
    PRINTS("prints", "prints"),
    MOUNTS("mounts", "mounts"),
    DELIVERY("delivery", "delivery"),
    WANTED_BY("wantedBy", "wanted by"),
    PAYMENT("payment", "payment"),
    PRICE_LIMIT("priceLimit", "price limit"),
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
