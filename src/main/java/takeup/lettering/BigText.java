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
    private static final String[] LARGE_SHAPES = {
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

    /** What {@link #NARROW} has. */
    private static final String NARROW_LETTERS = LETTERS + "ABCDEFGHIJKLMNOPQRSTUVWXYZ:";

    /** Five rows of narrow pixels: three rows high, for a pair that finds no more room, and for names. */
    private static final String[] NARROW = {
        "### #.# #.# #.# ###",
        ".#. ##. .#. .#. ###",
        "### ..# ### #.. ###",
        "### ..# .## ..# ###",
        "#.# #.# ### ..# ..#",
        "### #.. ### ..# ###",
        "### #.. ### #.# ###",
        "### ..# .#. .#. .#.",
        "### #.# ### #.# ###",
        "### #.# ### ..# ###",
        ".## #.. ##. #.. #..",
        "...# ..#. .##. .#.. #...",
        ". . . . #",
        ".... .### ##.. ..## ###.",
        "..... ##.#. #.#.# #.#.# #.#.#",
        "... ... ### ... ...",
        "... .#. ### .#. ...",
        ".#. #.# ### #.# #.#",
        "##. #.# ##. #.# ##.",
        ".## #.. #.. #.. .##",
        "##. #.# #.# #.# ##.",
        "### #.. ##. #.. ###",
        "### #.. ##. #.. #..",
        ".### #... #.## #..# .##.",
        "#.# #.# ### #.# #.#",
        "### .#. .#. .#. ###",
        "..# ..# ..# #.# .#.",
        "#..# #.#. ##.. #.#. #..#",
        "#.. #.. #.. #.. ###",
        "#...# ##.## #.#.# #...# #...#",
        "#..# ##.# #.## #..# #..#",
        ".##. #..# #..# #..# .##.",
        "### #.# ### #.. #..",
        ".##. #..# #..# #.## .###",
        "### #.# ##. #.# #.#",
        ".### #... .##. ...# ###.",
        "### .#. .#. .#. .#.",
        "#.# #.# #.# #.# ###",
        "#.# #.# #.# #.# .#.",
        "#...# #...# #.#.# ##.## #...#",
        "#.# #.# .#. #.# #.#",
        "#.# #.# .#. .#. .#.",
        "### ..# .#. #.. ###",
        ". # . # ."
    };

    private BigText() {}

    /** Whether each letter of a text has a shape. */
    public static boolean isDrawable(String text) {
        return text.chars().allMatch(it -> it == ' ' || NARROW_LETTERS.indexOf(it) >= 0);
    }

    /** How many columns a text takes when it is 5 * scale rows high. */
    public static int width(String text, int scale) {
        return width(true, text) * scale;
    }

    /** How many columns a text takes when it is three rows high. */
    public static int smallWidth(String text) {
        return width(false, text);
    }

    /** How many columns a text takes when it is so many rows high. */
    public static int tallWidth(String text, int rows) {
        return width(true, text) * rows / 5;
    }

    /** Draws 5 * scale rows high. */
    public static void draw(Grid grid, int column, int row, String text, int scale, TextRole role) {
        drawTall(grid, column, row, text, 5 * scale, role);
    }

    /** Draws three rows high. */
    public static void drawSmall(Grid grid, int column, int row, String text, TextRole role) {
        paint(false, grid, column, row, text, 5, 5, role);
    }

    /** Draws so many rows high, and as much wider. */
    public static void drawTall(Grid grid, int column, int row, String text, int rows, TextRole role) {
        paint(true, grid, column, row, text, 2 * rows, rows, role);
    }

    /** Draws a text so many half rows high; {@code fifths} columns stand for five pixels. */
    private static void paint(
            boolean large, Grid grid, int column, int row, String text, int halves, int fifths, TextRole role) {
        int width = width(large, text) * fifths / 5;
        int high = large ? 10 : 5;
        for (int x = 0; x < width; x++) {
            int pixel = x * 5 / fifths;
            for (int half = 0; half < halves; half += 2) {
                boolean above = isSet(large, text, pixel, half * high / halves);
                boolean below = half + 1 < halves && isSet(large, text, pixel, (half + 1) * high / halves);
                if (above || below) {
                    grid.put(column + x, row + half / 2, block(above, below), role);
                }
            }
        }
    }

    private static String block(boolean above, boolean below) {
        if (above && below) {
            return "█";
        }
        return above ? "▀" : "▄";
    }

    private static int width(boolean large, String text) {
        int width = 0;
        for (int at = 0; at < text.length(); at++) {
            width += letterWidth(large, text.charAt(at)) + 1;
        }
        return Math.max(0, width - 1);
    }

    /** Whether a pixel of a text is set; none is in the gaps, nor in a letter that has no shape. */
    private static boolean isSet(boolean large, String text, int x, int y) {
        int left = 0;
        for (int at = 0; at < text.length(); at++) {
            int wide = letterWidth(large, text.charAt(at));
            if (x < left + wide) {
                return x >= left && isSet(large, text.charAt(at), x - left, y);
            }
            left += wide + 1;
        }
        return false;
    }

    private static int letterWidth(boolean large, char letter) {
        int wide = LETTERS.indexOf(letter);
        int narrow = NARROW_LETTERS.indexOf(letter);
        if (large && wide >= 0) {
            return LARGE_SHAPES[wide].indexOf(' ');
        }
        if (narrow < 0) {
            return 2;
        }
        return NARROW[narrow].indexOf(' ') * (large ? 2 : 1);
    }

    private static boolean isSet(boolean large, char letter, int x, int y) {
        int wide = LETTERS.indexOf(letter);
        int narrow = NARROW_LETTERS.indexOf(letter);
        if (large && wide >= 0) {
            return LARGE_SHAPES[wide].charAt(y * (LARGE_SHAPES[wide].indexOf(' ') + 1) + x) == '#';
        }
        int zoom = large ? 2 : 1;
        return narrow >= 0 && NARROW[narrow].charAt(y / zoom * (NARROW[narrow].indexOf(' ') + 1) + x / zoom) == '#';
    }
}
