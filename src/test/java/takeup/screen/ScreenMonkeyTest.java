package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import takeup.message.Key;
import takeup.session.Playing;
import takeup.session.RandomKeys;

/**
 * Random keys on a window that somebody drags about, with a disk that fails; {@code -Dkeys=1000000} makes them a
 * million.
 */
@Tag("slow")
class ScreenMonkeyTest {
    /** A record that nobody put into words: {@code Filter[name=yellow}. */
    private static final Pattern RECORD = Pattern.compile("[A-Z][A-Za-z]+\\[[a-z]\\w*=");

    private static final int KEYS = Integer.getInteger("keys", 20_000);
    private static final int DAY = 1_000;
    private static final long SEED = 20_260_912;
    private static final Key[] LINES = {
        Key.pasted("4 125 ; bow seat"),
        Key.pasted("m 5.6 125"),
        Key.pasted("cam 35"),
        Key.pasted("cam 645 2"),
        Key.pasted("load cn400"),
        Key.pasted("unload yes"),
        Key.pasted("filter yellow"),
        Key.pasted("lens 150"),
        Key.pasted("flash on"),
        Key.pasted("undo"),
        Key.pasted("x5"),
        Key.pasted("frames"),
        Key.pasted("rolls"),
        Key.pasted("note \u001b[2J\u202e\n. ; \u009b")
    };

    @Test
    void everyPictureOfEverySizeIsDrawnAndHoldsNothingThatSteersATerminal() {
        Random random = new Random(SEED);
        Playing day = States.busy();
        long first = 0;
        int pictures = 0;
        for (int i = 0; i < KEYS; i++) {
            if (i % DAY == 0 || day.isOver()) {
                day = random.nextBoolean() ? States.busy() : Playing.two("m 5.6 125", "4 125 x3");
            }
            if (random.nextInt(10) == 0) {
                day.press(Key.ctrl('u'), LINES[random.nextInt(LINES.length)], Key.of(Key.Name.ENTER));
            }
            if (random.nextInt(60) == 0) {
                day.disk(Playing.Disk.values()[random.nextInt(3)]);
            }
            if (random.nextInt(200) == 0) {
                day.clockMoved(Duration.ofMinutes(random.nextInt(10_000) - 5_000));
            }
            day.after(random.nextInt(200), RandomKeys.any(random));
            if (random.nextInt(20) == 0) {
                boolean small = random.nextInt(3) > 0;
                int columns = 1 + random.nextInt(small ? 100 : 500);
                int rows = 1 + random.nextInt(small ? 40 : 200);
                String text = Screen.render(day.shoot(), columns, rows).toString();
                int at = i;
                text.codePoints()
                        .forEach(it -> assertTrue(
                                it == '\n' || it >= ' ' && it != 0x7f && (it < 0x80 || it > 0x9f) && it != 0x202e,
                                () -> "key " + at + ", " + columns + "x" + rows + ": U+" + Integer.toHexString(it)));
                assertFalse(
                        RECORD.matcher(text).find(),
                        () -> "key " + at + " shows a record as it stands in code:\n" + text);
                pictures++;
            }
            first = i == KEYS / 10 ? heap() : first;
        }
        assertEquals(KEYS / 20.0, pictures, KEYS / 100.0);
        long last = heap();
        assertTrue(
                last <= first * 1.2,
                last + " bytes in use at the end, " + first + " after the first tenth of the keys");
    }

    private static long heap() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
