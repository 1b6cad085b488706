package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.Light;

/** A profile in, problems out: each says file, line, field and what is allowed. */
class ProfileReaderTest {
    private static final String CAMERA = """
            {"name": "Boathouse box", "frameSize": "6x6",
             "frames": {"120": 12},
             "backs": ["a", "b"],
             "times": {"step": "full", "longest": "1s", "fastest": "1/500", "bulb": true},
             "syncTime": "1/60",
             "lenses": [
              {"key": "80", "name": "80mm f/2.8", "focalMm": 80,
               "widest": 2.8, "narrowest": 22, "step": "half"}]}
            """;
    private static final String STOCK = """
            {"name": "Boathouse 100", "kind": "bw-negative", "process": "black-and-white",
             "boxSpeed": 100,
             "usualEI": 50,
             "filmSizes": ["135"],
             "latitude": {"underStops": 1, "overStops": 2},
             "reciprocity": {"model": "table",
              "points": [[1, 1], [10, 50]]}}
            """;
    private static final String METER = """
            {"name": "Boathouse meter", "shows": "pair",
             "tenths": true,
             "step": "full", "evShown": "iso100",
             "incidentConstant": 250, "reflectedConstant": 12.5,
             "method": "incident"}
            """;

    @Test
    void theThreeThatTheCasesBelowSpoilAreFlawless() {
        assertEquals(List.of(), camera(CAMERA).problems());
        assertEquals(List.of(), stock(STOCK).problems());
        assertEquals(List.of(), meter(METER).problems());
    }

    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "name": "Boathouse box", | | 1: name is missing
            "name": "Boathouse box" | "name": 7 | 1: name is text of 1 to 80 letters in quotes
            "name": "Boathouse box" | "name": " " | 1: name is text of 1 to 80 letters in quotes
            "6x6" | "6x5" | 1: frameSize is one of 18x24, 24x36, 24x65, 6x4.5, 6x6, 6x7, 6x8, 6x9, 6x12, 6x17; any other is frameSizeMm: [100, 125]
            {"120": 12} | {} | 2: frames names at least one film size
            {"120": 12} | 12 | 2: frames is an object in braces
            {"120": 12} | {"110": 12} | 2: frames names film sizes: 135, 120, 220, 127, sheet, instant, not 110
            {"120": 12} | {"120": 12.5} | 2: 120 is a whole number from 1 to 250
            {"120": 12} | {"120": 0} | 2: 120 is a whole number from 1 to 250
            {"120": 12} | {"120": "12"} | 2: 120 is a whole number from 1 to 250
            ["a", "b"] | ["a", 2] | 3: backs holds names of letters and digits in quotes
            ["a", "b"] | ["a/b"] | 3: backs holds names of letters and digits in quotes
            ["a", "b"] | ["a", "A"] | 3: backs holds a twice
            ["a", "b"] | [] | 3: backs is a list in brackets of 1 to 20 items
            "step": "full", "longest" | "step": "quarter", "longest" | 4: step is one of full, half, third
            "step": "full", "longest" | "longest" | 4: times has a step (full, half, third) with longest and fastest, or marks
            "longest": "1s" | "longest": "a second" | 4: longest is a time such as "1/125" or "2s"
            "longest": "1s" | "longest": 1 | 4: longest is a time such as "1/125" or "2s"
            "longest": "1s" | "longest": "1/0" | 4: longest is a time such as "1/125" or "2s"
            "longest": "1s" | "longest": "1ds" | 4: longest is a time such as "1/125" or "2s"
            "longest": "1s" | "longest": "1.1.1s" | 4: longest is a time such as "1/125" or "2s"
            "longest": "1s" | "longest": "s" | 4: longest is a time such as "1/125" or "2s"
            "longest": "1s" | "longest": "-1s" | 4: longest is a time such as "1/125" or "2s"
            "longest": "1s" | "longest": "1/1000" | 4: times: the fastest time is the shorter one
            "fastest": "1/500" | "fastest": null | 4: fastest is missing
            "bulb": true | "bulb": "yes" | 4: bulb is true or false
            "step": "full", "longest" | "marks": ["1/2", "1s"], "longest" | 4: times: the marks run from the longest to the fastest
            "syncTime": "1/60" | "syncTime": 60 | 5: syncTime is a time such as "1/125" or "2s"
            "key": "80" | "key": "f 80" | 7: key is made of letters, digits, - and _
            "focalMm": 80 | "focalMm": 0 | 7: focalMm is a number from 1 to 5000
            "focalMm": 80 | "focalMm": [28] | 7: focalMm is a number of mm, or for a zoom two in brackets
            "focalMm": 80 | "focalMm": [90, 28] | 7: lens 80: a focal length lies above 0 and up to 5000 mm, the short end of a zoom first
            "widest": 2.8 | "widest": "2.8" | 8: widest is a number from 0.5 to 1000
            "widest": 2.8 | "widest": 32 | 7: lens 80: the widest aperture has the smaller number
            "step": "half" | "step": "half", "marks": [2.8, 2] | 7: lens 80: the marks run from the widest to the narrowest
            "step": "half" | "step": "half", "marks": ["4"] | 8: marks holds f-numbers from 0.5 to 1000
            "lenses": [ | "lenses": [{"key": "80", "name": "another 80mm", "focalMm": 80, "widest": 4, "narrowest": 16, "step": "full"}, | 7: lenses holds the key 80 twice
            , "step": "half" | | 7: step is one of full, half, third
            """)
    void aWrongValueInACameraIsOneProblem(String from, String to, String problem) {
        refused(camera(spoilt(CAMERA, from, to)), "cameras/box.json:" + problem);
    }

    @Test
    void allMistakesOfAFileAreToldAtOnceInItsOrderAndAMisspeltNameWithTheNearest() {
        assertEquals(
                List.of(
                        "stocks/mine.json:1: boxSpeed is missing",
                        "stocks/mine.json:2: kind is one of colour-negative, bw-negative, colour-reversal, bw-reversal",
                        "stocks/mine.json:3: usualEI is a number from 0.1 to 1000000",
                        "stocks/mine.json:3: boxSped is no field known here, and is left out; did you mean boxSpeed?",
                        "stocks/mine.json:4: overStops is missing",
                        "stocks/mine.json:4: overStop is no field known here, and is left out; did you mean overStops?",
                        "stocks/mine.json:5: model is one of none, power, table, stops"),
                ProfileReader.stock("mine", "stocks/mine.json", """
                        {"name": "Mine", "process": "C-41",
                         "kind": "colour-negatif",
                         "boxSped": 400, "usualEI": "x", "filmSizes": ["135"],
                         "latitude": {"underStops": 1, "overStop": 3},
                         "reciprocity": {"model": "curve", "points": [[1, 1], [2, 3]]}}
                        """).problems());
    }

    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "bw-negative" | "negative" | 1: kind is one of colour-negative, bw-negative, colour-reversal, bw-reversal
            "process": "black-and-white" | "process": 41 | 1: process is text of 1 to 80 letters in quotes
            "boxSpeed": 100 | "boxSpeed": 0 | 2: boxSpeed is a number from 0.1 to 1000000
            "usualEI": 50 | "usualEI": "box" | 3: usualEI is a number from 0.1 to 1000000
            ["135"] | ["110"] | 4: filmSizes holds names out of 135, 120, 220, 127, sheet, instant, in quotes
            ["135"] | [135] | 4: filmSizes holds names out of 135, 120, 220, 127, sheet, instant, in quotes
            ["135"] | "135" | 4: filmSizes is a list in brackets of 1 to 6 items
            "underStops": 1 | "underStops": -1 | 5: underStops is a number from 0 to 10
            , "overStops": 2 | | 5: overStops is missing
            "model": "table" | "model": "curve" | 6: model is one of none, power, table, stops
            "model": "table" | "model": "power" | 6: exponent is missing
            "model": "table" | "model": "power", "fromSeconds": 1, "exponent": 0.8 | 6: exponent is a number from 1 to 3
            "model": "table" | "model": "stops" | 6: reciprocity: the first point is the end of the range that needs nothing: [t, 0]
            [[1, 1], [10, 50]] | [[1, 2], [10, 50]] | 6: reciprocity: the first point is the end of the range that needs nothing: [t, t]
            [[1, 1], [10, 50]] | [[1, 1], [10, 5]] | 6: reciprocity: corrected times rise from point to point and are never shorter than metered ones
            [[1, 1], [10, 50]] | [[1, 1], [1, 50]] | 6: reciprocity: the times of the points rise
            [[1, 1], [10, 50]] | [[1, 1]] | 6: reciprocity: two points at least
            [[1, 1], [10, 50]] | [[1, 1], 10, 50] | 7: points holds pairs of numbers such as [1, 2]
            [[1, 1], [10, 50]] | [[1, 1], [10, 50, 3]] | 7: points holds pairs of numbers such as [1, 2]
            [[1, 1], [10, 50]] | [[0, 0], [10, 50]] | 7: points: a point is a time above 0 seconds and a value not below 0
            """)
    void aWrongValueInAStockIsOneProblem(String from, String to, String problem) {
        refused(stock(spoilt(STOCK, from, to)), "stocks/bh.json:" + problem);
    }

    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "pair" | "pairs" | 1: shows is one of pair, aperture, ev
            "tenths": true | "tenths": 10 | 2: tenths is true or false
            "step": "full" | "step": "tenth" | 3: step is one of full, half, third
            "iso100" | "100" | 3: evShown is one of iso100, set-speed
            250 | 12.5 | 4: incidentConstant is a number from 100 to 1000
            "reflectedConstant": 12.5 | "reflectedConstant": 250 | 4: reflectedConstant is a number from 5 to 30
            "method": "incident" | "method": "camera" | 5: method is one of incident, reflected, spot
            """)
    void aWrongValueInAMeterIsOneProblem(String from, String to, String problem) {
        refused(meter(spoilt(METER, from, to)), "meters/bm.json:" + problem);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "syncTime" | "synchTime" | 5: synchTime is no field known here, and is left out; did you mean syncTime?
            "widest" | "colour": "black", "widest" | 8: colour is no field known here, and is left out
            "bulb": true | "bulbs": true | 4: bulbs is no field known here, and is left out; did you mean bulb?
            """)
    void anUnknownFieldIsToldWithTheNearestKnownOneAndLeftOut(String from, String to, String note) {
        ProfileReader.Read<Camera> read = camera(spoilt(CAMERA, from, to));
        assertEquals(List.of("cameras/box.json:" + note), read.problems());
        assertTrue(read.profile().isPresent());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "usualEI" | "usualIE" | 3: usualIE is no field known here, and is left out; did you mean usualEI?
            "overStops": 2 | "overStops": 2, "overstop": 3 | 5: overstop is no field known here, and is left out; did you mean overStops?
            "points" | "exponent": 1.3, "points" | 7: exponent is no field known here, and is left out
            """)
    void anUnknownFieldOfAStockIsToldToo(String from, String to, String note) {
        ProfileReader.Read<Stock> read = stock(spoilt(STOCK, from, to));
        assertEquals(List.of("stocks/bh.json:" + note), read.problems());
        assertTrue(read.profile().isPresent());
    }

    @Test
    void anUnknownFieldOfAMeterIsToldToo() {
        ProfileReader.Read<Meter> read = meter(spoilt(METER, "evShown", "evshows"));
        assertEquals(
                List.of("meters/bm.json:3: evshows is no field known here, and is left out; did you mean evShown?"),
                read.problems());
        assertTrue(read.profile().isPresent());
    }

    /** Marks replace the step; nothing is said of ends that stand beside them. */
    @Test
    void marksReplaceTheStep() {
        ProfileReader.Read<Camera> read =
                camera(spoilt(CAMERA, "\"widest\": 2.8", "\"marks\": [3.5, 5.6], \"widest\": 2.8"));
        assertEquals(List.of(), read.problems());
        assertEquals(
                "[f/3.5, f/5.6]",
                read.profile().orElseThrow().lenses().get(0).ring().marks().toString());
    }

    /**
     * Bulb, tenths and the rest are off, the constants 250 and 12.5, the rating that of the box, when a profile does
     * not say otherwise.
     */
    @Test
    void whatIsLeftOutIsTheUsual() {
        Meter meter = meter("{\"name\": \"Boathouse meter\", \"shows\": \"pair\"}")
                .profile()
                .orElseThrow();
        assertEquals(
                new Meter(
                        "bm",
                        "Boathouse meter",
                        new Meter.Display(Meter.Shows.PAIR, false, Meter.NONE.step(), false),
                        250,
                        12.5,
                        Light.Method.INCIDENT),
                meter);
        assertEquals(
                100,
                stock(spoilt(STOCK, "\"usualEI\": 50,", ""))
                        .profile()
                        .orElseThrow()
                        .usualIndex()
                        .arithmetic());
        assertEquals(
                false,
                camera(spoilt(CAMERA, ", \"bulb\": true", ""))
                        .profile()
                        .orElseThrow()
                        .shutter()
                        .orElseThrow()
                        .bulb());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "model": "none" | None[upToSeconds=OptionalDouble.empty]
            "model": "none", "upToSeconds": 10 | None[upToSeconds=OptionalDouble[10.0]]
            "model": "power", "exponent": 1.3, "fromSeconds": 1 | Power[exponent=1.3, fromSeconds=1.0]
            "model": "stops", "points": [[1, 0], [10, 1]] | Opening[points=[Point[seconds=1.0, value=0.0], Point[seconds=10.0, value=1.0]]]
            "model": "table", "points": [[1, 1], [10, 50]] | Table[points=[Point[seconds=1.0, value=1.0], Point[seconds=10.0, value=50.0]]]
            """)
    void eachModelOfALongExposureIsReadAndComesBackEqual(String model, String read) {
        Stock stock = stock("{\"name\": \"b\", \"kind\": \"bw-negative\", \"process\": \"b\", \"boxSpeed\": 100, "
                        + "\"filmSizes\": [\"135\"], "
                        + "\"latitude\": {\"underStops\": 1, \"overStops\": 2}, \"reciprocity\": {" + model
                        + "}}")
                .profile()
                .orElseThrow();
        assertEquals(read, stock.reciprocity().toString());
        assertEquals(stock, ProfileJson.stock("bh", "again", ProfileJson.of(stock)));
    }

    /** A dial that goes on to minutes is written in seconds, the only form that a profile has. */
    /** 0.02 mm is what a careful eye asks for on small film; without the field it is the diagonal / 1500: 0.0288 mm. */
    @Test
    void aCameraMayCarryItsOwnCircleOfConfusion() {
        String text = "{\"name\": \"Box\", \"frameSize\": \"24x36\", \"frames\": {\"135\": 36}CIRCLE}";
        Camera own = ProfileReader.camera("box", "box", text.replace("CIRCLE", ", \"circleOfConfusionMm\": 0.02"))
                .profile()
                .orElseThrow();
        assertEquals(0.02, own.circleOfConfusionMm());
        assertEquals(own, ProfileJson.camera("box", "again", ProfileJson.of(own)));
        assertEquals(
                0.0288,
                ProfileReader.camera("box", "box", text.replace("CIRCLE", ""))
                        .profile()
                        .orElseThrow()
                        .circleOfConfusionMm(),
                0.0001);
        for (String wrong : List.of("0", "1.1", "\"0.02\"")) {
            assertEquals(
                    List.of("box:1: circleOfConfusionMm is a number from 0.001 to 1"),
                    ProfileReader.camera("box", "box", text.replace("CIRCLE", ", \"circleOfConfusionMm\": " + wrong))
                            .problems());
        }
    }

    @Test
    void aDialOfMinutesComesBackEqual() {
        Camera camera = camera(CAMERA.replace(
                        "\"step\": \"full\", \"longest\": \"1s\", \"fastest\": \"1/500\"",
                        "\"marks\": [\"120s\", \"90s\", \"1/300\"]"))
                .profile()
                .orElseThrow();
        assertEquals("2min", camera.shutter().orElseThrow().longest().toString());
        assertEquals(camera, ProfileJson.camera("box", "again", ProfileJson.of(camera)));
    }

    /** Two focal lengths are a zoom; the lens reaches all between them. */
    @Test
    void aZoomReachesFromItsShortEndToItsLong() {
        Lens zoom = Shipped.camera("35af").lens("28-90").orElseThrow();
        assertEquals("28 to 90 mm", zoom.focalWords());
        assertTrue(zoom.reaches(28) && zoom.reaches(50) && zoom.reaches(90));
        assertTrue(!zoom.reaches(27) && !zoom.reaches(91));
        Lens fixed = Shipped.camera("35af").lens("85").orElseThrow();
        assertEquals("85 mm", fixed.focalWords());
        assertTrue(!fixed.isZoom() && fixed.reaches(85) && !fixed.reaches(80));
    }

    /** KEY is letters, digits, - and _. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "645,true",
        "cn400,true",
        "28-90,true",
        "Z_z,true",
        "-rf,false",
        "a.b,false",
        "a/b,false",
        "a b,false",
        "ä,false",
        "a@,false",
        "a[,false",
        "a`,false",
        "a{,false",
        "a:,false"
    })
    void aKeyIsLettersDigitsAndTwoStrokes(String word, boolean key) {
        assertEquals(key, ProfileReader.isKey(word));
    }

    /** Whatever object a number stands in, its source can stand beside it. */
    @Test
    void aSourceAndANoteAreWelcomeInEveryObject() {
        String camera = CAMERA.replace("{\"", "{\"source\": \"the boathouse ledger\", \"note\": \"counted twice\", \"");
        assertEquals(List.of(), camera(camera).problems());
        assertEquals(camera(CAMERA).profile(), camera(camera).profile());
        String stock = STOCK.replace("{\"", "{\"source\": \"the boathouse ledger\", \"note\": \"counted twice\", \"");
        assertEquals(List.of(), stock(stock).problems());
        assertEquals(stock(STOCK).profile(), stock(stock).profile());
    }

    @ParameterizedTest(name = "the file holds: {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            [] | cameras/box.json:1: a profile is one object in braces
            `` | cameras/box.json:1: the file is empty
            {"name": "a", "name": "b"} | cameras/box.json:1: this is not JSON: Duplicate field 'name'
            {} {} | cameras/box.json:1: something follows after the end
            {"focalMm": 1e999} | cameras/box.json:1: a number is too large
            """)
    void aFileThatIsNoProfileSaysSo(String text, String problem) {
        refused(camera(text), problem);
    }

    @Test
    void aBrokenFileNamesTheLineWhereItBreaks() {
        ProfileReader.Read<Camera> read = camera("{\"name\": \"Boathouse box\",\n \"frameSize\": 6x6}\n");
        assertTrue(
                read.problems().get(0).startsWith("cameras/box.json:2: this is not JSON: "),
                read.problems().toString());
        assertEquals(Optional.empty(), read.profile());
    }

    /** A mark on no scale is literal, the others stand for their exact values: 1/5 is a third stop, 2^(-7/3) s. */
    @Test
    void irregularMarksAreReadAsTheyAreEngraved() {
        Camera camera = Shipped.camera("66");
        Shutter dial = camera.shutter().orElseThrow();
        assertEquals(
                List.of("1s", "1/2", "1/5", "1/10", "1/25", "1/50", "1/100", "1/250", "1/500"),
                dial.marks().stream().map(Object::toString).toList());
        assertEquals(Math.pow(2, -7 / 3.0), dial.marks().get(2).exactSeconds(), 1e-12);
        assertEquals(
                List.of("f/3.5", "f/4", "f/5.6", "f/8", "f/11", "f/16", "f/22"),
                camera.lenses().get(0).ring().marks().stream()
                        .map(Object::toString)
                        .toList());
        assertEquals(
                1 / 300.0,
                camera(CAMERA.replace(
                                "\"step\": \"full\", \"longest\": \"1s\", \"fastest\": \"1/500\"",
                                "\"marks\": [\"1/2\", \"1/300\"]"))
                        .profile()
                        .orElseThrow()
                        .shutter()
                        .orElseThrow()
                        .fastest()
                        .exactSeconds(),
                1e-12);
    }

    private static String spoilt(String text, String from, String to) {
        assertTrue(text.contains(from), from);
        int at = text.indexOf(from);
        return text.substring(0, at) + (to == null ? "" : to) + text.substring(at + from.length());
    }

    private static void refused(ProfileReader.Read<?> read, String problem) {
        assertEquals(List.of(problem), read.problems());
        assertEquals(Optional.empty(), read.profile());
    }

    private static ProfileReader.Read<Camera> camera(String text) {
        return ProfileReader.camera("box", "cameras/box.json", text);
    }

    private static ProfileReader.Read<Stock> stock(String text) {
        return ProfileReader.stock("bh", "stocks/bh.json", text);
    }

    private static ProfileReader.Read<Meter> meter(String text) {
        return ProfileReader.meter("bm", "meters/bm.json", text);
    }
}
