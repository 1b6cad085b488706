package takeup.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The clock of a rehearsal. */
class ClockTest {
    private static final String NOON = "2026-09-12T12:00+02:00";

    @ParameterizedTest(name = "clock {0}: {1}")
    @CsvSource(textBlock = """
        +10min,                    2026-09-12T12:10+02:00
        +10 min,                   2026-09-12T12:10+02:00
        +10m,                      2026-09-12T12:10+02:00
        +30S,                      2026-09-12T12:00:30+02:00
        -2h,                       2026-09-12T10:00+02:00
        +1d,                       2026-09-13T12:00+02:00
        2026-10-25T02:30:00+01:00, 2026-10-25T02:30+01:00
        """)
    void aLineMovesIt(String how, String expected) {
        Clock clock = noon();
        clock.move(how);
        assertEquals(OffsetDateTime.parse(expected), clock.now());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "noon", "+", "+min", "+10", "+10weeks", "+1.5h", "12:00", "2026-09-12T12:00", "+99999999s"})
    void whatIsNoTimeIsRefusedAndMovesNothing(String how) {
        Clock clock = noon();
        assertThrows(IllegalArgumentException.class, () -> clock.move(how));
        assertEquals(OffsetDateTime.parse(NOON), clock.now());
    }

    @Test
    void theWallClockIsNotMoved() {
        Clock clock = Clock.of(Optional.empty());
        assertTrue(assertThrows(IllegalArgumentException.class, () -> clock.move("+10min"))
                .getMessage()
                .contains("--clock"));
    }

    private static Clock noon() {
        return Clock.of(Optional.of(Clock.parse(NOON)));
    }
}
