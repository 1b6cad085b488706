package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.panel.Layout;
import takeup.session.HelpList;
import takeup.session.Session;
import takeup.text.Width;

/** Help: keys and words that work now, then what cannot be done and why; the entry that Enter runs is highlighted. */
final class HelpView {
    private static final List<String> CAUTIONS = List.of(
            "Never look at the sun through a finder or a spot meter.",
            "Old flash units can carry a high trigger voltage, old cells can leak: keep to the makers' "
                    + "instructions and local rules.");

    private final Session session;
    private final Grid grid;
    private final int room;
    private final List<ListLine> lines = new ArrayList<>();
    private int markedLine = -1;

    private HelpView(Session session, Grid grid) {
        this.session = session;
        this.grid = grid;
        this.room = Layout.of(grid).room();
    }

    static void draw(Session session, Grid grid) {
        new HelpView(session, grid).draw();
    }

    private void draw() {
        HelpList help = HelpList.of(session);
        boolean isWhole =
                session.prompt().isEmpty() && session.view().helpWord().isEmpty();
        sections(help);
        if (lines.isEmpty()) {
            lines.add(new ListLine("No match", TextRole.QUIET));
        } else if (isWhole) {
            lines.add(new ListLine("Cautions", TextRole.LABEL));
            CAUTIONS.forEach(it -> lines.addAll(ListLine.wrapped(it, 0, room, TextRole.NORMAL)));
        }
        String hint = isWhole && grid.columns() >= 72 ? ": type to search, Down Enter does it" : "";
        int atLeast = markedLine < 0
                ? 0
                : Math.max(0, markedLine - Math.max(1, Layout.of(grid).listRows()) / 2);
        ListView.draw(session, grid, help.title() + hint, lines, atLeast);
    }

    private void sections(HelpList help) {
        boolean hasMark = HelpList.onEnter(session).isPresent();
        int marked = Math.max(0, session.view().chosen());
        int at = 0;
        for (HelpList.Section section : help.sections()) {
            lines.add(new ListLine(section.title(), TextRole.LABEL));
            int indent = widest(section) + 4;
            for (HelpList.Entry entry : section.entries()) {
                boolean isMarked = hasMark && at++ == marked;
                if (isMarked) {
                    markedLine = lines.size();
                }
                entry(entry, indent, isMarked);
            }
        }
    }

    /** The widest entry of a section, but for those that get a line of their own. */
    private int widest(HelpList.Section section) {
        return section.entries().stream()
                .mapToInt(it -> Width.of(it.typed()))
                .filter(it -> it < room / 3)
                .max()
                .orElse(0);
    }

    /** What is typed and what it does, on one line where both fit. */
    private void entry(HelpList.Entry entry, int indent, boolean isMarked) {
        TextRole unmarked = entry.whyNot().isPresent() ? TextRole.QUIET : TextRole.NORMAL;
        TextRole role = isMarked ? TextRole.CHOSEN : unmarked;
        String typed = (isMarked ? "► " : "  ") + entry.typed();
        if (Width.of(typed) < indent && indent + Width.of(entry.does()) < room) {
            lines.add(new ListLine(Width.pad(typed, indent) + entry.does(), role).typing(typed));
        } else {
            lines.add(new ListLine(typed, role).typing(typed));
            ListLine.wrapped(entry.does(), Math.min(indent, 6), room, role).forEach(it -> lines.add(it.continued()));
        }
    }
}
