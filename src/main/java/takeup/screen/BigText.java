package takeup.screen;

/** Letters several rows high, for what is read across a room: frame numbers and the pair to set. */
final class BigText {
    /** Five rows of pixels for each letter, joined by blanks; a dot is an empty pixel. */
    private static final String LETTERS = "0123456789f/.sm-+";
    private static final String[] PIXELS = {
        "### #.# #.# #.# ###", ".#. ##. .#. .#. ###", "### ..# ### #.. ###", "### ..# ### ..# ###", "#.# #.# ### ..# ..#", "### #.. ### ..# ###",
        "### #.. ### #.# ###", "### ..# .#. .#. .#.", "### #.# ### #.# ###", "### #.# ### ..# ###", ".## #.. ##. #.. #..", "..# ..# .#. #.. #..",
        ". . . . #", "... .## #.. ..# ##.", "..... ##.#. #.#.# #.#.# #.#.#", "... ... ### ... ...", "... .#. ### .#. ..."};
    private static final int ROWS = 5;

    private BigText() {
    }

    /** How many columns a text takes at that width of a pixel. */
    static int width(String text, int pixel) {
        int width = 0;
        for (int at = 0; at < text.length(); at++) {
            width += (letterWidth(text.charAt(at)) + 1) * pixel;
        }
        return Math.max(0, width - pixel);
    }

    /** Draws with whole cells: a pixel is so many columns wide and rows high. */
    static void draw(Grid grid, int column, int row, String text, int wide, int high, Look look) {
        int at = column;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            for (int y = 0; y < ROWS; y++) {
                for (int x = 0; x < letterWidth(letter); x++) {
                    if (isSet(letter, x, y)) {
                        for (int down = 0; down < high; down++) {
                            grid.put(at + x * wide, row + y * high + down, "█".repeat(wide), look);
                        }
                    }
                }
            }
            at += (letterWidth(letter) + 1) * wide;
        }
    }

    /** Draws with half cells: three rows high, a pixel one column wide. */
    static void drawSmall(Grid grid, int column, int row, String text, Look look) {
        int at = column;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            for (int x = 0; x < letterWidth(letter); x++) {
                for (int y = 0; y < ROWS + 1; y += 2) {
                    boolean above = isSet(letter, x, y);
                    boolean below = isSet(letter, x, y + 1);
                    if (above || below) {
                        grid.put(at + x, row + y / 2, above && below ? "█" : above ? "▀" : "▄", look);
                    }
                }
            }
            at += letterWidth(letter) + 1;
        }
    }

    private static int letterWidth(char letter) {
        int at = LETTERS.indexOf(letter);
        return at < 0 ? 2 : PIXELS[at].indexOf(' ');
    }

    private static boolean isSet(char letter, int x, int y) {
        int at = LETTERS.indexOf(letter);
        return at >= 0 && y < ROWS && PIXELS[at].charAt(y * (letterWidth(letter) + 1) + x) == '#';
    }
}
