package takeup.screen;

import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.panel.BottomBars;
import takeup.panel.FooterKeys;
import takeup.panel.Layout;
import takeup.panel.TopBar;
import takeup.report.RollText;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** A title, the part of a list that is scrolled to, and the prompt: how all views but the shoot screen are drawn. */
final class ListView {
    private ListView() {}

    static void draw(Session session, Grid grid, String title, List<ListLine> lines) {
        draw(session, grid, title, lines, 0);
    }

    /** The same, scrolled so that the row that is picked is seen. */
    static void drawPicked(Session session, Grid grid, String title, List<ListLine> lines) {
        int picked = 0;
        while (picked < lines.size() && lines.get(picked).role() != TextRole.CHOSEN) {
            picked++;
        }
        if (session.view().scroll() > 0) {
            draw(session, grid, title, lines, 0);
            return;
        }
        int above = Layout.of(grid).listRows() / 2;
        draw(session, grid, title, lines, picked < lines.size() ? Math.max(0, picked - above) : 0);
    }

    /** The same, scrolled at least to a line. */
    static void draw(Session session, Grid grid, String title, List<ListLine> lines, int atLeast) {
        Layout layout = Layout.of(grid);
        int rows = layout.rows();
        String left =
                session.shown().rollInHand().map(it -> RollText.left(it) + "  ").orElse("");
        TopBar.draw(grid, title, left + ClockText.clock(session.now()));
        int room = layout.listRows();
        int asked = Math.max(start(lines, session.view().scroll()), atLeast);
        int first = Math.max(0, Math.min(asked, lines.size() - room));
        int end = Math.min(lines.size(), first + room);
        for (int i = first; i < end; i++) {
            ListLine line = lines.get(i);
            if (line.role() == TextRole.CHOSEN) {
                grid.fill(1 + i - first, TextRole.CHOSEN);
            }
            grid.put(layout.margin(), 1 + i - first, Width.cut(line.text(), layout.room()), line.role());
            if (!line.key().isEmpty()) {
                grid.put(layout.margin(), 1 + i - first, Width.cut(line.key(), layout.room()), TextRole.READOUT);
            }
        }
        boolean scrolls = lines.size() > room;
        if (scrolls && rows > 5) {
            String seen = (first + 1) + " to " + end + " of " + lines.size() + " lines";
            grid.put(layout.margin(), rows - 4, seen, TextRole.QUIET);
        }
        if (rows > 3) {
            BottomBars.draw(grid, session, 1, scrolls ? FooterKeys.List.SCROLLS : FooterKeys.List.WHOLE);
        }
    }

    /** The line at which an entry begins. */
    private static int start(List<ListLine> lines, int entry) {
        int left = entry;
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isContinued() && left-- == 0) {
                return i;
            }
        }
        return lines.size();
    }
}
