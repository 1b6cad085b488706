package takeup.screen;

import takeup.grid.TextRole;

/** A text and what it is on the screen. */
record StyledText(String text, TextRole role) {
    static StyledText quiet(String text) {
        return new StyledText(text, TextRole.QUIET);
    }

    static StyledText normal(String text) {
        return new StyledText(text, TextRole.NORMAL);
    }

    static StyledText strong(String text) {
        return new StyledText(text, TextRole.STRONG);
    }

    static StyledText caution(String text) {
        return new StyledText(text, TextRole.CAUTION);
    }
}
