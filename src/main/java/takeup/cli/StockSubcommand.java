package takeup.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.console.CommandFailed;
import takeup.exposure.ExposureTime;
import takeup.exposure.Reciprocity;
import takeup.exposure.Stops;
import takeup.files.ProfileFiles;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Kit;
import takeup.kit.ProfileJson;
import takeup.kit.Stock;
import takeup.text.Padding;
import takeup.text.Plain;

/**
 * {@code takeup stock}: all films; with a KEY what is known about one, its long exposures as a table and as a curve.
 */
final class StockSubcommand {
    private static final double[] TIMES = {1, 2, 4, 8, 15, 30, 60, 120, 240};

    private final Subcommands commands;

    StockSubcommand(Subcommands commands) {
        this.commands = commands;
    }

    int run(String key, boolean json) {
        Kit kit = commands.kit();
        Stock stock = kit.stock(key).orElseThrow(() -> new CommandFailed(2, kit.whyNot(Kit.Sort.STOCKS, key)));
        kit.problems(Kit.Sort.STOCKS, key).forEach(commands.out()::error);
        if (json) {
            commands.out().raw(JsonText.pretty(json(stock)));
        } else {
            words(stock).forEach(commands.out()::line);
            source(stock.key()).ifPresent(it -> commands.out().line("source of the long exposures: " + it));
        }
        return 0;
    }

    /** All that there are, a line each; a file with a mistake is told and left out. */
    int list(boolean json) {
        Kit kit = commands.kit();
        List<Stock> stocks = kit.keys(Kit.Sort.STOCKS).stream()
                .flatMap(it -> kit.stock(it).stream())
                .toList();
        kit.keys(Kit.Sort.STOCKS)
                .forEach(it -> kit.problems(Kit.Sort.STOCKS, it).forEach(commands.out()::error));
        if (json) {
            commands.out()
                    .raw(JsonText.pretty(Json.object()
                            .and(
                                    "stocks",
                                    stocks.stream()
                                            .map(it -> Json.object()
                                                    .and("key", it.key())
                                                    .and("name", it.name())
                                                    .and("process", it.process())
                                                    .and(
                                                            "boxSpeed",
                                                            it.boxSpeed().arithmetic())
                                                    .and(
                                                            "usualEI",
                                                            it.usualIndex().arithmetic()))
                                            .toList())));
        } else {
            int widest = stocks.stream().mapToInt(it -> it.key().length()).max().orElse(0);
            stocks.forEach(it -> commands.out()
                    .line(it.key() + " ".repeat(widest - it.key().length()) + "  " + it.name() + ", " + it.process()
                            + ", box " + it.boxSpeed() + ", rated " + it.usualIndex()));
        }
        return 0;
    }

    /** The source that the profile names for its reciprocity; the stock itself carries numbers alone. */
    private Optional<String> source(String key) {
        Optional<Kit.File> file = ProfileFiles.of(commands.folder()).file(Kit.Sort.STOCKS, key);
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

    private Json.Obj json(Stock stock) {
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

    private static List<String> words(Stock stock) {
        List<String> lines = new ArrayList<>();
        lines.add(stock.name() + " (" + stock.key() + "): " + stock.kind() + ", " + stock.process());
        lines.add("box speed " + stock.boxSpeed() + ", usually rated " + stock.usualIndex() + ", sold in "
                + String.join(
                        ", ", stock.filmSizes().stream().map(Object::toString).toList()));
        lines.add(
                "bears " + Stops.words(stock.underStops()) + " under and " + Stops.words(stock.overStops()) + " over");
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
        lines.add("");
        lines.addAll(ReciprocityCurve.of(film));
        return lines;
    }
}
