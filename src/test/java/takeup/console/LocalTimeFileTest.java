package takeup.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Files of the time zone database, release 2025b (IANA, public domain), as its own compiler makes them. The measure is
 * {@code java.time}, which has the same database in a form of its own.
 */
class LocalTimeFileTest {
    private static final long Y1980 = 315_532_800;
    private static final long Y2037 = 2_114_380_800;

    @ParameterizedTest
    @CsvSource({
        "Stockholm, Europe/Stockholm, false",
        "New_York, America/New_York, false",
        "Lord_Howe, Australia/Lord_Howe, false",
        "Kolkata, Asia/Kolkata, true",
        "UTC, UTC, true"
    })
    void theOffsetIsThatOfTheZoneAtAnyTimeOfTheYear(String file, String zone, boolean isForGood) throws IOException {
        LocalTimeFile read = LocalTimeFile.read(bytes(file)).orElseThrow();
        Random random = new Random(20260912);
        for (int i = 0; i < 4000; i++) {
            Instant now = Instant.ofEpochSecond(random.nextLong(Y1980, Y2037));
            ZoneOffset right = ZoneId.of(zone).getRules().getOffset(now);
            assertEquals(Optional.of(right), read.at(now.getEpochSecond()), zone + " at " + now);
        }
        long later = LocalDate.of(2050, 7, 1).toEpochDay() * 86_400;
        assertEquals(isForGood, read.at(later).isPresent(), "what comes by a rule is left to the class library");
    }

    /** The night of 25 October 2026: 02:59:59 in summer, and a second later 02:00 in winter. */
    @Test
    void theOffsetChangesAtItsSecond() throws IOException {
        LocalTimeFile stockholm = LocalTimeFile.read(bytes("Stockholm")).orElseThrow();
        long change = Instant.parse("2026-10-25T01:00:00Z").getEpochSecond();
        assertEquals(Optional.of(ZoneOffset.ofHours(2)), stockholm.at(change - 1));
        assertEquals(Optional.of(ZoneOffset.ofHours(1)), stockholm.at(change));
    }

    @Test
    void whatIsNoWholeFileOfThatKindIsNotRead() throws IOException {
        byte[] whole = bytes("Stockholm");
        for (int length = 0; length < whole.length; length++) {
            Optional<LocalTimeFile> cut = LocalTimeFile.read(Arrays.copyOf(whole, length));
            assertTrue(cut.isEmpty() || cut.get().at(Y2037 * 2).isEmpty(), "cut to " + length);
        }
        byte[] first = whole.clone();
        first[4] = 0;
        assertTrue(LocalTimeFile.read(first).isEmpty(), "the first version has 32 bits");
        byte[] endless = whole.clone();
        Arrays.fill(endless, 32, 36, (byte) 0x7f);
        assertTrue(LocalTimeFile.read(endless).isEmpty());
        assertTrue(LocalTimeFile.read("Europe/Stockholm\n".getBytes(StandardCharsets.US_ASCII))
                .isEmpty());
    }

    private static byte[] bytes(String name) throws IOException {
        return Files.readAllBytes(Path.of("src/test/resources/zones", name));
    }
}
