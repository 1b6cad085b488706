package takeup.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which fields of what other programs read hold decimals, by their names: stops, EV, f-numbers, seconds, millimetres,
 * metres, film speeds, shares. A number there is written with a point in any case, {@code 8.0} and {@code 400.0}, so
 * that a reader that looks at the first lines takes none of these columns for one of whole numbers. All other numbers
 * are whole: frames, counts, minutes.
 */
public final class DecimalFields {
    private static final List<String> ENDINGS =
            List.of("Stops", "Seconds", "FNumber", "Ev100", "Mm", "M", "Index", "Speed", "Percent", "Cost");
    private static final Set<String> NAMES = Set.of(
            "stops",
            "seconds",
            "fNumber",
            "ev100",
            "index",
            "usualEI",
            "celsius",
            "widest",
            "narrowest",
            "points",
            "exponent",
            "filters",
            "extension",
            "estimate",
            "low",
            "high",
            "confidence",
            "contrast",
            "pace",
            "price",
            "latitude",
            "longitude");

    private DecimalFields() {}

    /** Whether a field of that name holds decimals. */
    public static boolean is(String field) {
        return NAMES.contains(field) || ENDINGS.stream().anyMatch(field::endsWith);
    }

    /** The same document, each number of such a field a decimal. */
    public static Json in(Json document) {
        return in("", document);
    }

    private static Json in(String field, Json value) {
        if (value instanceof Json.Obj object) {
            Map<String, Json> fields = new LinkedHashMap<>();
            object.fields().forEach((name, inner) -> fields.put(name, in(name, inner)));
            return new Json.Obj(fields, object.line());
        }
        if (value instanceof Json.Arr array) {
            List<Json> items = new ArrayList<>();
            array.items().forEach(it -> items.add(in(field, it)));
            return new Json.Arr(items, array.line());
        }
        return value instanceof Json.Num number && is(field) ? new Json.Decimal(number.value(), number.line()) : value;
    }
}
