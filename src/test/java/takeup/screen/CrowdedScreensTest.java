package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import takeup.kit.Warning;
import takeup.shoot.Key;
import takeup.shoot.Playing;
import takeup.shoot.Shoot;
import takeup.shoot.State;

/** Screens on which there is more to say than room: what must be read is there all the same. */
class CrowdedScreensTest {
    private static Playing crowded() {
        return Playing.of("cam 35", "load bw400 @800 push 1", "cam 645 2", "load bw100 @80", "cam 645 1", "load cn400", "lens 150", "filter yellow and nd0.9", "bias +1/3",
                "hold f5.6", "tube 30mm", "flash on", "tripod on");
    }

    @Test
    void standingWarningsAreNotCutByTheWordsBesideThem() {
        Shoot shoot = crowded().later(26 * 60).shoot();
        for (Warning.Code code : State.standing(shoot.shown(), shoot.now())) {
            shows(code.standing(), shoot, 80, 24);
        }
    }

    @Test
    void allThatIsNotNeutralIsThereAt80By24() {
        shows("TRIPOD", crowded().lines("5.6 60 85mm 3m").shoot(), 80, 24);
    }

    @Test
    void theAgeOfAPushedRollIsWhole() {
        shows("in since 2026-09-12", Playing.of("cam 35", "load bw400 @800 push 1").later(26 * 60).shoot(), 80, 24);
    }

    @Test
    void theAgeIsCutWithASignOrNotAtAll() {
        shows("yesterday", Playing.medium().later(26 * 60).shoot(), 80, 24);
    }

    @Test
    void framesLeftStandsInTheBigViewAt40By12() {
        shows("16 left", Playing.medium().press(Key.Name.F10).press(Key.Name.F9).shoot(), 40, 12);
    }

    @Test
    void framesLeftStandsOnEveryPage() {
        for (Key.Name name : new Key.Name[] {Key.Name.F2, Key.Name.F3, Key.Name.F4, Key.Name.F5, Key.Name.F1}) {
            Shoot shoot = Playing.medium("4 125").press(name).press(Key.Name.F9).shoot();
            shows("15 left", shoot, 80, 24);
            shows("15 left", shoot, 40, 12);
        }
    }

    @Test
    void framesPastTheEndAreWholeAtTwentyColumns() {
        shows("3 past the end", Playing.medium("4 125 x19").shoot(), 20, 1);
    }

    @Test
    void framesPastTheEndAreNotDrawnOverByThePair() {
        shows("123 past the end", Playing.medium("4 125 x99", "x40").press(Key.Name.ESCAPE).shoot(), 80, 24);
    }

    @Test
    void notSavedIsWholeAtTwentyColumns() {
        shows("NOT SAVED", Playing.medium("4 125").disk(Playing.Disk.FULL).space().shoot(), 20, 1);
    }

    @Test
    void atTwentyByFiveTheFrameAndThePairToSetStandThere() {
        shows("frame 7", States.busy().shoot(), 20, 5);
        shows("f/5.6 1/60", States.busy().shoot(), 20, 5);
        shows("frame 7  f/5.6 1/60", States.of("not saved"), 20, 5);
    }

    @Test
    void whatTabCouldCompleteIsSeenUntilTheLineIsTypedOn() {
        Playing day = Playing.of("cam 645").type("lo").press(Key.Name.TAB);
        for (String word : new String[] {"load", "lost"}) {
            shows(word, day.shoot(), 40, 12);
        }
        shows("xyz is no word known here", Playing.of("cam 645").type("lo").press(Key.Name.TAB).press(Key.Name.BACKSPACE).press(Key.Name.BACKSPACE).type("xyz").shoot(), 80, 24);
    }

    private static void shows(String fact, Shoot shoot, int columns, int rows) {
        String text = Screen.render(shoot, columns, rows).text();
        assertTrue(text.contains(fact), "\"" + fact + "\" is missing at " + columns + "x" + rows + ":\n" + text);
    }
}
