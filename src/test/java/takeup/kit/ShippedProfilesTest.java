package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;
import takeup.exposure.Light;
import takeup.exposure.Scale;
import takeup.exposure.Stops;
import takeup.json.Json;
import takeup.json.JsonText;

/** The profiles that go out with the program. */
class ShippedProfilesTest {
    static Stream<String> cameras() {
        return Shipped.cameras();
    }

    static Stream<String> stocks() {
        return Shipped.stocks();
    }

    static Stream<String> meters() {
        return Shipped.meters();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cameras")
    void aCameraReadsWithoutAWordAndComesBackEqual(String key) {
        ProfileReader.Read<Camera> read = Shipped.readCamera(key);
        assertEquals(List.of(), read.problems());
        Camera camera = read.profile().orElseThrow();
        Json.Obj json = ProfileJson.of(camera);
        assertEquals(camera, ProfileJson.camera(key, "again", json));
        assertEquals(
                new ProfileReader.Read<>(Optional.of(camera), List.of()),
                ProfileReader.camera(key, "again", JsonText.line(json)));
        for (Lens lens : camera.lenses()) {
            assertEquals(lens, ProfileJson.lens("again", ProfileJson.of(lens)));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("stocks")
    void aStockReadsWithoutAWordAndComesBackEqual(String key) {
        ProfileReader.Read<Stock> read = Shipped.readStock(key);
        assertEquals(List.of(), read.problems());
        Stock stock = read.profile().orElseThrow();
        assertEquals(stock, ProfileJson.stock(key, "again", ProfileJson.of(stock)));
    }

    /** By way of text too, as a roll keeps it: numbers must not change on the way. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("stocks")
    void aStockComesBackEqualFromItsText(String key) {
        Stock stock = Shipped.stock(key);
        assertEquals(
                new ProfileReader.Read<>(Optional.of(stock), List.of()),
                ProfileReader.stock(key, "again", JsonText.line(ProfileJson.of(stock))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("meters")
    void aMeterReadsWithoutAWord(String key) {
        ProfileReader.Read<Meter> read = Shipped.readMeter(key);
        assertEquals(List.of(), read.problems());
        assertTrue(read.profile().isPresent());
    }

    /** Every number has its source beside it, or says that it has none. */
    @Test
    void everyFileNamesItsSource() throws JsonText.NotJson {
        for (String folder : List.of("cameras", "stocks", "meters")) {
            for (String key : Shipped.keys(folder)) {
                Json.Obj profile = (Json.Obj) JsonText.read(Shipped.text(folder, key));
                assertTrue(profile.field("source").isPresent(), folder + "/" + key);
                for (String part : List.of("latitude", "reciprocity")) {
                    profile.field(part)
                            .ifPresent(it ->
                                    assertTrue(((Json.Obj) it).field("source").isPresent(), key + " " + part));
                }
            }
        }
    }

    /** Between what the counter should promise and the most that is known: the table frames. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cameras")
    void aRollHoldsAsManyFramesAsTheTableSays(String key) {
        Camera camera = Shipped.camera(key);
        camera.frames().forEach((size, count) -> {
            ReferenceTable.Row row = ReferenceTable.rows("frames")
                    .filter(it -> it.text("film").equals(size == FilmSize.F135 ? "135-36" : size.toString()))
                    .filter(it -> it.text("format").endsWith(camera.frameSize().toString()))
                    .findFirst()
                    .orElseThrow();
            assertTrue(
                    count >= row.number("expected") && count <= row.number("highest"),
                    key + " " + size + " " + count + ", but " + row);
        });
    }

    /**
     * Opinions: a stock's latitude lies inside the widest and narrowest that were read for its kind (table latitude).
     */
    @ParameterizedTest(name = "{0} like {1}")
    @CsvSource({
        "cn100,colour negative",
        "cn160,colour negative",
        "cn200,colour negative",
        "cn500t,colour negative",
        "cn800t,colour negative",
        "ir400,black-and-white negative",
        "cn400,colour negative",
        "cn800,colour negative",
        "cr50,colour reversal",
        "cr100,colour reversal",
        "bw100,black-and-white negative",
        "bw400,black-and-white negative",
        "bw3200,black-and-white negative",
        "cbw400,black-and-white negative",
        "foma400,black-and-white negative (Foma 400)"
    })
    void aStockBearsWhatTheTableSaysOfItsKind(String key, String material) {
        Stock stock = Shipped.stock(key);
        List<ReferenceTable.Row> rows = ReferenceTable.rows("latitude")
                .filter(it -> it.text("material").startsWith(material))
                .toList();
        assertTrue(rows.stream().anyMatch(it -> -it.number("under") <= stock.underStops())
                && rows.stream().anyMatch(it -> -it.number("under") >= stock.underStops()));
        assertTrue(rows.stream().anyMatch(it -> it.number("over") <= stock.overStops())
                && rows.stream().anyMatch(it -> it.number("over") >= stock.overStops()));
    }

    /**
     * As a photographer finds them: at its usual index a negative stock has room for more light, and no stock starts
     * out thin or dense.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("stocks")
    void noStockIsThinOrDenseAtItsUsualIndex(String key) {
        Stock stock = Shipped.stock(key);
        assertEquals(Optional.empty(), ExposureWarnings.latitude(stock.stopsOverBox(stock.usualIndex()), stock));
    }

    /** The three samples. */
    @Test
    void theSampleProfilesAreShippedAsTheyStand() {
        Camera camera = Shipped.camera("645");
        assertEquals("645 reflex", camera.name());
        assertEquals(FrameSize.SIX_BY_FOUR_AND_A_HALF, camera.frameSize());
        assertEquals(
                List.of(FilmSize.F120, FilmSize.F220),
                List.copyOf(camera.frames().keySet()));
        assertEquals(List.of(16, 32), List.copyOf(camera.frames().values()));
        assertEquals(List.of("1", "2"), camera.backNames());
        Shutter shutter = camera.shutter().orElseThrow();
        assertEquals(
                "8s to 1/1000 bulb", shutter.longest() + " to " + shutter.fastest() + (shutter.bulb() ? " bulb" : ""));
        assertEquals("1/60", camera.syncTime().orElseThrow().toString());
        Lens lens = camera.lenses().get(0);
        assertEquals(
                "80mm f/2.8 from f/2.8 to f/22",
                lens.name() + " from " + lens.ring().widest() + " to "
                        + lens.ring().narrowest());
        assertEquals(13, lens.ring().marks().size());
        Stock stock = Shipped.stock("cn400");
        assertEquals(
                "Colour negative 400, C-41, 400, 200, 1.0, 3.0",
                stock.name() + ", " + stock.process() + ", " + stock.boxSpeed() + ", " + stock.usualIndex() + ", "
                        + stock.underStops() + ", " + stock.overStops());
        assertEquals(
                new Meter(
                        "hand",
                        "Incident meter, tenths",
                        new Meter.Display(Meter.Shows.PAIR, true, Scale.FULL, false),
                        250,
                        12.5,
                        Light.Method.INCIDENT),
                Shipped.readMeter("hand").profile().orElseThrow());
    }

    /** A point-and-shoot sets itself; every other shipped camera has rings and a dial. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cameras")
    void onlyTheCompactSetsItself(String key) {
        assertEquals(key.equals("compact"), Shipped.camera(key).isAutomatic());
    }

    /**
     * Leaf shutters take flash at all their times, focal plane ones to 1/60 or a middling time (apug, post 837;
     * openphotographicsociety.co.uk).
     */
    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({
        "66,1/500",
        "645leaf,1/500",
        "66slr,1/30",
        "67,1/500",
        "69,1/250",
        "half,1/500",
        "35,1/60",
        "645,1/60",
        "35af,1/200"
    })
    void flashGoesUpToTheSyncTime(String key, String time) {
        assertEquals(time, Shipped.camera(key).syncTime().orElseThrow().toString());
        assertTrue(Shipped.camera(key).syncTime().get().stops()
                >= Shipped.camera(key).shutter().orElseThrow().fastest().stops() - Stops.TOLERANCE);
    }
}
