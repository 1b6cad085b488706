package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.ShippedShelf;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.JournalStore;
import takeup.files.StartupState;
import takeup.journal.Archive;
import takeup.kit.Kit;

/** What {@code takeup check} finds in a folder, and what the next start makes of it. */
class CheckSubcommandTest {
    private static final String TAKEN = "R0001.journal";

    @TempDir
    Path folder;

    @BeforeEach
    void shoot() throws IOException {
        type("cam 35", "load bw400", "8 125 ; Ines, bow seat", "8 60", "5.6 60", "cam 645", "load cn400", "4 60");
    }

    private String type(String... lines) throws IOException {
        return typeAt("2026-09-12T15:00+02:00", lines);
    }

    private String typeAt(String time, String... lines) throws IOException {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        Console out = new Console(said, said, Map.of("LC_ALL", "C.UTF-8"));
        Archive archive = new Archive(folder);
        try (JournalStore disk = JournalStore.take(archive)) {
            StartupState opening =
                    StartupState.of(archive, new Kit(new ShippedShelf())).withMovesCompleted(Optional.of(disk));
            opening.problems().forEach(out::error);
            disk.settleLeftOvers(opening.state().rolls().values());
            new PromptPipe(disk, opening.state(), Clock.of(Optional.of(Clock.parse(time))), out, PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(String.join("\n", lines).getBytes(StandardCharsets.UTF_8)));
        }
        return said.toString(StandardCharsets.UTF_8);
    }

    private Path open(String name) {
        return folder.resolve("rolls/open").resolve(name);
    }

    /** What check says line by line, but for the count at the end; nothing has changed by it. */
    private List<String> check() throws IOException {
        Map<Path, byte[]> before = files();
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int status = Subcommands.run(
                new String[] {"check", folder.toString()}, new Console(said, said, Map.of("LC_ALL", "C.UTF-8")));
        List<String> lines = said.toString(StandardCharsets.UTF_8).lines().toList();
        assertEquals(lines.size() > 1 ? 1 : 0, status, lines.toString());
        Map<Path, byte[]> after = files();
        assertEquals(before.keySet(), after.keySet());
        before.forEach((path, bytes) -> assertArrayEquals(bytes, after.get(path), path.toString()));
        return lines.subList(0, lines.size() - 1);
    }

    private Map<Path, byte[]> files() throws IOException {
        Map<Path, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                files.put(path, Files.readAllBytes(path));
            }
        }
        return files;
    }

    private List<String> lines(String journal) throws IOException {
        return new ArrayList<>(Files.readAllLines(open(journal)));
    }

    private void write(String journal, List<String> lines, String end) throws IOException {
        Files.writeString(open(journal), String.join("\n", lines) + end);
    }

    @Test
    void aFolderInOrderHasNothingToTell() throws IOException {
        assertEquals(List.of(), check());
    }

    @Test
    void aTornTailAndOneOfZerosAreToldByFileAndLine() throws IOException {
        Files.writeString(open(TAKEN), "{\"n\":5,\"step\"", StandardOpenOption.APPEND);
        Files.write(open("R0002.journal"), new byte[4096], StandardOpenOption.APPEND);
        assertEquals(
                List.of(
                        "R0001.journal:6: the last line stops in the middle; it was never confirmed on screen, "
                                + "so it is left out",
                        "R0002.journal:4: zeros follow the last line; nothing confirmed is in them, so they are "
                                + "left out"),
                check());
    }

    @Test
    void aFolderThatIsNotThereAndOneWhoseRollsAreAFileAreToldAndTheOthersAreRead() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.writeString(other.resolve("rolls"), "no folder");
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        assertEquals(
                1,
                Subcommands.run(
                        new String[] {"check", folder.resolve("none").toString(), other.toString(), folder.toString()},
                        new Console(said, said, Map.of("LC_ALL", "C.UTF-8"))));
        List<String> lines = said.toString(StandardCharsets.UTF_8).lines().toList();
        assertEquals(
                List.of(folder.resolve("none") + " is no folder", folder.resolve("none") + ": nothing read, 1 problem"),
                lines.subList(0, 2));
        assertEquals(
                List.of(
                        other + ": " + other.resolve("rolls/open") + " cannot be used (NotDirectoryException)",
                        other + ": 0 rolls, 0 frames, 0 days, 1 problem"),
                lines.subList(2, 4));
        assertTrue(lines.get(lines.size() - 1).startsWith(folder + ": 2 rolls, "), lines.toString());
    }

    @Test
    void oneOfEachIsCountedAsOneAndWhatWasDecidedAboutScansIsReadToo() throws IOException {
        Path other = folder.resolve("other");
        for (String path : List.of("rolls/open/R0002.journal", "days/2026-09-12.journal")) {
            Files.createDirectories(other.resolve(path).getParent());
            Files.copy(folder.resolve(path), other.resolve(path));
        }
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        Console out = new Console(said, said, Map.of("LC_ALL", "C.UTF-8"));
        assertEquals(0, Subcommands.run(new String[] {"check", other.toString()}, out));
        assertEquals(other + ": 1 roll, 1 frame, 1 day, all in order\n", said.toString(StandardCharsets.UTF_8));
        Files.createDirectory(other.resolve("reviews"));
        Files.writeString(other.resolve("reviews/R0002.journal"), "no journal\n");
        said.reset();
        assertEquals(1, Subcommands.run(new String[] {"check", other.toString()}, out));
        assertEquals(
                "reviews/R0002.journal:1: this line is damaged and is left out\n" + other
                        + ": 1 roll, 1 frame, 1 day, 1 problem\n",
                said.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aRollWhoseLoadingIsLostIsToldAsOneThatCannotBeShown() throws IOException {
        String lost = "R0001.journal:1: the record of its loading is missing, so the roll cannot be shown";
        List<String> lines = lines(TAKEN);
        lines.remove(1);
        write(TAKEN, lines, "\n");
        assertEquals(
                List.of("R0001.journal:1: the record of the loading is damaged or missing; the copy of it in this line "
                        + "is read"),
                check());
        lines.set(0, sealed("{\"n\":0,\"format\":\"takeup-journal\",\"version\":1"));
        write(TAKEN, lines, "\n");
        assertEquals(
                List.of("R0001.journal:2: in front of this line record 1 is missing; the others are whole", lost),
                check());
        write(TAKEN, lines.subList(0, 1), "\n");
        assertEquals(List.of(lost), check());
    }

    @Test
    void aDamagedRecordIsToldWithItsNumberAndItsFrame() throws IOException {
        List<String> lines = lines(TAKEN);
        lines.set(3, lines.get(3).replace("exposed", "expozed"));
        write(TAKEN, lines, "\n");
        assertEquals(
                List.of(
                        "R0001.journal:4: this line is damaged and is left out; the record before it is number 2",
                        "R0001.journal:5: in front of this line record 3 is missing: frame 2 is not in the log; "
                                + "the others are whole"),
                check());
    }

    @Test
    void whatWasPutAsideIsNamedWithWhatToDoWithIt() throws IOException {
        List<String> lines = lines(TAKEN);
        lines.set(2, lines.get(2).replace("Ines", "Onis"));
        write(TAKEN, lines, "\n{\"n\":5,\"st");
        Files.writeString(open("R0003.journal.other-12"), "x");
        Files.writeString(folder.resolve("exports/.R0001.json.part"), "{");
        Files.writeString(open("R0001 (copy).journal"), "x");
        Files.writeString(open(".hidden"), "x");
        Files.writeString(folder.resolve("exports/notes.txt"), "x");
        Files.writeString(open("R0001.journal.torn-"), "x");
        Files.writeString(folder.resolve("days/today.journal"), "x");
        type("cam 35", "8 30");
        Files.writeString(folder.resolve("exports/.R0001.json.part"), "{");
        List<String> found = check();
        assertEquals(
                List.of(
                        "R0001.journal:3: this line is damaged and is left out; the record before it is number 1",
                        "R0001.journal:4: in front of this line record 2 is missing: frame 1 is not in the log; "
                                + "the others are whole",
                        "rolls/open/R0001 (copy).journal: a conflicting copy of R0001.journal, which differs. "
                                + "Compare the two; where two laptops log, each needs letters of its own "
                                + "(writer in settings.json)",
                        "rolls/open/R0001.journal.damaged-1: a copy of the damaged lines of R0001.journal. "
                                + "Delete it once nothing in it is needed",
                        "rolls/open/R0001.journal.torn-: by its name no journal, so that it is not read",
                        "rolls/open/R0001.journal.torn-1: 10 bytes that were cut off the end of R0001.journal; "
                                + "they were never confirmed on screen. Delete it once nothing in it is needed",
                        "rolls/open/R0003.journal.other-12: another file that lay in the place of "
                                + "R0003.journal; compare the two. Delete it once nothing in it is needed",
                        "days/today.journal: by its name no journal, so that it is not read",
                        "exports/.R0001.json.part: half a file, left by a program that was stopped; the next "
                                + "start removes it"),
                found);
        try (JournalStore disk = JournalStore.take(new Archive(folder))) {
            disk.sweep();
        }
        assertEquals(found.subList(0, found.size() - 1), check());
    }

    @Test
    void whatLiesBesideTheReviewsIsNamedToo() throws IOException {
        Files.createDirectory(folder.resolve("reviews"));
        for (String name : List.of("R0001.journal.torn-1", "R0001.journal.bak", ".R0001.journal.part")) {
            Files.writeString(folder.resolve("reviews").resolve(name), "{\"n\":");
        }
        List<String> found = check();
        assertEquals(
                List.of(
                        "reviews/.R0001.journal.part: half a file, left by a program that was stopped; the next "
                                + "start removes it",
                        "reviews/R0001.journal.bak: by its name no journal, so that it is not read",
                        "reviews/R0001.journal.torn-1: 5 bytes that were cut off the end of R0001.journal; they "
                                + "were never confirmed on screen. Delete it once nothing in it is needed"),
                found);
        try (JournalStore disk = JournalStore.take(new Archive(folder))) {
            disk.sweep();
        }
        assertEquals(found.subList(1, found.size()), check());
    }

    @Test
    void anExportThatAQuietMomentCannotWriteIsTold() throws IOException {
        type("cam 35", "unload yes");
        Files.delete(folder.resolve("exports/R0001.json"));
        Files.createDirectories(folder.resolve("exports/.R0001.json.part/in the way"));
        try (JournalStore disk = JournalStore.take(new Archive(folder))) {
            List<String> told = disk.sweep();
            assertEquals(1, told.size(), told.toString());
            assertTrue(
                    told.get(0).startsWith("the export of R0001 is behind its roll and could not be written: "),
                    told.toString());
        }
    }

    /** Its number is on a film: no other film gets it, and its journal may be in a copy of the folder. */
    @Test
    void journalsThatSomebodyRemovedAreTold() throws IOException {
        type("cam 35", "unload yes");
        Path kept = folder.resolve("kept");
        Files.move(open("R0002.journal"), kept);
        assertEquals(List.of("R0002.journal is gone: put it back into rolls/open from a copy"), check());
        String next = type("cam 645", "load bw400");
        assertTrue(
                next.contains("R0002.journal is gone, and with it the newest roll") && next.contains("R0003 in "),
                next);
        assertEquals(List.of("R0002.journal is gone: put it back into rolls/open from a copy"), check());
        Files.move(kept, open("R0002.journal"));
        Files.delete(folder.resolve("rolls/finished/R0001.journal"));
        assertTrue(
                check().contains("R0001.journal is gone: put it back into rolls/finished from a copy; "
                        + "exports/R0001.json has its frames still"),
                check()::toString);
    }

    @Test
    void aDayThatSomebodyRemovedIsTold() throws IOException {
        Files.delete(folder.resolve("days/2026-09-12.journal"));
        assertEquals(
                List.of("days: the journal of 2026-09-12 is gone, with the readings, plan and cameras of that day: "
                        + "put it back from a copy"),
                check());
    }

    @Test
    void aJournalUnderTheNameOfAnotherRollIsTold() throws IOException {
        Files.copy(open(TAKEN), open("R0007.journal"));
        assertEquals(
                List.of("R0007.journal:2: by its records this is roll R0001; give the file that name back"), check());
    }

    @Test
    void aMoveThatACrashCutShortIsToldAndTheNextStartEndsIt() throws IOException {
        type("cam 35", "move 2-3 cam 645 1");
        List<String> lines = lines(TAKEN);
        assertTrue(lines.get(lines.size() - 1).contains("\"dropped\""));
        write(TAKEN, lines.subList(0, lines.size() - 1), "\n");
        assertEquals(
                List.of(
                        "frames 2 to 3 of R0001 are on R0002 too: a move was cut short; the next start puts that right"),
                check());
        String said = type("cam 35", "11 60");
        assertTrue(
                said.startsWith(
                        "takeup: frames 2 to 3 of R0001 are on R0002 too: moving them was cut short, and is done now\n"),
                said);
        assertTrue(said.contains("Frame 2"), said);
        assertEquals(List.of(), check());
        assertEquals(lines.get(lines.size() - 1), lines(TAKEN).get(lines.size() - 1));
    }

    @Test
    void aFinishedRollThatIsStillWithTheOpenOnesIsTold() throws IOException {
        type("cam 35", "unload", "yes");
        Files.move(folder.resolve("rolls/finished").resolve(TAKEN), open(TAKEN));
        assertEquals(
                List.of(
                        "R0001 is finished but lies with the open rolls: the next start moves it and writes its export"),
                check());
        type();
        assertEquals(List.of(), check());
    }

    /** What a version left that was killed between the record of the undo and the move of the journal. */
    @Test
    void anOpenRollAmongTheFinishedOnesIsToldAndInItsCameraTheNextDay() throws IOException {
        type("cam 35", "unload", "yes", "undo");
        Files.move(open(TAKEN), folder.resolve("rolls/finished").resolve(TAKEN));
        assertEquals(
                List.of("R0001 is open but lies with the finished rolls, where no start looks for it: move its journal "
                        + "from rolls/finished to rolls/open"),
                check());
        String said = typeAt("2026-09-13T09:00+02:00", "cam 35", "8 60");
        assertTrue(said.contains("Frame 4 on R0001"), said);
        assertTrue(Files.exists(open(TAKEN)));
        assertEquals(List.of(), check());
    }

    @Test
    void anExportThatWasNotWrittenWhenItsRollWasReopenedIsWrittenAtTheNextStart() throws IOException {
        Path export = folder.resolve("exports/R0001.json");
        type("cam 35", "unload", "yes");
        byte[] finished = Files.readAllBytes(export);
        type("undo");
        String open = Files.readString(export);
        Files.write(export, finished);
        typeAt("2026-09-13T09:00+02:00");
        assertEquals(open, Files.readString(export));
    }

    @Test
    void twoRollsInOnePlaceAreTold() throws IOException {
        byte[] first = Files.readAllBytes(open(TAKEN));
        type("cam 35", "unload", "yes", "load bw400", "8 60");
        Files.delete(folder.resolve("rolls/finished").resolve(TAKEN));
        Files.write(open(TAKEN), first);
        assertEquals(List.of("R0001 and R0003 are all in 35: unload what is not in it (unload r1)"), check());
    }

    @Test
    void aCameraWhoseRollCannotBeReadTakesNoFilmBeforeAYesAndTwoRollsInItAreTold() throws IOException {
        byte[] roll = Files.readAllBytes(open(TAKEN));
        Files.delete(open(TAKEN));
        Files.createDirectory(open(TAKEN));
        String said = type("cam 35", "8 60", "load bw400", "8 60");
        assertTrue(said.contains("35mm mechanical reflex: R0001 cannot be read.\n"), said);
        String why = "R0001 cannot be read, and may be in 35";
        assertTrue(said.contains("Not done: " + why + ": takeup check says why; load asks first.\n"), said);
        assertTrue(said.contains("Question: " + why + " (takeup check says why); yes loads all the same.\n"), said);
        assertTrue(said.endsWith("load asks first.\n"), said);
        said = type("load bw400", "yes", "8 60");
        assertTrue(said.contains("Frame 1 on R0003"), said);
        Files.delete(open(TAKEN));
        Files.write(open(TAKEN), roll);
        said = type("8 60", "unload r1", "yes");
        assertTrue(
                said.startsWith("takeup: R0001 is in 35 by its record, and R0003 was loaded there since and takes the "
                        + "frames: unload what is not in it (unload r1)\n"),
                said);
        assertTrue(said.contains("Frame 2 on R0003"), said);
        assertTrue(said.contains("R0001 finished: 3 of 36 frames"), said);
        assertEquals(List.of(), check());
    }

    @Test
    void aMoveCutShortIsToldButNotEndedByACommandThatOnlyReads() throws IOException {
        type("cam 35", "move 3 cam 645 1");
        List<String> lines = lines(TAKEN);
        write(TAKEN, lines.subList(0, lines.size() - 1), "\n");
        StartupState opening = StartupState.of(new Archive(folder), new Kit(new ShippedShelf()))
                .withMovesCompleted(Optional.empty());
        assertEquals(
                List.of("frame 3 of R0001 is on R0002 too: moving it was cut short; the next start that can "
                        + "write puts that right"),
                opening.problems());
    }

    /**
     * Version 2 of the format, with an event that this version does not know, sealed as this version does (CRC-32C by
     * hand).
     */
    @Test
    void aRollOfALaterVersionIsShownAndLeftAloneAndTheOthersGoOn() throws IOException {
        List<String> lines = lines(TAKEN);
        lines.set(0, sealed("{\"n\":0,\"format\":\"takeup-journal\",\"version\":2"));
        lines.add(sealed("{\"n\":5,\"step\":9,\"at\":\"2026-09-12T15:00+02:00\",\"event\":\"unloaded\""));
        write(TAKEN, lines, "\n");
        byte[] before = Files.readAllBytes(open(TAKEN));
        String later = "R0001.journal:1: a later version of takeup wrote this file; what this one does not know is "
                + "passed over, and nothing is written to it";
        assertEquals(List.of(later), check());
        String said = type("cam 645", "4 125", "note r1 for the lab", "rolls");
        assertTrue(said.startsWith("takeup: " + later + "\n"), said);
        assertTrue(said.contains("Frame 2"), said);
        assertTrue(said.contains("R0001.journal was written by a later version of takeup; it is not touched"), said);
        assertArrayEquals(before, Files.readAllBytes(open(TAKEN)));
        assertTrue(Files.notExists(folder.resolve("exports/R0001.json")));
    }

    private static String sealed(String front) {
        CRC32C crc = new CRC32C();
        crc.update(front.getBytes(StandardCharsets.UTF_8));
        return front + ",\"crc\":\""
                + Long.toHexString(crc.getValue() | 1L << 32).substring(1) + "\"}";
    }

    @Test
    void aYearOfFiveDigitsIsRefusedInWords() throws IOException {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        Console out = new Console(said, said, Map.of("LC_ALL", "C.UTF-8"));
        Archive archive = new Archive(folder);
        try (JournalStore disk = JournalStore.take(archive)) {
            new PromptPipe(
                            disk,
                            StartupState.of(archive, new Kit(new ShippedShelf()))
                                    .state(),
                            Clock.of(Optional.of(Clock.parse("9999-12-31T23:59+00:00"))),
                            out,
                            PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream("cam 35\nclock +10min\n8 60\n".getBytes(StandardCharsets.UTF_8)));
        }
        assertTrue(
                said.toString(StandardCharsets.UTF_8)
                        .contains("NOT SAVED: the clock says the year 10000; set it right"),
                said.toString(StandardCharsets.UTF_8));
    }
}
