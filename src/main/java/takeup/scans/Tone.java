package takeup.scans;

import java.util.DoubleSummaryStatistics;

/**
 * What the tones of a scan say of its frame.
 *
 * @param brightness mean lightness, 0 black to 1 white; the lab may have corrected it
 * @param contrast standard deviation of the lightness, 0 to 0.5
 * @param isDivided whether a bare bar stands upright in the middle, as between two half frames
 */
public record Tone(double brightness, double contrast, boolean isDivided) {
    /** Darker than this, and flatter than {@link #FLAT}, is a frame without light. Opinion: no source. */
    private static final double BLACK = 0.06;

    private static final double FLAT = 0.03;
    private static final double WHITE = 0.94;

    /** The tones of a picture. */
    public static Tone of(Picture picture) {
        double sum = 0;
        double squares = 0;
        for (int row = 0; row < picture.rows(); row++) {
            for (int column = 0; column < picture.columns(); column++) {
                double light = picture.lightness(column, row);
                sum += light;
                squares += light * light;
            }
        }
        double dots = (double) picture.columns() * picture.rows();
        double mean = sum / dots;
        return new Tone(mean, Math.sqrt(Math.max(0, squares / dots - mean * mean)), isDivided(picture));
    }

    /** No light on the film: clear negative, dark scan. */
    public boolean isBlack() {
        return brightness < BLACK && contrast < FLAT;
    }

    /** Light all over: fogged. */
    public boolean isWhite() {
        return brightness > WHITE && contrast < FLAT;
    }

    /** One column within the middle twentieth that is even from top to bottom, and very dark or very bright. */
    private static boolean isDivided(Picture picture) {
        int middle = picture.columns() / 2;
        int reach = Math.max(1, picture.columns() / 40);
        int last = Math.min(picture.columns() - 1, middle + reach);
        for (int column = Math.max(0, middle - reach); column <= last; column++) {
            DoubleSummaryStatistics light = lightness(picture, column, column + 1);
            if (light.getMax() - light.getMin() < 0.08 && (light.getMax() < 0.12 || light.getMin() > 0.9)) {
                // Where the picture is nowhere different a bar in the middle says nothing.
                DoubleSummaryStatistics all = lightness(picture, 0, picture.columns());
                return picture.columns() > 8 && all.getMax() - all.getMin() >= 0.15;
            }
        }
        return false;
    }

    private static DoubleSummaryStatistics lightness(Picture picture, int from, int to) {
        DoubleSummaryStatistics light = new DoubleSummaryStatistics();
        for (int row = 0; row < picture.rows(); row++) {
            for (int column = from; column < to; column++) {
                light.accept(picture.lightness(column, row));
            }
        }
        return light;
    }
}
