package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DraftPaceTest {
    private final DraftPace pace = new DraftPace(0);

    @Test
    void theFirstLetterAfterAPauseIsKeptAtOnce() {
        assertTrue(pace.takes(";", 1000));
        assertFalse(pace.takes("; b", 1100));
        assertTrue(pace.takes("; bo", 1500));
    }

    @Test
    void nothingIsKeptTwiceAndAnEmptiedPromptAtOnce() {
        assertTrue(pace.takes(";", 1000));
        assertFalse(pace.takes(";", 9000));
        assertEquals(700, pace.wait(";", 9000, 700));
        assertTrue(pace.takes("", 9001));
        assertFalse(pace.takesLast(""));
        assertTrue(pace.takesLast("x"));
    }

    /** Letters at random, and a look whenever it asks for one: whatever was typed is kept soon. */
    @Test
    void nothingWaitsForLongerThanHalfASecond() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            DraftPace some = new DraftPace(0);
            long now = 1 + random.nextInt(3000);
            StringBuilder typed = new StringBuilder();
            long oldest = -1;
            for (int letters = 0; letters < 60; letters++) {
                typed.append((char) ('a' + random.nextInt(26)));
                oldest = oldest < 0 ? now : oldest;
                long nextLetter = now + 1 + random.nextInt(random.nextBoolean() ? 90 : 2000);
                oldest = some.takes(typed.toString(), now) ? -1 : oldest;
                while (now + some.wait(typed.toString(), now, 1000) < nextLetter) {
                    now += some.wait(typed.toString(), now, 1000);
                    assertTrue(oldest < 0 || now - oldest <= DraftPace.MILLIS, "seed " + seed);
                    oldest = some.takes(typed.toString(), now) ? -1 : oldest;
                }
                now = nextLetter;
            }
        }
    }
}
