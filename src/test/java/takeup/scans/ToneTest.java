package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;

class ToneTest {
    @Test
    void weighsTheColoursAsTheStandardDoes() {
        // ITU-R BT.601, 2.5.1: 0.299 R + 0.587 G + 0.114 B; so 255 x 0.587 / 255 for pure green.
        assertEquals(0.587, Tone.of(picture((column, row) -> 0x00ff00)).brightness(), 1e-9);
        assertEquals(1, Tone.of(picture((column, row) -> 0xffffff)).brightness(), 1e-9);
    }

    @Test
    void halfBlackAndHalfWhiteHasTheGreatestContrastThereIs() {
        // Half at 0 and half at 1: the deviation from the mean 0.5 is 0.5 everywhere.
        Tone tone = Tone.of(picture((column, row) -> row < 20 ? 0 : 0xffffff));
        assertEquals(0.5, tone.brightness(), 1e-9);
        assertEquals(0.5, tone.contrast(), 1e-9);
    }

    @Test
    void anUnexposedFrameIsBlackAndAFoggedOneWhite() {
        assertTrue(Tone.of(picture((column, row) -> 0x050505)).isBlack());
        assertTrue(Tone.of(picture((column, row) -> 0xfafafa)).isWhite());
        assertFalse(Tone.of(picture((column, row) -> column * 0x040404)).isBlack());
    }

    @Test
    void aBarBetweenTwoHalfFramesIsSeen() {
        assertTrue(Tone.of(picture((column, row) -> column == 30 ? 0x020202 : 0x304050 + row * 0x030303))
                .isDivided());
        assertFalse(
                Tone.of(picture((column, row) -> column == 10 ? 0x020202 : 0x304050 + row * 0x030303))
                        .isDivided(),
                "not in the middle");
        assertFalse(Tone.of(picture((column, row) -> 0x020202)).isDivided(), "black all over");
    }

    @Test
    void aSmallerCopyKeepsTheMean() {
        // Columns 0 and 60 alternate: each pair has the mean 30.
        Picture half = picture((column, row) -> column % 2 * 60 * 0x010101).fitted(30, 20);
        assertEquals(0x1e1e1e, half.at(7, 7));
    }

    private static Picture picture(IntBinaryOperator dot) {
        int[] dots = new int[60 * 40];
        for (int i = 0; i < dots.length; i++) {
            dots[i] = dot.applyAsInt(i % 60, i / 60);
        }
        return new Picture(60, 40, dots);
    }
}
