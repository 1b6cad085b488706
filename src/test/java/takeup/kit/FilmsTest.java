package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;
import takeup.exposure.Aperture;
import takeup.exposure.DevelopmentChange;
import takeup.exposure.ExposureValue;
import takeup.exposure.FilmSpeed;
import takeup.exposure.LightPath;
import takeup.exposure.Reciprocity;
import takeup.exposure.Scale;
import takeup.exposure.Stops;
import takeup.json.Json;
import takeup.json.JsonText;

/** The shipped stocks against the published numbers of their films, and the whole chain from light to time. */
class FilmsTest {
    /** The films of the tables, and a stock that carries each one's numbers. */
    private static final Map<String, String> STOCKS = Map.of(
            "Foma 400",
            "foma400",
            "Foma 200",
            "foma200",
            "Kentmere 100",
            "kentmere100",
            "Kentmere 400",
            "kentmere400",
            "Agfa APX type",
            "apx100",
            "generic b/w",
            "bw400",
            "generic colour negative",
            "cn400",
            "generic colour reversal",
            "cr100");

    /** Each shipped stock, and whose published numbers it has. */
    private static final Map<String, String> FILMS = Map.ofEntries(
            Map.entry("foma400", "Foma 400"),
            Map.entry("foma200", "Foma 200"),
            Map.entry("kentmere100", "Kentmere 100"),
            Map.entry("kentmere400", "Kentmere 400"),
            Map.entry("apx100", "Agfa APX type"),
            Map.entry("apx400", "Agfa APX type"),
            Map.entry("bw100", "generic b/w"),
            Map.entry("bw400", "generic b/w"),
            Map.entry("bw3200", "generic b/w"),
            Map.entry("cbw400", "generic b/w"),
            Map.entry("cn100", "generic colour negative"),
            Map.entry("cn160", "generic colour negative"),
            Map.entry("cn200", "generic colour negative"),
            Map.entry("cn500t", "generic colour negative"),
            Map.entry("cn800t", "generic colour negative"),
            Map.entry("ir400", "generic b/w"),
            Map.entry("cn400", "generic colour negative"),
            Map.entry("cn800", "generic colour negative"),
            Map.entry("cr50", "generic colour reversal"),
            Map.entry("cr100", "generic colour reversal"));

    static Stream<ReferenceTable.Row> reciprocity_cases() {
        return ReferenceTable.rows("reciprocity_cases");
    }

    static Stream<ReferenceTable.Row> exposure_cases() {
        return ReferenceTable.rows("exposure_cases");
    }

    static Stream<Arguments> published() {
        return FILMS.entrySet().stream().map(it -> Arguments.of(it.getKey(), it.getValue()));
    }

    static Stream<ReferenceTable.Row> reciprocity_between() {
        return ReferenceTable.rows("reciprocity_between");
    }

    @Test
    void everyShippedStockHasARowOfPublishedNumbers() {
        Set<String> without =
                stocks().filter(it -> !FILMS.containsKey(it)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                Set.of(),
                without,
                "a new stock needs its published numbers in reciprocity_films.json and a row in FILMS above");
    }

    /** Where a table bends, next to its first point, an answer may be out by a third of a stop and look right. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("reciprocity_between")
    void betweenTwoPublishedPointsTheAnswerIsOnTheirLine(ReferenceTable.Row row) {
        Reciprocity film = Shipped.stock(STOCKS.get(row.text("film"))).reciprocity();
        double metered = row.number("metered_s");
        if (row.text("kind").equals("aperture")) {
            assertEquals(row.number("open_stops"), film.openStops(metered).orElseThrow(), 0.002);
        } else {
            assertEquals(
                    row.number("corrected_s"),
                    film.corrected(metered).orElseThrow(),
                    0.001 * row.number("corrected_s"));
            assertEquals(metered, film.worth(row.number("corrected_s")), 0.001 * metered);
        }
    }

    @ParameterizedTest(name = "{0} has the numbers of {1}")
    @MethodSource("published")
    void aStockHasThePublishedNumbersOfItsFilm(String key, String film) throws JsonText.NotJson {
        Json.Obj films = (Json.Obj) ((Json.Obj) JsonText.read(ReferenceTable.text("reciprocity_films.json")))
                .field("films")
                .orElseThrow();
        Json.Obj numbers = (Json.Obj) films.field(film).orElseThrow();
        Reciprocity shipped = Shipped.stock(key).reciprocity();
        assertEquals(published(numbers), shipped instanceof DevelopmentChange change ? change.times() : shipped);
    }

    private static Reciprocity published(Json.Obj film) {
        if (film.field("power").isPresent()) {
            Json.Obj power = (Json.Obj) film.field("power").get();
            return new Reciprocity.Power(
                    number(power.field("p").orElseThrow()),
                    number(power.field("threshold_s").orElseThrow()));
        }
        return film.field("time_table").isPresent()
                ? new Reciprocity.Table(points(film.field("time_table").get()))
                : new Reciprocity.Opening(
                        points(film.field("aperture_stops_table").orElseThrow()));
    }

    private static List<Reciprocity.Point> points(Json table) {
        List<Reciprocity.Point> points = new ArrayList<>();
        for (Json pair : ((Json.Arr) table).items()) {
            List<Json> two = ((Json.Arr) pair).items();
            points.add(new Reciprocity.Point(number(two.get(0)), number(two.get(1))));
        }
        return points;
    }

    private static double number(Json json) {
        return ((Json.Num) json).value();
    }

    /**
     * The table's own tolerance: 2 % or 0.03 stop. Whether an answer given in stops lies past the table is counted
     * otherwise here.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("reciprocity_cases")
    void aLongExposureIsCorrectedAsPublished(ReferenceTable.Row row) {
        Reciprocity film = Shipped.stock(STOCKS.get(row.text("film"))).reciprocity();
        double metered = row.number("metered_s");
        if (row.text("kind").equals("aperture")) {
            assertEquals(row.number("open_stops"), film.openStops(metered).orElseThrow(), 0.03);
        } else {
            double corrected = film.corrected(metered).orElseThrow();
            assertEquals(row.number("corrected_s"), corrected, 0.02 * row.number("corrected_s"));
            assertEquals(Boolean.parseBoolean(row.text("outside_published_range")), film.beyond(metered));
            assertEquals(metered, film.worth(row.number("corrected_s")), 0.02 * metered);
        }
    }

    static Stream<String> stocks() {
        return Shipped.stocks();
    }

    /**
     * From 1/1000 s to ten minutes: what was lengthened on the way there is taken back on the way back, to the
     * tolerance of thresholds.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("stocks")
    void aCorrectedTimeIsWorthTheMeteredOne(String key) {
        Reciprocity film = Shipped.stock(key).reciprocity();
        for (double metered = 0.001; metered < 600; metered *= 1.17) {
            OptionalDouble corrected = film.corrected(metered);
            assertTrue(corrected.orElseThrow() >= metered, key + " shortens " + metered);
            assertEquals(
                    0,
                    Stops.of(film.worth(corrected.getAsDouble()) / metered),
                    Stops.TOLERANCE,
                    key + " at " + metered);
        }
    }

    /** The table's own tolerance: 2.5 % in time, 1.25 % in f-number, 0.03 stop. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("exposure_cases")
    void fromLightToTimeEachStepIsTakenOnceAndInOrder(ReferenceTable.Row row) {
        Reciprocity film = row.has("film")
                ? Shipped.stock(STOCKS.get(row.text("film"))).reciprocity()
                : new Reciprocity.None(OptionalDouble.empty());
        double filters = filterStops(row.text("filters"));
        double extension = Stops.ofMagnification(
                row.has("magnification")
                        ? row.number("magnification")
                        : row.has("extension_mm") ? row.number("extension_mm") / row.number("focal_mm") - 1 : 0);
        assertEquals(row.number("stops_lost"), filters + extension, 1e-5);
        LightPath path =
                new LightPath(new FilmSpeed(row.number("ei")), filters, extension, row.number("compensation"), film);
        Aperture aperture = row.has("f_label")
                ? Scale.anyAperture(row.number("f_label"))
                : Aperture.literal(row.number("f_number"));
        assertEquals(row.number("f_number"), aperture.exactFNumber(), 0.0125 * row.number("f_number"));
        double metered = path.metered(light(row), aperture);
        assertEquals(row.number("metered_s"), metered, 0.001 * metered);
        if (row.number("open_stops") > 0) {
            assertEquals(row.number("open_stops"), film.openStops(metered).orElseThrow(), 0.03);
        } else {
            double corrected = path.corrected(light(row), aperture).orElseThrow();
            assertEquals(row.number("corrected_s"), corrected, 0.025 * corrected);
        }
    }

    private static ExposureValue light(ReferenceTable.Row row) {
        if (row.has("lux")) {
            return ExposureValue.ofLux(row.number("lux"), 250);
        }
        if (row.has("cd")) {
            return ExposureValue.ofLuminance(row.number("cd"), 12.5);
        }
        if (row.has("meter_f")) {
            return ExposureValue.of(Scale.anyAperture(row.number("meter_f")), Scale.anyTime(row.number("meter_t")))
                    .at100(new FilmSpeed(row.number("meter_iso")));
        }
        return new ExposureValue(row.number("ev100"));
    }

    private static double filterStops(String filters) {
        double stops = 0;
        for (String filter : filters.isEmpty() ? new String[0] : filters.split(" ")) {
            String[] parts = filter.split(":");
            double value = Double.parseDouble(parts[1]);
            stops += switch (parts[0]) {
                case "factor", "nd" -> Stops.of(value);
                case "density" -> Stops.ofDensity(value);
                case "stops" -> value;
                default -> throw new IllegalArgumentException(filter);
            };
        }
        return stops;
    }
}
