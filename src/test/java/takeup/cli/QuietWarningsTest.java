package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.json.Json;

/** What is warned of, and what a photographer would laugh at. */
class QuietWarningsTest {
    @TempDir
    Path folder;

    private TypedLines typed() {
        return new TypedLines(folder);
    }

    /**
     * Colour negative bears +4 to +5 in the highlights: johnnypatience.com, metering for film (-1 to +4);
     * qastack.com.br, photo 108458 (0 to +4 fine, +5 usable). Rated a stop slow, highlights 3 stops up are 4 over.
     */
    @ParameterizedTest
    @CsvSource({"cn400", "bw400"})
    void highlightsThreeStopsUpAreNoWarning(String stock) throws Exception {
        assertEquals(List.of(), typed().codes("cam 35", "load " + stock, "m low ev 11 14"));
        assertFalse(typed().last("m low ev 11 14").contains("too much"));
    }

    /** 1/135 and the mark 1/125, which is 1/128: 0.08 stops. 1/60 is 1/64, more than a stop. */
    @Test
    void aSixthOfAStopIsNoShakeAndPastASecondNobodyHoldsByHand() throws Exception {
        assertEquals(List.of("no-light"), typed().codes("cam 35", "load cn400", "lens 135", "125 5.6"));
        assertEquals(List.of("hand-held"), typed().codes("1/60"));
        assertEquals(List.of("hand-held"), typed().codes("1s"));
        assertEquals(List.of("reciprocity"), typed().codes("b5s"));
        assertEquals(List.of("hand-held"), typed().codes("1/15"));
    }

    @Test
    void aMeterThatWasSetOnceIsNotDoubtedAgain() throws Exception {
        assertEquals(List.of("meter-speed"), typed().codes("cam 35", "load cn400 @200", "m 5.6 125 @400"));
        assertTrue(typed().last("say").contains("Warnings that stand: meter-speed"));
        assertEquals(List.of(), typed().codes("m 5.6 125 @200"));
        assertEquals(List.of(), typed().codes("m 5.6 125 @400"));
        assertFalse(typed().last("say").contains("meter-speed"));
    }

    @Test
    void theFlashContactsAreSpokenOfOnceADay() throws Exception {
        assertEquals(List.of("flash-voltage"), typed().codes("cam 645", "load cn400", "flash on"));
        assertEquals(List.of(), typed().codes("flash off", "flash on"));
        assertEquals(List.of(), typed().codes("cam 35", "load cn400", "flash on"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            load cn400 @800 push 3 | push-mismatch
            load cn400 @800 push 1 |
            load cn400 @12         | dense
            load cn400 @50         |
            load cr100 @50         | light
            load cr100 @400 push 2 | push-mismatch
            load cr100 @200 push 1 |
            """)
    void whatCannotComeOutRightIsSaidAtThatLine(String line, String code) throws Exception {
        assertEquals(code == null ? List.of() : List.of(code), typed().codes("cam 35", line));
    }

    @Test
    void soDoesACorrection() throws Exception {
        assertEquals(List.of("push-mismatch"), typed().codes("cam 35", "load cr100 @200 push 1", "push 2"));
        assertEquals(List.of("light"), typed().codes("push 1", "fix roll @25 normal"));
    }

    @Test
    void aCameraThatSetsItselfReadsTheBoxSpeed() throws Exception {
        Json.Obj loaded = typed().lastJson("cam compact", "load cn400");
        assertEquals(400, TypedLines.number(loaded, "exposureIndex"));
        Json.Obj told = typed().lastJson("unload yes", "load cn400 @200");
        assertEquals(200, TypedLines.number(told, "exposureIndex"));
        assertEquals(200, TypedLines.number(typed().lastJson("cam 35", "load cn400"), "exposureIndex"));
    }

    @Test
    void aSlideIsDarkOrLight() throws Exception {
        assertEquals(List.of("dark"), typed().codes("cam 35", "load cr100", "m ev 12", "5.6 250"));
        assertEquals(List.of("light"), typed().codes("5.6 60"));
        assertEquals(List.of("thin"), typed().codes("unload yes", "load cn400", "m ev 12", "8 1000"));
    }

    /** At 69.65 degrees north the sun is below the horizon from late November to the middle of January. */
    @Test
    void inTheFarNorthTheSunDoesNotRise() {
        assertTrue(
                typed().last("shoot Winter crew on 2026-12-21 at 69.65,18.96").contains("the sun does not rise"));
    }

    @Test
    void theRuleForTheHandIsTheProfilesChoice() throws Exception {
        Path cameras = Files.createDirectories(folder.resolve("profiles").resolve("cameras"));
        Files.writeString(cameras.resolve("press.json"), """
                {"name": "Press", "frameSize": "6x9", "frames": {"120": 8}, "handHeld": "unscaled",
                 "times": {"step": "full", "longest": "1s", "fastest": "1/500", "bulb": true},
                 "lenses": [{"key": "105", "name": "105", "focalMm": 105, "widest": 4, "narrowest": 22, "step": "full"}]}
                """);
        // 1/105 unscaled; scaled to 6x9 it is 1/45, and 1/60 is none.
        assertEquals(List.of("hand-held", "no-light"), typed().codes("cam press", "load cn400", "8 60"));
        assertEquals(List.of("no-light"), typed().codes("cam 69", "load cn400", "8 50"));
    }
}
