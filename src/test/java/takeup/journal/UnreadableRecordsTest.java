package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.day.DayEvent;
import takeup.day.DayRecord;
import takeup.disk.MemoryFileSystem;
import takeup.json.Json;
import takeup.records.Fields;
import takeup.records.RollEventJson;
import takeup.records.ShootPlanJson;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * Records whose bytes are whole and that cannot be what happened: each is left out with its reason, and the first and
 * last value that can be are read.
 */
class UnreadableRecordsTest {
    private static final RollId R1 = new RollId("R", 1);
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final String REFUSED = "R0001.journal:%: record % cannot be understood and is left out: ";

    private final RegattaDay day = RegattaDay.brief();
    private final MemoryFileSystem drive = new MemoryFileSystem();

    /** What is said of a roll of two records, its loading and its first frame, of which one says something else. */
    private JournalRecords<RollRecord> roll(int changed, String from, String to) {
        byte[] file = JournalLines.header();
        for (int n = 1; n <= 2; n++) {
            String event =
                    RollEventJson.text(((RollRecord) day.records(6).get("R0001").get(n - 1)).event());
            assertTrue(n != changed || event.contains(from), event);
            file = EventsGoRoundTest.concat(
                    file, JournalLines.of(n, n, AT, n == changed ? event.replace(from, to) : event));
        }
        put("rolls/open/R0001.journal", file);
        return new Archive(drive, RegattaDay.FOLDER).roll(R1);
    }

    private void put(String name, byte[] file) {
        for (Path folder : DataLayout.of(RegattaDay.FOLDER).folders()) {
            drive.put(folder.getParent());
            drive.put(folder);
        }
        drive.put(RegattaDay.FOLDER.resolve(name), file);
    }

    @ParameterizedTest(name = "{1} instead of {0}: {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            "kind":"exposed"            | "kind":"exposes"            | frame kind exposes is not known
            "at":"2026-09-12T09:03:20   | "at":"2026-09-31T09:03:20   | at is no time
            "index":400,"at":           | "index":400,"on":           | at is missing
            "focalMm":50                | "focalMm":-50               | the lens cannot be read
            "method":"incident"         | "method":"guess"            | method guess is not known
            "ev100":10                  | "ev100":200                 |
            "ev100":10                  | "ev100":200.5               | ev100 is out of range
            "ev100":10                  | "ev100":-200                |
            "ev100":10                  | "ev100":-200.5              | ev100 is out of range
            "number":1                  | "number":1000000            |
            "number":1                  | "number":1000001            | number is out of range
            "number":1                  | "number":-1000001           | number is out of range
            "number":1                  | "number":1.5                | number is a whole number
            "number":1                  | "number":"1"                | a number is expected
            "kind":"exposed"            | "kind":4                    | text is expected
            "exposure":{                | "exposed":{                 | exposure is missing
            "light":{"ev100":10         | "light":[],"l":{"ev100":10  | an object is expected
            "note":"boathouse doors"    | "further":4                 | further is a list
            "setting":{                 | "setting":{"flash":1,       | flash is true or false
            "setting":{                 | "setting":{"extension":{"kind":"string","value":1}, | extension string is not known
            "setting":{                 | "clock":{"seconds":1000000000000000,"from":"Z","to":"Z"},"setting":{ |
            "setting":{                 | "clock":{"seconds":2000000000000000,"from":"Z","to":"Z"},"setting":{ | seconds is a whole number
            "setting":{                 | "clock":{"seconds":3600,"from":"CET","to":"Z"},"setting":{           | a zone is an offset such as +02:00
            """)
    void aFrameThatCannotBeIsLeftOut(String from, String to, String why) {
        JournalRecords<RollRecord> opened = roll(2, from, to);
        assertEquals(
                why == null ? List.of() : List.of(REFUSED.replace(":%", ":3").replace("%", "2") + why),
                opened.problems());
        assertEquals(why == null ? 2 : 1, opened.records().size());
    }

    @ParameterizedTest(name = "{1} instead of {0}: {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            "boxSpeed":400      | "boxSpeed":-400     | the stock cannot be read
            "frameSize":"24x36" | "frameSize":"24x37" | the camera cannot be read
            "size":"135"        | "size":"136"        | film size 136 is not known
            "roll":"R0001"      | "roll":"../R1"      | ../R1 is no roll number
            "index":400         | "index":0           | index is out of range
            """)
    void aLoadingThatCannotBeIsLeftOutAndItsFramesStay(String from, String to, String why) {
        JournalRecords<RollRecord> opened = roll(1, from, to);
        assertEquals(
                REFUSED.replace(":%", ":2").replace("%", "1") + why,
                opened.problems().get(0));
        assertEquals(1, opened.records().size());
    }

    @Test
    void endlessWordsAreToldOfInShort() {
        String problem = roll(2, "\"kind\":\"exposed\"", "\"kind\":\"" + "x".repeat(300) + "\"")
                .problems()
                .get(0);
        String words = "frame kind " + "x".repeat(300) + " is not known";
        assertEquals(REFUSED.replace(":%", ":3").replace("%", "2") + words.substring(0, 200) + " …", problem);
        String fits = roll(
                        2,
                        "\"kind\":\"exposed\"",
                        "\"kind\":\"" + "x".repeat(200 - "frame kind  is not known".length()) + "\"")
                .problems()
                .get(0);
        assertTrue(fits.endsWith("x is not known"), fits);
    }

    /** A list of cameras in which one is no name: the others, and all that was in hand that day, are worth more. */
    @Test
    void whatIsNoCameraInAListOfCamerasIsPassedOver() {
        String carried =
                "{\"event\":\"carried\",\"day\":{\"inHand\":{},\"backs\":{},\"used\":[],\"films\":[],\"flashed\":[\"35\",4,\"645\"]}}";
        put(
                "days/2026-09-12.journal",
                EventsGoRoundTest.concat(JournalLines.header(), JournalLines.of(1, 1, AT, carried)));
        JournalRecords<DayRecord> opened = new Archive(drive, RegattaDay.FOLDER).dayOf(LocalDate.of(2026, 9, 12));
        assertEquals(List.of(), opened.problems());
        assertEquals(
                Set.of("35", "645"),
                ((DayEvent.Carried) opened.records().get(0).event())
                        .day()
                        .cameras()
                        .cautioned());
    }

    /** A price of a million digits is short as text (1e1000000) and would be written out in full. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "12.50, true",
        "0, true",
        "12345678901234567.50, true",
        "123456789012345678.50, false",
        "1e20, true",
        "1e21, false",
        "1e-20, true",
        "1e-21, false",
        "twelve, false",
        "1e1000000, false"
    })
    void aPriceIsASumOfMoney(String price, boolean is) {
        Fields lot = new Fields(
                Json.object().and("stock", "bw400").and("filmSize", "135").and("price", price));
        if (is) {
            assertEquals(new BigDecimal(price), ShootPlanJson.lot(lot).price().orElseThrow());
        } else {
            assertEquals(
                    "price is no sum of money",
                    assertThrows(Fields.Unreadable.class, () -> ShootPlanJson.lot(lot))
                            .getMessage());
        }
    }

    /**
     * The text of an event is cut out of its line; a line with blanks between its fields, as a hand may write it, gives
     * it too.
     */
    @Test
    void anEventOfALaterVersionIsKeptAlsoFromALineWithBlanksInIt() {
        for (String gap : List.of("", " ")) {
            byte[] line = JournalLines.sealed("{\"n\":1,\"step\":1,\"at\":\"2026-09-12T15:10:03+02:00\"" + gap
                    + ",\"event\":\"slate\",\"words\":\"crew 4\"}");
            assertEquals(
                    "{\"event\":\"slate\",\"words\":\"crew 4\"}",
                    JournalReader.read("R0001.journal", line).lines().get(0).get());
        }
    }
}
