package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.text.Width;

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

    /** A head without the columns that have no room. */
    ListLine columnsWithin(int columns) {
        String head = text;
        while (Width.of(head) > columns && head.stripTrailing().lastIndexOf("  ") > 0) {
            head = head.substring(0, head.stripTrailing().lastIndexOf("  ")).stripTrailing();
        }
        return new ListLine(head, role, isContinued, key);
    }

    /** The same line over as many rows as it needs, those after the first further in. */
    List<ListLine> broken(int columns) {
        String first = TextFit.rows(text, columns).get(0);
        int indent = 4;
        while (indent < columns / 3 && indent - 4 < first.length() && " ►".indexOf(first.charAt(indent - 4)) >= 0) {
            indent++;
        }
        List<ListLine> lines = new ArrayList<>();
        lines.add(new ListLine(first, role, isContinued, key));
        wrapped(text.substring(first.length()).strip(), indent, columns, role).forEach(it -> lines.add(it.continued()));
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
