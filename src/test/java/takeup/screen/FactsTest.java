package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.advice.ExposureInHand;
import takeup.advice.StandingWarnings;
import takeup.command.CommandInfo;
import takeup.dispatch.CommandTable;
import takeup.exposure.Stops;
import takeup.grid.CharacterSet;
import takeup.grid.Grid;
import takeup.grid.Size;
import takeup.grid.TextRole;
import takeup.kit.Warning;
import takeup.lettering.BigText;
import takeup.message.Key;
import takeup.panel.Layout;
import takeup.report.RollText;
import takeup.session.KeyHelp;
import takeup.session.Playing;
import takeup.session.Playing.Disk;
import takeup.session.Session;

/** What a photographer must find on the screen, asked fact by fact; how it is laid out is not asked. */
class FactsTest {
    private static final List<Size> LARGE = List.of(new Size(80, 24), new Size(120, 40));
    private static final List<Size> ALL = List.of(new Size(80, 24), new Size(120, 40), new Size(40, 12));

    static List<String> moments() {
        return States.names();
    }

    @ParameterizedTest(name = "\"{0}\" stands on the screen")
    @ValueSource(
            strings = {
                "645 reflex",
                "back 1",
                "150mm f/3.5",
                "Colour negative 400",
                "meter at 200",
                "C-41, NORMAL (rated 200, box 400)",
                "R0003",
                "next frame",
                "10 left",
                "EV 11.3",
                "over box",
                "35 · bw400 EI 800 · 36 left",
                "645 back 2 · bw100 EI 80 · 16 left",
                "FILTER yellow",
                "BIAS +1/3",
                "HOLD f/5.6",
                "TUBE 30mm",
                "TRIPOD",
                "15:00",
                "\n>",
                "Space same again",
                "f/4.8",
                "newest frames",
                "f/5.6"
            })
    void theWholeStateOfTheRoll(String fact) {
        shows(fact, States.busy().shoot(), LARGE);
    }

    @ParameterizedTest(name = "\"{0}\" stands also on a small screen")
    @ValueSource(strings = {"EI 200", "R0003", "next frame", "10 left", "15:00", "\n>", "Space same again"})
    void theHeartOfItAt40By12(String fact) {
        shows(fact, States.busy().press(Key.ctrl('l')).shoot(), ALL.subList(2, 3));
        LargeLetters.assertDrawn(Screen.render(States.busy().shoot(), 40, 12), "645·1", "CN400");
    }

    @Test
    void theErrorOfTheSettingInHandIsThereInTenths() {
        Session shoot = States.busy().shoot();
        shows(Stops.error(ExposureInHand.error(shoot.shown()).orElseThrow()), shoot, ALL);
        shows("0.5 over", Playing.medium("m 5.6.5 125", "set 5.6 125").shoot(), ALL);
        shows("0.4 under", Playing.medium("m 5.6 125", "set 5.6.4 125").shoot(), ALL);
        shows("ON METER", Playing.medium("m 5.6 125", "set 5.6 125").shoot(), ALL);
    }

    /** Rated 200 on a box of 400 is one stop; the way of reading is named where it is a habit that shifts exposures. */
    @ParameterizedTest(name = "{0} after {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            m 5.6 125                 | set 5.6 60   | 2.0 over box: rating 1.0, error 1.0
            m 5.6 125                 | set 5.6 500  | 1.0 under box: rating 1.0, error 2.0 less
            m low ev 11 13            | bias 0       | 1.0 over box: rating 1.0, read low
            m spot 9 z3               | bias 0       | 1.0 over box: rating 1.0, spot on zone 3
            m camera 5.6 125          | bias 0       | 1.0 over box: rating 1.0, camera meter
            m sky shade               | bias 0       | 1.0 over box: rating 1.0, daylight rule
            m high ev 11 13           | fix roll @400 | 1.0 over box: error 1.0, read high
            """)
    void theSumNamesEachHabitThatAddsToIt(String reading, String then, String sum) {
        Session shoot = Playing.medium(reading, then).shoot();
        shows(sum, shoot, LARGE);
        assertFalse(Screen.render(shoot, 120, 40).text().contains(sum + ","));
    }

    @Test
    void allHabitsTogetherAreSaidInFullWhereThereIsRoom() {
        Session shoot = Playing.medium("m reflected low ev 11 13", "bias +1").shoot();
        shows("1.0 over box: rating 1.0 bias 1.0 error 1.0 less", shoot, LARGE.subList(0, 1));
        shows("1.0 over box: rating 1.0, bias 1.0, error 1.0 less, read low, reflected", shoot, LARGE.subList(1, 2));
    }

    @Test
    void theCounterIsDrawnLargeAndSoIsThePairToSet() {
        Session shoot = States.busy().shoot();
        isDrawn(shoot, 80, 24, large("7", 1));
        isDrawn(shoot, 40, 12, small("7"));
        LargeLetters.assertDrawn(Screen.render(shoot, 40, 12), "f/5.6 1/60");
        isDrawn(shoot, 120, 40, large("7", 2));
        isDrawn(shoot, 80, 24, small("f/5.6 1/60"));
        isDrawn(shoot, 100, 30, large("f/5.6 1/60", 1));
        isDrawn(shoot, 120, 40, large("f/5.6 1/60", 1));
        isDrawn(States.busy().press(Key.Name.F10).shoot(), 80, 24, large("7", 2));
    }

    @Test
    void pushIsSaidInWordsAndABarePlusOneNowhere() {
        Session shoot = Playing.of("cam 35", "load bw400 @800 push 1", "m 5.6 125", "4 125")
                .shoot();
        shows("PUSH 1 STOP (rated 800, box 400)", shoot, LARGE);
        for (Size size : LARGE) {
            assertFalse(text(shoot, size).contains("+1 "), "a lab and a photographer read +1 differently");
        }
    }

    @Test
    void furtherWarningsAreNamed() {
        Session shoot = Playing.medium("m 5.6 125", "4 125 x13", "11 500").shoot();
        List<String> rest = shoot.lastAnswer().warnings().stream()
                .skip(1)
                .map(it -> it.code().standing())
                .toList();
        assertFalse(rest.isEmpty());
        for (String word : rest) {
            shows("\n " + word + "  ", shoot, LARGE.subList(0, 1));
        }
    }

    @Test
    void theAgeOfARollStandsThereFromTheSecondDayOn() {
        shows("in since 2026-09-12", States.of("the second day"), LARGE);
        for (Size size : LARGE) {
            assertFalse(text(States.busy().shoot(), size).contains("in since"));
        }
    }

    @Test
    void theAgeOfTheLightGrows() {
        shows("just now", States.busy().shoot(), LARGE);
        shows("12 min old", States.busy().later(12).shoot(), LARGE);
        shows("no light reading today", Playing.medium().shoot(), LARGE);
    }

    @ParameterizedTest(name = "{0}: each warning that stands, stands there as a word")
    @MethodSource("moments")
    void whatWarnsStandsAsAWord(String moment) {
        Session shoot = States.of(moment);
        if (!shoot.view().big()) {
            for (Warning.Code code : StandingWarnings.of(shoot.shown(), shoot.now())) {
                shows(code.standing(), shoot, LARGE);
            }
        }
    }

    @ParameterizedTest(name = "on the page of {0} what is not saved is said in a row of its own")
    @CsvSource({"SHOOT", "FRAMES", "ROLLS", "PLAN", "BAG", "HELP"})
    void notSavedStandsOnEveryPage(Session.Page page) {
        Session shoot = States.on(page, "not saved");
        assertEquals(page, shoot.view().page());
        shows("NOT SAVED: Frame 7 on R0003", shoot, ALL);
        for (Size size : ALL) {
            Grid grid = Screen.render(shoot, size.columns(), size.rows());
            int row = row(grid, "NOT SAVED:");
            assertEquals(TextRole.ALARM, grid.role(0, row));
            assertEquals(TextRole.ALARM, grid.role(size.columns() - 1, row));
        }
        shows("NOT SAVED: Frame 7", States.of("the counter across the room, not saved"), ALL);
    }

    @Test
    void notSavedStandsOnTheSmallestScreensToo() {
        for (int rows = 1; rows < 12; rows++) {
            shows("NOT SAVED", States.of("not saved"), List.of(new Size(30, rows)));
        }
    }

    @Test
    void theEchoStandsThereBeforeEnter() {
        shows("Frame 7 on R0003: f/4", States.of("a line being typed"), ALL);
        shows("8 11", States.busy().type("8 11").shoot(), ALL);
        shows("Unload anyway?", States.busy().type("unload").shoot(), LARGE);
        shows("3 lines", States.of("several pasted lines"), ALL);
        shows(
                "reading",
                States.busy()
                        .lines("unload yes", "load cn400")
                        .restart()
                        .disk(Disk.SLOW)
                        .lines("fix r3 1 8")
                        .shoot(),
                LARGE);
    }

    @Test
    void answersQuestionsAndRefusalsAreSaid() {
        shows("10 left on R0003", States.of("a question"), ALL);
        shows("8 11", States.of("a refused line"), ALL);
        shows("saving", States.of("being saved"), ALL);
        shows("READ ONLY: another takeup", States.of("read only"), LARGE);
        shows("R0002.journal:41:", States.of("something could not be read"), ALL);
    }

    @Test
    void theFirstSpaceOnAnotherCameraNamesItInCapitals() {
        shows("35MM MECHANICAL REFLEX", States.of("another camera just taken up"), LARGE);
        shows("35MM MECHANICAL", States.of("another camera just taken up"), ALL);
        assertFalse(text(States.busy().press(Key.Name.TAB).space().space().shoot(), ALL.get(0))
                .contains("35MM MECHANICAL"));
    }

    @Test
    void theHighlightedSuggestionIsMarkedAndItsRowIsShown() {
        Session shoot = States.of("a highlighted suggestion");
        for (Size size : LARGE) {
            Grid grid = Screen.render(shoot, size.columns(), size.rows());
            int marked = 0;
            for (int row = 0; row < grid.rows(); row++) {
                marked += grid.role(Layout.of(grid).margin(), row) == TextRole.CHOSEN ? 1 : 0;
            }
            assertEquals(1, marked);
        }
        shows(
                shoot.advice()
                        .orElseThrow()
                        .suggestions()
                        .get(shoot.view().chosen())
                        .aperture()
                        .toString(),
                shoot,
                LARGE);
    }

    @Test
    void theEndOfALongLineIsWhatIsSeen() {
        Playing day = Playing.medium().paste("4 125 ; " + "oars in the water ".repeat(30) + "the end");
        for (Size size : ALL) {
            Grid grid = Screen.render(day.shoot(), size.columns(), size.rows());
            assertTrue(grid.text().contains("the end"), grid.text());
            assertEquals(size.columns() - 1, grid.cursorColumn(), 1);
        }
        day.press(Key.Name.HOME);
        shows("> 4 125 ; oars", day.shoot(), ALL);
    }

    @Test
    void theCursorStandsBehindWideCharacters() {
        Grid grid = Screen.render(Playing.medium().type("; \u6f15\u8247").shoot(), 80, 24);
        assertEquals(2 + 2 + 4, grid.cursorColumn());
    }

    /** What the hand cannot hold is said beside the pair, not only in its row of the table. */
    @Test
    void aTimeTooLongForTheHandStandsAsAWarningUntilThereIsATripod() {
        Playing day = Playing.two("m 5.6 2");
        shows("HAND-HELD", day.shoot(), LARGE);
        day.press(Key.pasted("tripod on"), Key.of(Key.Name.ENTER));
        for (Size size : LARGE) {
            assertFalse(Screen.render(day.shoot(), size.columns(), size.rows())
                    .text()
                    .contains("HAND-HELD"));
        }
    }

    /** The filter by its name and no more, once, and a lens that is not the body's first. */
    @Test
    void aFramesRowNamesItsFilterAndItsLensOnce() {
        Playing day = Playing.two("m 5.6 125", "lens 150", "filter yellow", ".");
        String rows =
                Screen.render(day.press(Key.of(Key.Name.F2)).shoot(), 120, 40).text();
        String newest = rows.lines()
                .filter(it -> it.contains("yellow") && it.contains("f/"))
                .findFirst()
                .orElse(rows);
        assertEquals(newest.indexOf("yellow"), newest.lastIndexOf("yellow"), newest);
        assertTrue(newest.contains("150 mm, yellow"), newest);
    }

    @Test
    void framesRollsAndHelpShowWhatTheyAreCalledFor() {
        Session frames = States.on(Session.Page.FRAMES, "blank, lost, unlogged");
        for (String fact :
                List.of("R0001", "blank", "lost", "unlogged", "f/8", "1/250", "(was 3)", "counter showed 20")) {
            shows(fact, frames, LARGE);
        }
        Session rolls = States.on(Session.Page.ROLLS, "everything in use");
        for (String fact : List.of("R0001", "R0002", "R0003", "bw400", "EI 800", "6/16", "open")) {
            shows(fact, rolls, LARGE);
        }
        Session help = Playing.medium().press(Key.Name.F1).type("tripod").shoot();
        shows("tripod on", help, ALL);
        assertFalse(text(help, LARGE.get(0)).contains("Ctrl-Z undo  (u)"));
        assertFalse(
                text(help, LARGE.get(0)).contains("a frame was forgotten"),
                "a search leaves out what it does not mean");
    }

    @Test
    void theCautionsStandAtTheEndOfHelp() {
        String help = Screen.render(Playing.medium().press(Key.Name.F1).shoot(), 160, 200)
                .text();
        assertTrue(help.contains("Never look at the sun through a finder or a spot meter."), help);
        assertTrue(
                help.contains("Old flash units can carry a high trigger voltage, old cells can leak: "
                        + "keep to the makers' instructions and local rules."),
                help);
    }

    @Test
    void everyKeyOfTheTableStandsInHelp() {
        for (Session.Page page : List.of(Session.Page.SHOOT, Session.Page.FRAMES, Session.Page.ROLLS)) {
            Playing day = Playing.medium("4 125");
            day = page == Session.Page.SHOOT ? day : day.press(page == Session.Page.FRAMES ? Key.Name.F2 : Key.Name.F3);
            String text =
                    Screen.render(day.press(Key.Name.F1).shoot(), 120, 200).text();
            for (KeyHelp key : KeyHelp.all()) {
                boolean isHere = key.pages().contains(page.name().toLowerCase(Locale.ROOT));
                assertEquals(
                        isHere,
                        text.lines()
                                .anyMatch(
                                        it -> it.strip().startsWith(key.key() + " ") && it.endsWith(" " + key.does())),
                        key.key() + " in help for " + page);
            }
            for (CommandInfo word : CommandTable.words()) {
                assertTrue(
                        text.contains(word.example()) && text.contains(word.summary()),
                        word.word() + " is missing in help");
            }
        }
    }

    @Test
    void whatSteersATerminalIsShownAndNotObeyed() {
        shows("\\u{1b}[2J", States.on(Session.Page.FRAMES, "hostile notes"), List.of(new Size(200, 24)));
        shows("\\u{1b}[31m", States.of("something could not be read"), LARGE);
    }

    @ParameterizedTest(name = "{0}: in ASCII nothing turns into a question mark")
    @MethodSource("moments")
    void inAsciiTheSameFactsStandThere(String moment) {
        for (Session.Page page : Session.Page.values()) {
            Session shoot = States.on(page, moment);
            for (Size size : ALL) {
                Grid grid = Screen.render(shoot, size.columns(), size.rows());
                String ascii = CharacterSet.ASCII.of(grid).text();
                // Blocks are painted as grounds: PainterTest sees that nothing of them is sent.
                assertTrue(ascii.chars().allMatch(it -> "\n█▀▄".indexOf(it) >= 0 || it >= ' ' && it < 0x7f), ascii);
                assertTrue(count(ascii, it -> it == '?') <= count(grid.text(), it -> it == '?'), ascii);
            }
        }
        Session shoot = States.of(moment);
        String left = shoot.shown().rollInHand().map(RollText::left).orElse("");
        assertTrue(CharacterSet.ASCII.of(Screen.render(shoot, 80, 24)).text().contains(left));
    }

    private static long count(String text, Predicate<Integer> which) {
        return text.chars().filter(which::test).count();
    }

    private static void shows(String fact, Session shoot, List<Size> sizes) {
        for (Size size : sizes) {
            String text = text(shoot, size);
            assertTrue(
                    text.contains(fact),
                    "at " + size.columns() + "x" + size.rows() + " \"" + fact + "\" is missing:\n" + text);
        }
    }

    private static String text(Session shoot, Size size) {
        return Screen.render(shoot, size.columns(), size.rows()).text() + "\n";
    }

    private static int row(Grid grid, String words) {
        return List.of(grid.text().split("\n", -1)).stream()
                .map(it -> it.contains(words))
                .toList()
                .indexOf(true);
    }

    private static List<String> large(String text, int scale) {
        Grid grid = Grid.of(BigText.width(text, scale), 5 * scale);
        BigText.draw(grid, 0, 0, text, scale, TextRole.READOUT);
        return List.of(grid.text().split("\n"));
    }

    private static List<String> small(String text) {
        Grid grid = Grid.of(BigText.smallWidth(text), 3);
        BigText.drawSmall(grid, 0, 0, text, TextRole.READOUT);
        return List.of(grid.text().split("\n"));
    }

    /** Somewhere in the picture these lines stand below each other. */
    private static void isDrawn(Session shoot, int columns, int rows, List<String> lines) {
        List<String> picture =
                List.of(Screen.render(shoot, columns, rows).text().split("\n", -1));
        for (int row = 0; row + lines.size() <= picture.size(); row++) {
            for (int column = 0; column < columns; column++) {
                int same = 0;
                while (same < lines.size()
                        && picture.get(row + same)
                                .startsWith(
                                        lines.get(same),
                                        Math.min(column, picture.get(row + same).length()))) {
                    same++;
                }
                if (same == lines.size()) {
                    return;
                }
            }
        }
        throw new AssertionError("not drawn at " + columns + "x" + rows + ":\n" + String.join("\n", lines) + "\nin\n"
                + String.join("\n", picture));
    }

    /** Warnings, a moment, other cameras, what stays on, and a message over two rows. */
    @Test
    void fiveRowsOfTheTableStandAt80By24WhateverElseIsOn() {
        Playing day = Playing.two(
                        "plan 15:10 Prize-giving wants 12 must",
                        "m 5.6 125",
                        "filter yellow",
                        "bias +1/3",
                        "tripod on",
                        "with Anna, Ben at boathouse",
                        "x13",
                        "cam 645leaf",
                        "load cn800",
                        "cam 645")
                .later(2)
                .press(Key.ctrl('l'));
        String text = text(day.shoot(), new Size(80, 24));
        long rows = text.lines().filter(it -> it.matches("[ •] f/.*")).count();
        assertTrue(rows >= 5, rows + " rows in " + text);
    }

    @ParameterizedTest(name = "{0}; {1}")
    @CsvSource(delimiter = '|', textBlock = """
            bias 0                                                | 5.6 125 x17
            bias 0                                                | 5.6 125 x18 ; Ines, bow seat, the old shell
            bias 0                                                | 2.8 30 x18
            filter yellow                                         | 4 125 x18
            plan 15:10 Prize-giving wants 12 must                 | 5.6 125 x17
            plan 15:10 Prize-giving wants 12; with Anna, Ben      | 5.6 60 x20
            """)
    void fiveRowsOfTheTableStandAboveWhatIsSaidOfFramesPastTheEnd(String before, String frames) {
        Playing day = Playing.medium("m 5.6 125", "routine skip");
        day.lines(before.split("; ")).lines(frames, "yes");
        assertTrue(day.said().contains("past the end"));
        String text = text(day.shoot(), new Size(80, 24));
        long rows = text.lines().filter(it -> it.matches("[ •] f/.*")).count();
        assertTrue(rows >= 5, rows + " rows in " + text);
        for (Warning warning : day.shoot().lastAnswer().warnings()) {
            assertTrue(text.replaceAll("\\s+", " ").contains(warning.text()), warning + " in " + text);
        }
        text = text(day.press(Key.ctrl('l')).shoot(), new Size(80, 24));
        assertTrue(text.contains("▌"), "the strip is back once that was read: " + text);
    }

    @Test
    void theMetersOwnPairIsSeenHoweverFarTheHighlightGoes() {
        Playing day = Playing.of("cam 35", "load bw400", "m 8 125");
        for (int i = 0; i < 12; i++) {
            day.press(Key.Name.DOWN);
            String text = text(day.shoot(), new Size(80, 24));
            assertTrue(text.lines().anyMatch(it -> it.matches("[ •►][ \\[]f/8 +1/125.*")), i + " down: " + text);
        }
    }
}
