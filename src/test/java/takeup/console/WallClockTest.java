package takeup.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

class WallClockTest {
    /**
     * The measure is {@code java.time}, which the clock goes round only because it is slow to begin. From 2000 to 2037,
     * all zones.
     */
    @Test
    void aShootHasTheOffsetOfItsZoneAtAnyTimeOfTheYear() {
        Random random = new Random(20260912);
        for (String id : ZoneId.getAvailableZoneIds()) {
            for (int i = 0; i < 40; i++) {
                Instant now = Instant.ofEpochSecond(946_684_800L + random.nextInt(1_167_000_000));
                assertEquals(
                        now.atZone(ZoneId.of(id)).toOffsetDateTime(),
                        Clock.at(now, TimeZone.getTimeZone(id)),
                        id + " at " + now);
            }
        }
    }
}
