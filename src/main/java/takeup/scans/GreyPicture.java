package takeup.scans;

/**
 * A picture without colour, for reading codes: 900 by 600 dots.
 *
 * @param columns dots in a row, from 1
 * @param rows rows, from 1
 * @param light the dots row by row, 0 black to 255 white; handed over, and changed by nobody after
 */
public record GreyPicture(int columns, int rows, byte[] light) {
    public GreyPicture {
        if (columns < 1 || rows < 1 || light.length != columns * rows) {
            throw new IllegalArgumentException("a picture has columns times rows dots");
        }
    }

    /** One dot. */
    public int at(int column, int row) {
        return light[row * columns + column] & 0xff;
    }

    /** The picture with its colours taken away. */
    public static GreyPicture of(Picture picture) {
        byte[] light = new byte[picture.columns() * picture.rows()];
        for (int row = 0; row < picture.rows(); row++) {
            for (int column = 0; column < picture.columns(); column++) {
                light[row * picture.columns() + column] = (byte) Math.round(255 * picture.lightness(column, row));
            }
        }
        return new GreyPicture(picture.columns(), picture.rows(), light);
    }

    /** The same with its long side no longer than so many dots; each new dot is the mean of those that it covers. */
    GreyPicture within(int longest) {
        int longer = Math.max(columns, rows);
        if (longer <= longest) {
            return this;
        }
        int wide = Math.max(1, (int) ((long) columns * longest / longer));
        int high = Math.max(1, (int) ((long) rows * longest / longer));
        byte[] small = new byte[wide * high];
        for (int row = 0; row < high; row++) {
            int top = row * rows / high;
            int bottom = Math.max(top + 1, (row + 1) * rows / high);
            for (int column = 0; column < wide; column++) {
                int left = column * columns / wide;
                int right = Math.max(left + 1, (column + 1) * columns / wide);
                small[row * wide + column] = mean(left, right, top, bottom);
            }
        }
        return new GreyPicture(wide, high, small);
    }

    private byte mean(int left, int right, int top, int bottom) {
        int sum = 0;
        for (int row = top; row < bottom; row++) {
            for (int column = left; column < right; column++) {
                sum += at(column, row);
            }
        }
        return (byte) (sum / ((bottom - top) * (right - left)));
    }

    /** The mean of three by three dots in place of each: grain is smaller than a code's squares. */
    GreyPicture smoothed() {
        byte[] soft = light.clone();
        for (int row = 1; row < rows - 1; row++) {
            for (int column = 1; column < columns - 1; column++) {
                soft[row * columns + column] = mean(column - 1, column + 2, row - 1, row + 2);
            }
        }
        return new GreyPicture(columns, rows, soft);
    }

    /** The picture turned by an angle about its middle, with nothing cut off; what was not there is mid grey. */
    GreyPicture turned(double degrees) {
        double sine = Math.sin(Math.toRadians(degrees));
        double cosine = Math.cos(Math.toRadians(degrees));
        int wide = (int) Math.ceil(Math.abs(columns * cosine) + Math.abs(rows * sine));
        int high = (int) Math.ceil(Math.abs(columns * sine) + Math.abs(rows * cosine));
        byte[] there = new byte[wide * high];
        for (int row = 0; row < high; row++) {
            for (int column = 0; column < wide; column++) {
                double x = (column - wide / 2.0) * cosine + (row - high / 2.0) * sine + columns / 2.0;
                double y = -(column - wide / 2.0) * sine + (row - high / 2.0) * cosine + rows / 2.0;
                there[row * wide + column] = (byte) between(x, y);
            }
        }
        return new GreyPicture(wide, high, there);
    }

    private int between(double x, double y) {
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        if (left < 0 || top < 0 || left >= columns - 1 || top >= rows - 1) {
            return 128;
        }
        double right = x - left;
        double down = y - top;
        return (int) ((1 - down) * ((1 - right) * at(left, top) + right * at(left + 1, top))
                + down * ((1 - right) * at(left, top + 1) + right * at(left + 1, top + 1)));
    }

    /** Dark for light. */
    GreyPicture inverted() {
        byte[] other = new byte[light.length];
        for (int i = 0; i < light.length; i++) {
            other[i] = (byte) (255 - (light[i] & 0xff));
        }
        return new GreyPicture(columns, rows, other);
    }
}
