package takeup.grid;

/**
 * The colours of the themes, each with the one of sixteen that stands for it where the nearest could not be read.
 * Contrast is that of WCAG 2.x: what is read from afar, the warnings and NOT SAVED have 7:1, all other text 4.5:1.
 */
final class Palette {
    private Palette() {}

    /** Bone, brass and teal on near black; the strip on the brown of a developed film. */
    static Theme dark() {
        Colour ground = Colour.rgb(0x12161a, 0);
        Colour slate = Colour.rgb(0x222a31, 4);
        Colour film = Colour.rgb(0x241d14, 0);
        Colour bone = Colour.rgb(0xf6f3ea, 15);
        Colour brass = Colour.rgb(0xf5cf7b, 15);
        return new Table()
                .set(TextRole.NORMAL, Style.of(Colour.rgb(0xd3d7d2, 7), ground))
                .set(TextRole.QUIET, Style.of(Colour.rgb(0x98a2a6, 7), ground))
                .set(TextRole.STRONG, Style.of(bone, ground).strong())
                .set(TextRole.READOUT, Style.of(brass, ground).strong())
                .set(TextRole.LABEL, Style.of(Colour.rgb(0x8fb3bd, 6), ground))
                .set(TextRole.GOOD, Style.of(Colour.rgb(0x8fd19e, 10), ground))
                .set(
                        TextRole.CAUTION,
                        Style.of(Colour.rgb(0x12161a, 0), Colour.rgb(0xffb86b, 6))
                                .strong())
                .set(
                        TextRole.ALARM,
                        Style.of(Colour.rgb(0xffffff, 0), Colour.rgb(0xa02828, 7))
                                .strong())
                .set(TextRole.PROMPT, Style.of(bone, slate))
                .set(TextRole.CURSOR, Style.of(Colour.rgb(0x12161a, 0), Colour.rgb(0xf6f3ea, 7)))
                .set(TextRole.CHOSEN, Style.of(Colour.rgb(0x12161a, 0), Colour.rgb(0xd9b662, 7)))
                .set(TextRole.FILM, Style.of(Colour.rgb(0xb3a183, 7), film))
                .set(TextRole.FRAME, Style.of(Colour.rgb(0xe2a866, 11), film))
                .set(TextRole.EMPTY, Style.of(Colour.rgb(0xa0907a, 7), film))
                .set(TextRole.KEY, Style.of(Colour.rgb(0xf5cf7b, 11), slate))
                .set(TextRole.BAR, Style.of(Colour.rgb(0xc3cbcd, 7), slate))
                .set(
                        TextRole.NAME,
                        Style.of(Colour.rgb(0x12161a, 0), Colour.rgb(0xf6f3ea, 7))
                                .strong())
                .theme("dark", "light on near black: a room, a boathouse", false);
    }

    /** Ink on white, all of it heavy; what warns stands reversed, since sunlight washes hues out first. */
    static Theme sun() {
        Colour paper = Colour.rgb(0xffffff, 7);
        Colour ink = Colour.rgb(0x14181b, 0);
        Colour black = Colour.rgb(0x000000, 0);
        Colour steel = Colour.rgb(0xd5dade, 4);
        Colour film = Colour.rgb(0xe9dfcf, 7);
        Colour white = Colour.rgb(0xffffff, 15);
        return new Table()
                .set(TextRole.NORMAL, Style.of(ink, paper).strong())
                .set(TextRole.QUIET, Style.of(Colour.rgb(0x3d454a, 0), paper).strong())
                .set(TextRole.STRONG, Style.of(black, paper).strong())
                .set(TextRole.READOUT, Style.of(black, paper).strong())
                .set(TextRole.LABEL, Style.of(Colour.rgb(0x17405c, 4), paper).strong())
                .set(TextRole.GOOD, Style.of(Colour.rgb(0x00532a, 4), paper).strong())
                .set(TextRole.CAUTION, Style.of(white, Colour.rgb(0x8c1a00, 4)).strong())
                .set(TextRole.ALARM, Style.of(white, black).strong())
                .set(TextRole.PROMPT, Style.of(black, Colour.rgb(0xffe7a0, 7)).strong())
                .set(TextRole.CURSOR, Style.of(Colour.rgb(0xffe7a0, 15), black).strong())
                .set(TextRole.CHOSEN, Style.of(white, Colour.rgb(0x17405c, 4)).strong())
                .set(TextRole.FILM, Style.of(Colour.rgb(0x4a3a22, 0), film).strong())
                .set(TextRole.FRAME, Style.of(Colour.rgb(0x5a2d00, 4), film).strong())
                .set(TextRole.EMPTY, Style.of(Colour.rgb(0x55483a, 0), film).strong())
                .set(TextRole.KEY, Style.of(Colour.rgb(0x000000, 15), steel).strong())
                .set(TextRole.BAR, Style.of(Colour.rgb(0x14181b, 15), steel).strong())
                .set(TextRole.NAME, Style.of(white, black).strong())
                .theme("sun", "dark on white, heavy: outdoors", true);
    }

    /**
     * Red on black, for a theatre or a church. The brightest pure red has 5.25:1 on black, (0.2126 + 0.05) / 0.05, so
     * 7:1 cannot be had without another primary: what is read from afar and what warns takes the least green that
     * reaches it, 99 of 255, and no blue. Of the 256 colours only 203 has no more than 95 of green and 7:1; it has as
     * much blue. Of sixteen the bright red is all there is, with 5.25:1 or more. Nothing is lit but letters, the
     * cursor, and the plate of a warning, which must not be missed; with sixteen colours its letters are yellow on dark
     * red, without blue.
     */
    static Theme night() {
        Colour dark = Colour.rgb(0x000000, 16, 0);
        Colour ember = Colour.rgb(0x200000, 16, 0);
        Colour full = Colour.rgb(0xff0000, 196, 9);
        Colour dim = Colour.rgb(0xf20000, 196, 9);
        Colour far = Colour.rgb(0xff6300, 203, 9);
        Colour lit = Colour.rgb(0xff6300, 203, 1);
        Colour cut = Colour.rgb(0x000000, 16, 11);
        return new Table()
                .set(TextRole.NORMAL, Style.of(dim, dark))
                .set(TextRole.QUIET, Style.of(dim, dark))
                .set(TextRole.STRONG, Style.of(full, dark).strong())
                .set(TextRole.READOUT, Style.of(far, dark).strong())
                .set(TextRole.LABEL, Style.of(dim, dark))
                .set(TextRole.GOOD, Style.of(full, dark))
                .set(TextRole.CAUTION, Style.of(cut, lit).strong())
                .set(TextRole.ALARM, Style.of(cut, lit).strong().underlined())
                .set(TextRole.PROMPT, Style.of(full, ember))
                .set(TextRole.CURSOR, Style.of(full, dark).reversed())
                .set(TextRole.CHOSEN, Style.of(full, ember).strong().underlined())
                .set(TextRole.FILM, Style.of(full, ember))
                .set(TextRole.FRAME, Style.of(full, ember))
                .set(TextRole.EMPTY, Style.of(full, ember))
                .set(TextRole.KEY, Style.of(full, ember).strong())
                .set(TextRole.BAR, Style.of(full, ember))
                .set(TextRole.NAME, Style.of(cut, Colour.rgb(0xff0000, 196, 1)).strong())
                .theme("night", "dim red on black: a theatre, a church", true);
    }

    /** No colour at all: weight, underlining and reversal. */
    static Theme mono() {
        return new Table()
                .set(TextRole.NORMAL, Style.PLAIN)
                .set(TextRole.QUIET, Style.PLAIN)
                .set(TextRole.STRONG, Style.PLAIN.strong())
                .set(TextRole.READOUT, Style.PLAIN.strong())
                .set(TextRole.LABEL, Style.PLAIN)
                .set(TextRole.GOOD, Style.PLAIN)
                .set(TextRole.CAUTION, Style.PLAIN.strong().reversed())
                .set(TextRole.ALARM, Style.PLAIN.strong().reversed().underlined())
                .set(TextRole.PROMPT, Style.PLAIN)
                .set(TextRole.CURSOR, Style.PLAIN.reversed())
                .set(TextRole.CHOSEN, Style.PLAIN.reversed())
                .set(TextRole.FILM, Style.PLAIN)
                .set(TextRole.FRAME, Style.PLAIN.strong())
                .set(TextRole.EMPTY, Style.PLAIN)
                .set(TextRole.KEY, Style.PLAIN.strong())
                .set(TextRole.BAR, Style.PLAIN.underlined())
                .set(TextRole.NAME, Style.PLAIN.strong().reversed())
                .theme("mono", "the terminal's own colours, and weight alone", false);
    }

    /** A style for each role, until it is whole. */
    private static final class Table {
        private final Style[] styles = new Style[TextRole.values().length];

        Table set(TextRole role, Style style) {
            styles[role.ordinal()] = style;
            return this;
        }

        Theme theme(String name, String purpose, boolean cursorDrawn) {
            return new Theme(name, purpose, styles, cursorDrawn);
        }
    }
}
