package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.json.Json;
import takeup.json.JsonText;

/** What other programs know a frame and a data folder by stays the same, whatever becomes of number and roll. */
class FrameIdsTest {
    private static final String LOGGED = "cam 645 1\nload cn400 120\n5.6 250 ; bow\n5.6 125 ; stroke\n8 125 ; cox\n"
            + "8 60 ; finish\ncam 645 2\nload bw400 120\n8 30 ; coach\n";

    @TempDir
    Path scratch;

    @Test
    void insertDropMoveAndUndoLeaveTheIdOfEachFrameAsItIs() throws IOException, JsonText.NotJson {
        typed(LOGGED);
        Map<String, String> before = ids("day");
        assertEquals(5, new HashSet<>(before.values()).size());
        typed("cam 645 1\ninsert 2 5.6 60 ; forgotten\ndrop 1\nmove 2-3 cam 645 2\nfix 1 8 500\n");
        Map<String, String> after = ids("day");
        for (String note : List.of("stroke", "cox", "finish", "coach")) {
            assertEquals(before.get(note), after.get(note), note);
        }
        assertEquals(5, new HashSet<>(after.values()).size());
        assertTrue(!before.containsValue(after.get("forgotten")));
        typed("cam 645 2\nmove 2-3 cam 645 1\n");
        assertEquals(after, new LinkedHashMap<>(ids("day")));
        typed("undo\nundo\n");
        assertEquals(after, ids("day"));
    }

    @Test
    void aCopyOnAnotherMachineHasTheSameIdsAndAnotherDayHasOthers() throws IOException, JsonText.NotJson {
        typed(LOGGED);
        copy(scratch.resolve("day"), scratch.resolve("copy"));
        assertEquals(ids("day"), ids("copy"));
        assertEquals(folder("day"), folder("copy"));
        InProcess.run(LOGGED, List.of("line", "--clock", "2026-09-12T15:01+02:00", "--data", path("other")));
        assertNotEquals(folder("day"), folder("other"));
        assertTrue(ids("other").values().stream().noneMatch(allIds("day")::contains));
    }

    /** A folder that version 1.0.0 wrote has no id in it; this program gives it some, and the same again. */
    @Test
    void recordsOfTheFirstVersionGetTheirsWhenTheyAreRead() throws IOException, JsonText.NotJson {
        copy(Path.of("src/test/resources/written-by-1.0.0/folder"), scratch.resolve("old"));
        List<Json.Obj> lines = lines("old");
        List<String> ids = lines.stream().map(it -> text(it, "id")).toList();
        assertEquals(ids.size(), new HashSet<>(ids).size());
        assertTrue(ids.stream().allMatch(it -> it.matches("[0-9a-f]{16}")), ids::toString);
        assertEquals(lines, lines("old"));
    }

    @Test
    void exportsAndTablesHaveThemToo() throws IOException, JsonText.NotJson {
        typed(LOGGED + "cam 645 1\nunload yes\n");
        String id = ids("day").get("bow");
        String export = Files.readString(scratch.resolve("day/exports/R0001.json"));
        assertTrue(export.contains("\"id\" : \"" + id + "\""), export);
        assertTrue(export.contains("\"folder\" : \"" + folder("day") + "\""), export);
        String table = InProcess.run("", List.of("roll", "1", "--csv", "--data", path("day")))
                .out();
        assertTrue(table.contains(",\"" + id + "\",,,\"" + folder("day") + "\"\r\n"), table);
    }

    private Set<String> allIds(String folder) throws JsonText.NotJson {
        return new HashSet<>(ids(folder).values());
    }

    private void typed(String lines) {
        Installed.Ended ended =
                InProcess.run(lines, List.of("line", "--clock", "2026-09-12T15:00+02:00", "--data", path("day")));
        assertTrue(!ended.out().contains("Not done"), ended.out());
    }

    private String path(String folder) {
        return scratch.resolve(folder).toString();
    }

    private String folder(String folder) throws JsonText.NotJson {
        return text(lines(folder).get(0), "folder");
    }

    private Map<String, String> ids(String folder) throws JsonText.NotJson {
        Map<String, String> ids = new LinkedHashMap<>();
        for (Json.Obj line : lines(folder)) {
            ids.put(text(line, "note"), text(line, "id"));
        }
        return ids;
    }

    private List<Json.Obj> lines(String folder) throws JsonText.NotJson {
        List<Json.Obj> lines = new ArrayList<>();
        for (String line : InProcess.run("", List.of("frames", "--json", "--data", path(folder)))
                .out()
                .lines()
                .toList()) {
            lines.add((Json.Obj) JsonText.read(line));
        }
        return lines;
    }

    private static String text(Json.Obj line, String field) {
        return line.field(field).map(it -> ((Json.Text) it).value()).orElse("");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path copy = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(path, copy);
                }
            }
        }
    }
}
