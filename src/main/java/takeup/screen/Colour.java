package takeup.screen;

/**
 * One colour as a theme names it: {@code rgb(0xff9d6b)}, {@code indexed(208)}, {@code ansi(9)}, or the terminal's own.
 *
 * @param kind how it is named
 * @param value 0 to 15, 0 to 255, or red, green and blue in 24 bits
 */
record Colour(Kind kind, int value) {
    enum Kind { OWN, ANSI, INDEXED, RGB }

    /** Whatever the terminal uses when nobody asks. */
    static final Colour OWN = new Colour(Kind.OWN, 0);

    Colour {
        int top = switch (kind) {
            case OWN -> 0;
            case ANSI -> 15;
            case INDEXED -> 255;
            case RGB -> 0xffffff;
        };
        if (value < 0 || value > top) {
            throw new IllegalArgumentException("a colour " + kind + " goes from 0 to " + top + ", was " + value);
        }
    }

    static Colour ansi(int value) {
        return new Colour(Kind.ANSI, value);
    }

    static Colour indexed(int value) {
        return new Colour(Kind.INDEXED, value);
    }

    static Colour rgb(int value) {
        return new Colour(Kind.RGB, value);
    }

    /** As this depth can show it: the colour itself, or the nearest it has. */
    Colour at(Depth depth) {
        return switch (depth) {
            case NONE -> OWN;
            case TRUE -> this;
            case INDEXED -> kind == Kind.RGB ? indexed(depth.nearest(value)) : this;
            case SIXTEEN -> kind == Kind.RGB ? ansi(depth.nearest(value))
                    : kind == Kind.INDEXED ? ansi(depth.nearest(Depth.rgb(value))) : this;
        };
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
