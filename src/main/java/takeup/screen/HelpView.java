package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.action.HelpLines;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.panel.Layout;
import takeup.session.HelpList;
import takeup.session.Session;

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
        String hint = isWhole && grid.columns() >= 72 ? ": type to search, Left folds" : "";
        int atLeast = markedLine < 0
                ? 0
                : Math.max(0, markedLine - Math.max(1, Layout.of(grid).listRows()) / 2);
        ListView.draw(session, grid, help.title() + hint, lines, atLeast);
    }

    private void sections(HelpList help) {
        List<HelpList.Entry> entries = help.entries();
        int marked = HelpList.onEnter(session).isPresent()
                ? Math.max(0, session.view().chosen())
                : -1;
        for (HelpLines.Line line : HelpLines.of(help.parts(), room).lines()) {
            if (line.kind() == HelpLines.Kind.TITLE) {
                lines.addAll(ListLine.wrapped(line.text(), 0, room, TextRole.LABEL));
                continue;
            }
            boolean isMarked = line.entry() == marked;
            TextRole unmarked = entries.get(line.entry()).whyNot().isPresent() ? TextRole.QUIET : TextRole.NORMAL;
            TextRole role = isMarked ? TextRole.CHOSEN : unmarked;
            boolean isFirst = line.kind() == HelpLines.Kind.ENTRY;
            if (isMarked && isFirst) {
                markedLine = lines.size();
            }
            String text = isMarked && isFirst ? "► " + line.text().substring(2) : line.text();
            ListLine drawn = new ListLine(text, role);
            lines.add(isFirst ? drawn.typing(line.typed()) : drawn.continued());
        }
    }
}
