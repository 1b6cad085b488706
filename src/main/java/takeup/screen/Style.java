package takeup.screen;

/** How one {@link Look} is drawn: its colours, and what is left of it where there is no colour. */
record Style(Colour foreground, Colour background, boolean bold, boolean reverse, boolean underline) {
    static final Style PLAIN = new Style(Colour.OWN, Colour.OWN, false, false, false);

    static Style of(int foreground, int background) {
        return new Style(Colour.rgb(foreground), Colour.rgb(background), false, false, false);
    }

    Style strong() {
        return new Style(foreground, background, true, reverse, underline);
    }

    Style turned() {
        return new Style(foreground, background, bold, true, underline);
    }

    Style underlined() {
        return new Style(foreground, background, bold, reverse, true);
    }

    /** The sequence that sets exactly this style, whatever was set before: {@code ESC [0;1;38;5;208m}. */
    String sequence(Depth depth) {
        return "\u001b[0" + (bold ? ";1" : "") + (underline ? ";4" : "") + (reverse ? ";7" : "")
                + foreground.at(depth).parameters(false) + background.at(depth).parameters(true) + "m";
    }
}
