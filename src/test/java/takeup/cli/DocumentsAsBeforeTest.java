package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every document and table of a day, whole, against what was read and found right: a field that is dropped, swapped or
 * in another unit shows here. What is said now is in {@code target/documents}; a change on purpose is copied from there
 * after its {@code diff -r} with the expected files was read.
 */
class DocumentsAsBeforeTest {
    private static final Path EXPECTED = Path.of("src/test/resources/documents");
    private static final Path NOW = Path.of("target/documents");
    /** These list all that is there; what stands in each of their entries is seen in the first ones. */
    private static final Map<String, Integer> LISTS = Map.of("keys", 60, "cameras", 60, "stocks", 60, "themes", 60);

    @TempDir
    Path scratch;

    @Test
    void eachDocumentIsAsItWasFoundRight() throws IOException {
        Files.createDirectories(NOW);
        Map<String, List<String>> all = DayOfDocuments.of(scratch).all();
        List<String> others = new ArrayList<>();
        for (String name : all.keySet()) {
            String now = text(name, all.get(name));
            Files.writeString(NOW.resolve(name + ".txt"), now);
            Path expected = EXPECTED.resolve(name + ".txt");
            FirstDifference.of(name, Files.exists(expected) ? Files.readString(expected) : "", now)
                    .ifPresent(others::add);
        }
        assertEquals("", String.join("\n", others));
        assertEquals(new TreeSet<>(all.keySet()), names());
    }

    private String text(String name, List<String> documents) {
        String text = String.join("\n", documents.stream().map(String::strip).toList())
                .replace("\r\n", "<CR LF>\n")
                .replace("\ufeff", "<BOM>")
                .replace(scratch.toString(), "SCRATCH");
        return Stream.of(text.split("\n")).limit(LISTS.getOrDefault(name, Integer.MAX_VALUE)).toList().stream()
                .reduce("", (a, b) -> a + b + "\n");
    }

    private static TreeSet<String> names() throws IOException {
        try (Stream<Path> files = Files.list(EXPECTED)) {
            TreeSet<String> names = new TreeSet<>();
            files.sorted(Comparator.naturalOrder())
                    .forEach(it -> names.add(it.getFileName().toString().replaceFirst("\\.txt$", "")));
            return names;
        }
    }
}
