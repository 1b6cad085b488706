package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.text.Plain;

/** A regatta day through the pipe of the installed program: three rolls, held against what was derived by hand. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WholeRollIT {
    @TempDir
    static Path scratch;

    private final Map<String, List<String>> script = script();
    private Installed.Ended day;

    /** What is typed, each line with what its answer must hold. */
    private static Map<String, List<String>> script() {
        Map<String, List<String>> script = new LinkedHashMap<>();
        String typed = "";
        for (String line : Installed.resource("whole-roll.txt")) {
            if (line.startsWith("> ")) {
                // The same words come twice: a number keeps them apart.
                typed = script.size() + " " + line.substring(2);
                script.put(typed, new ArrayList<>());
            } else if (!line.isBlank() && !line.startsWith("#")) {
                script.get(typed).addAll(List.of(line.strip().split(" \\| ")));
            }
        }
        return script;
    }

    private static String typed(String key) {
        return key.substring(key.indexOf(' ') + 1);
    }

    @BeforeAll
    void typeIt() {
        String lines = String.join(
                "", script.keySet().stream().map(it -> typed(it) + "\n").toList());
        day = Installed.run(
                scratch,
                "# regatta day\n\n" + lines + "this comes after quit\n",
                List.of("line", "--json", "--data", "day", "--clock", "2026-09-12T15:00+02:00"));
    }

    @Test
    void everyLineIsAnsweredInOrderAsTheScriptSays() throws JsonText.NotJson {
        List<String> answers = day.out().lines().toList();
        List<String> expected = new ArrayList<>();
        List<String> answered = new ArrayList<>();
        int at = 0;
        for (Map.Entry<String, List<String>> line : script.entrySet()) {
            String answer = at < answers.size() ? answers.get(at) : "{}";
            expected.add("> " + typed(line.getKey()) + "\n" + String.join(" | ", line.getValue()));
            answered.add("> " + typed(line.getKey()) + "\n"
                    + String.join(" | ", shown((Json.Obj) JsonText.read(answer), line.getValue())));
            at++;
        }
        assertEquals(String.join("\n", expected), String.join("\n", answered), day.err());
        assertEquals(
                script.size(),
                answers.size(),
                "one answer for each line, none for a comment, an empty line, and what comes after quit");
    }

    @Test
    void aDayWithARefusedLineEndsWithStatusOneAndSaysNothingBesides() {
        assertEquals(1, day.status());
        assertEquals("", day.err());
    }

    /**
     * The fields that the script asks for, as the answer has them. A warning that it does not ask for is shown all the
     * same.
     */
    private static List<String> shown(Json.Obj answer, List<String> asked) {
        List<String> shown = new ArrayList<>();
        if (answer.field("ok").map(WholeRollIT::word).orElse("").equals("false")) {
            shown.add(answer.field("error").isPresent() ? "refused" : "refused without a reason");
            return shown;
        }
        boolean askedForWarnings = false;
        for (String field : asked) {
            String name = field.indexOf(' ') < 0 ? field : field.substring(0, field.indexOf(' '));
            askedForWarnings |= name.equals("warnings");
            shown.add(name + " " + (name.equals("warnings") ? codes(answer) : word(at(answer, name))));
        }
        if (!askedForWarnings && !codes(answer).equals("-")) {
            shown.add("warnings " + codes(answer));
        }
        return shown;
    }

    private static Json at(Json.Obj object, String path) {
        int dot = path.indexOf('.');
        Json value =
                object.fields().getOrDefault(dot < 0 ? path : path.substring(0, dot), new Json.Text("is not there", 0));
        return dot < 0 || !(value instanceof Json.Obj inner) ? value : at(inner, path.substring(dot + 1));
    }

    /** A value as the tables write it; numbers to three decimals. */
    private static String word(Json value) {
        return value instanceof Json.Text text
                ? text.value()
                : value instanceof Json.Num number
                        ? Plain.number(Math.round(number.value() * 1000) / 1000.0 + 0.0)
                        : value instanceof Json.Bool bool
                                ? String.valueOf(bool.value())
                                : value instanceof Json.Nil ? "null" : value.toString();
    }

    private static String codes(Json.Obj of) {
        List<String> codes = ((Json.Arr) of.fields().get("warnings"))
                .items().stream().map(it -> word(at((Json.Obj) it, "code"))).toList();
        return codes.isEmpty() ? "-" : String.join(" ", codes);
    }

    @ParameterizedTest
    @ValueSource(strings = {"R0001", "R0002", "R0003"})
    void aRollIsHandedOverFrameByFrameAsItWasTyped(String roll) throws IOException, JsonText.NotJson {
        Json.Obj export = (Json.Obj) JsonText.read(export(roll));
        List<String> frames = new ArrayList<>();
        int sequence = 0;
        for (Json item : ((Json.Arr) export.fields().get("frames")).items()) {
            Json.Obj frame = (Json.Obj) item;
            sequence++;
            assertEquals(String.valueOf(sequence), word(at(frame, "sequence")));
            frames.add(row(frame));
        }
        assertEquals(String.join("\n", expectedFrames(roll)), String.join("\n", frames));
    }

    private static List<String> expectedFrames(String roll) {
        List<String> rows = new ArrayList<>();
        String of = "";
        for (String line : Installed.resource("whole-roll-frames.txt")) {
            if (line.matches("R\\d+")) {
                of = line;
            } else if (of.equals(roll) && !line.isBlank() && !line.startsWith("#")) {
                rows.add(line.strip().replaceAll("\\s+", " "));
            }
        }
        return rows;
    }

    private static String row(Json.Obj frame) {
        List<String> further = ((Json.Arr) frame.fields().get("furtherExposures"))
                .items().stream()
                        .map(it -> fields((Json.Obj) it, "aperture", "time", "errorStops", "overBoxStops"))
                        .toList();
        return word(at(frame, "frame")) + (frame.field("was").isPresent() ? " (" + word(at(frame, "was")) + ")" : "")
                + " | " + fields(frame, "kind") + " | "
                + fields(frame, "aperture", "time") + " | " + fields(frame, "filterStops", "extensionStops") + " | "
                + fields(frame, "biasStops") + " | "
                + fields(frame, "errorStops", "overBoxStops") + " | "
                + (further.isEmpty() ? "-" : String.join(", ", further)) + " | "
                + fields(frame, "note") + " | " + codes(frame);
    }

    private static String fields(Json.Obj of, String... names) {
        List<String> words = new ArrayList<>();
        for (String name : names) {
            words.add(word(at(of, name)).replace("null", "-"));
        }
        return String.join(" ", words);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "R0001 | state finished | shoot.date 2026-09-12 | camera.key 35 | camera.back null | filmSize "
                        + "135 | stock.key bw400 | exposureIndex 400 | development.pushStops 1"
                        + " | development.words black-and-white, PUSH 1 STOP (rated 400, box 400) | "
                        + "framesNominal 36 | framesUsed 37 | framesExposed 35"
                        + " | loadedAt 2026-09-12T15:00:00+02:00 | finishedAt 2026-09-12T15:45:00+02:00 | note "
                        + "the eight; boathouse in the shade",
                "R0002 | state finished | camera.key 645 | camera.frameSize 6x4.5 | camera.back 1 | filmSize "
                        + "120 | stock.key cn400 | exposureIndex 200 | development.pushStops 0"
                        + " | development.words C-41, NORMAL (rated 200, box 400) | framesNominal 16 | "
                        + "framesUsed 7 | framesExposed 7 | loadedAt 2026-09-12T15:05:00+02:00 | note null",
                "R0003 | state finished | camera.key 645 | camera.back 2 | stock.key bw100 | exposureIndex 80 | "
                        + "framesNominal 12 | framesUsed 2 | framesExposed 2"
            })
    void aRollSaysWhereItWasAndWhatItIsOf(String expected) throws IOException, JsonText.NotJson {
        String roll = expected.substring(0, 5);
        Json.Obj export = (Json.Obj) JsonText.read(export(roll));
        List<String> found = new ArrayList<>(List.of(roll));
        for (String field : expected.substring(8).split(" \\| ")) {
            String name = field.substring(0, field.indexOf(' '));
            found.add(name + " " + word(at(export, name)));
        }
        assertEquals(expected.replace(" | ", "\n"), String.join("\n", found));
    }

    @Test
    void theCounterAndTheConditionGoWithTheRoll() throws IOException, JsonText.NotJson {
        Json.Obj export = (Json.Obj) JsonText.read(export("R0001"));
        Json.Obj check = (Json.Obj)
                ((Json.Arr) export.fields().get("counterChecks")).items().get(0);
        assertEquals("14 15 1", fields(check, "expected", "shown", "difference"));
        Json.Obj condition =
                (Json.Obj) ((Json.Arr) export.fields().get("condition")).items().get(0);
        assertEquals("partial leader torn at the rewind", fields(condition, "kind", "words"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"R0001", "R0002", "R0003"})
    void theExportIsWhatTheCommandPrintsAndAsItsSchemaSays(String roll) throws IOException {
        Installed.Ended printed = Installed.run(scratch, "", List.of("--data", "day", "roll", roll, "--json"));
        assertEquals(new Installed.Ended(0, export(roll), ""), printed);
        String schema = Installed.run(scratch, "", List.of("schema", "roll")).out();
        Schema rules = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema);
        assertEquals(
                List.of(),
                rules.validate(printed.out(), InputFormat.JSON).stream()
                        .map(Error::toString)
                        .toList());
    }

    @Test
    void allRollsAreListedInTheOrderOfLoadingAlsoTheOneThatWasWithdrawn() throws JsonText.NotJson {
        Installed.Ended listed = Installed.run(scratch, "", List.of("rolls", "--json", "--data", "day"));
        List<String> rolls = new ArrayList<>();
        for (Json roll :
                ((Json.Arr) ((Json.Obj) JsonText.read(listed.out())).fields().get("rolls")).items()) {
            rolls.add(fields(
                    (Json.Obj) roll,
                    "roll",
                    "state",
                    "camera",
                    "back",
                    "stock",
                    "exposureIndex",
                    "framesUsed",
                    "framesNominal",
                    "finishedAt"));
        }
        assertEquals("""
                R0001 finished 35 - bw400 400 37 36 2026-09-12T15:45:00+02:00
                R0002 finished 645 1 cn400 200 7 16 2026-09-12T15:45:00+02:00
                R0003 finished 645 2 bw100 80 2 12 2026-09-12T15:45:00+02:00
                R0004 withdrawn 645 2 bw100 80 0 16 -
                R0005 open 645 2 cn400 200 0 16 -""", String.join("\n", rolls));
        assertEquals(0, listed.status());
    }

    @Test
    void theFolderIsInOrderAfterwards() {
        Installed.Ended check = Installed.run(scratch, "", List.of("check", "day"));
        assertEquals(0, check.status(), check.toString());
    }

    private static String export(String roll) throws IOException {
        return Files.readString(scratch.resolve("day/exports/" + roll + ".json"));
    }
}
