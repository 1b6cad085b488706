package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.Outside;
import takeup.json.Json;
import takeup.json.JsonText;

/** What is handed over, held against the schema that is handed over with it. */
class SchemasTest {
    private static final Schema ROLL = schema(Schemas.named("roll").orElseThrow());
    /** The same, and a field that it does not list is an error. */
    private static final Schema STRICT = schema(Schemas.named("roll")
            .orElseThrow()
            .replace("\"type\": \"object\",", "\"type\": \"object\", \"unevaluatedProperties\": false,")
            .replace(
                    "\"type\": [\"object\", \"null\"],",
                    "\"type\": [\"object\", \"null\"], \"unevaluatedProperties\": false,"));

    private static final List<String> NASTY =
            List.of("=1+1", "a\nb", "\u0007 bell \u001b[2J", "+1", "\"quoted\", with a comma", "", " ", "船の上");

    @Test
    void whateverHappenedToARollItsFileIsAsTheSchemaSaysAndHasNoOtherField() {
        for (long seed = 1; seed <= 500; seed++) {
            assertEquals(
                    List.of(),
                    check(STRICT, JsonText.line(RollJson.of(RandomRolls.of(seed, NASTY), MadeBy.version("1.0.0")))),
                    "seed " + seed);
        }
    }

    @Test
    @Tag("slow")
    void anotherValidatorSaysTheSameOfThem(@TempDir Path folder) throws IOException {
        String python = Outside.pythonWith("jsonschema");
        Files.writeString(folder.resolve("schema"), Schemas.named("roll").orElseThrow());
        StringBuilder rolls = new StringBuilder();
        for (long seed = 1; seed <= 500; seed++) {
            rolls.append(JsonText.line(RollJson.of(RandomRolls.of(seed, NASTY), MadeBy.version("1.0.0"))))
                    .append('\n');
        }
        Files.writeString(folder.resolve("rolls"), rolls);
        Process process = new ProcessBuilder(python, "-W", "ignore", "-c", """
                import json
                from jsonschema import Draft202012Validator
                validator = Draft202012Validator(json.load(open('schema', encoding='utf-8')))
                rolls = [json.loads(it) for it in open('rolls', encoding='utf-8', newline='\\n')]
                print(len(rolls), [it.message for roll in rolls for it in validator.iter_errors(roll)])
                rolls[0]['version'] = 2
                print([it.message for it in validator.iter_errors(rolls[0])])
                """)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        assertEquals(
                "500 []\n['1 was expected']\n",
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
    }

    @Test
    void theSampleRollIsAsTheSchemaSays() throws IOException {
        assertEquals(List.of(), check(ROLL, sample()));
    }

    @Test
    void aReaderMayMeetFieldsThatItDoesNotKnow() throws IOException {
        String later = sample().replaceFirst("\\{\"format\"", "{\"weather\": \"rain\", \"format\"")
                .replaceFirst("\\{\"frame\": 1", "{\"mood\": 3, \"frame\": 1");
        assertEquals(List.of(), check(ROLL, later));
        assertEquals(2, check(STRICT, later).size());
    }

    static List<String> fields() throws IOException, JsonText.NotJson {
        return since100(((Json.Obj) JsonText.read(sample())).fields().keySet());
    }

    @ParameterizedTest
    @MethodSource("fields")
    void noFieldOfARollMayBeMissing(String field) throws IOException, JsonText.NotJson {
        Json.Obj roll = (Json.Obj) JsonText.read(sample());
        roll.fields().remove(field);
        assertFalse(check(ROLL, JsonText.line(roll)).isEmpty());
    }

    static List<String> frameFields() throws IOException, JsonText.NotJson {
        return since100(firstFrame((Json.Obj) JsonText.read(sample())).fields().keySet());
    }

    /** Those that were there from version 1.0.0 on; files without the later ones stay valid. */
    private static List<String> since100(Set<String> fields) {
        return fields.stream()
                .filter(it -> !List.of("folder", "id").contains(it))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("frameFields")
    void noFieldOfAFrameMayBeMissing(String field) throws IOException, JsonText.NotJson {
        Json.Obj roll = (Json.Obj) JsonText.read(sample());
        firstFrame(roll).fields().remove(field);
        assertFalse(check(ROLL, JsonText.line(roll)).isEmpty());
    }

    @ParameterizedTest(name = "{1} for {0} is refused")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        "state": "finished"                          | "state": "lost"
        "roll": "R0007"                              | "roll": "r7"
        "version": 1,                                | "version": 2,
        "exposureIndex": 200.0                         | "exposureIndex": 0
        "loadedAt": "2026-09-12T15:10:03+02:00"      | "loadedAt": "2026-09-12T15:10+02:00"
        "loadedAt": "2026-09-12T15:10:03+02:00"      | "loadedAt": "2026-09-12T15:10:03"
        "loadedAt": "2026-09-12T15:10:03+02:00"      | "loadedAt": null
        "at": null, "atKnown": false                 | "at": null, "atKnown": true
        "at": null, "atKnown": false                 | "at": "2026-09-12T15:10:03+02:00", "atKnown": false
        "kind": "blank"                              | "kind": "exposed twice"
        "aperture": "f/2.8"                          | "aperture": "2.8"
        "time": "1/250"                              | "time": "250"
        "exactSeconds": 0.00390625                   | "exactSeconds": 0
        "method": "incident"                         | "method": "guess"
        "zone": 3                                    | "zone": 11
        "filterStops": 1.0                           | "filterStops": null
        "biasStops": 0.0                             | "biasStops": null
        "kind": "torn"                               | "kind": "wet"
        """)
    void aWrongValueIsRefused(String right, String wrong) throws IOException {
        String sample = sample();
        assertTrue(sample.contains(right), right);
        assertFalse(check(ROLL, sample.replace(right, wrong)).isEmpty());
    }

    @Test
    void eachSchemaIsItselfOneOfItsDraft() {
        // The draft's own schema comes with the validator.
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        Schema draft = registry.getSchema("{\"$ref\": \"https://json-schema.org/draft/2020-12/schema\"}");
        Schemas.names()
                .forEach(it ->
                        assertEquals(List.of(), check(draft, Schemas.named(it).orElseThrow()), it));
    }

    @Test
    void eachNamedSchemaIsThere() {
        Schemas.names()
                .forEach(it ->
                        assertTrue(Schemas.named(it).orElseThrow().contains("\"urn:takeup:schema:" + it + ":1\"")));
    }

    @Test
    void eachFileOfASchemaIsNamed() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/takeup/schema"))) {
            assertEquals(
                    Schemas.names().stream().map(it -> it + ".json").sorted().toList(),
                    files.map(it -> it.getFileName().toString()).sorted().toList());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Roll", "../version.txt", "roll.json"})
    void anyOtherNameIsNoSchema(String name) {
        assertEquals(Optional.empty(), Schemas.named(name));
    }

    private static String sample() throws IOException {
        return Files.readString(Path.of("src/test/resources/handoff/R0007.json"));
    }

    private static Json.Obj firstFrame(Json.Obj roll) {
        return (Json.Obj) ((Json.Arr) roll.fields().get("frames")).items().get(0);
    }

    private static Schema schema(String text) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text);
    }

    private static List<String> check(Schema schema, String json) {
        return schema.validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }
}
