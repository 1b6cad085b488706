package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.panel.Layout;
import takeup.search.FindQuery;
import takeup.search.FoundFrame;
import takeup.search.FoundFrames;
import takeup.search.FrameRow;
import takeup.session.Session;
import takeup.text.Width;

/** Frames of any roll that were looked for, newest first: a line each where it fits, else with the rest below it. */
final class FoundView {
    private static final int INDENT = 7;

    private FoundView() {}

    static void draw(Session session, Grid grid) {
        int room = Layout.of(grid).room();
        Optional<FoundFrames> found = session.view().found();
        List<ListLine> lines = new ArrayList<>();
        if (found.isEmpty()) {
            lines.addAll(ListLine.wrapped(
                    "Type find and what you look for, such as find " + FindQuery.EXAMPLE, 0, room, TextRole.QUIET));
        } else {
            lines.addAll(ListLine.wrapped(found.get().count() + of(found.get()), 0, room, TextRole.STRONG));
            found.get().newest().forEach(it -> lines.addAll(lines(it, room)));
        }
        ListView.draw(session, grid, found.map(it -> "Find: " + it.typed()).orElse("Find"), lines);
    }

    private static String of(FoundFrames found) {
        boolean isCut = found.newest().size() < found.frames();
        return isCut ? "; here the newest " + found.newest().size() + ", takeup find lists all" : "";
    }

    private static List<ListLine> lines(FrameRow row, int room) {
        String line = FoundFrame.line(row);
        if (Width.of(line) <= room) {
            return List.of(new ListLine(line, TextRole.NORMAL));
        }
        List<ListLine> lines = new ArrayList<>(List.of(new ListLine(FoundFrame.start(row), TextRole.NORMAL)));
        ListLine.wrapped(FoundFrame.rest(row), INDENT, room, TextRole.LABEL).forEach(it -> lines.add(it.continued()));
        return lines;
    }
}
