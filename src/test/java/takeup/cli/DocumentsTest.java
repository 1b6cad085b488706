package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.handoff.Schemas;
import takeup.json.DecimalFields;
import takeup.json.Json;
import takeup.json.JsonText;

/** Every document of a day against its schema, by validators that nobody here wrote; and nonsense that they refuse. */
class DocumentsTest {
    private static final Pattern NUMBER = Pattern.compile("\"(\\w+)\" ?: ?(-?[0-9]+)([.][0-9]+)?");

    @TempDir
    static Path scratch;

    private static Map<String, List<String>> documents;
    private static final Map<String, Schema> SCHEMAS = new LinkedHashMap<>();

    @BeforeAll
    static void shoot() throws IOException {
        documents = DayOfDocuments.in(scratch);
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        Schemas.names()
                .forEach(it ->
                        SCHEMAS.put(it, registry.getSchema(Schemas.named(it).orElseThrow())));
    }

    @Test
    void eachDocumentIsAsItsSchemaSays() {
        assertEquals(new TreeSet<>(Schemas.names()), new TreeSet<>(documents.keySet()));
        documents.forEach(
                (name, all) -> all.forEach(it -> assertEquals(List.of(), errors(name, it), name + ": " + it)));
    }

    @Test
    void anotherValidatorSaysTheSame() throws IOException {
        String python = Outside.pythonWith("jsonschema");
        Path folder = Files.createDirectories(scratch.resolve("documents"));
        for (String name : Schemas.names()) {
            Files.writeString(
                    folder.resolve(name + ".schema.json"), Schemas.named(name).orElseThrow());
            List<String> all = documents.get(name);
            for (int i = 0; i < all.size(); i++) {
                Files.writeString(folder.resolve(name + "." + i + ".json"), all.get(i));
            }
        }
        String said = run(python, """
                import glob, json, os
                from jsonschema import Draft202012Validator as Validator
                count = 0
                for path in sorted(glob.glob('documents/*.schema.json')):
                    schema = json.load(open(path, encoding='utf-8'))
                    Validator.check_schema(schema)
                    validator = Validator(schema)
                    for document in glob.glob(path.replace('.schema.json', '.[0-9]*.json')):
                        count += 1
                        for error in validator.iter_errors(json.load(open(document, encoding='utf-8'))):
                            print(os.path.basename(document), list(error.absolute_path), error.message)
                print(count, 'documents')
                """);
        int count = documents.values().stream().mapToInt(List::size).sum();
        assertEquals(count + " documents\n", said);
    }

    /** What a script of Python says, errors too; where there is no such Python, why. */
    private static String run(String python, String script) {
        try {
            Process process = new ProcessBuilder(python, "-W", "ignore", "-c", script)
                    .directory(scratch.toFile())
                    .redirectErrorStream(true)
                    .start();
            return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return e.toString();
        }
    }

    /** A name has one type in all documents: its numbers have a point, or none of them has. */
    @Test
    void aNameHasDecimalsOrWholeNumbersInAllDocuments() {
        List<String> wrong = new ArrayList<>();
        documents.forEach((name, all) -> all.forEach(it -> {
            Matcher number = NUMBER.matcher(it);
            while (number.find()) {
                if (DecimalFields.is(number.group(1)) != (number.group(3) != null)) {
                    wrong.add(name + ": " + number.group());
                }
            }
        }));
        assertEquals(List.of(), wrong);
    }

    /** Of the faults in the table at least 100 are refused; the others are named. */
    @Test
    void plantedNonsenseIsRefused() throws IOException, JsonText.NotJson {
        List<String> faults = Files.readAllLines(Path.of("src/test/resources/handoff/faults.txt")).stream()
                .filter(it -> !it.startsWith("#"))
                .toList();
        List<String> missed = new ArrayList<>();
        for (String fault : faults) {
            String[] parts = fault.split(" \\| ");
            String planted = planted(parts[0], List.of(parts[1].split("/")), parts[2])
                    .orElseThrow(() -> new AssertionError("no document of the day has a place for " + fault));
            if (errors(parts[0], planted).isEmpty()) {
                missed.add(fault);
            }
        }
        System.out.println(faults.size() - missed.size() + " of " + faults.size() + " planted faults refused"
                + (missed.isEmpty() ? "" : ", not: " + missed));
        assertEquals(104, faults.size());
        assertTrue(missed.size() <= 4, missed::toString);
    }

    /** The first document of that name that holds something there, with the value in its place. */
    private static Optional<String> planted(String name, List<String> path, String value) throws JsonText.NotJson {
        for (String document : documents.get(name)) {
            Json root = JsonText.readExported(document);
            Json inner = root;
            for (String step : path.subList(0, path.size() - 1)) {
                inner = in(inner, step);
            }
            String last = path.get(path.size() - 1);
            boolean isThere = inner instanceof Json.Obj there
                    && (there.field(last).isPresent()
                            || isNullEverywhere(name, last) && there.fields().containsKey(last));
            if (isThere) {
                Json.Obj object = (Json.Obj) inner;
                if (value.equals("remove")) {
                    object.fields().remove(last);
                } else {
                    object.fields()
                            .put(
                                    last,
                                    ((Json.Arr) JsonText.read("[" + value + "]"))
                                            .items()
                                            .get(0));
                }
                return Optional.of(JsonText.line(root));
            }
        }
        return Optional.empty();
    }

    private static boolean isNullEverywhere(String name, String field) {
        return documents.get(name).stream().noneMatch(it -> it.matches("(?s).*\"" + field + "\" ?: ?[^n ].*"));
    }

    private static Json in(Json value, String step) {
        if (value instanceof Json.Obj object) {
            return object.fields().get(step);
        }
        boolean isThere = value instanceof Json.Arr array && !array.items().isEmpty();
        return isThere ? ((Json.Arr) value).items().get(Integer.parseInt(step)) : null;
    }

    private static List<String> errors(String name, String document) {
        return SCHEMAS.get(name).validate(document, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }
}
