package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Scale;
import takeup.roll.Development;
import takeup.roll.Film;

/** What a profile of one's own can say beyond the usual: sizes, backs, a lens's own shutter, measured times. */
class OwnEquipmentTest {
    private static final String VIEW_CAMERA = """
            {"name": "View camera", "frameSizeMm": [125, 100], "frames": {"sheet": 2, "instant": 8},
             "backs": ["plain", {"name": "Roll", "frameSize": "6x9", "frames": {"120": 8}},
              {"name": "little", "frameSizeMm": [40, 40], "frames": {"127": 12}}],
             "times": {"step": "full", "longest": "1s", "fastest": "1/1000", "bulb": true,
              "measured": {"note": "tested in spring", "1/1000": "1/700", "1/2": 0.6}}, "syncTime": "1/60",
             "lenses": [
              {"key": "a", "name": "150mm f/5.6", "focalMm": 150, "widest": 5.6, "narrowest": 45, "step": "third",
               "times": {"marks": ["1s", "1/2", "1/5", "1/10", "1/25", "1/50", "1/100", "1/250"], "bulb": true}},
              {"key": "b", "name": "210mm f/5.6", "focalMm": 210, "widest": 5.6, "narrowest": 45, "step": "third",
               "syncTime": "1/30"},
              {"key": "c", "name": "90mm f/8", "focalMm": 90, "widest": 8, "narrowest": 45, "step": "third"}]}
            """;

    private static Camera camera(String text) {
        ProfileReader.Read<Camera> read = ProfileReader.camera("view", "view.json", text);
        assertEquals(List.of(), read.problems());
        return read.profile().orElseThrow();
    }

    private static String problem(String from, String to) {
        String text = VIEW_CAMERA.replace(from, to);
        assertFalse(text.equals(VIEW_CAMERA));
        ProfileReader.Read<Camera> read = ProfileReader.camera("view", "view.json", text);
        assertTrue(read.profile().isEmpty());
        return read.problems().get(0);
    }

    @Test
    void aRollKeepsAllOfIt() {
        Camera camera = camera(VIEW_CAMERA);
        assertEquals(camera, ProfileJson.camera("view", "again", ProfileJson.of(camera)));
        for (Lens lens : camera.lenses()) {
            assertEquals(lens, ProfileJson.lens("again", ProfileJson.of(lens)));
        }
    }

    /** 100 x 125 mm: diagonal 160.08 (Pythagoras), 1/1500 of it 0.1067. */
    @Test
    void anOwnSizeIsKnownByItsSides() {
        FrameSize size = camera(VIEW_CAMERA).frameSize();
        assertEquals("100x125", size.toString());
        assertEquals(160.0781, size.diagonalMm(), 1e-4);
        assertEquals(0.10672, size.circleOfConfusionMm(), 1e-5);
        assertEquals(1.25, size.aspect(), 1e-9);
        assertEquals(FrameSize.SMALL, FrameSize.ofMm(36, 24));
        assertEquals("24x36", FrameSize.ofMm(36, 24).toString());
    }

    @Test
    void sheetsAndPacksHoldSoManyALoad() {
        assertEquals(
                Map.of(FilmSize.SHEET, 2, FilmSize.INSTANT, 8),
                camera(VIEW_CAMERA).frames());
    }

    @Test
    void aBackMayHavePicturesOfItsOwnSize() {
        Camera camera = camera(VIEW_CAMERA);
        assertEquals(List.of("plain", "roll", "little"), camera.backNames());
        assertEquals(camera, camera.withBack(Optional.of("plain")));
        assertEquals(camera, camera.withBack(Optional.empty()));
        assertEquals(FrameSize.SIX_BY_NINE, camera.withBack(Optional.of("roll")).frameSize());
        assertEquals(
                Map.of(FilmSize.F120, 8), camera.withBack(Optional.of("roll")).frames());
        assertEquals(
                Map.of(FilmSize.F127, 12),
                camera.withBack(Optional.of("little")).frames());
    }

    /** The dial and the sync are those of the lens where it has a shutter, else those of the body. */
    @ParameterizedTest(name = "lens {0}: fastest {1}, flash up to {2}")
    @CsvSource({"a,1/250,1/250", "b,1/1000,1/30", "c,1/1000,1/60"})
    void aLensMayBringItsShutterAndItsSync(String key, String fastest, String sync) {
        Camera camera = camera(VIEW_CAMERA);
        Camera on = camera.withLens(camera.lens(key));
        assertEquals(fastest, on.shutter().orElseThrow().fastest().toString());
        assertEquals(sync, on.syncTime().orElseThrow().toString());
    }

    /** 1/700 s is 0.45 stops more light than the 1/1024 s that the mark stands for: log2(1024 / 700) = 0.549. */
    @Test
    void aMeasuredTimeCountsAsItWasMeasured() {
        Shutter dial = camera(VIEW_CAMERA).shutter().orElseThrow();
        assertEquals("1/1000", dial.fastest().toString());
        assertEquals(1 / 700.0, dial.fastest().exactSeconds(), 1e-12);
        assertEquals(0.6, dial.mark(0.5).orElseThrow().exactSeconds(), 1e-12);
        assertEquals(1 / 64.0, dial.mark(1 / 60.0).orElseThrow().exactSeconds(), 1e-12);
        assertEquals(
                Math.log(1024 / 700.0) / Math.log(2),
                dial.fastest().stops()
                        - Scale.FULL.time(1 / 1000.0).orElseThrow().stops(),
                1e-9);
        // 1/850 lies nearer to 1/700 than to 1/512 by its nominal neighbours: the mark 1/1000 is the one to set.
        assertEquals("1/1000", dial.nearest(1 / 650.0, true).toString());
    }

    @Test
    void whatCannotBeIsNamed() {
        assertEquals(
                "view.json:5: times: 1/700 is measured, and is no time of this dial",
                problem("\"1/1000\": \"1/700\"", "\"1/700\": \"1/700\"").replaceAll("json:\\d+", "json:5"));
        assertTrue(problem("\"1/1000\": \"1/700\"", "\"1/1000\": \"1/400\"")
                .endsWith("1/1000 is longer, as it was measured, than 1/500 before it"));
        assertTrue(problem("[125, 100]", "[125]").contains("frameSizeMm holds the two sides of the picture in mm"));
        assertTrue(problem("\"frameSizeMm\": [125, 100]", "\"frameSizeMm\": [125, 100], \"frameSize\": \"6x7\"")
                .contains("frameSizeMm stands in place of frameSize: one of the two"));
        assertTrue(problem("\"name\": \"little\"", "\"name\": \"roll\"").contains("backs holds roll twice"));
        assertTrue(problem("{\"127\": 12}", "{\"110\": 12}")
                .contains("frames names film sizes: 135, 120, 220, 127, sheet, instant, not 110"));
        assertTrue(problem("\"6x9\"", "\"6x10\"").contains("any other is frameSizeMm: [100, 125]"));
    }

    /** EI 25 on a box of 400 is 4 stops over, which its filter of 16x takes: nothing is over box speed. */
    @Test
    void theFilterOfInfraredFilmIsInItsIndex() {
        Stock infrared = Shipped.stock("ir400");
        assertEquals(0, infrared.stopsOverBox(infrared.usualIndex()), 1e-9);
        assertEquals(0, infrared.stopsOverBox(new FilmSpeed(400)), 1e-9);
        assertEquals(1, infrared.stopsOverBox(new FilmSpeed(200)), 1e-9);
        assertEquals(1, infrared.stopsOverBox(new FilmSpeed(12.5)), 1e-9);
        assertEquals(4, Shipped.stock("bw400").stopsOverBox(new FilmSpeed(25)), 1e-9);
        Film asUsual = new Film(
                infrared,
                infrared.filmSizes().get(0),
                infrared.usualIndex(),
                new Development(infrared.process(), 0),
                36);
        assertEquals(List.of(), asUsual.warnings());
        assertEquals(infrared, ProfileJson.stock("ir400", "again", ProfileJson.of(infrared)));
    }
}
