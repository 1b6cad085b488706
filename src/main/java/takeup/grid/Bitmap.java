package takeup.grid;

/**
 * A picture in true pixels, for terminals that draw them; elsewhere the cells below it stand for it.
 *
 * @param columns dots in a row, from 1
 * @param rows rows, from 1
 * @param rgb the dots row by row: red, green and blue in 24 bits
 */
public record Bitmap(int columns, int rows, int[] rgb) {
    public Bitmap {
        if (columns < 1 || rows < 1 || rgb.length != columns * rows) {
            throw new IllegalArgumentException("a bitmap has columns times rows dots");
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

    /** Enlarged or made smaller so that it just fits into so many dots; each new dot is the mean of those it covers. */
    public Bitmap fitted(int most, int mostRows) {
        double scale = Math.min((double) most / columns, (double) mostRows / rows);
        int wide = Math.max(1, (int) Math.min(most, Math.round(columns * scale)));
        int high = Math.max(1, (int) Math.min(mostRows, Math.round(rows * scale)));
        int[] dots = new int[wide * high];
        for (int row = 0; row < high; row++) {
            int top = row * rows / high;
            int bottom = Math.max(top + 1, (row + 1) * rows / high);
            for (int column = 0; column < wide; column++) {
                int left = column * columns / wide;
                int right = Math.max(left + 1, (column + 1) * columns / wide);
                dots[row * wide + column] = mean(left, right, top, bottom);
            }
        }
        return new Bitmap(wide, high, dots);
    }

    private int mean(int left, int right, int top, int bottom) {
        int dots = (right - left) * (bottom - top);
        int mean = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            long sum = 0;
            for (int row = top; row < bottom; row++) {
                for (int column = left; column < right; column++) {
                    sum += at(column, row) >> shift & 0xff;
                }
            }
            mean |= (int) ((sum + dots / 2) / dots) << shift;
        }
        return mean;
    }
}
