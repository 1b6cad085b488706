package takeup.grid;

/** How one {@link TextRole} is drawn: its colours, and its weight where there is no colour. */
public record Style(Colour foreground, Colour background, boolean bold, boolean reverse, boolean underline) {
    static final Style PLAIN = of(Colour.OWN, Colour.OWN);

    public static Style of(Colour foreground, Colour background) {
        return new Style(foreground, background, false, false, false);
    }

    public static Style of(int foreground, int background) {
        return of(Colour.rgb(foreground), Colour.rgb(background));
    }

    public Style strong() {
        return new Style(foreground, background, true, reverse, underline);
    }

    public Style reversed() {
        return new Style(foreground, background, bold, true, underline);
    }

    /** The same with letters and ground exchanged, and no line: for an area that is filled with the letters' colour. */
    public Style filling() {
        return new Style(foreground, background, bold, !reverse, false);
    }

    /** The same without a line, which would be drawn through an area that is painted. */
    public Style unlined() {
        return new Style(foreground, background, bold, reverse, false);
    }

    public Style underlined() {
        return new Style(foreground, background, bold, reverse, true);
    }

    /** As this depth can show it. */
    public Style at(ColourDepth depth) {
        Colour letters = foreground.at(depth);
        // Where there are sixteen colours, bold is another colour: black turns into a grey that cannot be read on
        // white.
        boolean isHeavy = bold && !(depth == ColourDepth.SIXTEEN && letters.kind() == Colour.Kind.ANSI);
        return new Style(letters, background.at(depth), isHeavy, reverse, underline);
    }

    /** The sequence that sets exactly this style, whatever was set before: {@code ESC [0;1;38;5;208m}. */
    public String sequence(ColourDepth depth) {
        return at(depth).sequence();
    }

    /** The same, of a style that its terminal can show. */
    public String sequence() {
        return "\u001b[0" + weight() + foreground.parameters(false) + background.parameters(true) + "m";
    }

    /**
     * The sequence that sets it where another style of the same terminal is set: only the colours that differ,
     * {@code ESC [38;5;208m}, or that letters and ground are exchanged, unless weight or one of the terminal's own
     * colours has to come back.
     */
    public String sequenceAfter(Style before) {
        String letters = foreground.parameters(false);
        String ground = background.parameters(true);
        String lettersBefore = before.foreground.parameters(false);
        String groundBefore = before.background.parameters(true);
        boolean sameColours = letters.equals(lettersBefore) && ground.equals(groundBefore);
        if (sameColours && bold == before.bold && underline == before.underline && reverse != before.reverse) {
            return reverse ? "\u001b[7m" : "\u001b[27m";
        }
        boolean comesBack =
                letters.isEmpty() && !lettersBefore.isEmpty() || ground.isEmpty() && !groundBefore.isEmpty();
        if (comesBack || !weight().equals(before.weight())) {
            return sequence();
        }
        String colours = (letters.equals(lettersBefore) ? "" : letters) + (ground.equals(groundBefore) ? "" : ground);
        return colours.isEmpty() ? "" : "\u001b[" + colours.substring(1) + "m";
    }

    private String weight() {
        return (bold ? ";1" : "") + (underline ? ";4" : "") + (reverse ? ";7" : "");
    }
}
