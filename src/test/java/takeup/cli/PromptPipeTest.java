package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.StartupState;
import takeup.journal.Archive;
import takeup.kit.Kit;

/** The prompt as a pipe, and what a disk can do to it. */
class PromptPipeTest {
    @TempDir
    Path folder;

    private final ByteArrayOutputStream answers = new ByteArrayOutputStream();
    private final ByteArrayOutputStream errors = new ByteArrayOutputStream();

    /** Something done to the folder once it is open. */
    private interface Mischief {
        void happen() throws IOException;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cam 35\nload bw400\n8 125",
                "cam 35\r\nload bw400\r\n8 125\r\n",
                "# a day\n\n  cam 35\n \t \nload bw400\n#8 11\n8 125\n",
                "CAM 35\nLoad BW400\nF8 1/125\n"
            })
    void linesMayEndAsTheyLikeAndCommentsAndEmptyOnesHaveNoAnswer(String lines) throws IOException {
        assertEquals(0, run(lines, () -> {}));
        List<String> said = answers().lines().toList();
        assertEquals(3, said.size(), answers());
        assertTrue(said.get(2).startsWith("Frame 1 on R0001: f/8 1/125"), answers());
    }

    @Test
    void aQuestionIsWithdrawnByAnyOtherLineAndByARefusedOneToo() throws IOException {
        assertEquals(1, run("cam 35\nload bw400\n8 125\nunload\n8 11\nyes\nunload\nYES\n", () -> {}));
        List<String> said = answers().lines().toList();
        assertTrue(
                said.get(3).contains("35 left")
                        && said.get(4).startsWith("Not done")
                        && said.get(5).startsWith("Not done"),
                answers());
        assertTrue(said.get(7).startsWith("R0001 finished"), answers());
    }

    @Test
    void anExportThatCannotBeWrittenIsSaidAndTheRollIsFinishedAllTheSame() throws IOException {
        Path exports = folder.resolve("exports");
        int status = run("cam 35\nload bw400\n8 125\nunload yes\ncam 645\n", () -> {
            Files.delete(exports);
            Files.writeString(exports, "in the way");
        });
        assertEquals(1, status);
        assertEquals(5, answers().lines().count(), answers());
        assertTrue(
                errors.toString(StandardCharsets.UTF_8).contains("the export could not be written"),
                errors.toString(StandardCharsets.UTF_8));
        Files.delete(exports);
        assertEquals(0, run("say\n", () -> {}));
        assertTrue(Files.exists(folder.resolve("exports/R0001.json"))
                && Files.exists(folder.resolve("rolls/finished/R0001.journal")));
    }

    @Test
    void whatCouldNotBeSavedIsNotAcknowledgedAndTheNextLineStandsOnWhatWas() throws IOException {
        Path open = folder.resolve("rolls/open");
        assertEquals(1, run("cam 35\nload bw400\ncam 645\n", () -> {
            Files.delete(open);
            Files.writeString(open, "in the way");
        }));
        List<String> said = answers().lines().toList();
        assertTrue(said.get(1).startsWith("Not done: NOT SAVED: "), answers());
        assertTrue(said.get(2).startsWith("645 reflex, back 1: no film"), answers());
    }

    /** What cannot be opened stands for a full disk: of the journals that a line goes to the last one fails. */
    @Test
    void aMoveThatIsRefusedLeavesNothingThatTheNextStartWouldEnd() throws IOException {
        assertEquals(0, run("cam 35\nload bw400\n8 125 x3\ncam 645\nload cn400\n4 60\ncam 35\n", () -> {}));
        Path roll = folder.resolve("rolls/open/R0001.journal");
        byte[] before = Files.readAllBytes(roll);
        answers.reset();
        run("move 2 cam 645 1\ncam 645\n5.6 60\n", () -> {
            Files.delete(roll);
            Files.createDirectory(roll);
        });
        List<String> said = answers().lines().toList();
        assertTrue(said.get(0).startsWith("Not done: NOT SAVED: "), answers());
        assertTrue(said.get(2).startsWith("Frame 2 on R0002"), answers());
        Files.delete(roll);
        Files.write(roll, before);
        answers.reset();
        assertEquals(0, run("5.6 60\ncam 35\n8 125\n", () -> {}));
        said = answers().lines().toList();
        assertTrue(said.get(0).startsWith("Frame 3 on R0002"), answers());
        assertTrue(said.get(2).startsWith("Frame 4 on R0001"), answers());
        assertEquals("", errors.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aLoadingThatIsRefusedTakesNoRollFromTheBagAndNoNumber() throws IOException {
        assertEquals(0, run("cam 645\nbag add 2 cn400\n", () -> {}));
        Path day = folder.resolve("days/2026-09-12.journal");
        byte[] before = Files.readAllBytes(day);
        run("load cn400\nload cn400\n", () -> {
            Files.delete(day);
            Files.createDirectory(day);
        });
        assertTrue(Files.notExists(folder.resolve("rolls/open/R0001.journal")));
        Files.delete(day);
        Files.write(day, before);
        answers.reset();
        assertEquals(0, run("load cn400\nundo\nbag\n", () -> {}));
        List<String> said = answers().lines().toList();
        assertTrue(said.get(0).startsWith("R0001 in 645 back 1"), answers());
        assertTrue(said.get(2).contains("2 × cn400 120"), answers());
    }

    @Test
    void aLineWithoutAnEndIsRefusedAndTheNextOneIsRead() throws IOException {
        assertEquals(1, run("cam 35 " + "x".repeat(3 << 20) + "\ncam 645\n", () -> {}));
        List<String> said = answers().lines().toList();
        assertTrue(said.get(0).startsWith("Not done: a line holds up to 1000 characters"), said.get(0));
        assertTrue(said.get(1).startsWith("645 reflex"), said.get(1));
    }

    @Test
    void aFileThatBeginsWithAByteOrderMarkIsReadFromItsFirstWord() throws IOException {
        assertEquals(0, run("\ufeffcam 645\r\n\ufeff# the second body\r\ncam 35\r\n", () -> {}), answers());
        assertEquals(2, answers().lines().count(), answers());
    }

    private String answers() {
        return answers.toString(StandardCharsets.UTF_8);
    }

    private int run(String lines, Mischief mischief) throws IOException {
        Archive archive = new Archive(folder);
        Kit kit = new Kit(new ProfileFiles(folder.resolve("profiles"), Path.of("profiles")));
        try (JournalStore disk = JournalStore.take(archive)) {
            StartupState opening = StartupState.of(disk, kit).withMovesCompleted(Optional.of(disk));
            opening.problems().forEach(it -> errors.writeBytes(it.getBytes(StandardCharsets.UTF_8)));
            disk.settleLeftOvers(opening.state().rolls().values());
            mischief.happen();
            return new PromptPipe(
                            disk,
                            opening.state(),
                            Clock.of(Optional.of(Clock.parse("2026-09-12T15:00+02:00"))),
                            new Console(answers, errors, Map.of("LC_ALL", "C.UTF-8")),
                            PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
        }
    }
}
