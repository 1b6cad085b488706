package takeup.message;

/**
 * A key as the photographer pressed it: the space bar, {@code Ctrl-Z}, {@code F2}, the letter {@code m}.
 *
 * @param name which key
 * @param text what it wrote: one character for {@link Name#CHARACTER}, {@link Name#CTRL} and {@link Name#ALT},
 *     everything pasted for {@link Name#PASTE}, and "" for the rest
 */
public record Key(Name name, String text) {

    /** The keys that are told apart. What a terminal sends for any other one is {@link #UNKNOWN} and does nothing. */
    public enum Name {
        CHARACTER(""),
        ENTER("Enter"),
        ESCAPE("Esc"),
        TAB("Tab"),
        SHIFT_TAB("Shift-Tab"),
        BACKSPACE("Backspace"),
        DELETE("Del"),
        UP("Up"),
        DOWN("Down"),
        LEFT("Left"),
        RIGHT("Right"),
        HOME("Home"),
        END("End"),
        PAGE_UP("PgUp"),
        PAGE_DOWN("PgDn"),
        F1("F1"),
        F2("F2"),
        F3("F3"),
        F4("F4"),
        F5("F5"),
        F6("F6"),
        F7("F7"),
        F8("F8"),
        F9("F9"),
        F10("F10"),
        F11("F11"),
        F12("F12"),
        CTRL("Ctrl-"),
        ALT("Alt-"),
        PASTE("paste"),
        UNKNOWN("unknown key");

        private final String words;

        Name(String words) {
            this.words = words;
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Key key && name == key.name && text.equals(key.text);
    }

    @Override
    public int hashCode() {
        return 31 * text.hashCode() + name.ordinal();
    }

    public Key {
        boolean one = !text.isEmpty()
                && text.codePointCount(0, text.length()) == 1
                && !(text.length() == 1 && Character.isSurrogate(text.charAt(0)));
        // No switch, whose table would be one more class before the first picture.
        boolean fits = name == Name.PASTE || text.isEmpty();
        if (name == Name.CHARACTER || name == Name.ALT) {
            fits = one;
        } else if (name == Name.CTRL) {
            fits = one && !Character.isUpperCase(text.codePointAt(0));
        }
        if (!fits) {
            throw new IllegalArgumentException("the key " + name + " does not write \"" + text + "\"");
        }
    }

    /** A key that writes nothing, such as {@code F2}. */
    public static Key of(Name name) {
        return new Key(name, "");
    }

    /** A character key, such as {@code "m"}; the text is exactly one character, whose two halves are joined. */
    public static Key typed(String text) {
        return new Key(Name.CHARACTER, text);
    }

    /** A letter with the control key, {@code 'z'} for Ctrl-Z; a capital letter is refused. */
    public static Key ctrl(char letter) {
        return new Key(Name.CTRL, String.valueOf(letter));
    }

    /** A pasted text, whole, with the line ends that were in it. */
    public static Key pasted(String text) {
        return new Key(Name.PASTE, text);
    }

    /** As a person writes it: {@code Space}, {@code m}, {@code Ctrl-Z}, {@code Alt-x}, {@code F2}, {@code PgUp}. */
    @Override
    public String toString() {
        String written = text.equals(" ") ? "Space" : text;
        if (name == Name.CTRL && written.length() == 1) {
            written = Character.toString(Character.toUpperCase(written.charAt(0)));
        }
        return name == Name.PASTE ? name.words : name.words + written;
    }
}
