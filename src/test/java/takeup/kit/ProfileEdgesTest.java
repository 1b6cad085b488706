package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.Light;

/** The first and the last value that a profile may hold, and the ones just beyond. */
class ProfileEdgesTest {
    private static List<String> camera(String frames, String backs, String marks) {
        return ProfileReader.camera(
                        "box",
                        "box.json",
                        "{\"name\": \"Boathouse box\", \"frameSize\": \"6x6\", \"frames\": {\"120\": " + frames
                                + "}, \"backs\": [" + backs
                                + "], \"lenses\": [{\"key\": \"80\", \"name\": \"80mm\", \"focalMm\": 80, \"marks\": ["
                                + marks + "]}]}")
                .problems();
    }

    @ParameterizedTest(name = "{0} frames, lens marks {1}")
    @CsvSource(delimiter = '|', textBlock = """
            1   | 0.5, 1000 |
            250 | 0.5, 1000 |
            0   | 2.8, 4    | box.json:1: 120 is a whole number from 1 to 250
            251 | 2.8, 4    | box.json:1: 120 is a whole number from 1 to 250
            12  | 0.49, 4   | box.json:1: marks holds f-numbers from 0.5 to 1000
            12  | 4, 1001   | box.json:1: marks holds f-numbers from 0.5 to 1000
            12  | 4, "8"    | box.json:1: marks holds f-numbers from 0.5 to 1000
            """)
    void countsAndFNumbersEndWhereTheMessageSays(String frames, String marks, String problem) {
        assertEquals(problem == null ? List.of() : List.of(problem), camera(frames, "\"a\"", marks));
    }

    @ParameterizedTest(name = "{0} backs: {1}")
    @CsvSource({"20, 0", "21, 1"})
    void aCameraHasUpToTwentyBacks(int count, int problems) {
        StringBuilder backs = new StringBuilder("\"b1\"");
        for (int back = 2; back <= count; back++) {
            backs.append(", \"b").append(back).append('"');
        }
        assertEquals(
                problems == 0 ? List.of() : List.of("box.json:1: backs is a list in brackets of 1 to 20 items"),
                camera("12", backs.toString(), "2.8, 4"));
    }

    @ParameterizedTest(name = "a name of {0} letters: {1}")
    @CsvSource({"1, true", "80, true", "81, false"})
    void aNameHasUpToEightyLetters(int letters, boolean fits) {
        List<String> problems = ProfileReader.meter(
                        "own", "own.json", "{\"name\": \"" + "m".repeat(letters) + "\", \"shows\": \"pair\"}")
                .problems();
        assertEquals(fits ? List.of() : List.of("own.json:1: name is text of 1 to 80 letters in quotes"), problems);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"incident, INCIDENT", "reflected, REFLECTED", "spot, SPOT"})
    void aMeterReadsInTheWayThatItsFileNames(String word, Light.Method method) {
        assertEquals(
                method,
                ProfileReader.meter(
                                "own",
                                "own.json",
                                "{\"name\": \"Own\", \"shows\": \"pair\", \"method\": \"" + word + "\"}")
                        .profile()
                        .orElseThrow()
                        .method());
    }

    @Test
    void aMeterThatReadsInNoKnownWayIsRefused() {
        assertEquals(
                List.of("own.json:1: method is one of incident, reflected, spot"),
                ProfileReader.meter(
                                "own", "own.json", "{\"name\": \"Own\", \"shows\": \"pair\", \"method\": \"guess\"}")
                        .problems());
    }

    @ParameterizedTest(name = "{0} letters: {1}")
    @CsvSource({"0, false", "1, true", "40, true", "41, false"})
    void aKeyHasOneToFortyLetters(int letters, boolean isKey) {
        assertEquals(isKey, ProfileReader.isKey("k".repeat(letters)));
    }

    @Test
    void aLensWithoutItsLengthIsRefused() {
        assertEquals(
                List.of("box.json:2: focalMm is missing"),
                ProfileReader.camera(
                                "box",
                                "box.json",
                                "{\"name\": \"Boathouse box\", \"frameSize\": \"6x6\", \"frames\": {\"120\": 12},\n"
                                        + "\"lenses\": [{\"key\": \"80\", \"name\": \"80mm\", \"marks\": [2.8, 4]}]}")
                        .problems());
    }

    @Test
    void ringsAndDialsHaveAMarkEach() {
        assertThrows(IllegalArgumentException.class, () -> Ring.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Shutter.of(List.of(), true));
    }

    @ParameterizedTest(name = "focalMm {0}, times {1}: {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            1      | "86400s", "1s" |
            5000   | "1s", "1/500"  |
            0.9    | "1s", "1/500"  | box.json:1: focalMm is a number from 1 to 5000
            5000.1 | "1s", "1/500"  | box.json:1: focalMm is a number from 1 to 5000
            ["28", 90]   | "1s", "1/500" | box.json:1: focalMm is a number of mm, or for a zoom two in brackets
            [28, "90"]   | "1s", "1/500" | box.json:1: focalMm is a number of mm, or for a zoom two in brackets
            [28, 50, 90] | "1s", "1/500" | box.json:1: focalMm is a number of mm, or for a zoom two in brackets
            80     | "86401s", "1s" | box.json:1: marks is a time such as "1/125" or "2s"
            80     | "1s", "0s"     | box.json:1: marks is a time such as "1/125" or "2s"
            80     | "1s", "1/0x2"  | box.json:1: marks is a time such as "1/125" or "2s"
            80     | "1s", "."      | box.json:1: marks is a time such as "1/125" or "2s"
            80     | "1.5.0s", "1s" | box.json:1: marks is a time such as "1/125" or "2s"
            """)
    void lengthsAndTimesEndWhereTheMessageSays(String focalMm, String times, String problem) {
        List<String> problems = ProfileReader.camera(
                        "box",
                        "box.json",
                        "{\"name\": \"Boathouse box\", \"frameSize\": \"6x6\", \"frames\": {\"120\": 12}, "
                                + "\"times\": {\"marks\": ["
                                + times + "]}, \"lenses\": [{\"key\": \"80\", \"name\": \"80mm\", \"focalMm\": "
                                + focalMm + ", \"marks\": [2.8, 4]}]}")
                .problems();
        assertEquals(problem == null ? List.of() : List.of(problem), problems);
    }

    /** With no dial of its own the sync time stands for the mark of that print on any scale: 1/60 is 1/64 s. */
    @Test
    void aCameraWithoutADialHasASyncTimeAllTheSameAndBulbIsWhatTheFileSays() {
        String front = "{\"name\": \"Boathouse box\", \"frameSize\": \"6x6\", \"frames\": {\"120\": 12}";
        assertEquals(
                1 / 64.0,
                ProfileReader.camera("box", "box.json", front + ", \"syncTime\": \"1/60\"}")
                        .profile()
                        .orElseThrow()
                        .syncTime()
                        .orElseThrow()
                        .exactSeconds());
        for (boolean bulb : new boolean[] {true, false}) {
            assertEquals(
                    bulb,
                    ProfileReader.camera(
                                    "box",
                                    "box.json",
                                    front + ", \"times\": {\"marks\": [\"1s\"], \"bulb\": " + bulb + "}}")
                            .profile()
                            .orElseThrow()
                            .shutter()
                            .orElseThrow()
                            .bulb());
        }
    }
}
