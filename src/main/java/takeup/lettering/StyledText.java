package takeup.lettering;

import takeup.grid.TextRole;

/** A text and what it is on the screen. */
public record StyledText(String text, TextRole role) {
    public static StyledText quiet(String text) {
        return new StyledText(text, TextRole.QUIET);
    }

    public static StyledText normal(String text) {
        return new StyledText(text, TextRole.NORMAL);
    }

    public static StyledText strong(String text) {
        return new StyledText(text, TextRole.STRONG);
    }

    public static StyledText caution(String text) {
        return new StyledText(text, TextRole.CAUTION);
    }
}
