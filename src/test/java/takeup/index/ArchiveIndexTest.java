package takeup.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.cli.TypedRolls;
import takeup.journal.Archive;
import takeup.review.VerdictCounts;
import takeup.roll.RollId;
import takeup.search.FindQuery;
import takeup.search.FoundFrame;

/** The index answers as the journals do, whatever happened to it or to them. */
class ArchiveIndexTest {
    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();

    @BeforeEach
    void twoRolls() throws IOException {
        TypedRolls.type(
                folder,
                "shoot Regatta day",
                "cam 35",
                "load bw400",
                "m 5.6 125",
                "5.6 125 ; the cox",
                "8 125",
                "unload yes");
        TypedRolls.type(folder, "cam 645 1", "load cn400", "4 60 ; bow seat", "undo", "4 30");
    }

    private ArchiveIndex index(String version) {
        return new ArchiveIndex(new Archive(folder), version, told::add, 1);
    }

    private List<String> found(String typed) throws IOException {
        return found(index("1"), typed);
    }

    private static List<String> found(ArchiveIndex index, String typed) throws IOException {
        FindQuery query = FindQuery.of(typed);
        List<String> found = new ArrayList<>();
        assertEquals(List.of(), index.forEach(FoundInRoll.by(query), roll -> {
            roll.frames().forEach(it -> found.add(FoundFrame.name(it)));
            return true;
        }));
        return found;
    }

    /** All that is known of every roll. */
    private static List<IndexedRoll> all(ArchiveIndex index) throws IOException {
        List<IndexedRoll> all = new ArrayList<>();
        index.forEach(IndexedRoll.KIND, all::add);
        return all;
    }

    private Path part() {
        return folder.resolve("index/R-0.find");
    }

    @Test
    void whatIsIndexedIsWhatTheJournalsSay() throws IOException {
        List<IndexedRoll> read = all(new ArchiveIndex(new Archive(folder), "1", told::add, 1000));
        assertFalse(Files.exists(folder.resolve("index")), "so few rolls need no index");
        assertEquals(read, all(index("1")));
        assertTrue(Files.exists(part()));
        assertEquals(read, all(index("1")));
        assertEquals(List.of("R0001 frame 1"), found("cox"));
        assertEquals(List.of("R0002 frame 1"), found("645"));
        assertEquals(List.of(), told);
    }

    @Test
    void aRollThatWasWrittenToIsReadAgainAndTheOthersAreNot() throws IOException {
        all(index("1"));
        String before = Files.readString(part());
        // What the index says of R0001 is made wrong, checksum and all: it is believed, so R0001 is not read again.
        writePart(before.substring(before.indexOf('\n') + 1).replace("the cox", "a coach"));
        TypedRolls.type(folder, "cam 645 1", "5.6 30 ; stroke");
        assertEquals(List.of("R0002 frame 2"), found("stroke"));
        assertEquals(List.of("R0001 frame 1"), found("coach"));
        TypedRolls.type(folder, "fix r1 1 8 60 ; the bank");
        assertEquals(List.of("R0001 frame 1"), found("bank"));
        assertEquals(List.of(), found("coach"));
    }

    @Test
    void whatIsReadOfAStepThatIsNotWholeIsNotKept() throws IOException {
        TypedRolls.type(folder, "cam 35", "load bw400", "8 125");
        List<Path> journals = new ArrayList<>();
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(it -> it.toString().endsWith(".journal")).forEach(journals::add);
        }
        Map<Path, String> before = new TreeMap<>();
        for (Path journal : journals) {
            before.put(journal, Files.readString(journal));
        }
        List<IndexedRoll> read = all(index("1"));
        TypedRolls.type(folder, "cam 35", "rewind");
        StringBuilder note = new StringBuilder("takeup-unfinished 1\n");
        int changed = 0;
        for (Path journal : journals) {
            String was = before.get(journal);
            String now = Files.readString(journal);
            if (!now.equals(was)) {
                String name = folder.relativize(journal).toString().replace('\\', '/');
                int length = was.getBytes(StandardCharsets.UTF_8).length;
                note.append(name + " " + length + "\n" + now.substring(was.length()));
                changed++;
            }
        }
        assertEquals(2, changed, note.toString());
        Files.writeString(folder.resolve("unfinished"), note);
        assertEquals(read, all(index("1")), "the next start takes it back");
        Files.delete(folder.resolve("unfinished"));
        List<IndexedRoll> whole = all(index("1"));
        assertEquals(all(new ArchiveIndex(new Archive(folder), "1", told::add, 1000)), whole);
        assertNotEquals(read, whole);
    }

    private void writePart(String body) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(body.getBytes(StandardCharsets.UTF_8));
        Files.writeString(part(), "takeup-index 6 find 1 " + Long.toHexString(sum.getValue()) + "\n" + body);
    }

    @Test
    void anEntryThatIsNoneIsReadAgain() throws IOException {
        List<IndexedRoll> read = all(index("1"));
        String whole = Files.readString(part());
        String body = whole.substring(whole.indexOf('\n') + 1);
        for (String wrong :
                List.of(body.replace("finished", "lost"), body.replace("bw400", "bw\t400"), "R0001\t\t9999\n")) {
            writePart(wrong);
            assertEquals(read, all(index("1")));
            Files.delete(part());
        }
    }

    @Test
    void oneReadingOfTheJournalsMakesBothListAndFrames() throws IOException {
        TypedRolls.run(folder, "scans", "1", "--good", "1", "--thin", "2");
        List<ListedRoll> listed = new ArrayList<>();
        index("1").forEach(ListedRoll.KIND, listed::add);
        assertEquals(
                List.of("R-0.find", "R-0.rolls"),
                Stream.of(folder.resolve("index").toFile().list()).sorted().toList());
        assertEquals(List.of("R0001 frame 1"), found("cox"));
        VerdictCounts counts = new VerdictCounts();
        listed.forEach(it -> counts.add(it.verdicts()));
        assertEquals(List.of(1, 2, 0), List.of(counts.rolls(), counts.judged(), counts.unknown()));
        List<ListedRoll> again = new ArrayList<>();
        index("1").forEach(ListedRoll.KIND, again::add);
        assertEquals(listed, again);
    }

    @Test
    void anotherTimeOfChangeIsAnotherFile() throws IOException {
        all(index("1"));
        Path journal = folder.resolve("rolls/finished/R0001.journal");
        String text = Files.readString(journal);
        FileTime time = Files.getLastModifiedTime(journal);
        Files.setLastModifiedTime(journal, FileTime.fromMillis(time.toMillis() + 5000));
        String before = Files.readString(part());
        all(index("1"));
        String stamp = new Archive(folder).stamps().of(RollId.parse("R0001").orElseThrow());
        assertFalse(before.contains(stamp));
        assertTrue(Files.readString(part()).contains(stamp));
        assertEquals(text, Files.readString(journal), "a journal is never touched");
    }

    @Test
    void aDamagedPartIsToldAndMadeAnew() throws IOException {
        List<IndexedRoll> read = all(index("1"));
        byte[] bytes = Files.readAllBytes(part());
        for (int at : new int[] {0, 24, bytes.length / 2, bytes.length - 2}) {
            byte[] damaged = bytes.clone();
            damaged[at] ^= 1;
            Files.write(part(), damaged);
            told.clear();
            assertEquals(read, all(index("1")));
            assertEquals(1, told.size(), "byte " + at);
            assertEquals(new String(bytes, StandardCharsets.UTF_8), Files.readString(part()));
        }
        Files.write(part(), new byte[0]);
        assertEquals(read, all(index("1")));
    }

    @Test
    void anotherVersionMakesItsOwn() throws IOException {
        List<IndexedRoll> read = all(index("1"));
        assertEquals(read, all(index("2")));
        assertTrue(Files.readString(part()).startsWith("takeup-index 6 find 2 "));
        assertEquals(List.of(), told);
    }

    @Test
    void aVerdictIsFoundAsSoonAsItIsGiven() throws IOException {
        assertEquals(List.of(), found("judged thin"));
        TypedRolls.run(folder, "scans", "1", "--thin", "2");
        assertEquals(List.of("R0001 frame 2"), found("judged thin"));
    }

    @Test
    void aRollThatIsGoneIsFoundNoLonger() throws IOException {
        all(index("1"));
        Files.delete(folder.resolve("rolls/finished/R0001.journal"));
        assertEquals(List.of(), found("cox"));
        assertFalse(Files.readString(part()).contains("R0001"));
    }

    @Test
    void aDamagedJournalIsToldEachTime() throws IOException {
        Path journal = folder.resolve("rolls/finished/R0001.journal");
        Files.writeString(journal, Files.readString(journal).replace("the cox", "the fox"));
        for (int i = 0; i < 2; i++) {
            List<String> problems = index("1").forEach(IndexedRoll.KIND, it -> true);
            assertEquals(2, problems.size(), problems.toString());
            assertTrue(problems.get(0).startsWith("R0001.journal:"));
        }
    }

    @Test
    void aLinkInItsPlaceIsNotFollowed(@TempDir Path elsewhere) throws IOException {
        Files.createSymbolicLink(folder.resolve("index"), elsewhere);
        List<IndexedRoll> read = all(index("1"));
        assertEquals(2, read.size());
        try (Stream<Path> there = Files.list(elsewhere)) {
            assertEquals(0, there.count());
        }
        assertTrue(Files.isSymbolicLink(folder.resolve("index")));
        assertTrue(new Archive(folder).leftOvers().stream().anyMatch(it -> it.startsWith("index: it is a link")));
        Files.delete(folder.resolve("index"));
        Files.createDirectory(folder.resolve("index"));
        Path target = Files.writeString(elsewhere.resolve("mine"), "mine");
        Files.createSymbolicLink(part(), target);
        assertEquals(read, all(index("1")));
        assertEquals("mine", Files.readString(target));
        assertTrue(Files.isSymbolicLink(part()) && Files.exists(part(), LinkOption.NOFOLLOW_LINKS));
    }

    @Test
    void partsComeByLettersThenByNumber() throws IOException {
        Path finished = folder.resolve("rolls/finished/");
        for (String name : List.of("R0250", "R1100", "AB0007", "R0999")) {
            Files.copy(finished.resolve("R0001.journal"), finished.resolve(name + ".journal"));
        }
        List<String> names = new ArrayList<>();
        for (String problem : index("1").forEach(IndexedRoll.KIND, it -> true)) {
            names.add(problem.substring(0, problem.indexOf('.')));
        }
        assertEquals(List.of("AB0007", "R0250", "R0999", "R1100"), names);
    }

    private List<String> listed(int worth) throws IOException {
        List<String> all = new ArrayList<>();
        RollsAsLoaded rolls = new ArchiveIndex(new Archive(folder), "1", told::add, worth).asLoaded();
        rolls.forEach(it -> all.add(it.id().toString()));
        assertEquals(List.of(), rolls.problems());
        return all;
    }

    private void copyOfFirst(String roll, long loading) throws IOException {
        Path finished = folder.resolve("rolls/finished");
        String journal = Files.readString(finished.resolve("R0001.journal"));
        Files.writeString(finished.resolve(roll + ".journal"), CopiedJournal.of(journal, roll, loading));
    }

    @Test
    void rollsAreListedInTheOrderOfLoadingWhateverTheirNumbers() throws IOException {
        copyOfFirst("R0003", 900);
        copyOfFirst("AB0001", 950);
        assertEquals(List.of("AB0001", "R0001", "R0002", "R0003"), listed(1));
        copyOfFirst("R0004", 1);
        copyOfFirst("R0005", 899);
        for (int worth : new int[] {1, 1, 1000}) {
            assertEquals(List.of("AB0001", "R0004", "R0001", "R0002", "R0005", "R0003"), listed(worth));
        }
    }

    @Test
    void anIndexThatIsThrownAwayBetweenTwoPassesIsNotMissed() throws IOException {
        RollsAsLoaded rolls = index("1").asLoaded();
        Files.delete(folder.resolve("index/R-0.rolls"));
        List<String> all = new ArrayList<>();
        rolls.forEach(it -> all.add(it.id().toString()));
        assertEquals(List.of("R0001", "R0002"), all);
    }

    @Test
    void ofMoreRollsThanAThreadTakesAtATimeOnePartIsWritten() throws IOException {
        for (int roll = 3; roll < 99; roll++) {
            copyOfFirst(String.format(Locale.ROOT, "R%04d", roll), roll);
        }
        List<IndexedRoll> read = all(index("1"));
        assertEquals(98, read.size());
        assertEquals(98, entries());
        Files.setLastModifiedTime(folder.resolve("rolls/finished/R0060.journal"), FileTime.fromMillis(1000));
        assertEquals(read, all(index("1")));
        assertEquals(98, entries());
    }

    private long entries() throws IOException {
        return Files.readString(part())
                .lines()
                .filter(it -> it.matches("R\\d{4}\t(open|finished) .*"))
                .count();
    }

    @Test
    void aWordIsFoundInWhateverLettersItWasTyped() throws IOException {
        TypedRolls.type(
                folder,
                "cam 645 1",
                "4 30 ; \u0130zmir and the \u03a3 of ODYSSEU\u03a3",
                "4 30 ; back\\slash, \u212aelvin",
                "4 30 ; the COX");
        assertEquals(List.of("R0001 frame 1", "R0002 frame 4"), found("cox"));
        assertEquals(List.of("R0002 frame 4"), found("COX cn400"));
        assertEquals(List.of("R0002 frame 2"), found("i\u0307zmir"));
        assertEquals(List.of("R0002 frame 2"), found("odyss"));
        assertEquals(List.of("R0002 frame 3"), found("back\\slash"));
        assertEquals(List.of("R0002 frame 3"), found("kelvin"));
        assertEquals(List.of(), found("coxless"));
        // A word of the roll is met by all of its frames.
        assertEquals(5, found("645").size() + found("roll r1").size() - 1);
    }

    @Test
    void rollsThatAreNotWantedAreNotReadAndKeepTheirEntries() throws IOException {
        List<String> names = new ArrayList<>();
        index("1")
                .forEach(
                        ListedRoll.KIND,
                        it -> it.number() == 2,
                        it -> names.add(it.head().summary().id().toString()));
        assertEquals(List.of("R0002"), names);
        String part = Files.readString(folder.resolve("index/R-0.rolls"));
        assertFalse(part.contains("R0001"), "it was not looked at");
        all(index("1"));
        copyOfFirst("R0003", 900);
        String before = Files.readString(part());
        List<IndexedRoll> third = new ArrayList<>();
        index("1").forEach(IndexedRoll.KIND, it -> it.number() == 3, third::add);
        assertEquals(1, third.size());
        String after = Files.readString(part());
        assertTrue(after.contains(before.substring(before.indexOf('\n') + 1)), "the others stand there as before");
        assertTrue(after.contains("\nR0003\t"));
    }
}
