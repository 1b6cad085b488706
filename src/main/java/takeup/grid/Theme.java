package takeup.grid;

import java.util.Optional;

/**
 * A named set of styles, one for each {@link TextRole}: {@code dark}, {@code sun}, {@code night}, {@code mono}. The
 * colours stand in {@link Palette}; a new theme is a table there, a case here, and a name for the word {@code theme}.
 */
public final class Theme {
    /** What every theme turns into under NO_COLOR. */
    public static final Theme MONO = Palette.mono();

    private final String name;
    private final String purpose;
    private final Style[] styles;
    private final boolean cursorDrawn;

    Theme(String name, String purpose, Style[] styles, boolean cursorDrawn) {
        this.name = name;
        this.purpose = purpose;
        this.styles = styles;
        this.cursorDrawn = cursorDrawn;
    }

    /** The theme of this name, {@code dark}; empty if there is none. */
    public static Optional<Theme> named(String name) {
        return switch (name) {
            case "dark" -> Optional.of(Palette.dark());
            case "sun" -> Optional.of(Palette.sun());
            case "night" -> Optional.of(Palette.night());
            case "mono" -> Optional.of(MONO);
            default -> Optional.empty();
        };
    }

    public String name() {
        return name;
    }

    /** What it is for: {@code light on near black: a room, a boathouse}. */
    public String purpose() {
        return purpose;
    }

    /**
     * Whether the cursor is a cell of the picture and the terminal's own is hidden: that one has a colour of its own,
     * white in the dark of a church, or too near to the paper in the sun.
     */
    public boolean isCursorDrawn() {
        return cursorDrawn;
    }

    public Style style(TextRole role) {
        return styles[role.ordinal()];
    }
}
