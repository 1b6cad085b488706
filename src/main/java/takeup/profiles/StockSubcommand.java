package takeup.profiles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import takeup.exposure.ExposureTime;
import takeup.exposure.LongExposure;
import takeup.exposure.Reciprocity;
import takeup.exposure.Stops;
import takeup.files.ProfileFiles;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Kit;
import takeup.kit.ProfileJson;
import takeup.kit.Stock;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.text.Padding;
import takeup.text.Plain;

/**
 * {@code takeup stock}: all films; with a KEY what is known about one, its long exposures as a table and as a curve.
 */
@Command(
        name = "stock",
        description = "Prints what is known about a film, its long exposures as a table and as a curve.",
        footer = {"", "For example:", "  takeup stock", "  takeup stock bw400"},
        subcommands = StockNewSubcommand.class)
public final class StockSubcommand extends ProfileSubcommand<Stock> {
    private static final double[] TIMES = {1, 2, 4, 8, 15, 30, 60, 120, 240};

    @Parameters(
            paramLabel = "KEY",
            arity = "0..1",
            description = "The stock's key, such as bw400; without it all are listed.")
    String key;

    @Mixin
    JsonOption json;

    StockSubcommand() {
        super(Kit.Sort.STOCKS);
    }

    /** The command with nothing but these. */
    public static StockSubcommand of(GlobalOptions global, Optional<String> key, boolean isJson) {
        StockSubcommand stock = new StockSubcommand();
        stock.global = global;
        stock.key = key.orElse(null);
        stock.json = JsonOption.asked(isJson);
        return stock;
    }

    @Override
    public Integer call() {
        return run(Optional.ofNullable(key), json);
    }

    @Override
    Optional<Stock> find(Kit kit, String key) {
        return kit.stock(key);
    }

    @Override
    String key(Stock stock) {
        return stock.key();
    }

    @Override
    String summary(Stock stock) {
        return stock.name() + ", " + stock.process() + ", box " + stock.boxSpeed() + ", rated " + stock.usualIndex();
    }

    @Override
    Json.Obj summaryJson(Stock stock) {
        return Json.object()
                .and("key", stock.key())
                .and("name", stock.name())
                .and("process", stock.process())
                .and("boxSpeed", stock.boxSpeed().arithmetic())
                .and("usualEI", stock.usualIndex().arithmetic());
    }

    /** The source that the profile names for its reciprocity; the stock itself carries numbers alone. */
    private Optional<String> source(String key) {
        Optional<Kit.File> file = ProfileFiles.of(global.folder()).file(Kit.Sort.STOCKS, key);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try {
            return inside(JsonText.read(file.get().text()), "reciprocity")
                    .flatMap(it -> inside(it, "source"))
                    .flatMap(it -> it instanceof Json.Text text ? Optional.of(text.value()) : Optional.empty());
        } catch (JsonText.NotJson e) {
            return Optional.empty();
        }
    }

    private static Optional<Json> inside(Json json, String field) {
        return json instanceof Json.Obj object ? object.field(field) : Optional.empty();
    }

    @Override
    Json.Obj json(Stock stock) {
        Reciprocity film = stock.reciprocity();
        List<Json> rows = new ArrayList<>();
        for (double metered : TIMES) {
            rows.add(Json.object()
                    .and("meteredSeconds", metered)
                    .and("correctedSeconds", film.corrected(metered))
                    .and("openStops", film.openStops(metered))
                    .and("developmentPercent", film.developmentPercent(metered))
                    .and("beyond", film.beyond(metered)));
        }
        return Json.object()
                .and("stock", stock.key())
                .and("profile", ProfileJson.of(stock))
                .and("reciprocitySource", source(stock.key()))
                .and("reciprocityTable", rows);
    }

    @Override
    List<String> lines(Stock stock) {
        List<String> lines = new ArrayList<>();
        lines.add(stock.name() + " (" + stock.key() + "): " + stock.kind() + ", " + stock.process());
        lines.add("box speed " + stock.boxSpeed() + ", usually rated " + stock.usualIndex() + ", sold in "
                + String.join(
                        ", ", stock.filmSizes().stream().map(Object::toString).toList()));
        lines.add("tolerates " + Stops.words(stock.underStops()) + " under and " + Stops.words(stock.overStops())
                + " over");
        stock.response()
                .filter()
                .filter(it -> stock.countsFilter(stock.usualIndex()))
                .ifPresent(it -> lines.add("EI " + stock.usualIndex() + " counts the " + it.name() + " filter in ("
                        + Stops.words(it.stops()) + ")"));
        lines.add("");
        Reciprocity film = stock.reciprocity();
        lines.add(Padding.cell("metered", 10) + Padding.cell("set", 10) + Padding.cell("or open", 12) + "develop");
        boolean guess = false;
        for (double metered : TIMES) {
            OptionalDouble corrected = film.corrected(metered);
            OptionalDouble open = film.openStops(metered);
            OptionalDouble change = film.developmentPercent(metered);
            guess |= film.beyond(metered);
            lines.add((Padding.cell(ExposureTime.words(metered), 10)
                            + Padding.cell(
                                    corrected.isPresent() ? ExposureTime.words(corrected.getAsDouble()) : "none", 10)
                            + Padding.cell(open.isPresent() ? Stops.words(open.getAsDouble()) : "", 12)
                            + (change.isPresent() ? Plain.decimals(change.getAsDouble(), 0) + " %" : "")
                            + (film.beyond(metered) ? "  *" : ""))
                    .stripTrailing());
        }
        if (guess) {
            lines.add("* past the last published point: a guess");
        }
        if (new LongExposure(TIMES[TIMES.length - 1], film).isGeneric()) {
            lines.add(LongExposure.GENERIC);
        }
        lines.add("");
        lines.addAll(ReciprocityCurve.of(film));
        source(stock.key()).ifPresent(it -> lines.add("source of the long exposures: " + it));
        return lines;
    }
}
