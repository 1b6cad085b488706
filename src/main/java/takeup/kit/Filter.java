package takeup.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import takeup.exposure.Stops;
import takeup.text.Plain;

/**
 * A filter on the lens and the light that it takes: yellow, 1 stop.
 *
 * <p>Factors for panchromatic film in daylight, a starting point; the film maker's own sheet goes first. Read in
 * chemeurope.com and wikimili.com, "Filter factor": yellow (No. 8) 2, yellow-green (No. 11) 4, red (No. 25) 8, green
 * (No. 58) 6, polariser 3 to 4 (3 taken here), blue (80A) 4, warming (81A) 1.4, orange (85B) 1.5, skylight and UV (1A)
 * 1. Orange (No. 21) is 3 on these pages; 4, two stops, is taken, which the trade's tables print more often (common
 * practice), and on negative film is the safer of the two. Infrared (a No. 89B or 720 nm glass) has no factor that
 * holds for two films; 16 is where film with extended red is usually begun at (common practice, no source).
 *
 * @param name as it was typed: {@code yellow}, {@code nd0.9}, {@code 3x}
 * @param stops the loss, not below 0
 */
public record Filter(String name, double stops) {
    private static final List<Filter> TABLE = List.of(
            factor("yellow", 2),
            factor("yellow-green", 4),
            factor("orange", 4),
            factor("red", 8),
            factor("green", 6),
            factor("polariser", 3),
            factor("polariser-high", 4),
            factor("blue", 4),
            factor("warming", 1.4),
            factor("amber", 1.5),
            factor("infrared", 16),
            factor("skylight", 1));

    /** What else the filters of the table are called: by number, by letter and number, in short. */
    private static final Map<String, String> OTHER_NAMES = Map.ofEntries(
            Map.entry("y8", "yellow"),
            Map.entry("yg11", "yellow-green"),
            Map.entry("o21", "orange"),
            Map.entry("r25", "red"),
            Map.entry("25a", "red"),
            Map.entry("g58", "green"),
            Map.entry("pol", "polariser"),
            Map.entry("cpl", "polariser"),
            Map.entry("polarizer", "polariser"),
            Map.entry("polarizer-high", "polariser-high"),
            Map.entry("pol-high", "polariser-high"),
            Map.entry("80a", "blue"),
            Map.entry("81a", "warming"),
            Map.entry("85b", "amber"),
            Map.entry("1a", "skylight"),
            Map.entry("uv", "skylight"),
            Map.entry("ir", "infrared"),
            Map.entry("89b", "infrared"));

    public Filter {
        if (!(stops >= 0 && stops <= 30)) {
            throw new IllegalArgumentException("a filter takes 0 to 30 stops");
        }
    }

    /** A filter by its factor: light is divided by it. */
    public static Filter factor(String name, double factor) {
        return new Filter(name, Stops.of(factor));
    }

    /** The filter of that name in the table, under the name that was typed: {@code r25} is a red one. */
    public static Optional<Filter> named(String name) {
        String inTable = OTHER_NAMES.getOrDefault(name, name);
        return TABLE.stream().filter(it -> it.name.equals(inTable)).findFirst().map(it -> new Filter(name, it.stops));
    }

    /** The names in the table. */
    public static List<String> names() {
        return TABLE.stream().map(Filter::name).toList();
    }

    /** All names: those of the table, and the numbers and short forms beside them. */
    public static List<String> allNames() {
        return Stream.concat(names().stream(), OTHER_NAMES.keySet().stream().sorted())
                .toList();
    }

    /** The factor as it is typed: {@code 3x}. */
    public String factor() {
        return Plain.digits(Stops.factor(stops), 2 + (stops > 6.7 ? 1 : 0)) + "x";
    }

    /** The loss in stops and as a factor: {@code yellow takes 1 stop (2x)}. */
    public String words() {
        String factor = factor();
        String takes = " takes " + Stops.words(stops);
        if (name.equals(factor)) {
            return factor + takes;
        }
        return (name.startsWith("+") ? "a filter" : name) + takes + " (" + factor + ")";
    }
}
