package takeup.grid;

/**
 * Two dots of a picture in one cell, one above the other: the half block {@code ▄} in the lower dot's colour on the
 * upper one's, since fonts leave a line free above {@code ▀}. Without colour it is a shade, without our own glyphs a
 * blank on the mean colour.
 *
 * @param top the upper dot, red, green and blue in 24 bits; -1 for a cell that is no picture
 * @param bottom the lower dot
 */
public record PixelPair(int top, int bottom) {
    /** No picture. */
    static final PixelPair NONE = new PixelPair(-1, -1);

    private static final String SHADES = " ░▒▓█";
    private static final String SIGNS = " .:-=+*#%@";

    /** What is written for it, with the sequence that sets its colours in front. */
    public String written(ColourDepth depth, CharacterSet lettering) {
        if (depth == ColourDepth.NONE) {
            if (lettering == CharacterSet.UNICODE && Math.abs(lightness(top) - lightness(bottom)) > 0.5) {
                return lightness(top) > lightness(bottom) ? "▀" : "▄";
            }
            String ramp = lettering == CharacterSet.UNICODE ? SHADES : SIGNS;
            double light = (lightness(top) + lightness(bottom)) / 2;
            return String.valueOf(ramp.charAt((int) Math.min(ramp.length() - 1, light * ramp.length())));
        }
        if (lettering == CharacterSet.UNICODE) {
            return Style.of(bottom, top).sequence(depth) + "▄";
        }
        return Style.of(mean(), mean()).sequence(depth) + " ";
    }

    /** From 0 for black to 1 for white: luma of ITU-R BT.601. */
    private static double lightness(int rgb) {
        return (0.299 * (rgb >> 16 & 0xff) + 0.587 * (rgb >> 8 & 0xff) + 0.114 * (rgb & 0xff)) / 255;
    }

    private int mean() {
        return (top >> 16) + (bottom >> 16) >> 1 << 16
                | (top >> 8 & 0xff) + (bottom >> 8 & 0xff) >> 1 << 8
                | (top & 0xff) + (bottom & 0xff) >> 1;
    }
}
