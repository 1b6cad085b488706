package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.records.RollEventJson;
import takeup.roll.NoteEvent;

/** A journal whose bytes were damaged: what is whole is kept, what is not is told of, nothing is made up. */
@Tag("slow")
class JournalLinesTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final int RECORDS = 40;
    /** The header is line 0, record n is line n. */
    private static final List<byte[]> LINES = lines();

    private static final byte[] FILE =
            joined(IntStream.rangeClosed(0, RECORDS).boxed().toList());

    private static List<byte[]> lines() {
        List<byte[]> lines = new ArrayList<>(List.of(JournalLines.header()));
        for (int n = 1; n <= RECORDS; n++) {
            lines.add(JournalLines.of(
                    n, 100 + n, AT.plusMinutes(n), RollEventJson.text(new NoteEvent.Noted("frame " + n + ", J*j"))));
        }
        return lines;
    }

    private static byte[] joined(List<Integer> order) {
        return EventsGoRoundTest.concat(order.stream().map(LINES::get).toArray(byte[][]::new));
    }

    /** The number of the line that a byte belongs to: its line feed is its own. */
    private static int lineOf(int at) {
        int line = 0;
        for (int end = LINES.get(0).length; at >= end; end += LINES.get(line).length) {
            line++;
        }
        return line;
    }

    /**
     * All 28,000 or so: no record changes, the others stay, and the line is named. A line feed that is hit costs no
     * record.
     */
    @Test
    void noFlippedBitAnywhereMakesAWrongRecordOrTakesAnUndamagedOne() {
        IntStream.range(0, FILE.length).parallel().forEach(at -> {
            int line = lineOf(at);
            boolean isLineFeed = FILE[at] == '\n';
            for (int bit = 0; bit < 8; bit++) {
                byte[] damaged = FILE.clone();
                damaged[at] ^= (byte) (1 << bit);
                JournalLines.Content content = JournalReader.read("R0001.journal", damaged);
                String where = "byte " + at + ", bit " + bit;
                List<Integer> whole = IntStream.rangeClosed(1, RECORDS)
                        .filter(n -> isLineFeed || n != line || n == 1)
                        .boxed()
                        .toList();
                assertEquals(whole, numbers(content), where);
                content.lines().forEach(it -> assertEquals(textOf(it.n()), it.text(), where));
                assertTrue(
                        content.problems().get(0).startsWith("R0001.journal:" + (line + 1) + ": "),
                        where + content.problems());
                assertFalse(content.newer(), where);
            }
        });
    }

    /**
     * U+FFFD is what a lenient reader makes of bytes that are no letter; in a note of somebody's it is a letter like
     * others.
     */
    @Test
    void theLetterThatStandsForWhatIsNoLetterIsReadWhereItWasTyped() {
        byte[] typed = JournalLines.of(1, 1, AT, RollEventJson.text(new NoteEvent.Noted("bow \ufffd, réglage 中")));
        JournalLines.Content content =
                JournalReader.read("R0001.journal", EventsGoRoundTest.concat(JournalLines.header(), typed));
        assertEquals(List.of(), content.problems());
        assertTrue(
                content.lines().get(0).text().contains("bow \ufffd, réglage 中"),
                content.lines().toString());
    }

    @Test
    void aCutAtAnyByteKeepsAllWholeLinesAndTellsOfTheTail() {
        for (int length = 0; length < FILE.length; length++) {
            JournalLines.Content content = JournalReader.read("R0001.journal", Arrays.copyOf(FILE, length));
            int line = lineOf(length);
            int into = length - joined(IntStream.range(0, line).boxed().toList()).length;
            boolean onlyLineFeedMissing = into == LINES.get(line).length - 1;
            check(
                    content,
                    IntStream.range(1, onlyLineFeedMissing ? line + 1 : line)
                            .boxed()
                            .toList());
            assertEquals(into == 0 ? 0 : 1, content.problems().size());
            assertEquals(onlyLineFeedMissing || into == 0 ? length : length - into, content.goodBytes());
            assertEquals(onlyLineFeedMissing, content.lacksLineFeed());
            assertEquals(into > 0 && !onlyLineFeedMissing, content.torn());
        }
    }

    /** After a power cut a file may have its new length and not yet its new bytes. */
    @Test
    void zerosInPlaceOfTheRestAreATornTailAtAnyByte() {
        for (int length = 0; length < FILE.length; length++) {
            JournalLines.Content cut = JournalReader.read("R0001.journal", Arrays.copyOf(FILE, length));
            JournalLines.Content zeros =
                    JournalReader.read("R0001.journal", Arrays.copyOf(Arrays.copyOf(FILE, length), FILE.length));
            check(zeros, numbers(cut));
            assertEquals(cut.goodBytes(), zeros.goodBytes());
            assertTrue(zeros.torn());
            assertFalse(zeros.problems().isEmpty());
        }
    }

    @Test
    void rubbishInPlaceOfTheRestMakesNoRecord() {
        Random random = new Random(40);
        for (int length = 0; length < FILE.length; length++) {
            byte[] damaged = FILE.clone();
            for (int at = length; at < damaged.length; at++) {
                damaged[at] = (byte) random.nextInt(256);
            }
            List<Integer> kept = numbers(JournalReader.read("R0001.journal", damaged));
            int line = lineOf(length);
            List<Integer> whole = IntStream.range(1, line).boxed().toList();
            assertTrue(
                    kept.equals(whole)
                            || kept.size() == line
                                    && kept.subList(0, Math.max(0, line - 1)).equals(whole),
                    "from byte " + length + ": " + kept);
        }
    }

    @ParameterizedTest(name = "lines {0}")
    @CsvSource(delimiter = '|', textBlock = """
            0 1 2 3 4      | 1 2 3 4 |
            0 1 2 2 3 4    | 1 2 3 4 | a.journal:4: record 2 stands here a second time; it counts once
            0 1 2 3 1 2 3 4| 1 2 3 4 | a.journal:5: record 1 stands here a second time; it counts once
            0 2 1 3 4      | 1 2 3 4 | a.journal:3: record 1 stands behind record 2; it is read in its place
            4 3 2 1 0      | 1 2 3 4 | a.journal:2: record 3 stands behind record 4; it is read in its place
            1 2 3 4        | 1 2 3 4 | a.journal:1: the line that names the format is missing; the records are read all the same
            0 1 2 0 3 4    | 1 2 3 4 |
            0 1 4          | 1 4     |
            """)
    void doubledAndSwappedLinesAreReadByTheirNumbers(String order, String numbers, String problem) {
        JournalLines.Content content = JournalReader.read(
                "a.journal",
                joined(Arrays.stream(order.split(" ")).map(Integer::valueOf).toList()));
        check(
                content,
                Arrays.stream(numbers.strip().split(" ")).map(Integer::valueOf).toList());
        if (problem == null) {
            assertEquals(List.of(), content.problems());
        } else {
            assertEquals(problem, content.problems().get(0));
        }
    }

    @Test
    void twoRecordsOfOneNumberThatSayDifferentThingsAreBothKept() {
        byte[] other = JournalLines.of(2, 900, AT, RollEventJson.text(new NoteEvent.Noted("another frame")));
        JournalLines.Content content = JournalReader.read(
                "a.journal", EventsGoRoundTest.concat(joined(List.of(0, 1, 2)), other, LINES.get(3)));
        assertEquals(List.of(1, 2, 2, 3), numbers(content));
        assertEquals(
                List.of("a.journal:4: a second record 2 stands here, and says something else; both are kept"),
                content.problems());
    }

    @Test
    void halfARecordInFrontOfAWholeOneOnTheSameLineDoesNotTakeItAlong() {
        byte[] half = Arrays.copyOf(LINES.get(2), 50);
        check(
                JournalReader.read(
                        "a.journal", EventsGoRoundTest.concat(joined(List.of(0, 1)), half, LINES.get(3), LINES.get(4))),
                List.of(1, 3, 4));
    }

    @ParameterizedTest(name = "version {0} of {1} is newer: {2}")
    @CsvSource({"1, takeup-journal, false", "2, takeup-journal, true", "1, another-journal, true"})
    void aLaterVersionIsKnownByTheHeader(int version, String format, boolean newer) {
        byte[] header = JournalLines.sealed("{\"n\":0,\"format\":\"" + format + "\",\"version\":" + version + "}");
        JournalLines.Content content = JournalReader.read("a.journal", EventsGoRoundTest.concat(header, LINES.get(1)));
        assertEquals(newer, content.newer());
        check(content, List.of(1));
    }

    @Test
    void theHeaderIsAsTheFormatSays() {
        assertTrue(new String(JournalLines.header(), StandardCharsets.US_ASCII)
                .startsWith("{\"n\":0,\"format\":\"takeup-journal\",\"version\":1,\"crc\":\""));
    }

    private static List<Integer> numbers(JournalLines.Content content) {
        return content.lines().stream().map(JournalLines.Line::n).toList();
    }

    private static String textOf(int n) {
        return new String(LINES.get(n), 0, LINES.get(n).length - 1, StandardCharsets.UTF_8);
    }

    private static void check(JournalLines.Content content, List<Integer> numbers) {
        assertEquals(numbers, numbers(content));
        content.lines().forEach(it -> assertEquals(textOf(it.n()), it.text()));
        assertEquals(numbers.stream().mapToInt(it -> it).max().orElse(0), content.lastN());
    }
}
