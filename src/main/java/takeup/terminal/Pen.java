package takeup.terminal;

import takeup.grid.ColourDepth;
import takeup.grid.Style;
import takeup.grid.TextRole;
import takeup.grid.Theme;

/**
 * What the terminal writes with now, and the shortest sequence that has it write with something else: a line over radio
 * carries each of them with each key.
 */
final class Pen {
    private static final int UNKNOWN = -1;
    private static final int ROLES = TextRole.values().length;

    /** Of each role; behind them what fills an area in each; then each without the line below its letters. */
    private final Style[] styles = new Style[3 * ROLES];

    private final String[] whole = new String[styles.length];
    private final String[][] changes = new String[styles.length][styles.length];
    private int set = UNKNOWN;

    Pen(Theme theme, ColourDepth depth) {
        for (TextRole role : TextRole.values()) {
            Style style = theme.style(role).at(depth);
            styles[role.ordinal()] = style;
            styles[ROLES + role.ordinal()] = style.filling();
            styles[2 * ROLES + role.ordinal()] = style.unlined();
        }
    }

    /** It may write with anything now. */
    void lose() {
        set = UNKNOWN;
    }

    /** What has it write in this role; nothing where it does already. */
    String in(TextRole role) {
        return to(role.ordinal());
    }

    /** What has it fill an area with the colour of this role's letters. */
    String filling(TextRole role) {
        return to(ROLES + role.ordinal());
    }

    /** What has it write in this role without the line below letters, which would cross an area that is painted. */
    String unlined(TextRole role) {
        return to(2 * ROLES + role.ordinal());
    }

    /** Whether it writes in this role. */
    boolean isIn(TextRole role) {
        return set == role.ordinal();
    }

    private String to(int wanted) {
        int before = set;
        set = wanted;
        if (before == wanted) {
            return "";
        }
        if (before == UNKNOWN) {
            if (whole[wanted] == null) {
                whole[wanted] = styles[wanted].sequence();
            }
            return whole[wanted];
        }
        if (changes[before][wanted] == null) {
            changes[before][wanted] = styles[wanted].sequenceAfter(styles[before]);
        }
        return changes[before][wanted];
    }
}
