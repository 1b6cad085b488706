package takeup.kit;

import java.util.List;
import java.util.Optional;
import takeup.exposure.Stops;
import takeup.text.Plain;

/**
 * A filter on the lens and the light that it takes: yellow, 1 stop.
 *
 * <p>Factors for panchromatic film in daylight, a starting point; the film maker's own sheet goes first. Read in
 * chemeurope.com and wikimili.com, "Filter factor": yellow (No. 8) 2, yellow-green (No. 11) 4, orange (No. 21) 3, red
 * (No. 25) 8, green (No. 58) 6, polariser 3 to 4 (3 taken here), warming (81A) 1.4, skylight 1.
 *
 * @param name as it was typed: {@code yellow}, {@code nd0.9}, {@code 3x}
 * @param stops the loss, not below 0
 */
public record Filter(String name, double stops) {
    private static final List<Filter> TABLE = List.of(
            factor("yellow", 2),
            factor("yellow-green", 4),
            factor("orange", 3),
            factor("red", 8),
            factor("green", 6),
            factor("polariser", 3),
            factor("warming", 1.4),
            factor("skylight", 1));

    public Filter {
        if (!(stops >= 0 && stops <= 30)) {
            throw new IllegalArgumentException("a filter takes 0 to 30 stops");
        }
    }

    /** A filter by its factor: light is divided by it. */
    public static Filter factor(String name, double factor) {
        return new Filter(name, Stops.of(factor));
    }

    /** The filter of that name in the table. */
    public static Optional<Filter> named(String name) {
        return TABLE.stream().filter(it -> it.name.equals(name)).findFirst();
    }

    /** The names in the table. */
    public static List<String> names() {
        return TABLE.stream().map(Filter::name).toList();
    }

    /** The loss in stops and as a factor: {@code yellow takes 1 stop (2x)}. */
    public String words() {
        String factor = Plain.digits(Stops.factor(stops), 2 + (stops > 6.7 ? 1 : 0)) + "x";
        String takes = " takes " + Stops.words(stops);
        if (name.equals(factor)) {
            return factor + takes;
        }
        return (name.startsWith("+") ? "a filter" : name) + takes + " (" + factor + ")";
    }
}
