package takeup.roll;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static takeup.roll.SampleRoll.and;
import static takeup.roll.SampleRoll.corrected;
import static takeup.roll.SampleRoll.dropped;
import static takeup.roll.SampleRoll.exposedAgain;
import static takeup.roll.SampleRoll.filledIn;
import static takeup.roll.SampleRoll.inserted;
import static takeup.roll.SampleRoll.logged;
import static takeup.roll.SampleRoll.movedHere;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The numbers of the frames, as the counter of the camera shows them. {@code 3<2} is frame 3 that was logged as 2,
 * {@code 2*2} is exposed twice; 16 frames are on the roll.
 */
class FrameNumbersTest {
    @Test
    void aFreshRollBeginsAtOneWithAllItsFramesLeft() {
        check("", 1, 16);
    }

    @Test
    void eachFrameMovesTheCounterByOne() {
        check("1 2 3", 4, 13, logged(1, 3));
    }

    @Test
    void theRollGoesOnPastItsLastFrame() {
        check("1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17", 18, -1, logged(1, 17));
    }

    @Test
    void aFrameBeforeTheFirstMarkIsUsedToo() {
        check("0 1", 2, 15, logged(0, 1));
        assertEquals(2, SampleRoll.roll(logged(0, 1)).framesUsed());
    }

    @Test
    void theCounterOfTheCameraIsTakenAtItsWord() {
        check("1 2 3", 6, 11, and(logged(1, 3), new RollEvent.CounterShown(6)));
        assertEquals(
                5,
                SampleRoll.roll(and(logged(1, 3), new RollEvent.CounterShown(6)))
                        .framesUsed());
    }

    @Test
    void whatTheCounterShowedIsKeptBesideWhatTheLogCameTo() {
        Roll roll = SampleRoll.roll(and(logged(1, 3), new RollEvent.CounterShown(6)));
        CounterCheck check = roll.counterChecks().get(0);
        assertEquals(4, check.expected());
        assertEquals(6, check.shown());
        assertEquals(SampleRoll.LOADED_AT.plusMinutes(4), check.at());
    }

    @Test
    void theCounterMayGoBackAndANumberComesTwice() {
        check("1 2 3 2", 3, 14, and(logged(1, 3), new RollEvent.CounterShown(2), logged(2)));
    }

    @Test
    void ofTwoFramesWithOneNumberTheLaterIsMeant() {
        RollEvent[] events = and(logged(1, 3), new RollEvent.CounterShown(2), logged(2));
        check("1 2 3 2-lost", 3, 14, and(events, corrected(2, 2, SettingPatch.kind(Frame.Kind.LOST))));
    }

    @ParameterizedTest(name = "before {0}: {1}")
    @CsvSource({"1, 1-blank 2<1 3<2 4<3", "2, 1 2-blank 3<2 4<3", "3, 1 2 3-blank 4<3"})
    void aForgottenFramePushesThoseBehindItUp(int before, String frames) {
        check(frames, 5, 12, and(logged(1, 3), inserted(before)));
    }

    @Test
    void aForgottenFrameBeforeOneThatIsNotThereComesLast() {
        check("1 2 3 4-blank", 5, 12, and(logged(1, 3), inserted(4)));
    }

    @Test
    void aFrameThatTheCounterWentPastFillsItsGapAndMovesNoOther() {
        check("1 2 5 6", 7, 10, and(logged(1, 2), new RollEvent.CounterShown(5), logged(5), logged(6)));
        check("1 2 3 5", 6, 11, and(logged(1, 2), new RollEvent.CounterShown(5), logged(5), filledIn(3)));
        check("1 2 4", 5, 12, and(logged(1, 2), new RollEvent.CounterShown(5), filledIn(4)));
    }

    @Test
    void aFrameIsInsertedAtTheEndWhereTheCounterSkippedNothing() {
        check("1 2 3", 4, 13, and(logged(1, 2), filledIn(3)));
    }

    @ParameterizedTest(name = "without {0} to {1}: {2}")
    @CsvSource({
        "1, 1, 1<2 2<3 3<4 4<5, 5",
        "2, 3, 1 2<4 3<5, 4",
        "5, 5, 1 2 3 4, 5",
        "1, 5, '', 1",
        "6, 6, 1 2 3 4 5, 6",
        "4, 6, 1 2 3 4 5, 6"
    })
    void framesThatNeverWereAreTakenOutAndThoseBehindThemMoveDown(int from, int to, String frames, int next) {
        check(frames, next, 17 - next, and(logged(1, 5), dropped(from, to)));
    }

    @Test
    void aFrameThatComesBackToItsNumberIsNoLongerCalledRenumbered() {
        check("1 2 3", 4, 13, and(logged(1, 3), inserted(2), dropped(2, 2)));
    }

    @Test
    void aFrameRemembersTheNumberThatItWasFirstLoggedUnder() {
        check("1-blank 2<1-blank 3<1", 4, 13, logged(1), inserted(1), inserted(1));
    }

    @Test
    void aFrameFromAnotherRollComesBehindTheLast() {
        check("1 2 3", 4, 13, and(logged(1, 2), movedHere(3)));
    }

    @Test
    void aDoubleExposureGoesOnTheNewestFrameAndMovesNoCounter() {
        check("1 2*2", 3, 14, and(logged(1, 2), new RollEvent.DoubleAnnounced(1), exposedAgain("")));
        check("1 2*3", 3, 14, and(logged(1, 2), exposedAgain(""), exposedAgain("")));
    }

    @Test
    void thereIsNothingToExposeAgainOnAFreshRoll() {
        check("", 1, 16, exposedAgain(""));
    }

    @Test
    void onlyBlankFramesDoNotComeBackFromTheLab() {
        RollEvent[] events = and(
                logged(1, 5),
                corrected(1, 1, SettingPatch.kind(Frame.Kind.BLANK)),
                corrected(2, 2, SettingPatch.kind(Frame.Kind.UNLOGGED)),
                corrected(3, 3, SettingPatch.kind(Frame.Kind.LOST)),
                corrected(4, 4, SettingPatch.kind(Frame.Kind.SLATE)));
        check("1-blank 2-unlogged 3-lost 4-slate 5", 6, 11, events);
        assertEquals(4, SampleRoll.roll(events).framesExposed());
        assertEquals(5, SampleRoll.roll(events).framesUsed());
    }

    private static void check(String frames, int next, int left, RollEvent... events) {
        Roll roll = SampleRoll.roll(events);
        assertEquals(frames, SampleRoll.frames(roll));
        assertEquals(next, roll.next(), "the number on the counter");
        assertEquals(left, roll.framesLeft(), "frames left");
    }
}
