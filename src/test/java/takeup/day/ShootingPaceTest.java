package takeup.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pace of hand-made days, each worked out by hand beside it. */
class ShootingPaceTest {
    /**
     * Frames at 15:00:00, 10 and 20; a pause of half an hour; 15:30:00, 15, and three of one line at 45. In bursts: 1
     * in 10 s, 1 in 10 s, 1 in 15 s, 3 in 30 s = 6 frames in 65 s = 5.538 a minute.
     */
    private static final String BURSTS = "15:00:00 15:00:10 15:00:20 15:30:00 15:30:15 15:30:45 15:30:45 15:30:45";

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            15:00:00 15:00:10 15:00:20 15:30:00 15:30:15 15:30:45 15:30:45 15:30:45                   | 5.538
            15:00:00 15:00:12 15:00:24 15:00:36 15:00:48 15:01:00                                     | 5
            15:00:00 15:02:00 15:04:00 15:06:00 15:08:00 15:10:00                                     | 0.5
            15:00:00 15:00:12 15:00:24 15:00:36 15:00:48 15:01:00 18:00:00 21:00:00 23:59:59          | 5
            """)
    void pausesDoNotCountAndFramesOfOneLineFillTheTimeBeforeThem(String frames, double aMinute) {
        assertEquals(aMinute, of(frames).orElseThrow(), 0.0005);
    }

    /**
     * 2 min 1 s is a pause, so nothing follows anything; four behind another are one too few; twelve of one line took
     * nobody knows how long.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "15:00:00 15:02:01 15:04:02 15:06:03 15:08:04 15:10:05",
        "15:00:00 15:00:10 15:00:20 15:00:30 15:00:40",
        "15:00:00 15:00:00 15:00:00 15:00:00 15:00:00 15:00:00 15:00:00",
        "15:00:00"
    })
    void tooLittleToGoByIsNoPace(String frames) {
        assertEquals(OptionalDouble.empty(), of(frames));
    }

    @Test
    void theOrderOfTheTimesAndALongPauseChangeNothing() {
        List<OffsetDateTime> times = times(BURSTS);
        Collections.reverse(times);
        times.add(times.get(0).plusDays(2));
        assertEquals(of(BURSTS), ShootingPace.of(times));
        assertTrue(ShootingPace.of(List.of()).isEmpty());
    }

    private static OptionalDouble of(String frames) {
        return ShootingPace.of(times(frames));
    }

    private static List<OffsetDateTime> times(String frames) {
        List<OffsetDateTime> times = new ArrayList<>();
        for (String time : frames.strip().split(" +")) {
            times.add(OffsetDateTime.parse("2026-09-12T" + time + "+02:00"));
        }
        return times;
    }
}
