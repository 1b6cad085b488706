package takeup.lettering;

import takeup.grid.Grid;
import takeup.grid.TextRole;

/**
 * Letters several rows high, for what is read across a room: frame numbers and the pair to set. A pixel is half a cell
 * high, so that it is nearly square; where such halves cannot be drawn, {@code Glyphs} keeps the shapes.
 */
public final class BigText {
    private static final String LETTERS = "0123456789f/.sm-+";

    /**
     * Ten rows of pixels for each letter, joined by blanks; a dot is an empty pixel. Drawn five rows high, or a
     * multiple.
     */
    private static final String[] LARGE = {
        ".####. ###### ##..## ##..## ##..## ##..## ##..## ##..## ###### .####.",
        "..## .### #### ..## ..## ..## ..## ..## ..## ..##",
        ".####. ###### ##..## ....## ...### ..###. .###.. ###... ###### ######",
        ".####. ###### ##..## ....## ..###. ..###. ....## ##..## ###### .####.",
        "...### ..#### .##.## ##..## ##..## ###### ###### ....## ....## ....##",
        "###### ###### ##.... ##.... #####. ###### ....## ##..## ###### .####.",
        ".####. ###### ##.... ##.... #####. ###### ##..## ##..## ###### .####.",
        "###### ###### ....## ....## ...##. ...##. ..##.. ..##.. .##... .##...",
        ".####. ###### ##..## ##..## .####. ###### ##..## ##..## ###### .####.",
        ".####. ###### ##..## ##..## ###### .##### ....## ##..## ###### .####.",
        "..### .#### .##.. .##.. ##### ##### .##.. .##.. .##.. .##..",
        "....# ...## ...## ..##. ..##. .##.. .##.. ##... ##... #....",
        ".. .. .. .. .. .. .. .. ## ##",
        "..... ..... ..... ..... .#### ##... .###. ..### ...## ####.",
        "........ ........ ........ ........ #######. ######## ##.##.## ##.##.## ##.##.## ##.##.##",
        ".... .... .... .... #### #### .... .... .... ....",
        "...... ...... ..##.. ..##.. ###### ###### ..##.. ..##.. ...... ......"
    };

    /** Five rows of narrow pixels: three rows high, for a pair that finds no more room. */
    private static final String[] SMALL = {
        "### #.# #.# #.# ###", ".#. ##. .#. .#. ###", "### ..# ### #.. ###", "### ..# ### ..# ###",
                "#.# #.# ### ..# ..#", "### #.. ### ..# ###",
        "### #.. ### #.# ###", "### ..# .#. .#. .#.", "### #.# ### #.# ###", "### #.# ### ..# ###",
                ".## #.. ##. #.. #..", "..# ..# .#. #.. #..",
        ". . . . #", "... .## #.. ..# ##.", "..... ##.#. #.#.# #.#.# #.#.#", "... ... ### ... ...",
                "... .#. ### .#. ..."
    };

    private BigText() {}

    /** How many columns a text takes when it is 5 * scale rows high. */
    public static int width(String text, int scale) {
        return width(LARGE, text) * scale;
    }

    /** How many columns a text takes when it is three rows high. */
    public static int smallWidth(String text) {
        return width(SMALL, text);
    }

    /** Draws 5 * scale rows high. */
    public static void draw(Grid grid, int column, int row, String text, int scale, TextRole role) {
        draw(LARGE, grid, column, row, text, scale, role);
    }

    /** Draws three rows high. */
    public static void drawSmall(Grid grid, int column, int row, String text, TextRole role) {
        draw(SMALL, grid, column, row, text, 1, role);
    }

    private static int width(String[] face, String text) {
        int width = 0;
        for (int at = 0; at < text.length(); at++) {
            width += letterWidth(face, text.charAt(at)) + 1;
        }
        return Math.max(0, width - 1);
    }

    private static void draw(String[] face, Grid grid, int column, int row, String text, int scale, TextRole role) {
        int high = face == LARGE ? 10 : 5;
        int at = column;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            int wide = letterWidth(face, letter);
            for (int x = 0; x < wide * scale; x++) {
                for (int half = 0; half < high * scale; half += 2) {
                    boolean above = isSet(face, letter, x / scale, half / scale);
                    boolean below = (half + 1) / scale < high && isSet(face, letter, x / scale, (half + 1) / scale);
                    if (above || below) {
                        grid.put(at + x, row + half / 2, block(above, below), role);
                    }
                }
            }
            at += (wide + 1) * scale;
        }
    }

    private static String block(boolean above, boolean below) {
        if (above && below) {
            return "█";
        }
        return above ? "▀" : "▄";
    }

    private static int letterWidth(String[] face, char letter) {
        int at = LETTERS.indexOf(letter);
        return at < 0 ? 2 : face[at].indexOf(' ');
    }

    private static boolean isSet(String[] face, char letter, int x, int y) {
        int at = LETTERS.indexOf(letter);
        return at >= 0 && face[at].charAt(y * (letterWidth(face, letter) + 1) + x) == '#';
    }
}
