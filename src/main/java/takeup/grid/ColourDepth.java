package takeup.grid;

/** How many colours a terminal is asked for, from none to all of them. */
public enum ColourDepth {
    NONE,
    SIXTEEN,
    INDEXED,
    TRUE;

    /** The sixteen colours as the virtual console of Linux has them; other terminals differ a little. */
    private static final int[] SIXTEEN_RGB = {
        0x000000, 0xaa0000, 0x00aa00, 0xaa5500, 0x0000aa, 0xaa00aa, 0x00aaaa, 0xaaaaaa,
        0x555555, 0xff5555, 0x55ff55, 0xffff55, 0x5555ff, 0xff55ff, 0x55ffff, 0xffffff
    };

    /** The six levels of the 6x6x6 cube, colours 16 to 231 (xterm, 256colres.pl). */
    private static final int[] LEVELS = {0x00, 0x5f, 0x87, 0xaf, 0xd7, 0xff};

    /** The red, green and blue of one of the 256 colours: cube, and from 232 the greys 8, 18 ... 238. */
    public static int rgb(int index) {
        if (index < 16) {
            return SIXTEEN_RGB[index];
        }
        if (index >= 232) {
            return (8 + 10 * (index - 232)) * 0x010101;
        }
        int cube = index - 16;
        return LEVELS[cube / 36] << 16 | LEVELS[cube / 6 % 6] << 8 | LEVELS[cube % 6];
    }

    /** The nearest of the 256 colours, or of the first 16. */
    public int nearest(int rgb) {
        if (this == SIXTEEN) {
            int best = 0;
            for (int index = 1; index < 16; index++) {
                best = nearer(best, index, rgb);
            }
            return best;
        }
        // The first sixteen differ from terminal to terminal. In the cube each of red, green and blue is nearest by
        // itself.
        int red = rgb >> 16;
        int green = rgb >> 8 & 0xff;
        int blue = rgb & 0xff;
        int cube = 16 + 36 * level(red) + 6 * level(green) + level(blue);
        int grey = (2 * red + 4 * green + 3 * blue) / 9;
        int darker = 232 + Math.max(0, Math.min(22, (grey - 8) / 10));
        return nearer(nearer(cube, darker, rgb), darker + 1, rgb);
    }

    private static int level(int part) {
        int nearest = 0;
        for (int i = 1; i < LEVELS.length; i++) {
            nearest = Math.abs(LEVELS[i] - part) < Math.abs(LEVELS[nearest] - part) ? i : nearest;
        }
        return nearest;
    }

    /** The first of two, unless the second is really nearer. */
    private static int nearer(int first, int second, int rgb) {
        return distance(rgb(second), rgb) < distance(rgb(first), rgb) ? second : first;
    }

    private static int distance(int one, int other) {
        int red = (one >> 16) - (other >> 16);
        int green = (one >> 8 & 0xff) - (other >> 8 & 0xff);
        int blue = (one & 0xff) - (other & 0xff);
        return 2 * red * red + 4 * green * green + 3 * blue * blue; // the eye weighs green most
    }
}
