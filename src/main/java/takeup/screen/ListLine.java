package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;

/**
 * A line of a list. An entry may take several: a list is scrolled by whole entries.
 *
 * @param text what it says
 * @param role how it looks
 * @param isContinued whether it goes on with the entry of the line before
 * @param key the key or the line in front, which stands out; "" where there is none
 */
record ListLine(String text, TextRole role, boolean isContinued, String key) {
    ListLine(String text, TextRole role) {
        this(text, role, false, "");
    }

    /** A text over as many lines as it needs, each behind so many blanks. */
    static List<ListLine> wrapped(String text, int indent, int columns, TextRole role) {
        List<ListLine> lines = new ArrayList<>();
        for (String part : TextFit.rows(text, columns - indent)) {
            lines.add(new ListLine(" ".repeat(indent) + part, role, !lines.isEmpty(), ""));
        }
        return lines;
    }

    /** The same with what is typed standing out in front, where nothing else marks the line. */
    ListLine typing(String typed) {
        return new ListLine(text, role, isContinued, role == TextRole.NORMAL ? typed : "");
    }

    /** The same line as one that goes on with the entry of the line before. */
    ListLine continued() {
        return new ListLine(text, role, true, key);
    }
}
