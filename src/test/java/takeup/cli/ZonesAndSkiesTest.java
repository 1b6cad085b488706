package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;
import takeup.json.Json;
import takeup.prompt.Sky;

/** Readings as a photographer takes them: zones, light that needs no meter, and what a meter does not say. */
class ZonesAndSkiesTest {
    @TempDir
    Path folder;

    private TypedLines typed() {
        return new TypedLines(folder);
    }

    private Json.Obj meter(String reading) throws Exception {
        return typed().json("meter", reading, "--camera", "645", "--stock", "cn400", "--json");
    }

    /** A zone is a stop; zone 5 is what a meter shows (zone system; common practice). f/5.6 1/125 at 400 is EV 10. */
    @ParameterizedTest(name = "{0} is EV {1}")
    @CsvSource({
        "spot 5.6 125 z3 @400, 12",
        "reflected 5.6 125 z5 @400, 10",
        "camera 5.6 125 z3 @400, 12",
        "camera 5.6 125 z7 @400, 8",
    })
    void aZoneGoesWithAnyReadingOffTheSubject(String reading, double ev100) throws Exception {
        assertEquals(ev100, TypedLines.number(meter(reading), "ev100"), 1e-6);
    }

    /** EV 9 on zone 3 puts zone 5 at EV 11; EV 12 is then one above, zone 6, EV 16 is zone 10. */
    @Test
    void theShadowsOfANegativeDecideAndTheHighlightsFallWhereTheyFall() throws Exception {
        assertEquals(11, TypedLines.number(meter("spot 9 z3 and 12 z7"), "ev100"), 1e-6);
        assertEquals(11, TypedLines.number(meter("spot 12 z7 and 9 z3"), "ev100"), 1e-6);
        assertTrue(said("spot 9 z3 and 12 z7", "cn400")
                .contains("With EV 9.0 on zone 3, EV 12.0 falls on zone 6: the span of 3 stops fits."));
        assertTrue(said("spot 9 z3 and 16 z7", "cn400")
                .contains("falls on zone 10: the span of 7 stops does not fit, zone 7 is 3 stops below."));
    }

    /** EV 12 on zone 7 puts zone 5 at EV 10; EV 9 is then zone 4, EV 6 is zone 1. */
    @Test
    void theHighlightsOfASlideDecide() throws Exception {
        assertTrue(said("spot 9 z3 and 12 z7", "cr100")
                .contains("With EV 12.0 on zone 7, EV 9.0 falls on zone 4: the span of 3 stops fits."));
        assertTrue(said("spot 6 z3 and 12 z7", "cr100")
                .contains("falls on zone 1: the span of 6 stops does not fit, zone 3 is 2 stops above."));
    }

    private String said(String reading, String stock) {
        return typed().last("cam 35", "load " + stock, "m " + reading, "unload yes", "load " + stock, "m " + reading);
    }

    @Test
    void otherProgramsReadWhereEachFalls() throws Exception {
        Json.Arr zones = (Json.Arr) meter("spot 9 z3 and 12 z7").fields().get("zones");
        assertEquals(2, zones.items().size());
        assertEquals(9, TypedLines.number((Json.Obj) zones.items().get(0), "ev100"), 1e-6);
        assertEquals(12, TypedLines.number((Json.Obj) zones.items().get(1), "ev100"), 1e-6);
        assertEquals(6, TypedLines.number((Json.Obj) zones.items().get(1), "fallsOn"), 1e-6);
        assertEquals(7, TypedLines.number((Json.Obj) zones.items().get(1), "zone"), 1e-6);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            m spot 9 12 z3              | which of them goes on z3?
            m spot 9 z3 and 12          | which of them goes on z3?
            m spot 9 z3 12 z7           | and stands between two: m spot 9 z3 and 12 z7
            m spot 12 z3 and 9 z7       | the higher zone needs the brighter reading
            m low spot 9 z3 and 12 z7   | a zone for each reading, or low or high
            m spot 9 z3 and 10 12 z7    | each reading and its zone
            m spot 9 z3 and 12 z7 and 3 | each reading and its zone
            """)
    void whatIsNotClearIsAskedAbout(String line, String why) {
        assertTrue(typed().last("cam 35", "load cn400", line).contains(why), () -> typed().last(line));
    }

    static Stream<ReferenceTable.Row> levels() {
        return ReferenceTable.rows("light_levels");
    }

    /** Every row of the table (ANSI PH2.7, read in liquisearch.com) has its word, and the word its middle. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("levels")
    void theWholeTableIsKnown(ReferenceTable.Row row) throws Exception {
        String word = switch (row.text("condition")) {
            case "light sand or snow in full sun" -> "snow";
            case "full or slightly hazy sun" -> "sun";
            case "hazy sun" -> "hazy";
            case "cloudy bright" -> "cloudy";
            case "heavy overcast" -> "overcast";
            case "open shade in clear sunlight" -> "shade";
            case "just before sunset sky" -> "before-sunset";
            case "at sunset sky" -> "sunset";
            case "just after sunset sky" -> "dusk";
            case "landscape under full moon" -> "moon";
            case "neon and bright signs" -> "neon";
            case "night sports" -> "sports";
            case "fires" -> "fire";
            case "bright street scenes" -> "bright-street";
            case "night street scenes and window displays" -> "street";
            case "night traffic" -> "traffic";
            case "fairs and amusement parks" -> "fair";
            case "christmas tree lights" -> "tree-lights";
            case "floodlit buildings" -> "floodlit";
            case "distant views of lighted buildings" -> "skyline";
            case "galleries" -> "gallery";
            case "stage shows" -> "stage";
            case "offices and work areas" -> "office";
            case "home interiors" -> "home";
            default -> "none";
        };
        assertEquals(
                (row.number("ev_low") + row.number("ev_high")) / 2,
                TypedLines.number(meter("sky " + word), "ev100"),
                1e-6);
    }

    /** Side light one stop more, back light two (armycommunications.tpub.com, SS0507). Candlelight: from memory. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"sun side, 14", "sun back, 13", "side, 14", "back, 13", "hazy side, 13", "snow back, 14", "candle, 4"})
    void theSideThatTheSunComesFromCounts(String sky, double ev100) throws Exception {
        assertEquals(ev100, TypedLines.number(meter("sky " + sky), "ev100"), 1e-6);
    }

    @Test
    void aRangeIsSaidAsOneAndAnUnknownSkyMeetsItsNearest() {
        assertTrue(typed().last("cam 35", "load cn400", "m sky stage")
                .contains("For stage shows the table gives EV 8 to 9; the middle is taken."));
        assertTrue(typed().last("m sky stag").contains("did you mean m sky stage?"));
        assertTrue(typed().last("m sky violet").contains("one of snow, sun, hazy, side"));
        assertEquals(List.of("side", "back"), Sky.after("sun"));
        assertEquals(Sky.words(), Sky.after("sky"));
        assertEquals(List.of(), Sky.after("stage"));
    }

    /** Reflected light is made mid-grey: lightmetering.co.uk, weddings; hertze.com, colour negative. */
    @Test
    void whatAReflectedReadingDoesToTheSubjectIsSaidOnceADay() throws Exception {
        assertEquals(List.of("mid-grey"), typed().codes("cam 35", "load cr100", "m reflected 5.6 125"));
        assertEquals(List.of(), typed().codes("m reflected 8 125"));
        assertEquals(List.of("mid-grey", "sun"), typed().codes("m reflected ev16"));
        assertTrue(typed().last("m camera 5.6 125").contains("for slide film meter the highlights"));
    }

    @Test
    void negativeFilmBearsAReflectedReadingThatIsNotOfSnow() throws Exception {
        assertEquals(List.of(), typed().codes("cam 35", "load cn400", "m reflected ev15"));
        assertEquals(List.of(), typed().codes("m reflected ev15.5 z7"));
        assertEquals(List.of("mid-grey"), typed().codes("m reflected ev15.5"));
    }

    /**
     * A row without an error where the dial and the ring have one: EV 15 at EI 200 is f/8 1/1000, f/11 1/500, f/16
     * 1/250, and so for the other speeds that are full stops from 100; the old series of times has no 1/60.
     */
    @ParameterizedTest(name = "{0} with {1}")
    @CsvSource({
        "35, cn400",
        "35, cr100",
        "35af, cn400",
        "35af, cn800",
        "645, cn400",
        "645, cr100",
        "66, cn400",
        "67, cn400",
        "69, cn400",
        "half, cn400",
        "half, bw100",
        "pan, cn400"
    })
    void sunnyWeatherNeedsNoMeter(String camera, String stock) throws Exception {
        Json.Obj said = typed().json("meter", "sky", "sun", "--camera", camera, "--stock", stock, "--json");
        Json.Obj best = ((Json.Arr) said.fields().get("suggestions"))
                .items().stream()
                        .map(it -> (Json.Obj) it)
                        .filter(it -> ((Json.Bool) it.fields().get("best")).value())
                        .findFirst()
                        .orElseThrow();
        assertEquals(0, TypedLines.number(best, "errorStops"), 0.01);
        assertTrue(((Json.Arr) best.fields().get("warnings")).items().isEmpty());
    }
}
