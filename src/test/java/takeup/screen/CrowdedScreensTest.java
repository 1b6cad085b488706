package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.ShippedShelf;
import takeup.advice.StandingWarnings;
import takeup.grid.Size;
import takeup.kit.Kit;
import takeup.kit.Warning;
import takeup.message.Key;
import takeup.report.SetupText;
import takeup.session.Playing;
import takeup.session.Session;

/** Screens on which there is more to say than room: what must be read is there all the same. */
class CrowdedScreensTest {
    private static Playing crowded() {
        return Playing.of(
                "cam 35",
                "load bw400 @800 push 1",
                "cam 645 2",
                "load bw100 @80",
                "cam 645 1",
                "load cn400",
                "lens 150",
                "filter yellow and nd0.9",
                "bias +1/3",
                "hold f5.6",
                "tube 30mm",
                "flash on",
                "tripod on");
    }

    @Test
    void standingWarningsAreNotCutByTheWordsBesideThem() {
        Session shoot = crowded().later(26 * 60).shoot();
        for (Warning.Code code : StandingWarnings.of(shoot.shown(), shoot.now())) {
            shows(code.standing(), shoot, 80, 24);
        }
    }

    @Test
    void allThatIsNotNeutralIsThereAt80By24() {
        shows("TRIPOD", crowded().lines("5.6 60 85mm 3m").shoot(), 80, 24);
    }

    @Test
    void whyAKeyDoesNothingIsSaidAmongTheActionsToo() {
        Playing day = crowded().press(Key.Name.ENTER);
        day.press(Key.Name.BACKSPACE);
        shows("! this is the first step: Esc goes back", day.shoot(), 80, 24);
        assertTrue(!Screen.render(day.press(Key.Name.DOWN).shoot(), 80, 24)
                .toString()
                .contains("first step"));
        shows("Ctrl-C again, or quit, leaves", day.press(Key.ctrl('c')).shoot(), 80, 24);
    }

    @Test
    void theAgeOfAPushedRollIsWhole() {
        shows(
                "in since 2026-09-12",
                Playing.of("cam 35", "load bw400 @800 push 1").later(26 * 60).shoot(),
                80,
                24);
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
    void thePairIsNotCutInTheBigViewAt40By12() {
        Session shoot = Playing.medium("routine skip", "5.6 125 x19", "yes", "routine skip")
                .press(Key.Name.F10)
                .shoot();
        shows("3 past the end, unload · f/5.6 1/125", shoot, 40, 12);
        shows("3 past the end · rewind or wind off, then unload · f/5.6 1/125", shoot, 80, 24);
    }

    @Test
    void framesLeftStandsOnEveryPage() {
        for (Key.Name name : new Key.Name[] {Key.Name.F2, Key.Name.F3, Key.Name.F4, Key.Name.F5, Key.Name.F1}) {
            Session shoot =
                    Playing.medium("4 125").press(name).press(Key.Name.F9).shoot();
            shows("15 left", shoot, 80, 24);
            shows("15 left", shoot, 40, 12);
        }
    }

    @Test
    void framesPastTheEndAreWholeAtTwentyColumns() {
        shows("3 past the end", Playing.medium("4 125 x19", "yes").shoot(), 20, 1);
    }

    @Test
    void framesPastTheEndAreNotDrawnOverByThePair() {
        shows(
                "123 past the end",
                Playing.medium("4 125 x99", "yes", "x40").press(Key.Name.ESCAPE).shoot(),
                80,
                24);
    }

    @Test
    void notSavedIsWholeAtTwentyColumns() {
        shows(
                "NOT SAVED",
                Playing.medium("4 125").disk(Playing.Disk.FULL).space().shoot(),
                20,
                1);
    }

    @Test
    void atTwentyByFiveTheFrameAndThePairToSetStandThere() {
        shows("frame 7", States.busy().shoot(), 20, 5);
        shows("f/5.6 1/60", States.busy().shoot(), 20, 5);
        shows("frame 7  f/5.6 1/60", States.of("not saved"), 20, 5);
        shows("quit leaves; 40x12 shows more", States.busy().shoot(), 39, 11);
    }

    @Test
    void whatTabCouldCompleteIsSeenUntilTheLineIsTypedOn() {
        Playing day = Playing.of("cam 645").type("lo").press(Key.Name.TAB);
        for (String word : new String[] {"load", "lost"}) {
            shows(word, day.shoot(), 40, 12);
        }
        shows(
                "xyz is no word known here",
                Playing.of("cam 645")
                        .type("lo")
                        .press(Key.Name.TAB)
                        .press(Key.Name.BACKSPACE)
                        .press(Key.Name.BACKSPACE)
                        .type("xyz")
                        .shoot(),
                80,
                24);
    }

    private static void shows(String fact, Session shoot, int columns, int rows) {
        String text = Screen.render(shoot, columns, rows).text();
        assertTrue(text.contains(fact), "\"" + fact + "\" is missing at " + columns + "x" + rows + ":\n" + text);
    }

    @Test
    void whyAFrameIsNotSavedIsReadableInSmallWindows() {
        Session shoot = Playing.medium("4 125")
                .disk(Playing.Disk.FULL)
                .lines("x12 ; the eight comes in under the bridge", "8 125")
                .shoot();
        shows("NOT SAVED: Frames 2 to 13 on R0001: the disk is full; free some space", shoot, 80, 24);
        shows(
                "NOT SAVED: Frames 2 to 13 on R0001, and 1 more: the disk is full; free some space. Held, and "
                        + "tried again at each key",
                shoot,
                120,
                40);
        shows("NOT SAVED: Frames 2 to 13 on R0001", shoot, 40, 12);
        shows("the disk is full; free some space", shoot, 40, 12);
    }

    @Test
    void theNumberOfTheNextFrameDoesNotTouchThatOfTheFirst() {
        Session shoot = Playing.of("cam 35", "load bw400", "routine skip", "m 4 125", "4 125")
                .press(Key.ctrl('l'))
                .shoot();
        assertEquals(
                List.of(),
                Screen.render(shoot, 40, 14)
                        .text()
                        .lines()
                        .filter(it -> it.startsWith(" 12 "))
                        .toList());
        shows("  2  5    10   15", shoot, 40, 14);
        shows(" 1 2     5", shoot, 80, 24);
    }

    @Test
    void aStripThatIsLongerThanTheScreenDoesNotLookAsIfTheRollEndedThere() {
        shows(
                "◇································· …",
                Playing.of("cam half", "load bw400", "routine skip", "m 4 125", "4 125 x3")
                        .shoot(),
                40,
                14);
        shows("···▌", Playing.of("cam half", "load bw400", "4 125 x3").shoot(), 80, 24);
        shows(
                "…▃▃▃",
                Playing.of("cam half", "load bw400", "routine skip", "m 4 125", "4 125 x50")
                        .shoot(),
                40,
                14);
    }

    @Test
    void framesThatTheFilmWentPastUnknownAreNoFramesToCome() {
        shows(
                "?   ?   ◇   ·",
                Playing.medium("m 5.6 125", "5.6 125 x4", "counter 7").shoot(),
                80,
                24);
    }

    @Test
    void aCameraThatSetsItselfSaysSoAt40By12() {
        Session shoot =
                Playing.of("cam compact", "load cn160").press(Key.Name.ESCAPE).shoot();
        shows("sets itself", shoot, 40, 12);
        assertTrue(!Screen.render(shoot, 40, 12).text().contains("nothing set"));
    }

    @Test
    void whileTheTimerRunsTheErrorOfTheSettingIsNotSaidOfItAt40By12() {
        Session shoot = Playing.medium("m 5.6 125", "set 11 500", "time").shoot();
        shows("open · Space closes", shoot, 40, 12);
        assertTrue(!Screen.render(shoot, 40, 12).text().contains("for this light"));
    }

    @Test
    void aQuestionStaysOnTheScreenWhileAYesWouldAnswerIt() {
        Playing day = Playing.medium("4 125", "unload").press(Key.Name.F9);
        for (Size size : List.of(new Size(40, 12), new Size(80, 24), new Size(120, 40))) {
            shows("Unload anyway", day.shoot(), size.columns(), size.rows());
            shows("y yes  n no", day.shoot(), size.columns(), size.rows());
        }
        Playing frames = Playing.medium("4 125", "unload").press(Key.Name.F2);
        shows("y yes  n no", frames.shoot(), 40, 12);
        assertTrue(!Screen.render(frames.shoot(), 80, 24).text().contains("Esc shoot"));
        String withdrawn =
                Screen.render(day.press(Key.Name.ESCAPE).shoot(), 80, 24).text();
        assertTrue(!withdrawn.contains("y yes") && !withdrawn.contains("Unload anyway"), withdrawn);
    }

    @Test
    void theRatingThatTheLoadRoutineAsksAboutIsWholeAt40Columns() {
        Session shoot = Playing.of("cam 645", "load cn400").shoot();
        shows("is it cn400, rated 200?", shoot, 40, 12);
        shows("is it cn400 in 645 back 1, rated 200?", shoot, 80, 24);
    }

    @Test
    void whereAFilmIsInAndItsLightKnownTheHintIsNotToTakeAReading() {
        Session shoot = Playing.of("cam 645", "load cn400", "m 5.6 125", "4 125", "cam 35", "load bw400")
                .shoot();
        shows("nothing set", shoot, 80, 24);
        shows("Down and Enter take one below; or type 4 125", shoot, 80, 24);
    }

    @Test
    void whatAnOldNumberWasDoesNotTouchTheErrorBeforeIt() {
        shows(
                "11.0 under (was 3)",
                Playing.medium("m 5.6 125", "5.6 125 x2", "22 1/16000", "yes", "drop 1")
                        .shoot(),
                80,
                24);
    }

    @Test
    void aCautionAboutAnOldFlashOrAPushIsWholeAt80Columns() {
        shows(
                " FLASH VOLTAGE  an old unit can harm the contacts: keep to the camera's limit",
                Playing.medium("4 125", "flash on").shoot(),
                80,
                24);
        shows(
                " PUSH?  push 1 stop but not rated above box: dense; normal, or fix roll @N",
                Playing.medium("4 125", "push 1").shoot(),
                80,
                24);
    }

    @Test
    void whatALineWarnsOfIsSeenAlsoWhereItIsTypedOnAList() {
        for (Key.Name name : new Key.Name[] {Key.Name.F2, Key.Name.F3, Key.Name.F4, Key.Name.F5}) {
            Session shoot =
                    Playing.medium("4 125 x15").press(name).lines("flash on").shoot();
            shows(" FLASH VOLTAGE  an old unit can harm the contacts: keep to the camera's limit", shoot, 80, 24);
            shows(" FLASH VOLTAGE  an old unit", shoot, 40, 12);
        }
    }

    @Test
    void howAPaperFormEndsIsWholeAt80Columns() {
        shows("done ends it.", Playing.two("4 125", "paper r1").shoot(), 80, 24);
    }

    @Test
    void theKeysThatAnswerTheLoadRoutineStandInTheFooterOfSmallWindows() {
        Session shoot = Playing.of("cam 645", "load cn400")
                .press(Key.Name.ESCAPE)
                .lines("unload yes", "cam 35", "load bw400")
                .shoot();
        for (Size size : List.of(new Size(40, 12), new Size(80, 24), new Size(120, 40))) {
            shows("is it bw400 in 35, rated 400?", shoot, size.columns(), size.rows());
            shows("Enter yes  n no  Esc skip", shoot, size.columns(), size.rows());
        }
    }

    @Test
    void howManyCamerasMoreThereAreIsNotCutAtFortyColumns() {
        Session shoot = Playing.of(
                        "cam 645 1",
                        "load cn400 120 @200",
                        "cam 645 2",
                        "load bw400 120 @800 push 1",
                        "cam 35",
                        "load bw400",
                        "cam 66",
                        "load cn400",
                        "routine skip",
                        "x11")
                .press(Key.Name.F9)
                .shoot();
        shows("645 back 1 · cn400 · 16 left · 2 more", shoot, 40, 13);
        shows("645 back 1 · cn400 EI 200 · 16 left     645 back 2 · bw400 EI 800 · 16 left", shoot, 80, 24);
        shows("35 · bw400 EI 400 · 36 left", shoot, 80, 24);
    }

    @Test
    void theFrameThatIsShownAsAnExampleCanBeTypedOnThisCamera() {
        for (String camera : List.of("66", "35", "645")) {
            Playing day = Playing.of("cam " + camera, "load cn400");
            String example = SetupText.example(day.shoot().shown());
            shows("type " + example + ", or a reading", day.shoot(), 80, 24);
            day.lines(example);
            assertEquals(
                    1,
                    day.shoot().shown().rollInHand().orElseThrow().frames().size(),
                    day.shoot().lastAnswer().text());
        }
        assertEquals(
                "4 100", SetupText.example(Playing.of("cam 66").shoot().shown()), "the old series of times has no 125");
    }

    @Test
    void whatToDoWithACardOfARatingTestIsNotCut() {
        Session shoot = Playing.medium("m ev11", "rating").shoot();
        shows("logs it.", shoot, 80, 24);
        shows(
                "Card 2 of 6: R0001 1/2 STOP UNDER",
                Playing.medium("m ev11", "rating").space().press(Key.Name.F9).shoot(),
                40,
                12);
    }

    @Test
    void whatElseIsWrongWithAFrameIsNamedNotCounted() {
        Session shoot = Playing.medium("m 5.6 125", "4 125 x11", "8 8").shoot();
        shows("\n DENSE  4 stops over box speed", shoot, 80, 24);
        shows("\n FEW LEFT  4 left", shoot, 80, 24);
        shows("\n HAND-HELD  1/8 is long for the hand", shoot, 80, 24);
        shows("a\ntripod lifts it (tripod on)", shoot, 80, 24);
    }

    /** The shipped profiles, one camera and one stock with names as long as a profile may have. */
    private record LongNames(ShippedShelf shipped) implements Kit.ProfileSource {
        @Override
        public List<String> keys(Kit.Sort sort) {
            return shipped.keys(sort);
        }

        @Override
        public Optional<Kit.File> file(Kit.Sort sort, String key) {
            return shipped.file(sort, key)
                    .map(it -> new Kit.File(
                            it.name(),
                            it.text()
                                    .replaceFirst(
                                            "\"name\": \"[^\"]*\"",
                                            "\"name\": \"" + "the oldest of the boathouse ".repeat(2) + "\""),
                            it.problem()));
        }
    }

    @Test
    void aLongNameHidesNeitherTheBackNorThePushNorWhatIsLeft() {
        Session shoot = Playing.with(
                        new LongNames(new ShippedShelf()),
                        "cam 645 1",
                        "load cn400",
                        "cam 35",
                        "load bw400 @800 push 1",
                        "cam 645 2",
                        "load bw400 @800 push 1")
                .shoot();
        shows("645, back 2 · ", shoot, 80, 24);
        shows("PUSH 1 STOP (rated 800, box 400)", shoot, 80, 24);
        shows("PUSH 1 STOP (rated", shoot, 40, 12);
        shows("EI 800  R0003", shoot, 40, 17);
    }

    @Test
    void ofANoteBesideTheSuggestionsMoreThanAWordIsSeen() {
        shows(
                "on meter  the cox …",
                Playing.medium("m 5.6 125", "5.6 125 ; the cox laughs").shoot(),
                80,
                24);
        shows(
                "1 f/5.6 1/125  the cox laughs",
                Playing.medium("m 5.6 125", "flash on", "5.6 125 ; the cox laughs")
                        .shoot(),
                80,
                24);
    }

    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"40,12", "80,24", "120,40"})
    void whatWasSaidIsWholeUntilTheNextKeyAndMoreShowsItAgain(int columns, int rows) {
        Playing day = Playing.two("m 5.6 125", "set 2.8 8", "x17", "y");
        List<String> said = new ArrayList<>(List.of(day.said()));
        day.shoot().lastAnswer().warnings().forEach(it -> said.add(it.text()));
        assertTrue(said.size() > 3, said.toString());
        // Where figures take all rows the first one is all that is seen until it is asked for.
        String first = words(day, columns, rows);
        day.press(Key.ctrl('l'));
        assertTrue(
                rows == 12 || words(day, columns, rows).contains("… more"),
                "its beginning, and how the rest comes back");
        String again = words(day.lines("more"), columns, rows);
        String rest = words(day.lines("more"), columns, rows);
        for (String sentence : said) {
            int half = sentence.indexOf(' ', sentence.length() / 2);
            assertTrue(rows == 12 || first.contains(sentence), first);
            assertTrue((again + rest).contains(sentence.substring(half)), again + rest);
        }
    }

    private static String words(Playing day, int columns, int rows) {
        return Screen.render(day.shoot(), columns, rows).text().replaceAll("\\s+", " ");
    }
}
