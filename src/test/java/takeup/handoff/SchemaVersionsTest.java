package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.json.Json;
import takeup.json.JsonText;

/**
 * The schemas that version 1.0.0 had, and those of today: {@code written-by-1.0.0/schema-fields.txt} lists the fields
 * of the former, made from its own files.
 */
class SchemaVersionsTest {
    private static final Path FIRST = Path.of("src/test/resources/written-by-1.0.0");

    static Stream<String> first() throws IOException {
        return Files.readAllLines(FIRST.resolve("schema-fields.txt")).stream();
    }

    @ParameterizedTest
    @MethodSource("first")
    void itIsSaidWhichFieldsAreNewAndNoneIsGone(String line) throws JsonText.NotJson {
        String name = line.substring(0, line.indexOf(':'));
        TreeSet<String> then =
                new TreeSet<>(List.of(line.substring(name.length() + 2).split(" ")));
        Json.Obj schema = (Json.Obj) JsonText.read(Schemas.named(name).orElseThrow());
        TreeSet<String> now = new TreeSet<>();
        collect(schema, "", schema, now);
        assertEquals(List.of(), then.stream().filter(it -> !now.contains(it)).toList(), "a field is never taken away");
        now.removeAll(then);
        assertFalse(now.isEmpty());
        assertEquals("1.1", Schemas.version(name));
        assertEquals(
                "New in 1.1: " + String.join(", ", now) + ".",
                ((Json.Text) schema.fields().get("$comment")).value());
    }

    @ParameterizedTest
    @CsvSource({"exports, roll", "orders, order"})
    void whatTheFirstVersionWroteIsValidToday(String folder, String name) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Schemas.named(name).orElseThrow());
        try (Stream<Path> files = Files.list(FIRST.resolve("folder").resolve(folder))) {
            List<Path> all = files.filter(it -> it.toString().endsWith(".json")).toList();
            assertFalse(all.isEmpty());
            for (Path file : all) {
                assertEquals(List.of(), schema.validate(Files.readString(file), InputFormat.JSON), file.toString());
            }
        }
    }

    @Test
    void aDocumentThatIsNewerThanTheFirstVersionBeginsAtOne() {
        assertEquals("1", Schemas.version("costs"));
    }

    /** The names of all fields, those of inner objects behind a point; an exposure has the same wherever it stands. */
    private static void collect(Json.Obj schema, String front, Json.Obj root, TreeSet<String> into) {
        Map<String, Json> fields = schema.fields();
        if (fields.get("properties") instanceof Json.Obj properties) {
            properties.fields().forEach((name, value) -> {
                into.add((front + name).replace("furtherExposures.", ""));
                collect((Json.Obj) value, front + name + ".", root, into);
            });
        }
        if (fields.get("items") instanceof Json.Obj items) {
            collect(items, front, root, into);
        }
        for (String key : List.of("anyOf", "oneOf", "allOf")) {
            if (fields.get(key) instanceof Json.Arr all) {
                all.items().forEach(it -> collect((Json.Obj) it, front, root, into));
            }
        }
        if (fields.get("$ref") instanceof Json.Text ref && ref.value().startsWith("#/$defs/")) {
            Json.Obj defs = (Json.Obj) root.fields().get("$defs");
            collect((Json.Obj) defs.fields().get(ref.value().substring(8)), front, root, into);
        }
    }
}
