package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.day.CameraEvent;
import takeup.disk.MemoryFileSystem;
import takeup.roll.NoteEvent;
import takeup.roll.RollId;

/** Two laptops log the same day, and their folders are carried to and fro: whose file is whose. */
class SeveralWritersTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final LocalDate REGATTA = LocalDate.parse("2026-09-12");
    private static final Path FOLDER = RegattaDay.FOLDER;
    private static final RollId THEIRS = new RollId("AB", 2);

    @TempDir
    Path folder;

    private final MemoryFileSystem drive = new MemoryFileSystem();

    @BeforeEach
    void folders() {
        for (Path path : DataLayout.of(FOLDER).folders()) {
            drive.put(path.getParent());
            drive.put(path);
        }
    }

    private static byte[] lines(int count) {
        byte[] all = JournalLines.header();
        for (int n = 1; n <= count; n++) {
            all = EventsGoRoundTest.concat(
                    all, JournalLines.of(n, n, AT, "{\"event\":\"note\",\"words\":\"record " + n + "\"}"));
        }
        return all;
    }

    private void day(String name) {
        drive.put(FOLDER.resolve("days").resolve(name + ".journal"), lines(1));
    }

    private Archive of(String writer) {
        return new Archive(drive, new DataLayout(FOLDER, writer));
    }

    @Test
    void theWritersAreThoseOfRollsAndOfDays() throws IOException {
        assertEquals(Set.of(), of("R").writers());
        drive.put(FOLDER.resolve("rolls/open/R0001.journal"), lines(1));
        drive.put(FOLDER.resolve("rolls/finished/C0001.journal"), lines(1));
        day("2026-09-12-AB");
        assertEquals(List.of("AB", "C", "R"), List.copyOf(of("R").writers()), "in the order of their letters");
    }

    /** The first writer's days bear no letters; a name that nearly fits is nobody's day. */
    @Test
    void aDayIsTheOneOfTheWriterInItsName() throws IOException {
        day("2026-09-12");
        day("2026-09-13");
        day("2026-09-12-AB");
        for (String nobodys : List.of(
                "2026-09-14-",
                "2026-09-14-R",
                "2026-09-14-ab",
                "2026-09-14-ABCD",
                "2026-09-14_AB",
                "2026-02-30-AB",
                "2026-09-14-A1",
                "2026-09-14AB")) {
            day(nobodys);
        }
        assertEquals(List.of(REGATTA, REGATTA.plusDays(1)), of("R").days());
        assertEquals(List.of(REGATTA), of("AB").days());
        assertEquals(List.of(), of("C").days());
        assertEquals(Set.of("R", "AB"), of("AB").writers());
    }

    @Test
    void aWriterWritesDaysUnderItsOwnLetters() throws IOException {
        Archive archive = new Archive(folder, "AB");
        assertEquals("AB", archive.writer());
        try (Writer writer = Writer.take(archive)) {
            Batch batch = new Batch(1, AT);
            batch.add(new CameraEvent.MeterSelected("hand", Optional.empty()));
            batch.add(THEIRS, new NoteEvent.Noted("the second laptop"));
            writer.append(batch);
        }
        assertTrue(Files.exists(folder.resolve("days/2026-09-12-AB.journal")));
        assertTrue(Files.exists(folder.resolve("rolls/open/AB0002.journal")));
        assertEquals(List.of(REGATTA), archive.days());
        assertEquals(List.of(), new Archive(folder).days());
    }

    private void twice(RollId roll, byte[] open, byte[] finished) {
        drive.put(FOLDER.resolve("rolls/open/" + roll + ".journal"), open);
        drive.put(FOLDER.resolve("rolls/finished/" + roll + ".journal"), finished);
    }

    /** A syncing tool brings both the roll as it was and as it is, and the one who wrote it clears up. */
    @ParameterizedTest(name = "{0} records with the open ones")
    @ValueSource(ints = {1, 3})
    void theBeginningOfAnothersRollBesideTheWholeOfItIsNoProblem(int open) {
        twice(THEIRS, lines(open), lines(4 - open));
        assertEquals(3, of("R").roll(THEIRS).records().size());
        assertEquals(List.of(), of("R").roll(THEIRS).problems());
        assertEquals(1, of("AB").roll(THEIRS).problems().size(), "its own writer is told");
    }

    @Test
    void anothersRollThatLiesTwiceAndDiffersIsTold() {
        twice(
                THEIRS,
                EventsGoRoundTest.concat(
                        lines(0), JournalLines.of(1, 1, AT, "{\"event\":\"note\",\"words\":\"elsewhere\"}")),
                lines(3));
        assertEquals(
                List.of("AB0002.journal:1: it lies with the open and with the finished rolls; the longer one counts"),
                of("R").roll(THEIRS).problems());
    }

    @Test
    void copiesAreNamedInTheOrderOfTheirNamesBesideRollsAndReviews() throws IOException {
        drive.put(DataLayout.of(FOLDER).reviews());
        for (String name : List.of("rolls/open/b", "rolls/open/a", "rolls/open/c", "reviews/half")) {
            drive.put(FOLDER.resolve(name), new byte[0]);
        }
        assertEquals(
                List.of("rolls/open/a", "rolls/open/b", "rolls/open/c", "reviews/half"),
                of("R").leftOvers().stream()
                        .map(it -> it.substring(0, it.indexOf(':')))
                        .toList());
    }

    @Test
    void anothersRollThatCannotBeComparedIsTold() {
        twice(THEIRS, lines(1), lines(3));
        drive.fault((call, path) -> {
            if (call.equals("read") && path.toString().contains("open")) {
                throw new IOException("Input/output error");
            }
        });
        List<String> problems = of("R").roll(THEIRS).problems();
        assertEquals(
                "AB0002.journal:1: it lies with the open and with the finished rolls; the longer one counts",
                problems.get(problems.size() - 1));
    }

    /**
     * What tools that carry folders keep beside a file when both sides wrote it. The original lies with the finished
     * rolls, the copy where it was made.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            rolls/open/AB0002 (conflicted copy).journal        | 2 | a copy of AB0002.journal, which holds all that is in it. Delete it
            rolls/open/AB0002.sync-conflict-20260912.journal   | 3 | a copy of AB0002.journal, which holds all that is in it. Delete it
            rolls/finished/AB0002~1.journal                    | 4 | a conflicting copy of AB0002.journal, which differs. Compare the two; where two laptops log, each needs letters of its own (writer in settings.json)
            rolls/open/AZ9080 2.journal                        | 3 | a copy of AZ9080.journal, which holds all that is in it. Delete it
            rolls/open/ab0002.journal                          | 2 | by its name no journal, so that it is not read
            rolls/open/AB0003 2.journal                        | 2 | by its name no journal, so that it is not read
            rolls/open/AB0002 2.journal.txt                    | 2 | by its name no journal, so that it is not read
            rolls/open/notes.journal                           | 2 | by its name no journal, so that it is not read
            days/2026-09-12 2.journal                          | 1 | a copy of 2026-09-12.journal, which holds all that is in it. Delete it
            days/2026-09-12 2.journal                          | 2 | a conflicting copy of 2026-09-12.journal, which differs. Compare the two; where two laptops log, each needs letters of its own (writer in settings.json)
            days/2026-09.journal                               | 1 | by its name no journal, so that it is not read
            """)
    void aCopyOfAJournalIsNamedWithWhatToDo(String name, int records, String says) throws IOException {
        drive.put(FOLDER.resolve("rolls/finished/AB0002.journal"), lines(3));
        drive.put(FOLDER.resolve("rolls/open/AZ9080.journal"), lines(3));
        day("2026-09-12");
        drive.put(FOLDER.resolve(name), lines(records));
        assertEquals(List.of(name + ": " + says), of("R").leftOvers());
    }
}
