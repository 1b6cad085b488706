package takeup.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.command.Outcome;
import takeup.command.Shooting;
import takeup.message.Key;
import takeup.roll.Roll;
import takeup.session.LastAnswer;
import takeup.session.Playing;
import takeup.session.Session;

/** What is typed, pasted, cleared and called back. */
class PromptLineTest {
    @Test
    void theCursorMovesByWholeCharactersAlsoByThoseOfTwoHalves() {
        Playing day = Playing.medium().type("; \uD83D\uDEA3\u0627\u0644");
        assertEquals(6, day.shoot().prompt().cursor());
        day.press(Key.Name.LEFT).press(Key.Name.LEFT).press(Key.Name.LEFT);
        assertEquals(2, day.shoot().prompt().cursor());
        day.press(Key.Name.DELETE);
        assertEquals("; \u0627\u0644", day.prompt());
        day.press(Key.Name.END).press(Key.Name.BACKSPACE).type("\uD83D\uDEA3").press(Key.Name.BACKSPACE);
        assertEquals("; \u0627", day.prompt());
    }

    @Test
    void emojiAndArabicReachTheNoteLetterForLetter() {
        Playing day = Playing.medium("4 125 ; \uD83D\uDEA3 \u0645\u0631\u062D\u0628\u0627 caf\u00e9");
        assertEquals(
                Optional.of("\uD83D\uDEA3 \u0645\u0631\u062D\u0628\u0627 caf\u00e9"),
                day.roll("R0001").frames().get(0).note());
    }

    @Test
    void homeEndAndTheirCtrlKeysGoToTheEnds() {
        Playing day = Playing.medium()
                .type("125")
                .press(Key.Name.HOME)
                .type("4")
                .press(Key.typed(" "))
                .press(Key.Name.END)
                .type("0");
        assertEquals("4 1250", day.prompt());
        day.press(Key.ctrl('a')).press(Key.Name.DELETE).press(Key.ctrl('e')).press(Key.Name.BACKSPACE);
        assertEquals(" 125", day.prompt());
    }

    @Test
    void theCursorStaysWithinTheLine() {
        Playing day = Playing.medium()
                .type("4")
                .press(Key.Name.LEFT)
                .press(Key.Name.LEFT)
                .press(Key.Name.BACKSPACE)
                .press(Key.Name.RIGHT)
                .press(Key.Name.RIGHT)
                .press(Key.Name.DELETE);
        assertEquals("4", day.prompt());
        assertEquals(1, day.shoot().prompt().cursor());
    }

    @Test
    void ctrlWDeletesTheWordBeforeTheCursorAndCtrlUAll() {
        Playing day = Playing.medium().type("load cn400 ").press(Key.ctrl('w'));
        assertEquals("load ", day.prompt());
        day.press(Key.ctrl('u'));
        assertEquals("", day.prompt());
        assertEquals("load ", day.press(Key.Name.PAGE_UP).prompt());
    }

    @Test
    void backspaceOnAnEmptyPromptDeletesNoFrame() {
        Playing day = Playing.medium("4 125 x3")
                .press(Key.Name.BACKSPACE)
                .press(Key.Name.DELETE)
                .press(Key.Name.BACKSPACE);
        assertEquals(3, day.frames());
    }

    @Test
    void aRefusedLineStaysOnThePromptWithItsReason() {
        Playing day = Playing.medium("8 11");
        assertEquals("8 11", day.prompt());
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
        assertEquals(0, day.frames());
        day.press(Key.Name.BACKSPACE).press(Key.Name.BACKSPACE).type("125").press(Key.Name.ENTER);
        assertEquals("f/8 1/125", day.framePair());
    }

    @Test
    void theReasonGoesOnceTheLineIsMended() {
        Playing day = Playing.medium("8 11").press(Key.Name.BACKSPACE);
        assertEquals(LastAnswer.Tone.QUIET, day.tone());
        assertEquals("", day.said());
    }

    @Test
    void theEchoSaysWhatALineWouldDoBeforeEnterAndLogsNothing() {
        Playing day = Playing.medium().type("4 125 ; bow seat");
        Outcome.Accepted does = (Outcome.Accepted) day.shoot().echo().orElseThrow();
        assertTrue(
                does.answer().text().contains("f/4 1/125")
                        && does.answer().text().contains("bow seat"),
                does.answer().text());
        assertEquals(0, day.frames());
        assertEquals(Optional.empty(), Playing.medium().shoot().echo());
    }

    @Test
    void inHelpTheEchoSaysWhatEnterWouldDoButDoesNotScoldASearch() {
        Playing day = Playing.medium("4 125").press(Key.Name.F1).type("undo");
        assertTrue(day.shoot().echo().orElseThrow() instanceof Outcome.Accepted);
        day.type(" x");
        assertEquals(Optional.empty(), day.shoot().echo());
    }

    @Test
    void escClearsThePromptAndPgUpBringsItBack() {
        Playing day = Playing.medium().type("4 125 ; half a thought").press(Key.Name.ESCAPE);
        assertEquals("", day.prompt());
        assertTrue(day.said().contains("PgUp"), day.said());
        assertEquals("4 125 ; half a thought", day.press(Key.Name.PAGE_UP).prompt());
    }

    @Test
    void pgUpGoesFurtherBackAndPgDnComesForward() {
        Playing day = Playing.medium("4 125", "8 250").type("5.6 60 ; half");
        day.press(Key.Name.PAGE_UP);
        assertEquals("8 250", day.prompt());
        assertEquals("4 125", day.press(Key.Name.PAGE_UP).prompt());
        assertEquals("8 250", day.press(Key.Name.PAGE_DOWN).prompt());
        assertEquals("5.6 60 ; half", day.press(Key.Name.PAGE_DOWN).prompt());
        assertEquals(2, day.frames());
    }

    @Test
    void pgDnOnAHalfTypedLineLeavesItAloneAndSaysWhy() {
        Playing day = Playing.medium("4 125").type("8 25").press(Key.Name.PAGE_DOWN);
        assertEquals("8 25", day.prompt());
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
    }

    @Test
    void atTheOldestLinePgUpSaysSo() {
        Playing day = Playing.medium("4 125");
        for (int i = 0; i < 3; i++) {
            day.press(Key.Name.PAGE_UP);
        }
        assertEquals("cam 645", day.prompt());
        day.press(Key.Name.PAGE_UP);
        assertEquals("cam 645", day.prompt());
        assertTrue(day.said().contains("older"), day.said());
        assertTrue(Playing.of().press(Key.Name.PAGE_UP).said().contains("nothing was typed"));
    }

    @Test
    void theLinesThatCanBeCalledBackAreCounted() {
        Playing day = Playing.medium();
        for (int i = 0; i < 300; i++) {
            day.type("4 " + i).press(Key.Name.ESCAPE);
        }
        assertEquals(200, day.shoot().prompt().past().size());
        assertEquals("4 299", day.press(Key.Name.PAGE_UP).prompt());
    }

    @Test
    void ctrlZAndCtrlYLeaveThePromptAlone() {
        Playing day = Playing.medium("4 125", "8 250").type("5.6 ; half a th").press(Key.Name.LEFT);
        PromptLine before = day.shoot().prompt();
        day.press(Key.ctrl('z'));
        assertEquals(1, day.frames());
        assertEquals(before, day.shoot().prompt());
        day.press(Key.ctrl('y'));
        assertEquals(2, day.frames());
        day.press(Key.ctrl('y'));
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
        assertEquals(before, day.shoot().prompt());
    }

    @Test
    void pastedTextRunsNothing() {
        Playing day = Playing.medium().paste("4 125\n8 250\r\n5.6 60\r");
        assertEquals(0, day.frames());
        assertEquals("4 125\n8 250\n5.6 60", day.prompt());
        assertEquals(List.of("4 125", "8 250", "5.6 60"), day.shoot().prompt().lines());
    }

    @Test
    void severalPastedLinesRunInOrderAfterEnter() {
        Playing day =
                Playing.medium().paste("4 125\n\n8 250 ; bow seat\n. x2\n").press(Key.Name.ENTER);
        assertEquals("1 f/4 1/125, 2 f/8 1/250, 3 f/8 1/250, 4 f/8 1/250", Shooting.frames(day.roll("R0001")));
        assertEquals("", day.prompt());
    }

    @Test
    void severalPastedLinesRunInOrderAlsoOnASlowDisk() {
        Playing day = Playing.medium()
                .disk(Playing.Disk.SLOW)
                .paste("4 125\n8 250\nundo\n5.6 60")
                .press(Key.Name.ENTER);
        assertEquals(0, day.frames());
        day.disk(Playing.Disk.WELL);
        assertEquals("1 f/4 1/125, 2 f/5.6 1/60", Shooting.frames(day.roll("R0001")));
    }

    @Test
    void aRefusedLineAmongSeveralStaysWithTheRest() {
        Playing day = Playing.medium().paste("4 125\n8 11\n5.6 60\nundo").press(Key.Name.ENTER);
        assertEquals(1, day.frames());
        assertEquals("8 11\n5.6 60\nundo", day.prompt());
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
        day.press(Key.Name.ESCAPE);
        assertEquals(1, day.frames());
    }

    @Test
    void aQuestionBehindAFrameIsNotTalkedOverByTheFramesAnswer() {
        Playing day = Playing.medium()
                .disk(Playing.Disk.SLOW)
                .paste("4 125\nunload")
                .press(Key.Name.ENTER)
                .disk(Playing.Disk.WELL);
        assertEquals(1, day.frames());
        assertEquals(LastAnswer.Tone.QUESTION, day.tone());
        assertEquals(Roll.State.FINISHED, day.lines("yes").roll("R0001").state());
    }

    @Test
    void pastedQuitLeavesNothingBehindItUndoneInSilence() {
        Playing day = Playing.medium().paste("4 125\nquit\n8 250").press(Key.Name.ENTER);
        assertTrue(day.isOver());
        assertTrue(day.farewell().contains("NOT DONE: 8 250"), day.farewell());
        assertFalse(day.farewell().contains("NOT DONE: quit"), day.farewell());
    }

    @Test
    void aPastedLineCanBeTypedOn() {
        Playing day = Playing.medium().paste("4 125\n").type(" ; bow seat").press(Key.Name.ENTER);
        assertEquals(1, day.frames());
        assertEquals(Optional.of("bow seat"), day.roll("R0001").frames().get(0).note());
    }

    @ParameterizedTest(name = "ten thousand pasted characters log nothing on the page of {0}")
    @EnumSource(Session.Page.class)
    void aLargePasteLogsNothingOnAnyPage(Session.Page page) {
        Playing day = Playing.medium("4 125");
        day.press(Playing.keyTo(page));
        Random random = new Random(10);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 10_000; i++) {
            text.append(random.nextInt(40) == 0 ? '\n' : (char) (' ' + random.nextInt(95)));
        }
        int asked = day.seen().size();
        day.paste(text.toString());
        assertEquals(asked, day.seen().size(), "nothing is asked of the outside");
        assertEquals(1, day.allFrames());
        // What is pasted over the actions is for the prompt behind them.
        assertEquals(page == Session.Page.ACTIONS ? Session.Page.SHOOT : page, day.page());
        day.paste("   \n  \n").press(Key.Name.ESCAPE).pass(500);
        assertEquals(1, day.allFrames());
        assertEquals("", day.prompt());
    }

    @Test
    void aPasteThatThePromptCannotHoldIsNotCutButRefused() {
        Playing day = Playing.medium().type("4").paste("x".repeat(30_000));
        assertEquals("4", day.prompt());
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
        assertTrue(day.said().contains("20000"), day.said());
    }

    @Test
    void aLineLongerThanAllowedIsRefusedAndStays() {
        String line = "4 125 ; " + "oar ".repeat(300) + "end";
        Playing day = Playing.medium().paste(line).press(Key.Name.ENTER);
        assertEquals(0, day.frames());
        assertEquals(line, day.prompt());
        assertTrue(day.said().contains("1000"), day.said());
    }

    @ParameterizedTest(name = "\"{0}\" is answered in words")
    @ValueSource(
            strings = {
                "\u0000",
                "\u001b[2J",
                "\u202e4 125",
                "\u06f4 \u06f1\u06f2\u06f5",
                "\uD83D\uDEA3",
                "\uD83D",
                "f",
                "x",
                "@",
                "b",
                "1/",
                "ev",
                ",",
                "4 125 \u0085"
            })
    void oddTextIsAnsweredInWordsAndNothingThrows(String text) {
        Playing day = Playing.medium().paste(text).press(Key.Name.ENTER);
        assertFalse(day.said().isBlank());
    }

    @Test
    void aQuestionIsAnsweredByYes() {
        Playing day = Playing.medium("4 125", "unload");
        assertEquals(LastAnswer.Tone.QUESTION, day.tone());
        assertEquals(1, day.frames());
        day.paste("yes");
        assertTrue(
                day.shoot().echo().orElseThrow() instanceof Outcome.Accepted does
                        && does.answer().event().equals("unload"),
                "the echo says what yes would do");
        day.press(Key.Name.ENTER);
        assertEquals(Roll.State.FINISHED, day.roll("R0001").state());
        assertEquals("yes", day.lines("yes").prompt(), "a second yes has nothing to answer");
    }

    @ParameterizedTest(name = "\"{0}\" withdraws the question")
    @ValueSource(strings = {"8 250", "say", "no", "frames", "lens 45"})
    void anyOtherLineWithdrawsTheQuestion(String line) {
        Playing day = Playing.medium("4 125", "unload", line).press(Key.Name.ESCAPE);
        assertFalse(day.said().contains("unloads"), day.said());
        day.lines("yes");
        assertEquals(Roll.State.OPEN, day.roll("R0001").state());
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
    }

    @Test
    void noIsAnAnswerToAQuestionAndNoMisspeltWord() {
        Playing day = Playing.medium("4 125", "unload", "no");
        assertEquals("All is left as it was.", day.said());
        assertEquals("", day.prompt());
        assertEquals(Roll.State.OPEN, day.roll("R0001").state());
        assertEquals(LastAnswer.Tone.REFUSAL, day.lines("no").tone(), "a second no has nothing to answer");
    }

    @ParameterizedTest(name = "{0} withdraws the question and says so")
    @ValueSource(strings = {"ESCAPE", "CTRL", "SPACE"})
    void keysThatStepBackWithdrawTheQuestionToo(String key) {
        Playing day = Playing.medium("4 125", "unload");
        day.press(key.equals("ESCAPE") ? Key.of(Key.Name.ESCAPE) : key.equals("CTRL") ? Key.ctrl('c') : Key.typed(" "))
                .pass(200);
        assertFalse(day.tone() == LastAnswer.Tone.QUESTION, day.said());
        day.lines("yes");
        assertEquals(Roll.State.OPEN, day.roll("R0001").state());
    }

    @Test
    void whatAYesDidIsOnTheScreenWithTheTimeThatTheDiskHas() {
        Playing day = Playing.medium("4 125", "unload").later(5).lines("yes");
        assertEquals(day.fromTheFiles().rolls(), day.shoot().saved().rolls());
        assertTrue(day.roll("R0001")
                .finishedAt()
                .orElseThrow()
                .isAfter(day.roll("R0001").loadedAt().plusMinutes(5)));
    }

    @Test
    void aYesAmongPastedLinesAnswersTheLineBeforeIt() {
        Playing day = Playing.medium("4 125").paste("unload\nyes\nload bw400").press(Key.Name.ENTER);
        assertEquals(
                "R0002", day.shoot().shown().rollInHand().orElseThrow().id().toString());
    }

    @Test
    void ctrlCClearsFirstSaysHowToLeaveAndLeavesAtTheSecond() {
        Playing day = Playing.medium("4 125").type("8 250 ; half a").press(Key.ctrl('c'));
        assertEquals("", day.prompt());
        assertFalse(day.isOver());
        assertTrue(day.said().contains("PgUp") && day.said().contains("Ctrl-C again"), day.said());
        assertEquals("8 250 ; half a", day.press(Key.Name.PAGE_UP).prompt());
        day.press(Key.ctrl('c'));
        assertFalse(day.isOver(), "another key came in between");
        day.press(Key.ctrl('c'));
        assertTrue(day.isOver());
        assertTrue(day.farewell().contains("R0001 in 645 back 1: 1 logged, 15 left"), day.farewell());
        assertTrue(day.farewell().contains("the data folder"), day.farewell());
    }

    @Test
    void onAnEmptyPromptTheFirstCtrlCSaysHowToLeaveToo() {
        Playing day = Playing.medium("4 125").press(Key.ctrl('c'));
        assertFalse(day.isOver());
        assertTrue(day.said().contains("Ctrl-C again") && day.said().contains("on disk"), day.said());
        day.space();
        assertEquals(2, day.frames());
        day.press(Key.ctrl('c'));
        assertFalse(day.isOver());
    }

    @Test
    void onAListWhatCtrlCClearedIsSaidToComeBackOnTheShootScreen() {
        Playing day = Playing.medium("4 125").press(Key.Name.F2).type("8 250").press(Key.ctrl('c'));
        assertTrue(day.said().contains("on the shoot screen"), day.said());
        assertEquals("8 250", day.press(Key.Name.ESCAPE).press(Key.Name.PAGE_UP).prompt());
    }
}
