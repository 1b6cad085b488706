package takeup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Phrases that were given up for plainer ones come back nowhere: not in the program, its pages, its tests. */
class SaidOtherwiseTest {
    private static final Path LIST = Path.of("src/test/resources/said-otherwise-now.txt");

    /** What version 1.0.0 wrote is kept as it wrote it. */
    private static final List<Path> AS_WRITTEN = List.of(
            LIST,
            Path.of("src/test/resources/written-by-1.0.0/folder"),
            Path.of("src/test/resources/written-by-1.0.0/written.txt"));

    private static List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md"), Path.of("pom.xml")));
        for (String folder : List.of("src", "profiles", ".ci")) {
            try (Stream<Path> below = Files.walk(Path.of(folder))) {
                below.filter(Files::isRegularFile)
                        .filter(it -> AS_WRITTEN.stream().noneMatch(it::startsWith))
                        .forEach(files::add);
            }
        }
        return files;
    }

    @Test
    void noneOfThemStandsAnywhereInTheProject() throws IOException {
        List<String> phrases = Files.readAllLines(LIST).stream()
                .filter(it -> !it.startsWith("#"))
                .map(it -> it.toLowerCase(Locale.ROOT))
                .toList();
        assertTrue(phrases.size() > 25, phrases.toString());
        List<String> found = new ArrayList<>();
        int read = 0;
        for (Path file : files()) {
            String text;
            try {
                text = Files.readString(file).toLowerCase(Locale.ROOT);
            } catch (MalformedInputException e) {
                continue; // no text
            }
            read++;
            for (String phrase : phrases) {
                if (text.contains(phrase)) {
                    found.add(file + ": " + phrase);
                }
            }
        }
        assertTrue(read > 500, read + " files read");
        assertEquals("", String.join("\n", found));
    }
}
