package takeup.terminal;

import java.util.Arrays;
import takeup.grid.Bitmap;
import takeup.grid.Placement;

/**
 * Pictures as sixels: six dots one above the other to a character, colour by colour (DEC, VT330/VT340 Programmer
 * Reference Manual, volume 2, chapter 14).
 *
 * @param cellColumns dots in a cell, across
 * @param cellRows dots in a cell, down
 */
record Sixels(int cellColumns, int cellRows) implements PixelProtocol {
    private static final int BAND = 6;
    /** The first character that stands for dots: none of the six. */
    private static final char NO_DOTS = '?';
    /** From so many alike on a count is shorter. */
    private static final int WORTH_COUNTING = 4;

    /** Whatever is written over a sixel picture takes it away. */
    @Override
    public String cleared() {
        return "";
    }

    @Override
    public String drawn(Placement placement) {
        // Whole bands: the last one would reach into the row below.
        int rows = placement.rows() * cellRows / BAND * BAND;
        return of(placement.bitmap().fitted(placement.columns() * cellColumns, Math.max(BAND, rows)));
    }

    /** The picture as it is, in 256 colours at most. */
    static String of(Bitmap bitmap) {
        SixelPalette palette = SixelPalette.of(bitmap.rgb());
        int columns = bitmap.columns();
        StringBuilder drawn = new StringBuilder("\u001bP0;1;0q\"1;1;" + columns + ";" + bitmap.rows());
        int[] colours = palette.colours();
        for (int i = 0; i < colours.length; i++) {
            drawn.append('#')
                    .append(i)
                    .append(";2;")
                    .append(percent(colours[i] >> 16))
                    .append(';');
            drawn.append(percent(colours[i] >> 8)).append(';').append(percent(colours[i]));
        }
        for (int top = 0; top < bitmap.rows(); top += BAND) {
            band(bitmap, top, palette, drawn);
            drawn.append('-');
        }
        return drawn.append("\u001b\\").toString();
    }

    private static int percent(int level) {
        return ((level & 0xff) * 100 + 127) / 255;
    }

    /** Six rows: each colour in them over the whole width, one after the other. */
    private static void band(Bitmap bitmap, int top, SixelPalette palette, StringBuilder drawn) {
        int columns = bitmap.columns();
        char[][] lines = new char[palette.colours().length][];
        for (int row = top; row < Math.min(bitmap.rows(), top + BAND); row++) {
            for (int column = 0; column < columns; column++) {
                int colour = palette.index(bitmap.at(column, row));
                if (lines[colour] == null) {
                    lines[colour] = new char[columns];
                    Arrays.fill(lines[colour], NO_DOTS);
                }
                lines[colour][column] += (char) (1 << row - top);
            }
        }
        for (int colour = 0; colour < lines.length; colour++) {
            if (lines[colour] != null) {
                drawn.append('#').append(colour);
                counted(lines[colour], drawn);
                drawn.append('$');
            }
        }
    }

    private static void counted(char[] line, StringBuilder drawn) {
        int at = 0;
        while (at < line.length) {
            int end = at + 1;
            while (end < line.length && line[end] == line[at]) {
                end++;
            }
            if (end == line.length && line[at] == NO_DOTS) {
                return;
            }
            if (end - at >= WORTH_COUNTING) {
                drawn.append('!').append(end - at).append(line[at]);
            } else {
                drawn.append(String.valueOf(line[at]).repeat(end - at));
            }
            at = end;
        }
    }
}
