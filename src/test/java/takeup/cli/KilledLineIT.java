package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.Outside;

/**
 * The installed program is killed at each call in turn that makes one line last: forcing a file, naming it, taking a
 * name away. After the next day's start the line is whole or was never typed, to the byte. By default at every third
 * such call, at all of them with {@code -Dkills=all}.
 */
@Tag("long")
class KilledLineIT {
    private static final boolean ALL = !System.getProperty("kills", "25").equals("25");
    private static final List<String> CALLS = List.of("fsync", "fdatasync", "rename", "link", "unlink", "write");

    @TempDir
    Path scratch;

    @BeforeAll
    static void asks() {
        Outside.needs("strace");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cam 35;bag add 2 bw400;load bw400",
                "cam 35;load bw400;8 125;8 60;unload yes;undo",
                "cam 35;load bw400;8 125;8 60;cam 645;load cn400;cam 35;move 1 cam 645 1",
                "cam 35;load bw400;8 125;rewind",
                "cam 35;load bw400;8 125;unload yes;fix r1 1 11 60"
            })
    void aLineIsWholeOrWasNeverTypedAfterTheNextDaysStart(String lines) throws IOException {
        List<String> typed = List.of(lines.split(";"));
        String last = typed.get(typed.size() - 1) + "\n";
        Path before = Files.createDirectory(scratch.resolve("before"));
        type(String.join("\n", typed.subList(0, typed.size() - 1)), before, "2026-09-12T15:00+02:00");
        Path after = copy(before, "after");
        assertEquals(0, Installed.run(program(after, List.of()), last).status());
        Map<String, String> whole = afterTheNextStart(after);
        Map<String, String> nothing = afterTheNextStart(copy(before, "nothing"));
        int kills = 0;
        int dropped = 0;
        for (String call : CALLS) {
            int status = 1;
            for (int when = 1; status != 0; when += ALL ? 1 : 3) {
                Path folder = copy(before, call + when);
                status = Installed.run(
                                program(
                                        folder,
                                        List.of(
                                                "strace",
                                                "-f",
                                                "-o",
                                                scratch.resolve("log").toString(),
                                                "-e",
                                                "trace=" + call,
                                                "-e",
                                                "inject=" + call + ":signal=KILL:when=" + when)),
                                last)
                        .status();
                String where = last + "killed at " + call + " " + when;
                Map<String, String> found = afterTheNextStart(folder);
                boolean isNothing = found.equals(nothing);
                if (!isNothing) {
                    assertEquals(whole, found, where);
                }
                kills += status == 0 ? 0 : 1;
                dropped += isNothing ? 1 : 0;
            }
        }
        assertTrue(kills > 2 && dropped > 0, kills + " kills, " + dropped + " lines dropped");
        System.out.println(kills + " kills in " + last.strip() + ", " + dropped + " times the line was dropped");
    }

    private ProcessBuilder program(Path folder, List<String> under) {
        List<String> command = new ArrayList<>(under);
        command.addAll(Installed.program(
                        scratch,
                        Map.of(),
                        List.of("line", "--data", folder.toString(), "--clock", "2026-09-12T16:00+02:00"))
                .command());
        return Installed.process(scratch, Map.of(), command);
    }

    private static Installed.Ended type(String lines, Path folder, String time) {
        return InProcess.run(lines, List.of("line", "--data", folder.toString(), "--clock", time));
    }

    private Path copy(Path from, String name) throws IOException {
        Path to = scratch.resolve(name);
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        }
        return to;
    }

    /** Journals and exports once the program was started the next day, by their names; check finds them in order. */
    private static Map<String, String> afterTheNextStart(Path folder) throws IOException {
        Installed.Ended next = type("say\n", folder, "2026-09-13T09:00+02:00");
        assertEquals(0, next.status(), next.toString());
        Installed.Ended check = InProcess.run("", List.of("check", folder.toString()));
        assertEquals(0, check.status(), check.toString());
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(path).toString();
                if (name.contains("/")) {
                    files.put(name, Files.readString(path, StandardCharsets.UTF_8));
                }
            }
        }
        return files;
    }
}
