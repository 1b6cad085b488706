package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.day.DayEvent;
import takeup.disk.FolderInUse;
import takeup.disk.Folders;
import takeup.kit.Warning;
import takeup.roll.NoteEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/** The writer against a disk on which others move, delete, replace and cut files while it works. */
class WriterTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final RollId R1 = new RollId("R", 1);
    private static final RollId R2 = new RollId("R", 2);

    @TempDir
    Path folder;

    private Path open(RollId roll) {
        return folder.resolve("rolls/open/" + roll + ".journal");
    }

    private Path finished(RollId roll) {
        return folder.resolve("rolls/finished/" + roll + ".journal");
    }

    private static void note(Writer writer, RollId roll, int number) throws IOException {
        Batch batch = new Batch(number, AT);
        batch.add(roll, new NoteEvent.Noted("record " + number));
        writer.append(batch);
    }

    private static void notes(Writer writer, RollId roll, int from, int to) throws IOException {
        for (int number = from; number <= to; number++) {
            note(writer, roll, number);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "deleted",
                "moved to another folder",
                "replaced by another file",
                "replaced by a folder",
                "emptied",
                "cut",
                "appended to",
                "its folder deleted"
            })
    void aJournalThatOthersLaidHandsOnIsWholeAgainAfterTheNextRecord(String what) throws IOException {
        Path path = open(R1);
        Path elsewhere = folder.resolve("elsewhere");
        byte[] others = "not ours\n".getBytes(StandardCharsets.US_ASCII);
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, 1, 3);
            assertEquals(List.of(), writer.remarks());
            byte[] before = Files.readAllBytes(path);
            switch (what) {
                case "deleted" -> Files.delete(path);
                case "moved to another folder" -> Files.move(path, elsewhere);
                case "replaced by another file" -> {
                    Files.write(elsewhere, others);
                    Files.move(elsewhere, path, StandardCopyOption.REPLACE_EXISTING);
                }
                case "replaced by a folder" -> {
                    Files.delete(path);
                    Files.createDirectories(path.resolve("inside"));
                }
                case "emptied" ->
                    Files.newByteChannel(path, StandardOpenOption.WRITE)
                            .truncate(0)
                            .close();
                case "cut" ->
                    Files.newByteChannel(path, StandardOpenOption.WRITE)
                            .truncate(before.length - 10)
                            .close();
                case "appended to" -> Files.write(path, others, StandardOpenOption.APPEND);
                default -> {
                    Files.delete(path);
                    Files.delete(path.getParent());
                }
            }
            note(writer, R1, 4);
            assertEquals(
                    List.of("R0001.journal was moved, deleted or changed by another program; all of it was "
                            + "written anew"),
                    writer.remarks());
            assertEquals(List.of(), writer.remarks());
            assertArrayEquals(before, Arrays.copyOf(Files.readAllBytes(path), before.length));
            if (what.equals("appended to")) {
                assertArrayEquals(
                        EventsGoRoundTest.concat(before, others),
                        Files.readAllBytes(path.resolveSibling("R0001.journal.other-1")));
            } else if (what.equals("replaced by another file")) {
                assertArrayEquals(others, Files.readAllBytes(path.resolveSibling("R0001.journal.other-1")));
            } else {
                assertEquals(
                        what.equals("replaced by a folder"),
                        Files.isDirectory(
                                path.resolveSibling("R0001.journal.other-1").resolve("inside")));
            }
            note(writer, R1, 5);
            assertEquals(List.of(), writer.remarks());
        }
        check(R1, 1, 2, 3, 4, 5);
        noLeftovers();
    }

    @Test
    void whileTheDataFolderIsGoneNothingIsSavedAndNothingIsMadeInItsPlace() throws IOException {
        Path data = folder.resolve("data");
        Path away = folder.resolve("away");
        try (Writer writer = Writer.take(data)) {
            notes(writer, R1, 1, 2);
            Files.move(data, away);
            assertThrows(IOException.class, () -> note(writer, R1, 3));
            assertFalse(Files.exists(data));
            Files.move(away, data);
            note(writer, R1, 3);
            assertEquals(List.of(), writer.remarks());
        }
        assertEquals(3, new Archive(data).roll(R1).records().size());
    }

    @Test
    void aTornTailIsCopiedAsideAndCutAtEveryByteItCanStopAt() throws IOException {
        byte[] whole;
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, 1, 2);
            whole = Files.readAllBytes(open(R1));
        }
        int last = new String(whole, StandardCharsets.US_ASCII).lastIndexOf("{\"n\":2");
        for (int length = last + 1; length < whole.length - 1; length++) {
            Files.write(open(R1), Arrays.copyOf(whole, length));
            try (Writer writer = Writer.take(folder)) {
                note(writer, R1, 7);
                assertEquals(List.of(), writer.remarks());
            }
            check(R1, 1, 7);
            Path torn = folder.resolve("rolls/open/R0001.journal.torn-1");
            assertArrayEquals(Arrays.copyOfRange(whole, last, length), Files.readAllBytes(torn));
            Files.delete(torn);
        }
    }

    @Test
    void aJournalThatLacksItsLastLineFeedIsGoneOnWithAndKeepsItsLastRecord() throws IOException {
        for (String instead : List.of("", "\u000b", "\u0000\u0000", "{\"n\":3,")) {
            Files.deleteIfExists(open(R1));
            try (Writer writer = Writer.take(folder)) {
                notes(writer, R1, 1, 2);
            }
            byte[] whole = Files.readAllBytes(open(R1));
            Files.write(
                    open(R1),
                    EventsGoRoundTest.concat(
                            Arrays.copyOf(whole, whole.length - 1), instead.getBytes(StandardCharsets.US_ASCII)));
            try (Writer writer = Writer.take(folder)) {
                note(writer, R1, 3);
            }
            check(R1, 1, 2, 3);
        }
    }

    @Test
    void aTailOfZerosIsCutWithoutACopy() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, 1, 2);
        }
        Files.write(open(R1), new byte[5000], StandardOpenOption.APPEND);
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 3);
        }
        check(R1, 1, 2, 3);
        noLeftovers();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 30, 60})
    void aJournalOfWhichOnlyABeginningOfTheFirstLineIsThereIsBegunAnew(int length) throws IOException {
        Folders.make(open(R1).getParent());
        Files.write(open(R1), Arrays.copyOf(JournalLines.header(), Math.min(length, JournalLines.header().length - 1)));
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, 1, 2);
        }
        check(R1, 1, 2);
        noLeftovers();
    }

    @Test
    void aDamagedLineInTheMiddleStaysWhereItIsLetterForLetter() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, 1, 3);
        }
        byte[] bytes = Files.readAllBytes(open(R1));
        int at = new String(bytes, StandardCharsets.US_ASCII).indexOf("record 2");
        bytes[at] = 'R';
        Files.write(open(R1), bytes);
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 4);
            Files.delete(open(R1));
            note(writer, R1, 5);
        }
        assertArrayEquals(bytes, Arrays.copyOf(Files.readAllBytes(open(R1)), bytes.length));
        JournalRecords<RollRecord> read = new Archive(folder).roll(R1);
        assertEquals(
                List.of(
                        "R0001.journal:3: this line is damaged and is left out; the record before it is number 1",
                        "R0001.journal:4: in front of this line record 2 is missing; the others are whole"),
                read.problems());
        assertEquals(4, read.records().size());
    }

    @Test
    void theFileOfALaterVersionIsReadButNeverWrittenTo() throws IOException {
        byte[] later = EventsGoRoundTest.concat(
                JournalLines.sealed("{\"n\":0,\"format\":\"takeup-journal\",\"version\":2}"),
                JournalLines.of(1, 1, AT, "{\"event\":\"note\",\"words\":\"record 1\"}"),
                JournalLines.of(2, 2, AT, "{\"event\":\"slate\"}"),
                "{\"n\":3".getBytes(StandardCharsets.US_ASCII));
        Folders.make(open(R1).getParent());
        Files.write(open(R1), later);
        try (Writer writer = Writer.take(folder)) {
            String why =
                    assertThrows(IOException.class, () -> note(writer, R1, 3)).getMessage();
            assertEquals("R0001.journal was written by a later version of takeup; it is not touched", why);
            note(writer, R2, 4);
        }
        assertArrayEquals(later, Files.readAllBytes(open(R1)));
        JournalRecords<RollRecord> read = new Archive(folder).roll(R1);
        assertEquals(new NoteEvent.Noted("record 1"), read.records().get(0).event());
        assertEquals(
                new RollEvent.Unknown("slate", "{\"event\":\"slate\"}"),
                read.records().get(1).event());
        assertTrue(
                read.problems().get(1).startsWith("R0001.journal:1: a later version of takeup wrote this file"),
                read.problems().toString());
        noLeftovers();
    }

    /** What cannot be opened stands for a full disk here: the second file of the step fails each time. */
    @Test
    void aStepOverSeveralFilesLeavesNothingWhereOneOfThemCannotBeWrittenAndIsWholeOnceItCan() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            Files.createDirectory(open(R1));
            Batch batch = moved();
            assertThrows(IOException.class, () -> writer.append(batch));
            assertFalse(Files.exists(open(R2)), "a roll that was begun by a refused line");
            assertEquals(List.of(), new Archive(folder).days());
            assertThrows(IOException.class, () -> writer.append(moved()));
            Files.delete(open(R1));
            writer.append(moved());
        }
        assertEquals(1, new Archive(folder).roll(R2).records().size());
        assertEquals(1, new Archive(folder).roll(R1).records().size());
        assertEquals(1, new Archive(folder).dayOf(AT.toLocalDate()).records().size());
    }

    private static Batch moved() {
        Batch batch = new Batch(9, AT);
        batch.add(R2, new NoteEvent.Noted("moved here"));
        batch.add(R1, new RollEvent.Dropped(3, 3, Optional.of(R2)));
        batch.add(new DayEvent.WarningSilenced(Warning.Code.SUN));
        return batch;
    }

    @Test
    void settlingMovesAJournalThereAndBackAndDoesNothingTheSecondTime() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, 1, 2);
            for (boolean isFinished : new boolean[] {true, true, false, false, true}) {
                if (isFinished) {
                    writer.settleFinished(R1);
                } else {
                    writer.settleOpen(R1);
                }
                assertEquals(isFinished, Files.exists(finished(R1)));
                assertEquals(!isFinished, Files.exists(open(R1)));
                check(R1, 1, 2);
            }
            writer.settleFinished(R2);
            notes(writer, R1, 3, 4);
            assertTrue(
                    Files.exists(open(R1)) && !Files.exists(finished(R1)),
                    "while its export is not written, a corrected roll lies where the next start finds it");
            writer.settleFinished(R1);
        }
        assertEquals(List.of(R1), new Archive(folder).finishedRolls());
        assertEquals(List.of(), new Archive(folder).openRolls());
        check(R1, 1, 2, 3, 4);
        noLeftovers();
    }

    @Test
    void aJournalDeletedJustBeforeItIsSettledIsNotLost() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, 1, 2);
            Files.delete(open(R1));
            writer.settleFinished(R1);
            assertEquals(1, writer.remarks().size());
        }
        assertTrue(Files.exists(finished(R1)));
        check(R1, 1, 2);
    }

    @ParameterizedTest(
            name = "{0} records lie with the open rolls, {1} with the finished ones, the second set its own: {2}")
    @org.junit.jupiter.params.provider.CsvSource({
        "2, 4, false",
        "4, 2, false",
        "3, 3, false",
        "2, 4, true",
        "4, 2, true"
    })
    void ofAJournalThatLiesTwiceTheLongerOneIsReadWrittenAndSettledAndNothingIsLost(
            int inOpen, int inFinished, boolean different) throws IOException {
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, different ? 101 : 1, different ? 100 + inFinished : inFinished);
        }
        byte[] copy = Files.readAllBytes(open(R1));
        Files.delete(open(R1));
        try (Writer writer = Writer.take(folder)) {
            notes(writer, R1, 1, inOpen);
        }
        Files.write(finished(R1), copy);
        int longer = Math.max(inOpen, inFinished);
        int first = different && inFinished > inOpen ? 101 : 1;
        JournalRecords<RollRecord> twice = new Archive(folder).roll(R1);
        assertEquals(longer, twice.records().size());
        assertEquals(
                List.of("R0001.journal:1: it lies with the open and with the finished rolls; the longer one counts"),
                twice.problems());
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 999);
            assertEquals(longer + 1, new Archive(folder).roll(R1).records().size());
            writer.settleFinished(R1);
        }
        assertFalse(Files.exists(open(R1)));
        check(
                R1,
                IntStream.concat(IntStream.range(first, first + longer), IntStream.of(999))
                        .toArray());
        String place = inOpen >= inFinished ? "rolls/finished/" : "rolls/open/";
        assertEquals(different, Files.exists(folder.resolve(place + "R0001.journal.other-1")));
    }

    @Test
    void anExportReplacesTheWholeOfTheOneBefore() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            writer.export(R1, "{\"revision\": 1, \"note\": \"" + "long ".repeat(1000) + "\"}\n");
            writer.export(R1, "{\"revision\": 2}\n");
        }
        assertEquals("{\"revision\": 2}\n", Files.readString(folder.resolve("exports/R0001.json")));
        noLeftovers();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whatIsMadeIsForTheOwnerAlone() throws IOException {
        Path data = folder.resolve("far/down/data");
        try (Writer writer = Writer.take(data)) {
            note(writer, R1, 1);
            Batch batch = new Batch(2, AT);
            batch.add(new DayEvent.WarningSilenced(Warning.Code.SUN));
            writer.append(batch);
            writer.export(R1, "{}");
            Files.delete(data.resolve("rolls/open/R0001.journal"));
            note(writer, R1, 3);
        }
        try (Stream<Path> all = Files.walk(folder.resolve("far"))) {
            List<Path> made = all.toList();
            assertEquals(14, made.size(), made.toString());
            for (Path path : made) {
                assertEquals(
                        Files.isDirectory(path) ? "rwx------" : "rw-------",
                        PosixFilePermissions.toString(Files.getPosixFilePermissions(path)),
                        path.toString());
            }
        }
    }

    @Test
    void anInterruptThatCameInBeforeDoesNotCloseTheFiles() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 1);
            Thread.currentThread().interrupt();
            note(writer, R1, 2);
            assertTrue(Thread.interrupted(), "it is handed on");
            note(writer, R1, 3);
            assertEquals(List.of(), writer.remarks());
            assertThrows(FolderInUse.class, () -> Writer.take(folder));
        }
        check(R1, 1, 2, 3);
    }

    @Test
    void aHalfWrittenFileOfAProgramThatDiedIsSweptAway() throws IOException {
        Folders.make(open(R1).getParent());
        Files.write(folder.resolve("rolls/open/.R0001.journal.part"), new byte[] {'{'});
        Writer.take(folder).close();
        noLeftovers();
        for (String name : List.of("exports/.R0001.json.part", "reviews/.R0001.journal.part")) {
            Folders.make(folder.resolve(name).getParent());
            Files.write(folder.resolve(name), new byte[] {'{'});
        }
        try (Writer writer = Writer.take(folder)) {
            writer.sweep();
            noLeftovers();
        }
    }

    @Test
    void aSymbolicLinkInThePlaceOfAnExportIsNeitherFollowedNorReplaced() throws IOException {
        Path target = folder.resolve("target.json");
        Files.writeString(target, "old and longer");
        Path link = folder.resolve("link.json");
        Files.createSymbolicLink(link, target.getFileName());
        assertEquals(
                "link.json is a link, which is not followed: put the file or folder itself in its place",
                assertThrows(IOException.class, () -> Folders.replace(link, new byte[] {'n', 'e', 'w'}))
                        .getMessage());
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("old and longer", Files.readString(target));
    }

    private void noLeftovers() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            assertEquals(
                    List.of(),
                    all.filter(it -> it.getFileName().toString().endsWith(".part")
                                    || it.getFileName().toString().contains(".torn"))
                            .toList());
        }
    }

    private void check(RollId roll, int... numbers) {
        JournalRecords<RollRecord> read = new Archive(folder).roll(roll);
        List<RollRecord> expected = new ArrayList<>();
        for (int number : numbers) {
            expected.add(new RollRecord(number, AT, new NoteEvent.Noted("record " + number)));
        }
        assertEquals(expected, read.records());
        assertEquals(List.of(), read.problems());
    }
}
