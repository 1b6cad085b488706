package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.report.ExposuresText;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;

/**
 * Several exposures on one frame: a part of it is no verdict, the sum at the last one is. Reversal 100 at EI 100 bears
 * half a stop under; EV 11 asks for f/4 (Av 4) at 1/125 (Tv 7).
 */
class SeveralExposuresTest {
    private static Shooting slide(String... lines) {
        Shooting shooting = Shooting.of("cam 645", "load cr100 @100", "m ev11", "set 4 125");
        for (String line : lines) {
            shooting.type(line);
        }
        return shooting;
    }

    private static Roll roll(Shooting shooting) {
        return shooting.situation().rollInHand().orElseThrow();
    }

    /** Half the light each: log2(0.5 + 0.5) = 0. One alone would be a stop under, which the film does not bear. */
    @Test
    void twoHalvesAreRightAndTheFirstAloneIsNeverCalledThin() {
        Shooting shooting = slide("bias -1", "4 250");
        String answer = shooting.type("double");
        assertEquals(
                "The next exposure goes on frame 1 of R0001 again: 1 of 2, 1.0 under so far. For 2 equal parts: bias -1"
                        + " each.",
                answer);
        assertTrue(FrameWarnings.of(roll(shooting)).get(0).isEmpty());
        assertTrue(shooting.error().isEmpty());
        shooting.type("4 250");
        assertTrue(
                shooting.answer().text().contains("f/4 1/250, right"),
                shooting.answer().text());
        assertEquals("", shooting.warnings());
        assertEquals(0, shooting.error().orElseThrow(), 1e-9);
        assertEquals(1, roll(shooting).frames().size());
    }

    /** A third each: 1/125 less log2(3) = 1.58. 1/250 three times is log2(1.5) = 0.585 over, 1/500 is 0.415 under. */
    @ParameterizedTest(name = "three of 1/{0}: {1}")
    @CsvSource({"250, 0.585, light", "500, -0.415, ''"})
    void threeAreJudgedAtTheThird(int time, double error, String warned) {
        Shooting shooting = slide("4 " + time);
        assertTrue(shooting.type("double 3").endsWith("For 3 equal parts: bias -1.6 each."));
        shooting.type("4 " + time);
        assertTrue(
                shooting.answer().text().contains("2 of 3, "), shooting.answer().text());
        assertTrue(
                shooting.answer().text().contains(" so far"), shooting.answer().text());
        assertEquals("", shooting.warnings());
        assertTrue(shooting.error().isEmpty());
        shooting.type("4 " + time);
        assertEquals(error, shooting.error().orElseThrow(), 0.001);
        assertEquals(warned, shooting.warnings());
        shooting.type("4 125");
        assertEquals(2, roll(shooting).frames().size());
    }

    @Test
    void aBurstFillsTheFrameFirst() {
        Shooting shooting = slide("4 500", "double 3", "4 500 x3");
        List<Frame> frames = roll(shooting).frames();
        assertEquals(2, frames.size());
        assertEquals(2, frames.get(0).further().size());
        assertEquals(2, frames.get(1).number());
        assertFalse(roll(shooting).doubleAwaited());
    }

    @Test
    void aFrameGetsMoreExposuresThanItHas() {
        Shooting shooting = slide("4 500", "double", "4 500");
        assertTrue(shooting.refused("double 2").contains("double 3"));
        assertTrue(shooting.refused("double many").contains("double 3"));
        shooting.type("double");
        assertEquals(
                "2 of 3",
                ExposuresText.count(roll(shooting), roll(shooting).frames().get(0))
                        .orElseThrow());
        shooting.type("double 5");
        assertEquals(3, roll(shooting).exposuresAwaited());
    }
}
