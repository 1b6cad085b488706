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
    private static final String NARROW_LETTERS = LETTERS + "ABCDEFGHIJKLMNOPQRSTUVWXYZ:·";

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
        ". # . # .",
        ". . # . ."
    };

    /** A row of pixels of what has no shape, in both sizes. */
    private static final String BLANK = "..";

    private BigText() {}

    /** Whether each letter of a text has a shape. */
    public static boolean isDrawable(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) != ' ' && NARROW_LETTERS.indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** How many columns a text takes when it is 5 * scale rows high. */
    public static int width(String text, int scale) {
        return tallWidth(text, 5 * scale);
    }

    /** How many columns a text takes when it is three rows high. */
    public static int smallWidth(String text) {
        return narrow(text, 0).length();
    }

    /** How many columns a text takes when it is so many rows high. */
    public static int tallWidth(String text, int rows) {
        return large(text, 0).length() * rows / 5;
    }

    /** Draws 5 * scale rows high. */
    public static void draw(Grid grid, int column, int row, String text, int scale, TextRole role) {
        drawTall(grid, column, row, text, 5 * scale, role);
    }

    /** Draws three rows high. */
    public static void drawSmall(Grid grid, int column, int row, String text, TextRole role) {
        String[] pixels = new String[5];
        for (int y = 0; y < pixels.length; y++) {
            pixels[y] = narrow(text, y);
        }
        paint(pixels, grid, column, row, 5, 5, role);
    }

    /** Draws three rows high, half a row lower, so that a plate has a rim above the letters. */
    public static void drawBelowRim(Grid grid, int column, int row, String text, TextRole role) {
        String[] pixels = new String[6];
        for (int y = 1; y < pixels.length; y++) {
            pixels[y] = narrow(text, y - 1);
        }
        pixels[0] = ".".repeat(pixels[1].length());
        paint(pixels, grid, column, row, 6, 5, role);
    }

    /** Draws so many rows high, and as much wider. */
    public static void drawTall(Grid grid, int column, int row, String text, int rows, TextRole role) {
        String[] pixels = new String[10];
        for (int y = 0; y < pixels.length; y++) {
            pixels[y] = large(text, y);
        }
        paint(pixels, grid, column, row, 2 * rows, rows, role);
    }

    /** Draws pixels so many half rows high; {@code fifths} columns stand for five of them. */
    private static void paint(String[] pixels, Grid grid, int column, int row, int halves, int fifths, TextRole role) {
        int width = pixels[0].length() * fifths / 5;
        for (int x = 0; x < width; x++) {
            int pixel = x * 5 / fifths;
            for (int half = 0; half < halves; half += 2) {
                boolean above = isSet(pixels, pixel, half, halves);
                boolean below = half + 1 < halves && isSet(pixels, pixel, half + 1, halves);
                if (above || below) {
                    grid.put(column + x, row + half / 2, block(above, below), role);
                }
            }
        }
    }

    private static boolean isSet(String[] pixels, int x, int half, int halves) {
        return pixels[half * pixels.length / halves].charAt(x) == '#';
    }

    private static String block(boolean above, boolean below) {
        if (above && below) {
            return "█";
        }
        return above ? "▀" : "▄";
    }

    /** A row of pixels of a text ten rows high; a letter that has no large shape is a narrow one, doubled. */
    private static String large(String text, int y) {
        StringBuilder row = new StringBuilder();
        for (char letter : text.toCharArray()) {
            int at = LETTERS.indexOf(letter);
            row.append(row.isEmpty() ? "" : ".").append(at >= 0 ? row(LARGE_SHAPES[at], y) : widened(letter, y / 2));
        }
        return row.toString();
    }

    /** A row of pixels of a text five rows high. */
    private static String narrow(String text, int y) {
        StringBuilder row = new StringBuilder();
        for (char letter : text.toCharArray()) {
            row.append(row.isEmpty() ? "" : ".").append(narrow(letter, y));
        }
        return row.toString();
    }

    /** A row of pixels of a narrow letter. */
    private static String narrow(char letter, int y) {
        int at = NARROW_LETTERS.indexOf(letter);
        return at >= 0 ? row(NARROW[at], y) : BLANK;
    }

    private static String widened(char letter, int y) {
        if (NARROW_LETTERS.indexOf(letter) < 0) {
            return BLANK;
        }
        StringBuilder twice = new StringBuilder();
        for (char pixel : narrow(letter, y).toCharArray()) {
            twice.append(pixel).append(pixel);
        }
        return twice.toString();
    }

    private static String row(String shape, int y) {
        int wide = shape.indexOf(' ');
        return shape.substring(y * (wide + 1), y * (wide + 1) + wide);
    }
}
