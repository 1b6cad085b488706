package takeup.grid;

import java.util.List;

/** How far two colours lie apart for eyes that lack a kind of cone: for tests of themes. */
public final class ColourVision {
    /** Eyes with all three kinds of cones. */
    private static final double[][] USUAL = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};

    // Linear red, green and blue as they are seen with a severity of 1.0: Machado, Oliveira and Fernandes, "A
    // Physiologically-based
    // Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009, the table of matrices published with it.
    private static final double[][] PROTAN = {
        {0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}
    };
    private static final double[][] DEUTAN = {
        {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
    };
    private static final double[][] TRITAN = {
        {1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}
    };

    public static final List<double[][]> ALL = List.of(USUAL, PROTAN, DEUTAN, TRITAN);

    private ColourVision() {}

    /** The distance in CIE 1976 L*a*b* under D65, as these eyes see the two. */
    public static double apart(int one, int other, double[][] eye) {
        double[] a = lab(seen(one, eye));
        double[] b = lab(seen(other, eye));
        return Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]) + (a[2] - b[2]) * (a[2] - b[2]));
    }

    /** CIE 1976 L*, 0 black to 100 white, as these eyes see it. */
    public static double lightness(int colour, double[][] eye) {
        return lab(seen(colour, eye))[0];
    }

    /** The contrast of WCAG 2.x as these eyes see the two: 1 for none, 21 for black on white. */
    public static double contrast(int one, int other, double[][] eye) {
        double a = luminance(seen(one, eye));
        double b = luminance(seen(other, eye));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(double[] linear) {
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }

    static double[] seen(int rgb, double[][] eye) {
        double[] linear = {linear(rgb >> 16), linear(rgb >> 8 & 0xff), linear(rgb & 0xff)};
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            seen[i] = Math.max(0, Math.min(1, eye[i][0] * linear[0] + eye[i][1] * linear[1] + eye[i][2] * linear[2]));
        }
        return seen;
    }

    /** IEC 61966-2-1: sRGB to light. */
    private static double linear(int level) {
        double share = level / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** IEC 61966-2-1 to XYZ, then CIE 15: L*a*b* by the white of D65. */
    private static double[] lab(double[] rgb) {
        double x = f((0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505);
        double y = f(0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2]);
        double z = f((0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.0890);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double f(double share) {
        return share > 216.0 / 24389 ? Math.cbrt(share) : (24389.0 / 27 * share + 16) / 116;
    }
}
