package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.json.Json;
import takeup.json.JsonProblem;
import takeup.json.JsonText;

/** A roll's file is taken as its schema promises it, and refused with file, line and field where it is not. */
class RollFilesTest {
    private static String sample() {
        try {
            return Files.readString(Path.of("src/test/resources/handoff/R0007.json"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void anOrderTakesWhatItNeedsOfTheSample() {
        ExposedRoll roll = ExposedRoll.of("R0007.json", sample());
        assertEquals("R0007", roll.roll());
        assertEquals(12, roll.revision());
        assertTrue(roll.isFinished());
        assertEquals("645 reflex, back 1", roll.camera().printed());
        assertEquals("NORMAL (rated 200, box 400)", roll.development().words());
        assertEquals(3, roll.exposures().expected());
        assertEquals(List.of("torn"), roll.notes().condition());
        assertEquals(
                Optional.of("crew portraits at the boathouse"), roll.notes().note());
        assertEquals("0.9 under", roll.frames().get(0).error());
        assertEquals("blank", roll.frames().get(1).kind());
    }

    @Test
    void whatIsKeptOfARollIsTheSameRoll() {
        List<ExposedRoll> rolls = new ArrayList<>(List.of(ExposedRoll.of("R0007.json", sample())));
        for (long seed = 1; seed <= 40; seed++) {
            Days.random(seed).forEach(it -> rolls.add(it.read()));
        }
        for (ExposedRoll roll : rolls) {
            assertEquals(roll, ExposedRoll.ofKept(roll.kept()));
        }
        String kept = rolls.get(0).kept();
        assertThrows(IllegalArgumentException.class, () -> ExposedRoll.ofKept(kept.substring(kept.indexOf('\t') + 1)));
    }

    /** Every field that the published schema requires, by its path; those of exposures are asked of the first frame. */
    static List<String> required() throws IOException, JsonText.NotJson {
        Json.Obj schema =
                (Json.Obj) JsonText.read(Files.readString(Path.of("src/main/resources/takeup/schema/roll.json")));
        List<String> paths = new ArrayList<>(names(schema, ""));
        Json.Obj properties = object(schema, "properties");
        for (String inner : List.of("madeBy", "shoot", "camera", "stock", "development")) {
            paths.addAll(names(object(properties, inner), inner + "."));
        }
        paths.addAll(names(object(object(properties, "condition"), "items"), "condition."));
        paths.addAll(names(object(object(properties, "frames"), "items"), "frames."));
        paths.addAll(names(object(object(schema, "$defs"), "exposure"), "frames."));
        assertTrue(
                paths.size() > 60 && paths.contains("stock.boxSpeed") && paths.contains("frames.errorStops"),
                paths.toString());
        return paths;
    }

    private static Json.Obj object(Json.Obj in, String name) {
        return (Json.Obj) in.field(name).orElseThrow();
    }

    private static List<String> names(Json.Obj schema, String before) {
        return ((Json.Arr) schema.field("required").orElseThrow())
                .items().stream().map(it -> before + ((Json.Text) it).value()).toList();
    }

    @ParameterizedTest(name = "without {0}")
    @MethodSource("required")
    void aFileWithoutAFieldThatTheSchemaRequiresIsRefusedByName(String path) throws JsonText.NotJson {
        Json.Obj roll = (Json.Obj) JsonText.read(sample());
        Json.Obj holder = roll;
        String name = path;
        int dot = path.indexOf('.');
        if (dot > 0) {
            Json inner = roll.field(path.substring(0, dot)).orElseThrow();
            holder = inner instanceof Json.Arr list ? (Json.Obj) list.items().get(0) : (Json.Obj) inner;
            name = path.substring(dot + 1);
        }
        holder.fields().remove(name);
        String why = assertThrows(JsonProblem.class, () -> ExposedRoll.of("R0007.json", JsonText.line(roll)))
                .getMessage();
        assertTrue(
                why.startsWith("R0007.json:1: ")
                        && why.contains(name)
                        && (why.contains("missing") || why.contains("no roll")),
                why);
    }

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        "version": 1,                | "version": 2,                | newer than 1
        "format": "takeup-roll"      | "format": "takeup-order"     | this is no roll
        "roll": "R0007"              | "roll": "../R7"              | roll is no roll number, such as R0007
        "state": "finished"          | "state": "gone"              | state is one of open, rewound, finished, withdrawn
        "filmSize": "120"            | "filmSize": "110"            | filmSize is one of 135, 120, 220
        "frameSize": "6x4.5"         | "frameSize": "large"         | camera.frameSize is no size of a picture
        "kind": "colour-negative"    | "kind": "negative"           | stock.kind is one of
        "boxSpeed": 400.0            | "boxSpeed": 0                | stock.boxSpeed is a number from 0.1
        "exposureIndex": 200.0       | "exposureIndex": "200"       | exposureIndex is a number
        "pushStops": 0               | "pushStops": 9               | development.pushStops is a number from -5 to 5
        "framesExposed": 3           | "framesExposed": 2.5         | framesExposed is a whole number
        "process": "C-41"            | "process": null              | development.process is null
        "revision": 12               | "revision": 12, "revision": 13 | Duplicate field
        "loadedAt": "2026-09-12T15:10:03+02:00" | "loadedAt": "today" | loadedAt is no time with its offset
        "back": "1"}                 | "back": "1"                  | not JSON
        "note": "crew portraits at the boathouse" | "note": 1e999   | too large
        """)
    void aWrongValueIsRefusedInOneSentence(String right, String wrong, String because) {
        String text = sample();
        assertTrue(text.contains(right), right);
        String why = assertThrows(
                        JsonProblem.class,
                        () -> ExposedRoll.of("R0007.json", text.replaceFirst(Pattern.quote(right), wrong)))
                .getMessage();
        assertTrue(
                why.startsWith("R0007.json:")
                        && why.contains(because)
                        && why.lines().count() == 1,
                why);
    }

    @Test
    void fieldsOfALaterTakeupArePassedOver() {
        assertEquals(
                "R0007",
                ExposedRoll.of(
                                "R0007.json",
                                sample().replaceFirst(
                                                "\\{\"format\"", "{\"weather\": {\"rain\": [1, null]}, \"format\""))
                        .roll());
    }
}
