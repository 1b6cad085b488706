package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The record of a loading that version 1.0.0 wrote, once, and that a disk has spoilt since. */
class FlippedBitTest {
    private static final Path WRITTEN = Path.of("src/test/resources/written-by-1.0.0/folder/rolls/finished");

    private final byte[] journal;
    private final int start;
    private final int end;

    FlippedBitTest() throws IOException {
        journal = Files.readAllBytes(WRITTEN.resolve("R0001.journal"));
        String text = new String(journal, StandardCharsets.ISO_8859_1);
        start = text.indexOf('\n') + 1;
        end = text.indexOf('\n', start);
    }

    private static JournalLines.Content read(byte[] bytes) {
        return JournalReader.read("R0001.journal", bytes);
    }

    private static List<String> texts(JournalLines.Content content) {
        return content.lines().stream().map(JournalLines.Line::text).toList();
    }

    @Test
    void noBitOfItCostsTheRollAndEachIsTold() {
        List<String> whole = texts(read(journal));
        int turnedBack = 0;
        for (int at = start * 8; at < (end + 1) * 8; at++) {
            byte[] damaged = journal.clone();
            damaged[at / 8] ^= (byte) (1 << at % 8);
            JournalLines.Content content = read(damaged);
            assertEquals(whole, texts(content), "bit " + at);
            assertEquals(1, content.lines().get(0).n(), "bit " + at);
            assertTrue(content.problems().get(0).startsWith("R0001.journal:2: "), content.problems()::toString);
            turnedBack += content.problems().stream().anyMatch(it -> it.endsWith("with that bit turned back")) ? 1 : 0;
        }
        assertEquals((end - start) * 8, turnedBack, "all but those of the line feed");
    }

    @Test
    void twoBitsAreNotTakenForOneNorIsRubbish() {
        Random random = new Random(1);
        int rounds = 20_000;
        for (int round = 0; round < rounds; round++) {
            byte[] record = Arrays.copyOfRange(journal, start, end);
            int first = random.nextInt(record.length * 8);
            int second = (first + 1 + random.nextInt(record.length * 8 - 1)) % (record.length * 8);
            for (int bit : new int[] {first, second}) {
                record[bit / 8] ^= (byte) (1 << bit % 8);
            }
            assertTrue(FlippedBit.turnedBack(record, 0, record.length).isEmpty(), first + " and " + second);
            random.nextBytes(record);
            assertTrue(FlippedBit.turnedBack(record, 0, record.length).isEmpty(), "round " + round);
        }
        assertTrue(FlippedBit.turnedBack(new byte[3], 0, 3).isEmpty());
    }

    /** A later record that is damaged is lost and named: another record in its place would be worse. */
    @Test
    void aLaterRecordIsNotTurnedBack() {
        byte[] damaged = journal.clone();
        damaged[end + 40] ^= 1;
        assertEquals(read(journal).lines().size() - 1, read(damaged).lines().size());
        byte[] second =
                JournalLines.of(2, 2, OffsetDateTime.parse("2026-09-12T15:10+02:00"), "{\"event\":\"unloaded\"}");
        second[20] ^= 1;
        assertEquals(
                0,
                read(EventsGoRoundTest.concat(JournalLines.header(), second))
                        .lines()
                        .size());
    }
}
