package takeup.lettering;

import takeup.grid.Grid;
import takeup.grid.PixelPair;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.scans.QrCode;

/**
 * A light sheet over the terminal, to be photographed: a code and beside it a few letters as large as they go, dark on
 * light. Two dots to a cell, one above the other, so that a dot is nearly square.
 */
public final class SlateSheet {
    private static final int LIGHT = 0xffffff;
    private static final int DARK = 0x000000;
    private static final int HIGH = 7;

    private final boolean[][] dark;
    private final PixelShape pixels;

    private SlateSheet(int columns, int rows, PixelShape pixels) {
        dark = new boolean[2 * rows][columns];
        this.pixels = pixels;
    }

    /**
     * The sheet.
     *
     * @param columns columns of the terminal
     * @param rows its rows
     * @param pixels their shape; in whole cells a code or letters that have no room are left out
     * @param text what the code says
     * @param lines the letters; on a line each where they do not fit on one
     */
    public static SlateSheet of(int columns, int rows, PixelShape pixels, String text, String... lines) {
        SlateSheet sheet = new SlateSheet(columns, rows, pixels);
        boolean[][] code = QrCode.of(text);
        int side = code.length + 2 * QrCode.QUIET;
        int scale = sheet.scale(Math.min(2 * rows, columns) / side);
        int left = 0;
        if (scale > 0) {
            int top = (2 * rows - scale * side) / 4 * 2;
            sheet.code(code, scale, top);
            left = scale * side;
        }
        sheet.letters(left, lines);
        return sheet;
    }

    /** The fewest columns and rows in which the code of that text has room: 33 by 17, and 66 by 33 in whole cells. */
    public static Size fewest(String text, PixelShape pixels) {
        int side = QrCode.of(text).length + 2 * QrCode.QUIET;
        return pixels == PixelShape.HALF_CELL ? new Size(side, (side + 1) / 2) : new Size(2 * side, side);
    }

    /** An even scale fills whole cells: it can also be drawn where halves cannot. */
    private int scale(int scale) {
        return scale > 1 || pixels == PixelShape.WHOLE_CELL ? scale / 2 * 2 : scale;
    }

    private void code(boolean[][] code, int scale, int top) {
        int border = QrCode.QUIET * scale;
        for (int y = 0; y < code.length * scale; y++) {
            for (int x = 0; x < code.length * scale; x++) {
                dark[top + border + y][border + x] = code[y / scale][x / scale];
            }
        }
    }

    private void letters(int left, String[] lines) {
        String one = String.join("", lines);
        int room = dark[0].length - left - 1;
        int whole = Math.min(room / width(one), (dark.length - 2) / HIGH);
        int longest = 0;
        for (String line : lines) {
            longest = Math.max(longest, width(line));
        }
        int apart = Math.min(room / longest, (dark.length - 2) / (lines.length * (HIGH + 1) - 1));
        String[] drawn = apart > whole ? lines : new String[] {one};
        int scale = pixels == PixelShape.HALF_CELL ? Math.max(apart, whole) : scale(Math.max(apart, whole));
        int top = (dark.length - scale * (drawn.length * (HIGH + 1) - 1)) / 4 * 2;
        for (String line : drawn) {
            letters(line, left + (dark[0].length - left - scale * width(line)) / 2, top, scale);
            top += scale * (HIGH + 1);
        }
    }

    private static int width(String line) {
        return 6 * line.length() - 1;
    }

    private void letters(String line, int left, int top, int scale) {
        for (int i = 0; i < line.length(); i++) {
            for (int y = 0; y < HIGH * scale; y++) {
                for (int x = 0; x < 5 * scale; x++) {
                    if (SlateLetters.isSet(line.charAt(i), x / scale, y / scale)) {
                        dark[top + y][left + 6 * scale * i + x] = true;
                    }
                }
            }
        }
    }

    /** The dots row by row, true for dark. */
    public boolean[][] dots() {
        return dark;
    }

    /** Draws it, from a row on. */
    public void draw(Grid grid, int top) {
        for (int row = 0; row < dark.length / 2; row++) {
            for (int column = 0; column < dark[0].length; column++) {
                grid.putPixels(
                        column,
                        top + row,
                        new PixelPair(dark[2 * row][column] ? DARK : LIGHT, dark[2 * row + 1][column] ? DARK : LIGHT));
            }
        }
    }
}
