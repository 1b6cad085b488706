package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.day.Day;
import takeup.day.DayEvent;
import takeup.day.DayRecord;
import takeup.disk.Folders;
import takeup.json.JsonText;
import takeup.kit.Warning;
import takeup.records.DayEventJson;
import takeup.records.Fields;
import takeup.records.RollEventJson;
import takeup.roll.NoteEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/** What goes into a journal comes out of it, whatever it is. */
class EventsGoRoundTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03.25+02:00");

    @TempDir
    Path folder;

    @Test
    void aDayThatWasCarriedOverBeforeThereWereTimersAndFlashCautionsIsStillRead() throws Exception {
        String line =
                "{\"event\":\"carried\",\"day\":{\"active\":{\"camera\":\"35\",\"back\":null},\"inHand\":{},\"backs\":{},\"used\":[],\"meter\":null,\"preset\":null,\"films\":[]}}";
        DayEvent event = DayEventJson.event(Fields.of(JsonText.read(line)), () -> line);
        Day day = event.appliedTo(Day.FIRST);
        assertEquals("35", day.active().orElseThrow().camera());
        assertEquals(Map.of(), day.timers());
        assertEquals(Set.of(), day.cameras().cautioned());
        assertEquals(line, DayEventJson.text(event), "and is written again as it was");
    }

    /** The looks after loading came later than the first days; they are on unless a day says off. */
    @Test
    void theLooksOfACarriedDayAreOffOnlyWhereItSaysSo() throws Exception {
        for (String routine : List.of("", ",\"routine\":true", ",\"routine\":false")) {
            String line = "{\"event\":\"carried\",\"day\":{\"inHand\":{},\"backs\":{},\"used\":[],\"films\":[]"
                    + routine + "}}";
            Day day = DayEventJson.event(Fields.of(JsonText.read(line)), () -> line)
                    .appliedTo(Day.FIRST);
            assertEquals(!routine.endsWith("false"), day.routine(), line);
        }
    }

    @Test
    void twoThousandEventsOfRollsComeBackEqualOverTwoFilesAndTwoSittings() throws IOException {
        RandomEvents events = new RandomEvents(20260913);
        RollId first = new RollId("R", 1);
        RollId second = new RollId("R", 2);
        List<RollRecord> ofFirst = new ArrayList<>();
        List<RollRecord> ofSecond = new ArrayList<>();
        Set<Class<?>> kinds = new HashSet<>();
        long step = 0;
        for (int sitting = 0; sitting < 2; sitting++) {
            try (Writer writer = Writer.take(folder)) {
                for (int round = 0; round < 250; round++) {
                    OffsetDateTime at = events.at();
                    Batch batch = new Batch(++step, at);
                    for (int i = 0; i < 2; i++) {
                        ofFirst.add(new RollRecord(step, at, events.ofRoll()));
                        batch.add(first, ofFirst.get(ofFirst.size() - 1).event());
                        ofSecond.add(new RollRecord(step, at, events.ofRoll()));
                        batch.add(second, ofSecond.get(ofSecond.size() - 1).event());
                    }
                    writer.append(batch);
                }
                assertEquals(List.of(), writer.remarks());
            }
        }
        ofFirst.forEach(it -> kinds.add(it.event().getClass()));
        assertEquals(kinds(RollEvent.class), kinds.size());
        check(ofFirst, new Archive(folder).roll(first));
        check(ofSecond, new Archive(folder).roll(second));
    }

    @Test
    void twoThousandEventsOfADayComeBackEqual() throws IOException {
        RandomEvents events = new RandomEvents(7);
        List<DayRecord> all = new ArrayList<>();
        Set<Class<?>> kinds = new HashSet<>();
        long step = 0;
        try (Writer writer = Writer.take(folder)) {
            while (all.size() < 2000) {
                Batch batch = new Batch(++step, AT);
                for (int i = 0; i < 4; i++) {
                    DayEvent event = events.ofDay();
                    all.add(new DayRecord(step, AT, event));
                    kinds.add(event.getClass());
                    batch.add(event);
                }
                writer.append(batch);
            }
        }
        assertEquals(kinds(DayEvent.class), kinds.size());
        check(all, new Archive(folder).dayOf(LocalDate.of(2026, 9, 12)));
    }

    /**
     * Numbers as this version would not write them, a number too long for it, escapes that are not needed, names of its
     * own.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"event\":\"slate\",\"board\":[1.0,1e3,12345678901234567890,-0.0],\"words\":\"\\u00e9\\/\\u0041\"}",
                "{\"event\":\"x\", \"blank\" : { \"n\": 3 } }",
                "{\"event\":\"quiet\",\"code\":\"tide\"}",
                "{\"first\":1,\"event\":\"\"}"
            })
    void aKindThatIsNotKnownIsKeptLetterForLetter(String text) throws IOException {
        RollId roll = new RollId("R", 3);
        try (Writer writer = Writer.take(folder)) {
            Batch batch = new Batch(1, AT);
            batch.add(roll, new RollEvent.Unknown("anything", text));
            batch.add(new DayEvent.Unknown("anything", text));
            writer.append(batch);
        }
        RollEvent.Unknown onRoll = (RollEvent.Unknown)
                new Archive(folder).roll(roll).records().get(0).event();
        DayEvent.Unknown onDay = (DayEvent.Unknown)
                new Archive(folder).dayOf(AT.toLocalDate()).records().get(0).event();
        assertEquals(text, onRoll.text());
        assertEquals(text, onDay.text());
        assertTrue(Files.readString(folder.resolve("rolls/open/R0003.journal"))
                .contains("\"," + text.substring(1, text.length() - 1)));
    }

    @Test
    void anEventOfALaterVersionWithItsFieldsInAnotherOrderIsKept() throws IOException {
        byte[] line =
                JournalLines.sealed("{\"step\":4,\"event\":\"slate\",\"n\":1,\"board\":[1,2],\"at\":\"" + AT + "\"}");
        Path file = folder.resolve("rolls/open/R0001.journal");
        Folders.make(file.getParent());
        Folders.replace(file, concat(JournalLines.header(), line));
        check(
                List.of(new RollRecord(4, AT, new RollEvent.Unknown("slate", "{\"event\":\"slate\",\"board\":[1,2]}"))),
                new Archive(folder).roll(new RollId("R", 1)));
    }

    @Test
    void wordsThatCouldNotBeReadAgainAreRefusedBeforeAnythingIsWritten() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            Batch batch = new Batch(1, AT);
            batch.add(new DayEvent.WarningSilenced(Warning.Code.SUN));
            batch.add(new RollId("R", 1), new NoteEvent.Noted("x".repeat(20_001)));
            String why = assertThrows(IllegalArgumentException.class, () -> writer.append(batch))
                    .getMessage();
            assertTrue(why.contains("20000 letters"), why);
        }
        assertEquals(List.of(), new Archive(folder).openRolls());
        assertEquals(List.of(), new Archive(folder).days());
    }

    @Test
    void theLineOfAFrameIsPlainTextThatGrepFinds() {
        byte[] line = JournalLines.of(3, 9, AT, RollEventJson.text(new NoteEvent.Noted("bow seat, é")));
        String text = new String(line, StandardCharsets.UTF_8);
        assertTrue(
                text.startsWith(
                        "{\"n\":3,\"step\":9,\"at\":\"2026-09-12T15:10:03.250+02:00\",\"event\":\"note\",\"words\":\"bow seat, é\",\"crc\":\""),
                text);
        assertTrue(text.endsWith("\"}\n"), text);
    }

    /**
     * The check value of CRC-32C: RFC 3720, appendix B.4, 32 bytes of zeros (aa 36 91 8a, least significant byte
     * first).
     */
    @Test
    void theCrcIsTheOneOfIscsi() {
        CRC32C crc = new CRC32C();
        crc.update(new byte[32]);
        assertEquals(0x8a9136aaL, crc.getValue());
        assertTrue(new String(JournalLines.sealed("{\"a\":1}"), StandardCharsets.US_ASCII)
                .matches("\\{\"a\":1,\"crc\":\"[0-9a-f]{8}\"}\n"));
    }

    static byte[] concat(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    private static <T> void check(List<T> written, JournalRecords<T> read) {
        assertEquals(List.of(), read.problems());
        assertEquals(written.size(), read.records().size());
        for (int i = 0; i < written.size(); i++) {
            assertEquals(written.get(i), read.records().get(i));
        }
    }

    /** How many records there are below a sealed interface. */
    private static int kinds(Class<?> type) {
        Class<?>[] below = type.getPermittedSubclasses();
        return below == null
                ? 1
                : Stream.of(below).mapToInt(EventsGoRoundTest::kinds).sum();
    }
}
