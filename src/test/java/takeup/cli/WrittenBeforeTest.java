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
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A data folder that version 1.0.0 wrote ({@code src/test/resources/written-by-1.0.0/folder}) is read, answered from
 * and gone on with as that version did, byte for byte but for the version that made a document and the place of the
 * folder.
 *
 * <p>{@code written.txt} holds all that was typed, {@code expected/commands.txt} and {@code expected/days.txt} what is
 * asked of the folder, and {@code expected} the answers. Folder and answers were taken from the installed program of
 * version 1.0.0 (built from the commit whose id begins with d7636ce) in the zone Europe/Stockholm, and are its word:
 * they are never taken again from newer code. Where an answer is changed on purpose, change its lines by hand, in the
 * commit that changes the program; the folder and what was typed in {@code written.txt} stay as they are for ever. To
 * ask for more, build that version, and run the new command with it on a copy of the folder, after those that stand in
 * front of it in {@code commands.txt}.
 *
 * <p>When a test fails, what the program says now lies in {@code target/written-before}, to be compared by {@code diff
 * -r src/test/resources/written-by-1.0.0/expected target/written-before}.
 */
class WrittenBeforeTest {
    private static final Path BEFORE = Path.of("src/test/resources/written-by-1.0.0");
    private static final Path NOW = Path.of("target/written-before");
    private static final Pattern MADE_BY =
            Pattern.compile("(\"madeBy\"\\s*:\\s*\\{[^}]*\"version\"\\s*:\\s*\")[^\"]*\"");
    private static final Pattern MANUAL = Pattern.compile("\"takeup \\d+\\.\\d+\\.\\d+\"");

    @TempDir
    Path scratch;

    @Test
    void everyCommandAnswersAsItDidAndTheReadingOnesChangeNothing() throws IOException {
        Path folder = copied("folder");
        List<String> differences = new ArrayList<>();
        Map<String, String> before = files(folder, folder);
        boolean isReading = true;
        for (TypedCommand command : TypedCommand.of(BEFORE.resolve("expected/commands.txt"))) {
            if (isReading && command.arguments().get(0).equals("line")) {
                same(before, files(folder, folder));
                isReading = false;
            }
            compare(command, folder, differences);
        }
        assertEquals("", String.join("\n", differences));
    }

    /** On a copy that has no journals of later days, so that what is read is that day's. */
    @Test
    void eachDayIsGoneOnWithAsItWasThen() throws IOException {
        List<String> differences = new ArrayList<>();
        for (TypedCommand command : TypedCommand.of(BEFORE.resolve("expected/days.txt"))) {
            List<String> words = command.arguments();
            String day = words.get(words.indexOf("--clock") + 1).substring(0, 10);
            Path folder = copied(day);
            for (Path journal : below(folder.resolve("days"))) {
                if (journal.getFileName().toString().substring(0, 10).compareTo(day) > 0) {
                    Files.delete(journal);
                }
            }
            compare(command, folder, differences);
        }
        assertEquals("", String.join("\n", differences));
    }

    /**
     * What the wall clock is in, or what needed pictures, is left out: reviews and the cameras' clocks. What is written
     * in another way since, on purpose, lies in {@code rewritten}.
     */
    @Test
    void theSameLinesWriteTheSameFiles() throws IOException {
        Path folder = Files.createDirectories(scratch.resolve("folder"));
        for (TypedCommand command : TypedCommand.of(BEFORE.resolve("written.txt"))) {
            if (command.isFile()) {
                put(folder, command);
            } else if (command.isRepeatable()) {
                Installed.Ended ended = run(command, folder);
                assertEquals("", ended.err(), command.toString());
            }
        }
        Map<String, String> expected = files(BEFORE.resolve("folder"), folder);
        for (Path file : below(BEFORE.resolve("rewritten"))) {
            String name =
                    BEFORE.resolve("rewritten").relativize(file).toString().replace('\\', '/');
            expected.put(name, masked(Files.readString(file, StandardCharsets.UTF_8), folder));
        }
        Map<String, String> now = files(folder, folder);
        now.replaceAll((name, words) -> name.startsWith("rolls/") ? withoutCopy(words) : words);
        write(now);
        same(expected, now);
    }

    private static void write(Map<String, String> files) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path to = NOW.resolve("folder").resolve(file.getKey());
            Files.createDirectories(to.getParent());
            Files.writeString(to, file.getValue());
        }
    }

    /** The first line of a roll's journal holds a copy of the loading now, which 1.0.0 passes over. */
    private static String withoutCopy(String journal) {
        int end = journal.indexOf('\n');
        assertTrue(journal.substring(0, end).contains("\"loaded\":{"), journal);
        return "{\"n\":0,\"format\":\"takeup-journal\",\"version\":1,\"crc\":\"3aa2f1fa\"}" + journal.substring(end);
    }

    private static void same(Map<String, String> expected, Map<String, String> files) {
        assertEquals(List.copyOf(expected.keySet()), List.copyOf(files.keySet()));
        List<String> differences = new ArrayList<>();
        expected.forEach((name, words) ->
                FirstDifference.of(name, words, files.get(name)).ifPresent(differences::add));
        assertEquals("", String.join("\n", differences));
    }

    private static void compare(TypedCommand command, Path folder, List<String> differences) throws IOException {
        Installed.Ended ended = run(command, folder);
        List<String> remarks =
                new ArrayList<>(masked(ended.err(), folder).lines().toList());
        if (ended.status() != 0 || !remarks.isEmpty()) {
            remarks.add(0, String.valueOf(ended.status()));
        }
        String out = masked(ended.out(), folder);
        String name = command.elsewhere().orElse("expected/" + command.fileName());
        if (name.startsWith("expected/")) {
            Files.createDirectories(NOW);
            Files.writeString(NOW.resolve(name.substring(9)), out);
        }
        String before = masked(Files.readString(BEFORE.resolve(name)), folder);
        String said = String.join("\n", command.remarks());
        FirstDifference.of(command + ", status and errors", said, String.join("\n", remarks))
                .ifPresent(differences::add);
        FirstDifference.of(command.toString(), before, out).ifPresent(differences::add);
    }

    private static Installed.Ended run(TypedCommand command, Path folder) {
        List<String> arguments = new ArrayList<>(List.of("--data", folder.toString()));
        arguments.addAll(command.arguments());
        return InProcess.run(command.input(), arguments);
    }

    private static void put(Path folder, TypedCommand command) throws IOException {
        Path file = folder.resolve(command.arguments().get(0));
        if (command.input().isEmpty()) {
            Files.delete(file);
        } else {
            Files.createDirectories(file.getParent());
            Files.writeString(file, command.input());
        }
    }

    private static String masked(String text, Path folder) {
        String placed = text.replace(folder.toString(), "DATA");
        return MANUAL.matcher(MADE_BY.matcher(placed).replaceAll("$1VERSION\"")).replaceAll("\"takeup VERSION\"");
    }

    private Path copied(String name) throws IOException {
        Path from = BEFORE.resolve("folder");
        Path to = scratch.resolve(name);
        for (Path file : below(from)) {
            Path copy = to.resolve(from.relativize(file).toString());
            Files.createDirectories(copy.getParent());
            Files.copy(file, copy);
        }
        return to;
    }

    /** All files that say what happened, with their words. */
    private static Map<String, String> files(Path in, Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        for (Path file : below(in)) {
            String name = in.relativize(file).toString().replace('\\', '/');
            if (!name.equals("lock")
                    && !name.equals("reserve")
                    && !name.equals("clocks.json")
                    && !name.startsWith("reviews/")) {
                files.put(name, masked(Files.readString(file, StandardCharsets.UTF_8), folder));
            }
        }
        assertTrue(files.size() > 30, files.keySet()::toString);
        return files;
    }

    private static List<Path> below(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }
}
