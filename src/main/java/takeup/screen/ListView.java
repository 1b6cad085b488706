package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    /** What parts a title from what may be left out of it. */
    private static final String BETWEEN = " · ";

    private ListView() {}

    static void draw(Session session, Grid grid, String title, List<ListLine> lines) {
        draw(session, grid, title, lines, 0);
    }

    /** The same, scrolled so that the row that is picked is seen. */
    static void drawPicked(Session session, Grid grid, String title, List<ListLine> asked) {
        List<ListLine> lines = whole(asked, Layout.of(grid));
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
    static void draw(Session session, Grid grid, String title, List<ListLine> written, int atLeast) {
        Layout layout = Layout.of(grid);
        List<ListLine> lines = whole(written, layout);
        int rows = layout.rows();
        title(session, grid, title);
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

    /**
     * The title, and the frames left and the time, which are on every view: a long title loses its end part by part.
     */
    private static void title(Session session, Grid grid, String title) {
        String clock = ClockText.clock(session.now());
        Optional<String> left = session.shown().rollInHand().map(RollText::left);
        String apart = left.map(it -> it + "  ").orElse("") + clock;
        String near = left.map(it -> it + " ").orElse("") + clock;
        String shown = title;
        while (!TopBar.fits(grid, shown, near) && shown.contains(BETWEEN)) {
            shown = shown.substring(0, shown.lastIndexOf(BETWEEN));
        }
        if (!TopBar.fits(grid, shown, near) && shown.contains(": ")) {
            shown = shown.substring(shown.indexOf(": ") + 2);
        }
        TopBar.draw(grid, shown, TopBar.fits(grid, shown, apart) ? apart : near);
    }

    /**
     * The same lines with none cut on a narrow screen, and nowhere in the row that is picked: what is too long goes on
     * below.
     */
    private static List<ListLine> whole(List<ListLine> lines, Layout layout) {
        List<ListLine> whole = new ArrayList<>();
        for (ListLine line : lines) {
            boolean isWhole = layout.isNarrow() || line.role() == TextRole.CHOSEN;
            boolean isHead = line.role() == TextRole.LABEL && line.isContinued();
            if (isHead) {
                whole.add(line.columnsWithin(layout.room()));
            } else if (isWhole && Width.of(line.text()) > layout.room()) {
                whole.addAll(line.broken(layout.room()));
            } else {
                whole.add(line);
            }
        }
        return whole;
    }

    /** The line at which an entry begins; what stands above the first one belongs to it. */
    private static int start(List<ListLine> lines, int entry) {
        if (entry <= 0) {
            return 0;
        }
        int left = entry;
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isContinued() && left-- == 0) {
                return i;
            }
        }
        return lines.size();
    }
}
