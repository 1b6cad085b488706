package takeup.grid;

/**
 * One colour as a theme names it: {@code rgb(0xf5cf7b, 11)} is brass, and the bright yellow of a terminal that has
 * sixteen colours only; or the terminal's own.
 *
 * @param kind how it is named
 * @param value 0 to 15, 0 to 255, or red, green and blue in 24 bits
 * @param of256 which of 256 colours stands for it, 16 to 255; -1 is the nearest
 * @param of16 which of 16 colours stands for it; -1 is the nearest
 */
public record Colour(Kind kind, int value, int of256, int of16) {
    public enum Kind {
        OWN,
        ANSI,
        INDEXED,
        RGB
    }

    /** Whatever the terminal uses when nobody asks. */
    static final Colour OWN = new Colour(Kind.OWN, 0, -1, -1);

    public Colour {
        int top = switch (kind) {
            case OWN -> 0;
            case ANSI -> 15;
            case INDEXED -> 255;
            case RGB -> 0xffffff;
        };
        if (value < 0 || value > top) {
            throw new IllegalArgumentException("a colour " + kind + " goes from 0 to " + top + ", was " + value);
        }
        if (of256 < -1 || of256 > 255 || of16 < -1 || of16 > 15) {
            throw new IllegalArgumentException("no colour of 256 or of 16 is " + of256 + " or " + of16);
        }
    }

    public static Colour ansi(int value) {
        return new Colour(Kind.ANSI, value, -1, -1);
    }

    static Colour indexed(int value) {
        return new Colour(Kind.INDEXED, value, -1, -1);
    }

    static Colour rgb(int value) {
        return new Colour(Kind.RGB, value, -1, -1);
    }

    /**
     * With the one of sixteen colours that stands for it: what is nearest by its numbers may not be readable on its
     * ground.
     */
    static Colour rgb(int value, int of16) {
        return new Colour(Kind.RGB, value, -1, of16);
    }

    /** With those of 256 and of sixteen colours that stand for it. */
    public static Colour rgb(int value, int of256, int of16) {
        return new Colour(Kind.RGB, value, of256, of16);
    }

    /** As this depth can show it: the colour itself, the one that stands for it, or the nearest. */
    public Colour at(ColourDepth depth) {
        return switch (depth) {
            case NONE -> OWN;
            case TRUE -> this;
            case INDEXED -> kind == Kind.RGB ? indexed(chosenOrNearest(of256, depth)) : this;
            case SIXTEEN ->
                switch (kind) {
                    case OWN, ANSI -> this;
                    case INDEXED -> ansi(depth.nearest(ColourDepth.rgb(value)));
                    case RGB -> ansi(chosenOrNearest(of16, depth));
                };
        };
    }

    private int chosenOrNearest(int chosen, ColourDepth depth) {
        return chosen >= 0 ? chosen : depth.nearest(value);
    }

    /** The parameters that ask for it, such as {@code ;38;5;208} (ECMA-48, 8.3.117; ITU-T T.416, 13.1.8). */
    String parameters(boolean background) {
        int base = background ? 40 : 30;
        return switch (kind) {
            case OWN -> "";
            case ANSI -> ";" + (value < 8 ? base + value : base + 60 + value - 8);
            case INDEXED -> ";" + (base + 8) + ";5;" + value;
            case RGB -> ";" + (base + 8) + ";2;" + (value >> 16) + ";" + (value >> 8 & 0xff) + ";" + (value & 0xff);
        };
    }
}
