package takeup.screen;

import java.util.Random;
import takeup.scans.GreyPicture;

/**
 * A sheet on a terminal as film and scanner hand it back: askew, at an angle, soft, grainy, cut, too light or too dark,
 * as a negative, mirrored. Everything comes from the seed.
 */
final class PhotographedSheet {
    private static final int STEPS = 4096;
    private static final int REACH = 3;
    private static final double[] BELL = bell();
    /** What a file's gamma makes of light from 0 to 4, which is all that the film's roll-off leaves. */
    private static final double[] GAMMA = gamma();

    private final Random random;
    private final boolean[][] dots;

    private PhotographedSheet(long seed, boolean[][] dots) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L);
        this.dots = dots;
    }

    /** Draws of a normal distribution, to take from: grain needs a hundred thousand of them for each picture. */
    private static double[] bell() {
        Random random = new Random(STEPS);
        double[] draws = new double[STEPS];
        for (int i = 0; i < STEPS; i++) {
            draws[i] = random.nextGaussian();
        }
        return draws;
    }

    private static double[] gamma() {
        double[] values = new double[STEPS];
        for (int i = 0; i < STEPS; i++) {
            values[i] = Math.pow(4 * (i + 0.5) / STEPS, 1 / 2.2);
        }
        return values;
    }

    /** A picture of the sheet, 480 by 320 dots, or upright. */
    static GreyPicture of(long seed, boolean[][] dots) {
        return new PhotographedSheet(seed, dots).picture(480, 320);
    }

    /** The sheet as it is, each dot so many dots wide, with a dark frame about it. */
    static GreyPicture straight(boolean[][] dots, int scale) {
        int columns = (dots[0].length + 2) * scale;
        int rows = (dots.length + 2) * scale;
        byte[] light = new byte[columns * rows];
        for (int row = scale; row < rows - scale; row++) {
            for (int column = scale; column < columns - scale; column++) {
                light[row * columns + column] = (byte) (dots[row / scale - 1][column / scale - 1] ? 0 : 255);
            }
        }
        return new GreyPicture(columns, rows, light);
    }

    private GreyPicture picture(int wide, int high) {
        int quarter = random.nextInt(4);
        boolean isSquareOn = random.nextInt(3) == 0;
        double angle =
                Math.toRadians(isSquareOn ? 90 * quarter + 3 * random.nextGaussian() : 360 * random.nextDouble());
        boolean isUpright = random.nextBoolean();
        int columns = isUpright ? high : wide;
        int rows = isUpright ? wide : high;
        // The sheet fills the picture well, and may stick out of it on the side of its letters.
        double tall = Math.min(rows, columns) * (0.62 + 0.2 * random.nextDouble());
        double unit = tall / dots.length;
        double tiltX = 0.16 * (random.nextDouble() - 0.5) / tall;
        double tiltY = 0.16 * (random.nextDouble() - 0.5) / tall;
        // The middle of the code lies near the middle of the picture.
        double codeX = tall / 2;
        double shiftX = 0.05 * columns * (random.nextDouble() - 0.5);
        double shiftY = 0.05 * rows * (random.nextDouble() - 0.5);
        double[] light = new double[columns * rows];
        double stops = 6 * random.nextDouble() - 3;
        double gain = 0.5 * Math.pow(2, stops);
        double cosine = Math.cos(angle);
        double sine = Math.sin(angle);
        double scene = random.nextDouble();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double x = column + 0.5 - columns / 2.0 - shiftX;
                double y = row + 0.5 - rows / 2.0 - shiftY;
                double u = x * cosine + y * sine;
                double v = -x * sine + y * cosine;
                double depth = 1 + tiltX * u + tiltY * v;
                double sheetX = u / depth + codeX;
                double sheetY = v / depth + tall / 2;
                light[row * columns + column] = gain * at(sheetX / unit, sheetY / unit, scene, x / columns, y);
            }
        }
        double soft = 0.3 + 0.9 * random.nextDouble();
        blur(light, columns, rows, soft);
        double grain = 0.02 + 0.06 * random.nextDouble();
        boolean isNegative = random.nextInt(3) == 0;
        boolean isMirrored = random.nextInt(3) == 0;
        byte[] file = new byte[light.length];
        long state = random.nextLong();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                // Film rolls off where a sensor would clip; then the gamma of a picture file.
                double fell = light[row * columns + column];
                state = state * 6364136223846793005L + 1442695040888963407L;
                double seen = GAMMA[(int) (fell / (1 + 0.25 * fell) * STEPS / 4)] + grain * BELL[(int) (state >>> 52)];
                int value = (int) Math.round(255 * Math.max(0, Math.min(1, isNegative ? 1 - seen : seen)));
                file[row * columns + (isMirrored ? columns - 1 - column : column)] = (byte) value;
            }
        }
        return cut(columns, rows, file);
    }

    /** A crop of up to a tenth at each side, which may go through the border of the code. */
    private GreyPicture cut(int columns, int rows, byte[] file) {
        int left = random.nextInt(columns / 10);
        int top = random.nextInt(rows / 10);
        int wide = columns - left - random.nextInt(columns / 10);
        int high = rows - top - random.nextInt(rows / 10);
        byte[] part = new byte[wide * high];
        for (int row = 0; row < high; row++) {
            System.arraycopy(file, (row + top) * columns + left, part, row * wide, wide);
        }
        return new GreyPicture(wide, high, part);
    }

    /**
     * How much light comes from a place: the sheet's, or that of the boathouse around it. A dark dot still glows a
     * little.
     */
    private double at(double dotX, double dotY, double scene, double x, double y) {
        if (dotX >= 0 && dotY >= 0 && dotX < dots[0].length && dotY < dots.length) {
            return dots[(int) dotY][(int) dotX] ? 0.01 : 0.8;
        }
        boolean isFrame = dotX > -2 && dotY > -2 && dotX < dots[0].length + 2 && dotY < dots.length + 2;
        double wave = Math.abs((9 * x + 20 * scene) % 2 - 1);
        return isFrame ? 0.015 : 0.08 + 0.6 * scene * wave * (y > 0 ? 0.4 : 1);
    }

    /** A blur with a bell's shape, both ways; the outermost dots stay as they are. */
    private static void blur(double[] light, int columns, int rows, double radius) {
        double[] share = new double[REACH + 1];
        double sum = 0;
        for (int i = 0; i <= REACH; i++) {
            share[i] = Math.exp(-0.5 * i * i / (radius * radius));
            sum += i == 0 ? share[i] : 2 * share[i];
        }
        for (int i = 0; i <= REACH; i++) {
            share[i] /= sum;
        }
        double[] across = light.clone();
        spread(light, across, share, 1);
        spread(across, light, share, columns);
    }

    private static void spread(double[] from, double[] to, double[] share, int step) {
        for (int i = REACH * step; i < from.length - REACH * step; i++) {
            to[i] = share[0] * from[i]
                    + share[1] * (from[i - step] + from[i + step])
                    + share[2] * (from[i - 2 * step] + from[i + 2 * step])
                    + share[3] * (from[i - 3 * step] + from[i + 3 * step]);
        }
    }
}
