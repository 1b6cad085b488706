package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A line is asked about where a slip of the fingers is likelier than the truth, and then once. */
class FrameQuestionTest {
    private static int frames(Shooting shooting) {
        return shooting.situation().rollInHand().orElseThrow().frames().size();
    }

    /** 16 frames on 120 in the 645: 13 of them leave 3. */
    @Test
    void aLineThatLogsMoreThanTheFramesLeftIsAskedAboutAndYesTakesIt() {
        Shooting shooting = Shooting.medium("4 125 x13");
        assertEquals("R0001 has 3 frames left, this line logs 5. Take it as typed? y/n", shooting.asked("x5"));
        assertEquals(13, frames(shooting));
        shooting.type("x3");
        assertEquals(16, frames(shooting));
        assertEquals(
                "R0001 is at its end by the counter, this line logs 2. Take it as typed? y/n",
                shooting.asked("blank x2"));
        shooting.type("yes");
        assertEquals(18, frames(shooting));
        shooting.type("x2");
        assertEquals(20, frames(shooting));
    }

    /** A roll of 16 gives 17 as often as not: the shutter was pressed, and past-end says what there is to say. */
    @Test
    void oneFramePastTheEndIsLoggedAtOnce() {
        Shooting shooting = Shooting.medium("4 125 x16", ".");
        assertEquals(17, frames(shooting));
        assertEquals("past-end", shooting.warnings());
    }

    /**
     * EI 200, EV 12 asks for EV 13. f/4 1/30 (4 + 5 = 9) is 4 over, one over box by the rating makes 5: colour negative
     * 400 tolerates 3, and 5 is 2 outside. f/4 1/15 (8) is 5 over, 6 over box: 3 outside. f/22 1/125 (9 + 7 = 16) is 3
     * under, 2 under box: 1 outside; f/22 1/500 (18) is 5 under, 4 under box: 3 outside.
     */
    @Test
    void aFrameMoreThanTwoStopsOutsideTheLatitudeIsAskedAboutOnce() {
        Shooting shooting = Shooting.medium("m ev12", "4 1/30", "f22 1/125");
        assertEquals(2, frames(shooting));
        assertEquals(
                "this frame is 5.0 over, and the film tolerates 3 stops. Take it as typed? y/n",
                shooting.asked("4 1/15"));
        assertEquals(2, frames(shooting));
        shooting.type("yes");
        assertEquals(3, frames(shooting));
        shooting.type("4 1/15");
        shooting.type(".");
        assertEquals(5, frames(shooting));
        assertTrue(shooting.asked("f22 1/500").startsWith("this frame is 5.0 under"));
        shooting.type("8 250");
        assertEquals(6, frames(shooting));
        assertTrue(shooting.asked("4 1/15").contains("5.0 over"));
    }

    /** EI 200, EV 12: f/4 1/125 is 2 over; behind three stops of filter and ten more 11 under, 10 under box. */
    @Test
    void aPointAloneIsLoggedAtOnceAsTheSpaceBarIs() {
        Shooting shooting = Shooting.medium("m ev12", "4 125", "filter nd0.9 and nd3.0", ".", ". ; bow seat");
        assertEquals(3, frames(shooting));
        assertTrue(shooting.asked("5.6 125").contains("the film tolerates 1 stop"));
    }

    /** Push 2 on the same film at EI 200: 3 over box and 2 more of development are 5; one stop more is asked about. */
    @Test
    void theDevelopmentCounts() {
        Shooting shooting = Shooting.medium("push 2", "m ev12", "4 1/125");
        assertTrue(shooting.asked("4 1/60").contains("3.0 over"));
    }

    /** EI 200, EV 12: f/4 1/15 is 5 over; a part of a double is judged with the last one alone. */
    @Test
    void anOpenFrameIsAskedAboutAtItsLastExposure() {
        Shooting shooting = Shooting.medium("m ev12", "8 125", "double");
        assertTrue(shooting.asked("4 1/15").startsWith("the exposures of this frame are 5."));
        shooting.type("yes");
        assertEquals(1, frames(shooting));
    }
}
