package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.json.Json;
import takeup.json.JsonText;

/**
 * One number for all light on a frame, typed as on the day and read where other programs read it: in the answers of
 * {@code takeup line --json}, in the exported roll, and in {@code takeup meter --json}.
 *
 * <p>The exact scale: f/11 is 2^3.5 (Av 7), 1/30 is 1/32 s (Tv 5).
 */
class AddedLightTest {
    @TempDir
    Path folder;

    private List<Json.Obj> line(String lines) throws Exception {
        Installed.Ended ended = run(lines, "line", "--json", "--clock", "2026-09-12T15:00+02:00");
        assertEquals("", ended.err());
        List<Json.Obj> answers = new ArrayList<>();
        for (String answer : ended.out().lines().toList()) {
            answers.add((Json.Obj) JsonText.read(answer));
        }
        return answers;
    }

    private Json.Obj json(String... arguments) throws Exception {
        Installed.Ended ended = run("", arguments);
        assertEquals("", ended.err());
        return (Json.Obj) JsonText.read(ended.out());
    }

    private Installed.Ended run(String input, String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--data", folder.toString()));
        return InProcess.run(input, all);
    }

    private static Json.Obj last(List<Json.Obj> answers) {
        return answers.get(answers.size() - 1);
    }

    private static double number(Json.Obj object, String... path) {
        Json.Obj at = object;
        for (int i = 0; i < path.length - 1; i++) {
            at = (Json.Obj) at.fields().get(path[i]);
        }
        return Double.parseDouble(JsonText.line(at.fields().get(path[path.length - 1])));
    }

    private static Json.Obj item(Json.Obj object, String list, int index) {
        return (Json.Obj) ((Json.Arr) object.fields().get(list)).items().get(index);
    }

    /**
     * EI 400 is 2 stops above 100, so a light of EV x asks for f and t of EV x + 2.
     *
     * <p>1: EV 13 asks for EV 15; f/11 1/30 is 7 + 5 = 12: 3 over. The flash is right at 20 x sqrt(4) x sqrt(1/4) / 3 =
     * f/6.67, Av 5.47; f/11 is 1.53 under. log2(2^3 + 2^-1.53) = 3.06. Colour negative 400 tolerates 3 over.
     *
     * <p>2: EV 10 asks for 12, which f/11 1/30 is: right. A guide number of 17 at 3 m, EI 400, full power: 17 x 2 / 3 =
     * f/11.33: right. log2(1 + 1) = 1.0.
     *
     * <p>3: half the power is one stop less: log2(1 + 0.5) = 0.6.
     */
    @ParameterizedTest(name = "{0}, {1}: {4} over")
    @CsvSource({
        "m ev13, flash gn20m 3m 1/4, 3.0, -1.53, 3.06, true",
        "m ev10, flash gn17m 3m, 0, 0, 1.0, false",
        "m ev10, flash gn17m 3m 1/2, 0, -1, 0.585, false"
    })
    void ambientLightAndFlashAreOneNumberWhereverItIsRead(
            String light, String flash, double ambient, double alone, double together, boolean isDense)
            throws Exception {
        Json.Obj frame = last(line("cam 645\nload cn400 @400\n" + light + "\n" + flash + "\n11 1/30\n"));
        assertEquals(together, number(frame, "errorStops"), 0.01);
        assertEquals(ambient, number(frame, "lightParts", "ambientStops"), 0.01);
        assertEquals(alone, number(frame, "lightParts", "flashStops"), 0.01);
        assertEquals(isDense, JsonText.line(frame.fields().get("warnings")).contains("\"dense\""), frame.toString());
        assertTrue(!JsonText.line(frame).contains("thin"), frame.toString());

        Json.Obj exported = item(json("roll", "1", "--json"), "frames", 0);
        assertEquals(together, number(exported, "errorStops"), 0.01);
        assertEquals(together, number(exported, "overBoxStops"), 0.01);
        assertEquals(ambient, number(exported, "lightParts", "ambientStops"), 0.01);
        assertEquals(alone, number(exported, "lightParts", "flashStops"), 0.01);
        assertEquals(
                "\"guide-number\"",
                JsonText.line(((Json.Obj) exported.fields().get("flashLight"))
                        .fields()
                        .get("method")));
    }

    /**
     * What is in use decides without --camera and --stock: the row of f/11, which is held. The flash is 1 under there,
     * so the time is that at which the room is 1 under too, 1/60: log2(0.5 + 0.5) = 0.
     */
    @Test
    void theRowsOfTheMeterCountTheFlashToo() throws Exception {
        run("cam 645\nload cn400 @400\nm ev10\nflash gn17m 3m 1/2\nhold f11\n", "line");
        Json.Obj advice = json("meter", "ev10", "--json");
        Json.Arr rows = (Json.Arr) advice.fields().get("suggestions");
        Json.Obj row = rows.items().stream()
                .map(Json.Obj.class::cast)
                .filter(it -> number(it, "fNumber") == 11)
                .findFirst()
                .orElseThrow();
        assertEquals("\"1/60\"", JsonText.line(row.fields().get("time")));
        assertEquals(0, number(row, "errorStops"), 0.01);
        assertEquals(-1, number(row, "lightParts", "ambientStops"), 0.01);
        assertEquals(-1, number(row, "lightParts", "flashStops"), 0.01);
    }

    /**
     * EI 200, EV 9 asks for EV 10. The flash meter, with 1/60 (Tv 6) in hand, reads f/8 (Av 6); the room alone at f/8
     * 1/60 is EV 12: 2 under, a quarter of the light, so the flash gives three quarters: log2(0.75) = 0.415 under. At
     * 1/15 (Tv 4) the room is right: log2(1 + 0.75) = 0.807 over.
     */
    @Test
    void aFlashMetersReadingIsOnTheFrameWithTheRoomsLightInIt() throws Exception {
        List<Json.Obj> answers = line("cam 645\nload cn400\nset 8 60\nm ev9\nset 8 60\nm flash 8\n8 60\n8 1/15\n");
        Json.Obj same = answers.get(6);
        assertEquals(0, number(same, "errorStops"), 0.01);
        assertEquals(-2, number(same, "lightParts", "ambientStops"), 0.01);
        assertEquals(-0.415, number(same, "lightParts", "flashStops"), 0.01);
        assertEquals(0.807, number(answers.get(7), "errorStops"), 0.01);
        Json.Obj exported = item(json("roll", "1", "--json"), "frames", 0);
        assertEquals("true", JsonText.line(exported.fields().get("flash")));
        assertEquals(0, number(exported, "errorStops"), 0.01);
        Json.Obj read = (Json.Obj) exported.fields().get("flashLight");
        assertEquals("\"meter\"", JsonText.line(read.fields().get("method")));
        assertEquals("\"1/60\"", JsonText.line(read.fields().get("time")));
        assertTrue(Files.readString(folder.resolve("days/2026-09-12.journal")).contains("flashLight"));
    }

    /**
     * EI 200, EV 10: f/4 1/125 is right (4 + 7 = 11), 1/250 half of it. Two halves: log2(0.5 + 0.5) = 0. In the export
     * the frame is not judged while it is open.
     */
    @Test
    void twoExposuresOfAFrameAreJudgedTogetherAtTheSecond() throws Exception {
        List<Json.Obj> open = line("cam 645\nload cn400\nm ev10\nbias -1\n4 250\ndouble\n");
        assertEquals(-1, number(last(open), "soFarStops"), 0.01);
        assertEquals(-1, number(last(open), "biasPerPartStops"), 0.01);
        assertEquals(2, number(last(open), "exposuresInAll"), 0);
        Json.Obj unjudged = item(json("roll", "1", "--json"), "frames", 0);
        assertEquals("null", JsonText.line(unjudged.fields().get("errorStops")));
        assertEquals("[]", JsonText.line(unjudged.fields().get("warnings")));
        assertEquals(0, number(last(line("4 250\n")), "errorStops"), 0.01);
        assertEquals(0, number(item(json("roll", "1", "--json"), "frames", 0), "errorStops"), 0.01);
    }

    /** In a studio nobody meters the room: at the time of the reading it is in the reading, at another nobody knows. */
    @Test
    void atAnotherTimeTheRoomsLightIsNotKnownUnlessItWasMetered() throws Exception {
        List<Json.Obj> answers = line("cam 645\nload cn400\nset 8 60\nm flash 8\n8 60\n8 1/8\n");
        assertEquals(0, number(answers.get(4), "errorStops"), 0.01);
        assertTrue(!JsonText.line(answers.get(4)).contains("no-light"), answers.toString());
        assertEquals("null", JsonText.line(answers.get(5).fields().get("errorStops")));
        String text = JsonText.line(answers.get(5).fields().get("text"));
        assertTrue(text.contains("the room's light at 1/8 is not known"), text);
    }
}
