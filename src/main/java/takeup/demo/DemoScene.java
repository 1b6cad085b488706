package takeup.demo;

import takeup.scans.Picture;

/**
 * One invented picture at the boathouse: a portrait, the coach on the quay, a workbench indoors, blades in their rack.
 *
 * @param scene which of them
 * @param number which frame of the film: nobody stands still between two
 * @param over how many stops of light too much it got; negative for too little
 */
record DemoScene(int scene, int number, double over) {
    private static final int COLUMNS = 300;
    private static final int ROWS = 200;
    private static final int SCENES = 4;

    /** From here down, in stops, the shadows lose their texture. */
    private static final double THIN = -0.3;

    private static final int SKY = 0xb9c9d6;
    private static final int WATER = 0x6f8794;
    private static final int BANK = 0x53624a;
    private static final int BRICK = 0x8a5140;
    private static final int PLANKS = 0x9a8868;
    private static final int DARK = 0x2b2a2c;
    private static final int CREAM = 0xe6dcc4;
    private static final int NAVY = 0x27304f;
    private static final int CLARET = 0x7a2236;
    private static final int SKIN = 0xc99a7a;

    Picture picture() {
        int[] dots = new int[COLUMNS * ROWS];
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                dots[row * COLUMNS + column] = developed(colour(column, row), column, row);
            }
        }
        return new Picture(COLUMNS, ROWS, dots);
    }

    private int colour(int column, int row) {
        // Hand-held: the picture is never framed twice alike.
        int x = column + number * 37 % 23 - 11;
        int y = row + number * 53 % 13 - 6;
        return switch (scene % SCENES) {
            case 0 -> atTheBow(x, y);
            case 1 -> onTheQuay(x, y);
            case 2 -> atTheWorkbench(x, y);
            default -> blades(x, y);
        };
    }

    /** Head and shoulders before river and far bank, a rope across the corner. */
    private int atTheBow(int x, int y) {
        int turned = number % 4 * 9;
        if (Math.abs(y - 150 - (x - 40) / 3) < 4) {
            return CREAM;
        }
        if (in(x, y, 150 + turned, 60, 27, 12) || in(x, y, 150 + turned, 66, 30, 20) && y < 66) {
            return DARK;
        }
        if (in(x, y, 150 + turned, 80, 25, 32)) {
            return y > 94 && y < 97 && Math.abs(x - 150 - turned) < 9 ? CLARET : SKIN;
        }
        if (in(x, y, 150, 195, 78, 84)) {
            return Math.abs(x - 150) < (y - 110) / 4 ? CREAM : NAVY;
        }
        return river(x, y);
    }

    private int river(int x, int y) {
        if (y < 62 + (int) (6 * Math.sin(x / 17.0))) {
            return SKY;
        }
        if (y < 88) {
            return BANK;
        }
        return (int) (y + 3 * Math.sin(x / 9.0)) % 11 < 3 ? SKY : WATER;
    }

    /** A standing figure before the doors of the boathouse. */
    private int onTheQuay(int x, int y) {
        int at = 96 + number % 5 * 22;
        if (in(x, y, at, 68, 11, 14)) {
            return SKIN;
        }
        if (Math.abs(x - at) < 19 && y >= 82 && y < 132 || Math.abs(x - at - 22) < 5 && y >= 84 && y < 120) {
            return CLARET;
        }
        if (Math.abs(x - at) < 17 && y >= 132 && y < 184 && Math.abs(x - at) > 2) {
            return CREAM;
        }
        if (y > 174) {
            return y % 9 < 2 ? DARK : PLANKS;
        }
        if (y < 26 - Math.abs(x - 150) / 9) {
            return SKY;
        }
        boolean isDoor = y > 56 && (x > 30 && x < 130 || x > 170 && x < 270);
        if (isDoor) {
            return x % 25 < 2 ? DARK : NAVY;
        }
        return (y % 10 == 0 || (x + y / 10 * 12) % 24 == 0) ? PLANKS : BRICK;
    }

    /** Somebody bent over a bench under a window. */
    private int atTheWorkbench(int x, int y) {
        int at = 168 + number % 3 * 14;
        if (in(x, y, at - 34, 78, 18, 21)) {
            return y < 70 ? DARK : SKIN;
        }
        if (in(x, y, at, 122, 46, 40)) {
            return CREAM;
        }
        if (y > 138) {
            return y < 150 ? PLANKS : DARK;
        }
        if (x > 34 && x < 104 && y > 20 && y < 84) {
            return Math.abs(x - 69) < 2 || Math.abs(y - 52) < 2 ? DARK : SKY;
        }
        return x % 40 < 3 && y < 110 ? PLANKS : BRICK & 0x7f7f7f | 0x101010;
    }

    /** Eight blades side by side, their ends painted. */
    private int blades(int x, int y) {
        int across = Math.floorMod(x + number * 3, 36);
        boolean isShaft = Math.abs(across - 18) < 3;
        boolean isBlade = y < 78 && Math.abs(across - 18) < 13 && y > 14;
        if (isBlade) {
            return Math.abs(y - 40) < 9 ? NAVY : CLARET;
        }
        if (isShaft) {
            return PLANKS;
        }
        return y > 120 && y < 132 ? PLANKS : x % 30 < 2 ? PLANKS : CREAM;
    }

    private static boolean in(int x, int y, int column, int row, int wide, int high) {
        double across = (double) (x - column) / wide;
        double down = (double) (y - row) / high;
        return across * across + down * down < 1;
    }

    /** As the lab's scanner brings it back: bright enough again, but what the film did not get is grain. */
    private int developed(int colour, int column, int row) {
        double lack = Math.max(0, THIN + 0.9 - over) * 0.16;
        double grain = noise(column, row);
        int developed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            double light = (colour >> shift & 0xff) / 255.0;
            double shadow = Math.max(0, 1 - 2.2 * light);
            double seen = light * (1 - lack * shadow) + lack * shadow * 0.55 + grain * (0.02 + 0.3 * lack * shadow);
            seen = Math.min(1, Math.max(0, seen + 0.14 * over));
            developed |= (int) Math.round(seen * 255) << shift;
        }
        return developed;
    }

    /** Between -1 and 1, the same for the same dot of the same frame. */
    private double noise(int column, int row) {
        int mixed = column * 0x9e3779b1 ^ row * 0x85ebca6b ^ number * 0xc2b2ae35;
        mixed = (mixed ^ mixed >>> 15) * 0x2c1b3c6d;
        mixed = (mixed ^ mixed >>> 12) * 0x297a2d39;
        return (mixed ^ mixed >>> 15) / (double) Integer.MAX_VALUE;
    }
}
