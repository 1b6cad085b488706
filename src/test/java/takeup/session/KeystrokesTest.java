package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import takeup.message.Key;

/** A roll of 36 with six changes of light and four notes, every key counted but the words of the notes. */
class KeystrokesTest {
    private static final List<String> LIGHT = List.of("11.3", "12.2", "11.7", "10.3", "9.7", "10.6");

    private final Playing day = Playing.of("cam 35", "load bw400");
    private int keys;

    @BeforeEach
    void countFromHere() {
        keys = 0;
    }

    @Test
    void aRollFrameByFrameTakesEightyKeysAtMost() {
        for (int frame = 1; frame <= 36; frame++) {
            if (frame % 6 == 1) {
                light(LIGHT.get(frame / 6));
            }
            space();
            if (frame % 9 == 0) {
                note("boat " + frame);
            }
        }
        isAWholeRoll(80);
    }

    @Test
    void aRollInBurstsTakesSixtyKeysAtMost() {
        for (int i = 0; i < 6; i++) {
            light(LIGHT.get(i));
            if (i < 4) {
                space();
                note("crew " + i);
            } else if (i == 4) {
                type("x30");
                enter();
            } else {
                space();
            }
        }
        space();
        isAWholeRoll(60);
    }

    /**
     * The same exposure again is one key, another aperture or time four at most, a note three and its words (the
     * house's own goals).
     */
    @Test
    void theUsualThingsTakeFewKeys() {
        light("11.3");
        keys = 0;
        space();
        assertEquals(1, keys);
        keys = 0;
        type("8");
        enter();
        assertTrue(keys <= 4, keys + " keys");
        keys = 0;
        type("60");
        enter();
        assertTrue(keys <= 4, keys + " keys");
        keys = 0;
        type(".");
        note("stroke seat");
        assertTrue(keys <= 3, keys + " keys");
        assertEquals(4, day.frames());
        assertEquals("f/8 1/60", day.framePair());
        assertEquals(
                "stroke seat", day.roll("R0001").newest().orElseThrow().note().orElseThrow());
    }

    private void isAWholeRoll(int most) {
        assertEquals(36, day.frames());
        assertEquals(
                4,
                day.roll("R0001").frames().stream()
                        .filter(it -> it.note().isPresent())
                        .count());
        assertEquals(
                6,
                day.roll("R0001").frames().stream()
                        .map(it -> it.exposure().light().orElseThrow().ev100())
                        .distinct()
                        .count());
        assertTrue(keys <= most, keys + " keys");
        assertTrue(day.roll("R0001").frames().stream()
                .allMatch(it -> it.exposure().setting().time().isPresent()));
    }

    /** Six keys. */
    private void light(String ev) {
        type("m" + ev);
        enter();
    }

    private void note(String words) {
        type(";");
        day.type(words);
        enter();
    }

    private void space() {
        day.space();
        keys++;
    }

    private void type(String text) {
        day.type(text);
        keys += text.length();
    }

    private void enter() {
        day.press(Key.Name.ENTER);
        keys++;
    }
}
