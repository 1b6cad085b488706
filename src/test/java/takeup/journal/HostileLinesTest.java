package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.disk.Folders;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.records.DayEventJson;
import takeup.records.RollEventJson;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** Files that nobody's camera wrote, some with a right CRC: problems in words, never an exception, and soon. */
@Tag("slow")
class HostileLinesTest {
    private static final String FRONT =
            "{\"n\":1,\"step\":1,\"at\":\"2026-09-12T15:10:03+02:00\",\"event\":\"note\",\"words\":";

    @TempDir
    Path folder;

    static Stream<Arguments> files() {
        return Stream.of(
                Arguments.of("a line of 10 MB", filled(10_000_000, "x")),
                Arguments.of("10 MB of line feeds", filled(10_000_000, "\n")),
                Arguments.of(
                        "10 MB of zeros and a letter",
                        EventsGoRoundTest.concat(new byte[10_000_000], new byte[] {'x'})),
                Arguments.of(
                        "10 MB of opening marks and one closing one",
                        EventsGoRoundTest.concat(
                                filled(10_000_000, JournalLines.START), bytes(JournalLines.CRC + "00000000\"}\n"))),
                Arguments.of("10 MB of closing marks", filled(10_000_000, JournalLines.CRC)),
                Arguments.of(
                        "10 MB of both marks",
                        filled(10_000_000, JournalLines.START + "1" + JournalLines.CRC + "00000000\"}")),
                Arguments.of("words of 9 MB", JournalLines.sealed(FRONT + "\"" + "x".repeat(9_000_000) + "\"}")),
                Arguments.of("9 MB of blanks", JournalLines.sealed(FRONT + " ".repeat(9_000_000) + "\"\"}")),
                Arguments.of(
                        "a deep nest", JournalLines.sealed(FRONT + "[".repeat(100_000) + "]".repeat(100_000) + "}")),
                Arguments.of(
                        "a nest of 40 objects",
                        JournalLines.sealed(FRONT + "{\"a\":".repeat(40) + "1" + "}".repeat(41))),
                Arguments.of("a number without an end", JournalLines.sealed(FRONT + "1e999}")),
                Arguments.of("a number of 5,000 digits", JournalLines.sealed(FRONT + "9".repeat(5000) + "}")),
                Arguments.of("no number", JournalLines.sealed(FRONT + "NaN}")),
                Arguments.of("a name twice", JournalLines.sealed("{\"n\":1,\"n\":2,\"step\":1}")),
                Arguments.of("a list", JournalLines.sealed("[1,2,3]")),
                Arguments.of("invalid UTF-8", sealedBytes(FRONT, new byte[] {'"', (byte) 0xc0, (byte) 0xaf, '"'})),
                Arguments.of("half a letter", sealedBytes(FRONT, new byte[] {'"', (byte) 0xe2, (byte) 0x82, '"'})),
                Arguments.of("a bare NUL", sealedBytes(FRONT, new byte[] {'"', 0, '"'})),
                Arguments.of("UTF-16", "{\"n\":1}\n".getBytes(StandardCharsets.UTF_16)),
                Arguments.of("no step", JournalLines.sealed("{\"n\":1,\"at\":\"2026-09-12T15:10:03+02:00\"}")),
                Arguments.of("no time", JournalLines.sealed("{\"n\":1,\"step\":1}")),
                Arguments.of(
                        "a time that is none",
                        JournalLines.sealed("{\"n\":1,\"step\":1,\"at\":\"2026-02-30T15:10:03+02:00\"}")),
                Arguments.of("number 1.5", JournalLines.sealed("{\"n\":1.5,\"step\":1}")),
                Arguments.of("number -1", JournalLines.sealed("{\"n\":-1,\"step\":1}")),
                Arguments.of("number 10^300", JournalLines.sealed("{\"n\":1e300,\"step\":1}")),
                Arguments.of("a number as text", JournalLines.sealed("{\"n\":\"1\",\"step\":1}")),
                Arguments.of(
                        "a header without a version", JournalLines.sealed("{\"n\":0,\"format\":\"takeup-journal\"}")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void isToldOfAndGivesNoRecord(String name, byte[] bytes) {
        JournalLines.Content content =
                Assertions.assertTimeout(Duration.ofSeconds(60), () -> JournalReader.read("R0001.journal", bytes));
        assertEquals(List.of(), content.lines());
        assertFalse(content.problems().isEmpty());
        assertTrue(content.problems().size() <= 1001, content.problems().size() + " problems");
        content.problems().forEach(it -> assertTrue(it.startsWith("R0001.journal:") && it.length() < 200, it));
    }

    /** Any value anywhere in a record with a right CRC may be of any type: it is understood, or it is told of. */
    @Test
    void noValueOfAnyTypeAnywhereInARecordEndsTheReading() throws IOException, JsonText.NotJson {
        Random random = new Random(5);
        RandomEvents events = new RandomEvents(5);
        Archive archive = new Archive(folder);
        RollId roll = new RollId("R", 1);
        int understood = 0;
        int refused = 0;
        for (int round = 0; round < 40; round++) {
            List<byte[]> ofRoll = new ArrayList<>(List.of(JournalLines.header()));
            List<byte[]> ofDay = new ArrayList<>(List.of(JournalLines.header()));
            for (int n = 1; n <= 50; n++) {
                OffsetDateTime at = events.at();
                ofRoll.add(changed(JournalLines.of(n, n, at, RollEventJson.text(of(roll, events.ofRoll()))), random));
                ofDay.add(changed(JournalLines.of(n, n, at, DayEventJson.text(events.ofDay())), random));
            }
            Folders.replace(archive.layout().open(roll), EventsGoRoundTest.concat(ofRoll.toArray(byte[][]::new)));
            Folders.replace(
                    archive.layout().day(LocalDate.of(2026, 9, 12)),
                    EventsGoRoundTest.concat(ofDay.toArray(byte[][]::new)));
            JournalRecords<?> rolls = archive.roll(roll);
            JournalRecords<?> days = archive.dayOf(LocalDate.of(2026, 9, 12));
            understood += rolls.records().size() + days.records().size();
            refused += 100 - rolls.records().size() - days.records().size();
            assertTrue(
                    rolls.problems().size() >= 50 - rolls.records().size(),
                    rolls.problems().toString());
            assertTrue(
                    days.problems().size() >= 50 - days.records().size(),
                    days.problems().toString());
        }
        assertTrue(understood > 500 && refused > 500, understood + " understood, " + refused + " refused");
    }

    /** A loading is that of the roll whose file it is. */
    private static RollEvent of(RollId roll, RollEvent event) {
        return event instanceof RollEvent.Loaded loaded
                ? new RollEvent.Loaded(roll, loaded.camera(), loaded.back(), loaded.film())
                : event;
    }

    private static byte[] changed(byte[] line, Random random) throws JsonText.NotJson {
        Json.Obj whole = (Json.Obj) JsonText.read(new String(line, StandardCharsets.UTF_8).strip());
        whole.fields().remove("crc");
        int places = count(whole);
        int[] left = {random.nextInt(places)};
        return JournalLines.sealed(JsonText.line(changed(whole, left, random)));
    }

    private static int count(Json json) {
        int count = 1;
        if (json instanceof Json.Obj object) {
            count += object.fields().values().stream()
                    .mapToInt(HostileLinesTest::count)
                    .sum();
        } else if (json instanceof Json.Arr array) {
            count += array.items().stream().mapToInt(HostileLinesTest::count).sum();
        }
        return count;
    }

    private static Json changed(Json json, int[] left, Random random) {
        if (left[0]-- == 0 && json.line() >= 0) {
            List<Supplier<Json>> others = List.of(
                    () -> Json.of(-1),
                    () -> Json.of(1e300),
                    () -> Json.of(0.5),
                    () -> Json.of(0),
                    () -> Json.of(""),
                    () -> Json.of("x"),
                    () -> Json.of(true),
                    () -> Json.of(List.of()),
                    () -> Json.of(List.of(1, "a")),
                    Json::object,
                    () -> new Json.Nil(0));
            return json instanceof Json.Obj object && object.fields().containsKey("n")
                    ? json
                    : others.get(random.nextInt(others.size())).get();
        }
        if (json instanceof Json.Obj object) {
            Map<String, Json> fields = new LinkedHashMap<>();
            object.fields().forEach((name, value) -> fields.put(name, changed(value, left, random)));
            return new Json.Obj(fields, 0);
        }
        if (json instanceof Json.Arr array) {
            return new Json.Arr(
                    array.items().stream().map(it -> changed(it, left, random)).toList(), 0);
        }
        return json;
    }

    private static byte[] filled(int length, String with) {
        byte[] unit = bytes(with);
        byte[] all = new byte[length / unit.length * unit.length];
        for (int at = 0; at < all.length; at += unit.length) {
            System.arraycopy(unit, 0, all, at, unit.length);
        }
        return all;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** A line with a right CRC around bytes that are no text. */
    private static byte[] sealedBytes(String front, byte[] value) {
        byte[] body = EventsGoRoundTest.concat(bytes(front), value);
        CRC32C crc = new CRC32C();
        crc.update(body);
        String hex = Long.toHexString(crc.getValue() | 1L << 32).substring(1);
        return EventsGoRoundTest.concat(body, bytes(JournalLines.CRC + hex + "\"}\n"));
    }
}
