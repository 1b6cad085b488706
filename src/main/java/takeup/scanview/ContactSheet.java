package takeup.scanview;

import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.review.ScanRow;
import takeup.text.Width;

/** All scans small, side by side, each with its frame, verdict and settings below it. */
final class ContactSheet {
    private static final int WIDTH = 20;
    private static final int MOST_ROWS = 9;

    private ContactSheet() {}

    static void draw(ScanRows rows) {
        int across = Math.max(1, rows.grid().columns() / WIDTH);
        // Two rows of somewhat lower pictures rather than one and a gap.
        int down = Math.max(1, (rows.height() + MOST_ROWS / 3) / MOST_ROWS);
        int tall = Math.min(MOST_ROWS, Math.max(3, rows.height() / down));
        int all = rows.all().size();
        int lines = (all + across - 1) / across;
        int first = Math.max(0, Math.min(Math.max(0, rows.cursor() / across - down / 2), lines - down));
        int to = Math.min(all, (first + down) * across);
        rows.count(first * across, to);
        for (int i = first * across; i < to; i++) {
            tile(rows, i, i % across * WIDTH, rows.top() + (i / across - first) * tall, tall);
        }
    }

    private static void tile(ScanRows rows, int index, int column, int top, int tall) {
        Grid grid = rows.grid();
        ScanRow row = rows.all().get(index);
        int width = WIDTH - 1;
        if (!rows.paint(row, column, top, width, tall - 2)) {
            grid.put(column, top, "no scan", TextRole.QUIET, width);
        }
        TextRole unchosen = rows.isMarked(row) ? TextRole.STRONG : TextRole.NORMAL;
        TextRole role = index == rows.cursor() ? TextRole.CHOSEN : unchosen;
        String verdict = row.verdict().isEmpty() ? "" : row.verdict() + " ";
        String text = (rows.isMarked(row) ? "s " : "") + row.frame() + " " + verdict + row.settings();
        grid.fill(column, top + tall - 2, width, role);
        grid.put(column, top + tall - 2, Width.cut(text, width), role);
        grid.put(column, top + tall - 1, Width.cut(row.reading(), width), TextRole.QUIET);
    }
}
