package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import takeup.exposure.DevelopmentChange;
import takeup.exposure.Reciprocity;
import takeup.json.Json;

/** The reciprocity of a stock from its part of the profile. */
final class ReciprocityReader {
    private ReciprocityReader() {}

    static Reciprocity reciprocity(ProfileFields fields, ProfileFields around) {
        try {
            Reciprocity found = switch (fields.word("model")) {
                case "none" ->
                    new Reciprocity.None(
                            fields.has("upToSeconds")
                                    ? OptionalDouble.of(fields.number("upToSeconds", 0.000001, 1_000_000))
                                    : OptionalDouble.empty());
                case "power" ->
                    new Reciprocity.Power(
                            fields.number("exponent", 1, 3), fields.number("fromSeconds", 0.000001, 1_000_000));
                case "table" -> new Reciprocity.Table(points(fields));
                case "stops" -> new Reciprocity.Opening(points(fields));
                default -> throw fields.noneOf("model", "none, power, table, stops");
            };
            List<DevelopmentChange.Point> changes =
                    fields.has("developmentPercent") ? changes(fields, "developmentPercent") : List.of();
            fields.done();
            return changes.isEmpty() ? found : new DevelopmentChange(found, changes);
        } catch (IllegalArgumentException e) {
            throw around.wrong(fields.object(), "reciprocity:", e.getMessage());
        }
    }

    private static List<Reciprocity.Point> points(ProfileFields fields) {
        List<Reciprocity.Point> points = new ArrayList<>();
        for (Json item : fields.list("points", 100)) {
            double[] pair = pair(fields, item, "points");
            try {
                points.add(new Reciprocity.Point(pair[0], pair[1]));
            } catch (IllegalArgumentException e) {
                throw fields.wrong(item, "points:", e.getMessage());
            }
        }
        return points;
    }

    private static List<DevelopmentChange.Point> changes(ProfileFields fields, String field) {
        List<DevelopmentChange.Point> changes = new ArrayList<>();
        for (Json item : fields.list(field, 100)) {
            double[] pair = pair(fields, item, field);
            try {
                changes.add(new DevelopmentChange.Point(pair[0], pair[1]));
            } catch (IllegalArgumentException e) {
                throw fields.wrong(item, field + ":", e.getMessage());
            }
        }
        return changes;
    }

    private static double[] pair(ProfileFields fields, Json item, String field) {
        if (item instanceof Json.Arr pair
                && pair.items().size() == 2
                && pair.items().get(0) instanceof Json.Num seconds
                && pair.items().get(1) instanceof Json.Num value) {
            return new double[] {seconds.value(), value.value()};
        }
        throw fields.wrong(item, field, "holds pairs of numbers such as [1, 2]");
    }
}
