package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import takeup.message.Key;
import takeup.roll.Frame;
import takeup.session.Playing;
import takeup.session.Session;

/** The word slate: a frame of its own kind, and the sheet to photograph. */
class SlateCommandTest {
    @Test
    void slateLogsOneFrameOfItsKindAndShowsTheSheet() {
        Playing day = Playing.medium("m 5.6 125", "slate ; stroke side");
        Frame frame = day.roll("R0001").frames().get(0);
        assertEquals(Frame.Kind.SLATE, frame.kind());
        assertEquals(Optional.of("stroke side"), frame.note());
        assertTrue(frame.exposure().at().isPresent()
                && frame.exposure().setting().aperture().isEmpty());
        assertEquals(Optional.of(ScreenAction.Sheet.SLATE), day.shoot().view().sheet());
        assertEquals(15, day.roll("R0001").framesLeft());
        assertEquals(1, day.roll("R0001").framesExposed(), "it comes back as a scan");
    }

    @Test
    void theNextSpaceIsTheFrameWithTheSettingInHandAndTakesTheSheetAway() {
        Playing day = Playing.medium("m 5.6 125", "set 4 250", "slate").space();
        assertEquals(Optional.empty(), day.shoot().view().sheet());
        assertEquals(
                "f/4 1/250",
                day.roll("R0001")
                                .frames()
                                .get(1)
                                .exposure()
                                .setting()
                                .aperture()
                                .orElseThrow() + " "
                        + day.roll("R0001")
                                .frames()
                                .get(1)
                                .exposure()
                                .setting()
                                .time()
                                .orElseThrow());
    }

    @Test
    void helpAndBackLeaveTheShootScreenWithoutTheSheet() {
        Playing day = Playing.medium("slate").press(Key.Name.F1);
        assertEquals(Session.Page.HELP, day.page());
        assertEquals(Optional.empty(), day.press(Key.Name.ESCAPE).shoot().view().sheet());
    }

    @Test
    void undoTakesTheFrameBackAndLeavesTheSheet() {
        Playing day = Playing.medium("slate").press(Key.ctrl('z'));
        assertEquals(0, day.frames());
        assertEquals(Optional.empty(), day.shoot().view().sheet());
    }

    @Test
    void slateShowShowsItAgainAndLogsNothing() {
        Playing day = Playing.medium("slate", "4 125", "slate show");
        assertEquals(2, day.frames());
        assertEquals(Optional.of(ScreenAction.Sheet.SLATE), day.shoot().view().sheet());
        assertEquals(Optional.empty(), day.press(Key.Name.ESCAPE).shoot().view().sheet());
    }

    @Test
    void whatIsShownIsSaidAndNotWhatWasSaidBefore() {
        assertEquals(
                "The slate of R0001 is frame 1.",
                Playing.medium("slate", "4 125", "slate show")
                        .shoot()
                        .lastAnswer()
                        .text());
        assertTrue(Playing.medium("4 125", "slate clock")
                .shoot()
                .lastAnswer()
                .text()
                .startsWith("The clock is on the screen"));
    }

    @Test
    void slateNeedsAFilmAndSlateShowASlate() {
        assertTrue(Shooting.medium("4 125").refused("slate show").contains("no slate on R0001 yet"));
        assertTrue(Shooting.medium("4 125").refused("slate 7").contains("slate show"));
        assertTrue(Shooting.medium("4 125").refused("slate show ; again").contains("takes no note"));
    }

    @Test
    void aFrameThatWasLoggedAsASpaceCanBeCalledASlateAfterwards() {
        assertEquals(
                Frame.Kind.SLATE,
                Playing.medium("m 5.6 125", ".", "fix 1 slate")
                        .roll("R0001")
                        .frames()
                        .get(0)
                        .kind());
        assertEquals(
                Frame.Kind.EXPOSED,
                Playing.medium("slate", "fix 1 exposed")
                        .roll("R0001")
                        .frames()
                        .get(0)
                        .kind());
    }
}
