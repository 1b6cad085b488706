package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.DevelopmentChange;
import takeup.exposure.Reciprocity;
import takeup.json.Json;

/** The reciprocity of a stock from its part of the profile. */
final class ReciprocityReader {
    private ReciprocityReader() {}

    static Reciprocity reciprocity(ProfileFields fields, ProfileFields around) {
        String model = fields.word(
                "model",
                it -> List.of("none", "power", "table", "stops").contains(it) ? Optional.of(it) : Optional.empty(),
                "none, power, table, stops");
        try {
            Reciprocity found = switch (model) {
                case "none" ->
                    new Reciprocity.None(
                            fields.has("upToSeconds")
                                    ? OptionalDouble.of(fields.number("upToSeconds", 0.000001, 1_000_000))
                                    : OptionalDouble.empty());
                case "power" ->
                    new Reciprocity.Power(
                            fields.number("exponent", 1, 3), fields.number("fromSeconds", 0.000001, 1_000_000));
                case "table" -> new Reciprocity.Table(points(fields));
                default -> new Reciprocity.Opening(points(fields));
            };
            List<DevelopmentChange.Point> changes = fields.has("developmentPercent")
                    ? pairs(fields, "developmentPercent", DevelopmentChange.Point::new)
                    : List.of();
            fields.done();
            return changes.isEmpty() ? found : new DevelopmentChange(found, changes);
        } catch (IllegalArgumentException e) {
            throw around.wrong(fields.object(), "reciprocity:", e.getMessage());
        }
    }

    /** Makes a point of the two numbers of a pair; refuses with an IllegalArgumentException. */
    private interface PointOf<T> {
        T of(double seconds, double value);
    }

    private static List<Reciprocity.Point> points(ProfileFields fields) {
        return pairs(fields, "points", Reciprocity.Point::new);
    }

    private static <T> List<T> pairs(ProfileFields fields, String field, PointOf<T> point) {
        List<T> points = new ArrayList<>();
        for (Json item : fields.list(field, 100)) {
            if (!(item instanceof Json.Arr pair)
                    || pair.items().size() != 2
                    || !(pair.items().get(0) instanceof Json.Num seconds)
                    || !(pair.items().get(1) instanceof Json.Num value)) {
                throw fields.wrong(item, field, "holds pairs of numbers such as [1, 2]");
            }
            try {
                points.add(point.of(seconds.value(), value.value()));
            } catch (IllegalArgumentException e) {
                throw fields.wrong(item, field + ":", e.getMessage());
            }
        }
        return points;
    }
}
