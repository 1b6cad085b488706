package takeup.scans;

/**
 * A small copy of a scan, for the contact sheet and for what its tones say: 96 by 64 dots.
 *
 * @param columns dots in a row, from 1
 * @param rows rows, from 1
 * @param rgb the dots row by row, red, green and blue in 24 bits, as the file has them (gamma-coded)
 */
public record Picture(int columns, int rows, int[] rgb) {
    public Picture {
        if (columns < 1 || rows < 1 || rgb.length != columns * rows) {
            throw new IllegalArgumentException("a picture has columns times rows dots");
        }
        rgb = rgb.clone();
    }

    @Override
    public int[] rgb() {
        return rgb.clone();
    }

    /** One dot. */
    public int at(int column, int row) {
        return rgb[row * columns + column];
    }

    /**
     * Brightness of a dot from 0 to 1: 0.299 R + 0.587 G + 0.114 B of the coded values (ITU-R BT.601, section 2.5.1).
     */
    public double lightness(int column, int row) {
        return lightness(at(column, row));
    }

    /** The same of a colour. */
    public static double lightness(int colour) {
        return (0.299 * (colour >> 16 & 0xff) + 0.587 * (colour >> 8 & 0xff) + 0.114 * (colour & 0xff)) / 255;
    }

    /** The picture in other measures: each new dot is the mean of those that it covers. */
    public Picture fitted(int newColumns, int newRows) {
        int[] dots = new int[newColumns * newRows];
        for (int row = 0; row < newRows; row++) {
            int top = row * rows / newRows;
            int bottom = Math.max(top + 1, (row + 1) * rows / newRows);
            for (int column = 0; column < newColumns; column++) {
                int left = column * columns / newColumns;
                int right = Math.max(left + 1, (column + 1) * columns / newColumns);
                dots[row * newColumns + column] = mean(left, right, top, bottom);
            }
        }
        return new Picture(newColumns, newRows, dots);
    }

    private int mean(int left, int right, int top, int bottom) {
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int row = top; row < bottom; row++) {
            for (int column = left; column < right; column++) {
                int dot = rgb[row * columns + column];
                red += dot >> 16 & 0xff;
                green += dot >> 8 & 0xff;
                blue += dot & 0xff;
            }
        }
        long dots = (long) (right - left) * (bottom - top);
        return (int) (red / dots) << 16 | (int) (green / dots) << 8 | (int) (blue / dots);
    }
}
