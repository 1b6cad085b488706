package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Reciprocity;
import takeup.json.Json;

/** The fields of a stock's profile: its speeds, its sizes, and how it answers to light. */
final class StockReader implements FieldsReader<Stock> {
    @Override
    public Stock read(String key, ProfileFields fields) {
        String name = fields.text("name");
        Optional<Stock.Kind> kind = Stock.Kind.named(fields.word("kind"));
        if (kind.isEmpty()) {
            throw fields.noneOf("kind", "colour-negative, bw-negative, colour-reversal, bw-reversal");
        }
        String process = fields.text("process");
        double box = fields.number("boxSpeed", 0.1, 1_000_000);
        double usual = fields.number("usualEI", 0.1, 1_000_000, box);
        List<FilmSize> sizes = new ArrayList<>();
        for (Json size : fields.list("filmSizes", FilmSize.values().length)) {
            FilmSize known = size instanceof Json.Text text
                    ? FilmSize.named(text.value()).orElse(null)
                    : null;
            if (known == null) {
                throw fields.wrong(size, "filmSizes", "holds names out of " + FilmSize.words() + ", in quotes");
            }
            sizes.add(known);
        }
        ProfileFields latitude = fields.inside("latitude");
        double under = latitude.number("underStops", 0, 10);
        double over = latitude.number("overStops", 0, 10);
        latitude.done();
        Reciprocity reciprocity = fields.has("reciprocity")
                ? ReciprocityReader.reciprocity(fields.inside("reciprocity"), fields)
                : new Reciprocity.None(OptionalDouble.empty());
        OptionalDouble mostPush = fields.has("mostPushStops")
                ? OptionalDouble.of(fields.number("mostPushStops", 0, 5))
                : OptionalDouble.empty();
        Optional<Filter> filter =
                fields.has("filter") ? Optional.of(filter(fields.inside("filter"))) : Optional.empty();
        fields.done();
        return new Stock(
                key,
                name,
                kind.get(),
                process,
                new FilmSpeed(box),
                new FilmSpeed(usual),
                sizes,
                new Stock.Response(under, over, reciprocity, mostPush, filter));
    }

    private static Filter filter(ProfileFields fields) {
        Filter filter = new Filter(fields.text("name"), fields.number("stops", 0, 30));
        fields.done();
        return filter;
    }
}
