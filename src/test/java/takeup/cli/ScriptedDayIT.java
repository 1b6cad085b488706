package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import takeup.files.AllRolls;
import takeup.handoff.MadeBy;
import takeup.handoff.RollJson;
import takeup.journal.Archive;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.message.Key;
import takeup.roll.Roll;
import takeup.screen.Screen;
import takeup.session.Playing;

/**
 * A whole regatta day with its traps: each is told before it costs a frame, and nothing else is. The same day on the
 * screen comes to the same.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ScriptedDayIT {
    @TempDir
    static Path scratch;

    /** A line of the script: what is typed, the warnings that its answer has, and a piece of it. */
    private record Typed(String line, String codes, String piece) {}

    private final List<Typed> script = script();
    private List<Json.Obj> answers = List.of();

    private static List<Typed> script() {
        List<Typed> script = new ArrayList<>();
        for (String line : Installed.resource("regatta-day.txt")) {
            if (!line.startsWith("#")) {
                String[] cells = line.split("\\|", -1);
                script.add(new Typed(cells[0].strip(), cells[1].strip(), cells.length > 2 ? cells[2].strip() : ""));
            }
        }
        return script;
    }

    @BeforeAll
    void typeIt() throws JsonText.NotJson {
        String lines = String.join("", script.stream().map(it -> it.line + "\n").toList());
        Installed.Ended day = Installed.run(
                scratch, lines, List.of("line", "--json", "--data", "day", "--clock", "2026-09-12T09:00+02:00"));
        assertEquals("", day.err());
        List<Json.Obj> all = new ArrayList<>();
        for (String answer : day.out().lines().toList()) {
            all.add((Json.Obj) JsonText.read(answer));
        }
        answers = all;
    }

    private static String text(Json.Obj answer, String field) {
        return answer.field(field)
                .map(it -> it instanceof Json.Text text ? text.value() : it.toString())
                .orElse("");
    }

    private static String codes(Json.Obj answer) {
        if (answer.field("error").isPresent()) {
            return "refused";
        }
        List<String> codes = answer.field("warnings")
                .map(it -> ((Json.Arr) it)
                        .items().stream()
                                .map(one -> text((Json.Obj) one, "code"))
                                .toList())
                .orElse(List.of());
        return codes.isEmpty() ? "-" : String.join(" ", codes);
    }

    @Test
    void eachTrapIsToldWhereItIsAndNothingElseNags() {
        List<String> expected =
                script.stream().map(it -> it.line + " | " + it.codes).toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            found.add(script.get(i).line + " | " + codes(answers.get(i)));
        }
        assertEquals(String.join("\n", expected), String.join("\n", found));
    }

    @Test
    void theAnswersSayWhatTheDayNeeds() {
        for (int i = 0; i < answers.size(); i++) {
            String said =
                    text(answers.get(i), "text") + text(answers.get(i), "error") + text(answers.get(i), "warnings");
            assertTrue(said.contains(script.get(i).piece), script.get(i).line + ": " + said);
        }
    }

    /** Counted by hand from the script. */
    @Test
    void theDayCameToTwelveRolls() throws IOException {
        List<String> found = new ArrayList<>();
        for (Roll roll : AllRolls.of(new Archive(scratch.resolve("day"))).rolls()) {
            found.add(roll.id() + " " + roll.film().stock().key() + " " + roll.framesUsed() + " " + roll.state());
        }
        assertEquals(
                List.of(
                        "R0001 bw400 39 finished",
                        "R0002 cn400 16 finished",
                        "R0003 cn400 16 finished",
                        "R0004 cn400 16 finished",
                        "R0005 cn400 16 finished",
                        "R0006 cn400 9 finished",
                        "R0007 bw400 14 finished",
                        "R0008 cn400 10 finished",
                        "R0009 bw400 8 finished",
                        "R0010 cn400 13 finished",
                        "R0011 cn400 12 finished",
                        "R0012 cn400 4 open"),
                found);
    }

    /**
     * Start 14:00 to 14:30: R0009 alone. Final 14:30 to 15:30: R0010 alone. Heats: R0002 and R0003. Prize-giving:
     * R0004, R0011, R0012.
     */
    @Test
    void atTheEndTheForgottenRollsAndTheMomentsOnOneRollAreNamed() {
        Json.Obj end = answers.get(answers.size() - 1);
        List<String> asks = ((Json.Arr) end.field("ask").orElseThrow())
                .items().stream().map(it -> ((Json.Text) it).value()).toList();
        assertEquals(
                List.of(
                                "R0012 is still in 645 back 2, 12 left: unload it, or let it stay",
                                "on R0010 the camera showed 14 where the log came to 13, at 14:31: 1 frame went "
                                        + "past that is not in the log",
                                "Start is a must, and on R0009 only: guard that roll",
                                "Final is a must, and on R0010 only: guard that roll")
                        .stream()
                        .sorted()
                        .toList(),
                asks.stream().sorted().toList());
    }

    @Test
    void theCommandSaysTheSame() {
        Installed.Ended end = Installed.run(
                scratch, "", List.of("day-end", "1-4", "6-11", "--data", "day", "--clock", "2026-09-12T18:00+02:00"));
        assertEquals(1, end.status(), end.toString());
        for (String piece : List.of(
                "MISSING, 1 roll",
                "R0005  not in your hand",
                "In a camera, 1 roll",
                "R0009, Black-and-white 400, black-and-white, PUSH 2 STOPS (rated 1600, box 400)")) {
            assertTrue(end.out().contains(piece), piece + " is missing in " + end);
        }
    }

    /** The same keys on the screen, at 80x24: each roll exports the same but for the seconds that typing takes. */
    @Test
    void theSameDayOnTheScreenExportsTheSame() throws IOException {
        Playing day = Playing.at("2026-09-12T09:00:00+02:00");
        for (Typed typed : script) {
            if (typed.line.startsWith("clock +")) {
                day.later(Integer.parseInt(typed.line.substring(7, typed.line.length() - 3)));
            } else {
                day.lines(typed.line);
            }
            if (typed.codes.equals("refused")) {
                day.press(Key.Name.ESCAPE);
            }
            assertTrue(
                    Screen.render(day.shoot(), 80, 24)
                            .text()
                            .contains(day.shoot()
                                    .shown()
                                    .rollInHand()
                                    .map(it -> it.framesLeft() < 0 ? "past the end" : it.framesLeft() + " left")
                                    .orElse("")),
                    typed.line);
        }
        Map<String, String> shown = new TreeMap<>();
        day.shoot().shown().rolls().forEach((id, roll) -> shown.put(id.toString(), timeless(roll)));
        Map<String, String> piped = new TreeMap<>();
        AllRolls.of(new Archive(scratch.resolve("day")))
                .rolls()
                .forEach(it -> piped.put(it.id().toString(), timeless(it)));
        assertEquals(String.join("\n", piped.values()), String.join("\n", shown.values()));
    }

    /** Without times, and without the ids, which are made of them. */
    private static String timeless(Roll roll) {
        return RollJson.text(roll, MadeBy.version("1"))
                .replaceAll("\"id\" : \"[0-9a-f]{16}\"", "")
                .replaceAll("T\\d\\d:\\d\\d:\\d\\d", "T");
    }
}
