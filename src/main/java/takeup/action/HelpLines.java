package takeup.action;

import java.util.ArrayList;
import java.util.List;
import takeup.text.Width;

/**
 * Help in lines of so many columns, as it is drawn and as it is paged through.
 *
 * @param lines all of them
 */
public record HelpLines(List<Line> lines) {
    /** What a line is. */
    public enum Kind {
        TITLE,
        ENTRY,
        REST
    }

    /**
     * A line.
     *
     * @param kind the title of a section, the first line of an entry, or one that goes on with it
     * @param entry which of all entries it belongs to; that of the next for a title
     * @param typed what is typed, in front; "" where the line has none
     * @param text all of the line
     */
    public record Line(Kind kind, int entry, String typed, String text) {}

    /**
     * A part of help as it is laid out.
     *
     * @param title its heading; "" where an entry stands for all of it
     * @param entries what stands under it
     */
    public record Part(String title, List<Item> entries) {}

    /** What is typed, and what it does. */
    public record Item(String typed, String does) {}

    public HelpLines {
        lines = List.copyOf(lines);
    }

    /** The lines of help in so many columns. */
    public static HelpLines of(List<Part> parts, int columns) {
        List<Line> lines = new ArrayList<>();
        int at = 0;
        for (Part part : parts) {
            if (!part.title().isEmpty()) {
                lines.add(new Line(Kind.TITLE, at, "", part.title()));
            }
            int indent = widest(part, columns) + 4;
            for (Item entry : part.entries()) {
                add(lines, entry, at++, indent, columns);
            }
        }
        return new HelpLines(lines);
    }

    /** The widest entry of a section, but for those that get a line of their own. */
    private static int widest(Part part, int columns) {
        return part.entries().stream()
                .mapToInt(it -> Width.of(it.typed()))
                .filter(it -> it < columns / 3)
                .max()
                .orElse(0);
    }

    /** What is typed and what it does, on one line where both fit. */
    private static void add(List<Line> lines, Item entry, int at, int indent, int columns) {
        String typed = "  " + entry.typed();
        if (entry.does().isEmpty()) {
            lines.add(new Line(Kind.ENTRY, at, typed, typed));
        } else if (Width.of(typed) < indent && indent + Width.of(entry.does()) < columns) {
            lines.add(new Line(Kind.ENTRY, at, typed, Width.pad(typed, indent) + entry.does()));
        } else {
            lines.add(new Line(Kind.ENTRY, at, typed, typed));
            int left = Math.min(indent, 6);
            Width.rows(entry.does(), columns - left)
                    .forEach(it -> lines.add(new Line(Kind.REST, at, "", " ".repeat(left) + it)));
        }
    }

    /** The line at which an entry begins. */
    public int start(int entry) {
        int at = 0;
        while (at < lines.size() - 1
                && (lines.get(at).kind() != Kind.ENTRY || lines.get(at).entry() != entry)) {
            at++;
        }
        return at;
    }

    /** The entry that a line belongs to; at a title the one before it. */
    public int entry(int line) {
        Line there = lines.get(Math.max(0, Math.min(lines.size() - 1, line)));
        return there.kind() == Kind.TITLE ? Math.max(0, there.entry() - 1) : there.entry();
    }
}
