package takeup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A room or a file that nobody can keep in mind any more fails the build by name: it is time to part it. */
class RoomSizesTest {
    private static final int FILES_A_ROOM = 45;
    private static final int LINES_A_ROOM = 3_500;
    private static final int LINES_A_FILE = 300;
    private static final int COLUMNS = 120;

    private static final Path HOUSE = Path.of("src", "main", "java", "takeup");

    @Test
    void noFileAndNoRoomIsTooLarge() throws IOException {
        List<String> tooLarge = new ArrayList<>();
        Map<String, Integer> files = new TreeMap<>();
        Map<String, Integer> lines = new TreeMap<>();
        for (Path file : sources()) {
            List<String> text = Files.readAllLines(file);
            String room = file.getParent().getFileName().toString();
            files.merge(room, 1, Integer::sum);
            lines.merge(room, text.size(), Integer::sum);
            if (text.size() > LINES_A_FILE) {
                tooLarge.add(file + " has " + text.size() + " lines");
            }
            if (text.stream().anyMatch(it -> it.length() > COLUMNS)) {
                tooLarge.add(file + " has a line over " + COLUMNS + " columns");
            }
        }
        files.forEach((room, many) -> {
            if (many > FILES_A_ROOM || lines.get(room) > LINES_A_ROOM) {
                tooLarge.add(room + " has " + many + " files and " + lines.get(room) + " lines");
            }
        });
        assertTrue(files.size() > 30, "no house was found: " + files);
        assertEquals(List.of(), tooLarge);
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(HOUSE)) {
            return all.filter(it -> it.toString().endsWith(".java")).sorted().toList();
        }
    }
}
