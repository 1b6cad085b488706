package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Grid;
import takeup.grid.Style;
import takeup.grid.TextRole;
import takeup.grid.Theme;

class PainterTest {
    private static final String HIDE = "<?25l";
    private static final String SHOW = "<?25h";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private Painter painter = new Painter(out, ColourDepth.NONE, CharacterSet.UNICODE, Theme.MONO);

    @Test
    void theFirstPictureIsDrawnWholeOnACleanScreen() throws IOException {
        writes(HIDE + "<0m<2J<1;1Hf/11  <2;1H      ", grid("f/11"));
    }

    @Test
    void thePictureThatIsAlreadyThereWritesNothing() throws IOException {
        painter.show(withCursor(grid("f/11"), 2, 1));
        writes("", withCursor(grid("f/11"), 2, 1));
    }

    @Test
    void onlyWhatDiffersIsWritten() throws IOException {
        painter.show(grid("f/11"));
        writes("<1;3H<0m22", grid("f/22"));
    }

    /** A move within a row is shorter than one to a row and column, and a few cells are shorter than either. */
    @Test
    void aShortGapIsWrittenAndALongOneIsGoneOver() throws IOException {
        painter.show(row("1.0 over   at noon 5.6"));
        writes("<1;1H<0m0.5 under", row("0.5 under  at noon 5.6"));
        writes("<1;1H<0m1<18C8", row("1.5 under  at noon 8.6"));
        writes("<1;1H<0m2.0", row("2.0 under  at noon 8.6"));
    }

    @Test
    void ofAnotherRoleOnTheSameGroundOnlyTheColourGoesOut() throws IOException {
        painter = new Painter(
                out,
                ColourDepth.INDEXED,
                CharacterSet.UNICODE,
                Theme.named("dark").orElseThrow());
        painter.show(keys("F1 help", 2, 5));
        writes("<1;2H<0;38;5;222;48;5;235m2<38;5;251m find", keys("F2 find", 2, 5));
    }

    /** What is on the screen is the same whichever way it came there. */
    @Test
    void noStyleIsLeftStandingInTheNext() {
        for (String name : new String[] {"dark", "sun", "night", "mono"}) {
            for (ColourDepth depth : ColourDepth.values()) {
                Theme theme = Theme.named(name).orElseThrow();
                for (TextRole one : TextRole.values()) {
                    for (TextRole other : TextRole.values()) {
                        Style from = theme.style(one).at(depth);
                        Style to = theme.style(other).at(depth);
                        assertEquals(
                                attributes(from.sequence() + to.sequence()),
                                attributes(from.sequence() + to.sequenceAfter(from)),
                                () -> name + " " + depth + ": " + one + " to " + other);
                    }
                }
            }
        }
    }

    /** A line below the letters of a plate would cross the letters that are painted on it. */
    @Test
    void aPlateOfAlarmHasNoLineBetweenItsLetters() throws IOException {
        painter.show(grid(""));
        Grid plate = grid("");
        plate.put(0, 0, "A ", TextRole.ALARM);
        writes("<1;1H<0;1;4;7mA<0;1;7m ", plate);
    }

    @Test
    void theCursorAloneMovesWithoutAPicture() throws IOException {
        painter.show(withCursor(grid(""), 0, 0));
        writes("<2;4H", withCursor(grid(""), 3, 1));
        writes(HIDE, grid(""));
        writes("<1;1H" + SHOW, withCursor(grid(""), 0, 0));
    }

    @Test
    void theCursorIsHiddenWhileThePictureChanges() throws IOException {
        painter.show(withCursor(grid("a"), 1, 0));
        writes(HIDE + "<1;2H<0mb<1;3H" + SHOW, withCursor(grid("ab"), 2, 0));
    }

    @Test
    void anotherSizeOrAForgottenScreenIsDrawnWhole() throws IOException {
        painter.show(grid("f/11"));
        writes(HIDE + "<0m<2J<1;1Hf", Grid.of(1, 1), "f");
        painter.forget();
        writes(HIDE + "<0m<2J<1;1Hf", Grid.of(1, 1), "f");
    }

    @Test
    void aRowWithLettersOfDoubtfulWidthIsDrawnFromKnownPlaces() throws IOException {
        painter.show(grid("e\u0301 x"));
        writes("<1;1H<0me\u0301<1;2H y   ", grid("e\u0301 y"));
    }

    @Test
    void aWideCharacterIsWrittenOnce() throws IOException {
        painter.show(grid(""));
        writes("<1;1H<0m漕<1;3Hx   ", grid("漕x"));
    }

    @Test
    void ownGlyphsNeedNoFurtherMoves() throws IOException {
        painter.show(grid(""));
        writes("<1;1H<0m──│", grid("──│"));
    }

    @Test
    void withoutColourNoColourIsAskedForInAnyTheme() throws IOException {
        painter = new Painter(
                out, ColourDepth.NONE, CharacterSet.UNICODE, Theme.named("dark").orElseThrow());
        painter.show(allLooks());
        assertFalse(written().contains("38;") || written().contains("48;"), written());
        assertTrue(written().contains("<0;1;7m"), "an alarm stands out without colour");
    }

    @Test
    void colourGoesOutAsDeepAsTheTerminalHasIt() throws IOException {
        Theme dark = Theme.named("dark").orElseThrow();
        new Painter(out, ColourDepth.TRUE, CharacterSet.UNICODE, dark).show(allLooks());
        assertTrue(written().contains("38;2;"), written());
        out.reset();
        new Painter(out, ColourDepth.INDEXED, CharacterSet.UNICODE, dark).show(allLooks());
        assertTrue(written().contains("38;5;") && !written().contains("38;2;"), written());
    }

    @Test
    void anotherThemeDrawsEverythingAnew() throws IOException {
        painter = new Painter(
                out, ColourDepth.TRUE, CharacterSet.UNICODE, Theme.named("dark").orElseThrow());
        painter.show(grid("f/11"));
        painter.theme(Theme.MONO);
        writes(HIDE + "<0m<2J<1;1Hf/11  <2;1H      ", grid("f/11"));
    }

    /** Its colour is the terminal's affair: white in the dark, or lost on the paper. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"sun", "night"})
    void inTheSunAndAtNightTheCursorIsACellAndNotTheTerminals(String theme) throws IOException {
        painter = new Painter(
                out, ColourDepth.TRUE, CharacterSet.UNICODE, Theme.named(theme).orElseThrow());
        painter.show(withCursor(grid("ab"), 1, 0));
        Theme seen = Theme.named(theme).orElseThrow();
        String cursor = seen.style(TextRole.CURSOR)
                .at(ColourDepth.TRUE)
                .sequenceAfter(seen.style(TextRole.NORMAL).at(ColourDepth.TRUE))
                .replace("\u001b[", "<");
        assertTrue(written().contains(cursor + "b"), written());
        assertFalse(written().contains(SHOW), written());
        out.reset();
        painter.show(withCursor(grid("ab"), 2, 0));
        assertTrue(written().contains(cursor + " ") && !written().contains(cursor + "b"), written());
    }

    @Test
    void theCursorUnderAWideCharacterIsThatCharacter() {
        Grid drawn = withCursor(grid("漕x"), 0, 0).withCursorAs(TextRole.CURSOR);
        assertEquals("漕x", drawn.text());
        assertEquals(TextRole.CURSOR, drawn.role(0, 0));
        assertEquals(-1, drawn.cursorColumn());
    }

    @Test
    void inAsciiEveryByteIsAscii() throws IOException {
        painter = new Painter(out, ColourDepth.NONE, CharacterSet.ASCII, Theme.MONO);
        painter.show(grid("─ ½ é█"));
        assertTrue(written().chars().allMatch(it -> it < 0x7f), written());
    }

    @Test
    void inAsciiTheUpperHalfOfABlockIsAFilledCellAndTheLowerIsNot() throws IOException {
        painter = new Painter(out, ColourDepth.NONE, CharacterSet.ASCII, Theme.MONO);
        Grid grid = Grid.of(6, 2);
        grid.put(0, 0, "x▀▄█x", TextRole.READOUT);
        painter.show(grid);
        assertTrue(written().contains("x<7mg<27mo<7m <27mx"), written());
    }

    /**
     * Fonts leave a line free above the upper half block, which would cross a figure; below the lower one they do not.
     */
    @Test
    void ofBlocksTheLowerHalfIsWrittenAndTheUpperOneIsGround() throws IOException {
        painter = new Painter(out, ColourDepth.NONE, CharacterSet.UNICODE, Theme.MONO);
        Grid grid = Grid.of(6, 2);
        grid.put(0, 0, "x▀▄█x", TextRole.READOUT);
        painter.show(grid);
        assertTrue(written().contains("x<7m▄<27m▄<7m <27mx"), written());
    }

    private static Grid allLooks() {
        Grid grid = Grid.of(20, 1);
        for (TextRole look : TextRole.values()) {
            grid.put(look.ordinal(), 0, "x", look);
        }
        return grid;
    }

    private static Grid grid(String text) {
        Grid grid = Grid.of(6, 2);
        grid.put(0, 0, text, TextRole.NORMAL);
        return grid;
    }

    private static Grid row(String text) {
        Grid grid = Grid.of(30, 2);
        grid.put(0, 0, text, TextRole.NORMAL);
        return grid;
    }

    private static Grid keys(String text, int key, int rest) {
        Grid grid = Grid.of(30, 2);
        grid.put(
                grid.put(0, 0, text.substring(0, key), TextRole.KEY), 0, text.substring(key, key + rest), TextRole.BAR);
        return grid;
    }

    /** What letters look like behind some sequences: weight, line, reversal, colour, ground (ECMA-48, 8.3.117). */
    private static String attributes(String sequences) {
        String[] set = new String[5];
        for (String sequence : sequences.split("\u001b\\[")) {
            String[] parameters = sequence.replace("m", "").split(";");
            for (int i = 0; i < parameters.length && !sequence.isEmpty(); i++) {
                int one = Integer.parseInt(parameters[i]);
                if (one == 0) {
                    Arrays.fill(set, null);
                } else if (one == 27) {
                    set[2] = null;
                } else if (one == 38 || one == 48) {
                    int end = i + (parameters[i + 1].equals("5") ? 2 : 4);
                    set[one == 38 ? 3 : 4] = String.join(";", Arrays.copyOfRange(parameters, i, end + 1));
                    i = end;
                } else if (one < 10) {
                    set[one == 1 ? 0 : one == 4 ? 1 : 2] = parameters[i];
                } else {
                    set[one < 40 || one >= 90 && one < 100 ? 3 : 4] = parameters[i];
                }
            }
        }
        return Arrays.toString(set);
    }

    private static Grid withCursor(Grid grid, int column, int row) {
        grid.cursor(column, row);
        return grid;
    }

    private void writes(String expected, Grid grid, String text) throws IOException {
        grid.put(0, 0, text, TextRole.NORMAL);
        writes(expected, grid);
    }

    /** What was written, with {@code <} for ESC [. */
    private void writes(String expected, Grid grid) throws IOException {
        out.reset();
        painter.show(grid);
        assertEquals(expected, written());
    }

    private String written() {
        return out.toString(StandardCharsets.UTF_8).replace("\u001b[", "<");
    }
}
