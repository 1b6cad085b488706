package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.message.Key;
import takeup.roll.Roll;

/** A question takes one key: y or n, as the footer says. What else is typed meanwhile is not lost. */
class AnswerKeysTest {
    private static Playing asked() {
        return Playing.medium("m 5.6 125", "4 125", "unload");
    }

    @Test
    void yAloneDoesWhatWasAsked() {
        assertEquals(
                Roll.State.FINISHED, asked().press(Key.typed("y")).roll("R0001").state());
    }

    @Test
    void nAloneLeavesAllAsItWas() {
        Playing day = asked().press(Key.typed("n"));
        assertEquals(Roll.State.OPEN, day.roll("R0001").state());
        assertTrue(day.shoot().question().isEmpty());
        assertEquals("All is left as it was.", day.said());
    }

    @ParameterizedTest(name = "\"{0}\" and Enter")
    @ValueSource(strings = {"y", "ye", "yes"})
    void theWholeWordAndEnterAreTheSameAnswer(String word) {
        Playing day = asked().type(word).press(Key.Name.ENTER);
        assertEquals(Roll.State.FINISHED, day.roll("R0001").state());
        assertEquals("", day.prompt());
        assertEquals(Session.Page.SHOOT, day.page());
        assertTrue(day.said().startsWith("R0001 finished"), day.said());
    }

    @Test
    void anEnterLongAfterIsOneOfItsOwn() {
        Playing day = asked().press(Key.typed("n")).pass(3000).press(Key.Name.ENTER);
        assertEquals(Session.Page.ACTIONS, day.page());
    }

    @ParameterizedTest(name = "\"{0}\" is typed whole, and the question is withdrawn")
    @ValueSource(strings = {"note bow seat", "n bow seat", "nd8", "no film left"})
    void aLongerWordThatBeginsWithNIsTyped(String line) {
        Playing day = asked().type(line);
        assertEquals(line, day.prompt());
        assertEquals(Roll.State.OPEN, day.roll("R0001").state());
    }

    @ParameterizedTest(name = "y, then \"{0}\"")
    @ValueSource(strings = {"ev 11", "spot 9", "8 250"})
    void aLineRightBehindAYesIsTypedWhole(String line) {
        Playing day = asked().press(Key.typed("y")).type(line);
        assertEquals(line, day.prompt());
    }

    @Test
    void aSpaceRightAfterALogsAFrame() {
        Playing day = Playing.medium("4 125", "x17").press(Key.typed("y"));
        int frames = day.frames();
        assertEquals(frames + 1, day.press(Key.typed(" ")).pass(1000).frames());
    }

    @Test
    void whatIsPastedIsNoAnswer() {
        Playing day = asked();
        for (String letter : new String[] {"y", "e", "l", "l", "o", "w"}) {
            day.burst(Key.typed(letter));
        }
        assertEquals("yellow", day.prompt());
        assertEquals(Roll.State.OPEN, day.roll("R0001").state());
    }

    @Test
    void inHelpALetterLooksUp() {
        Playing day = asked().press(Key.Name.F1).type("y");
        assertEquals("y", day.prompt());
        assertEquals(Roll.State.OPEN, day.roll("R0001").state());
    }
}
