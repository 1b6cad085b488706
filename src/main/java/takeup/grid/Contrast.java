package takeup.grid;

/**
 * How well one colour can be read on another: white on black is 21, grey 0x767676 on white 4.54. WCAG 2.2, definitions
 * "contrast ratio" and "relative luminance".
 */
public final class Contrast {
    private Contrast() {}

    /** From 1 to 21; which of the two lies below does not matter. Both as red, green and blue in 24 bits. */
    public static double of(int one, int other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int level) {
        double share = level / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
