package takeup.panel;

import java.util.List;
import takeup.action.PickList;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.text.Width;

/** Rows to pick from, side by side in up to two columns; where there are more, the part with the chosen one. */
final class PickRows {
    private static final int GAP = 4;

    private final Grid grid;
    private final List<PickList.Row> all;
    private final int chosen;
    private final int most;
    private final int room;
    private final boolean isTwo;

    /** In so many rows of the screen at most. */
    PickRows(Grid grid, List<PickList.Row> all, int chosen, int most) {
        this.grid = grid;
        this.all = all;
        this.chosen = chosen;
        this.most = most;
        this.room = Layout.of(grid).room();
        this.isTwo = all.size() > most && room >= 60 && fitsInTwo();
    }

    void draw(int row) {
        // The last row then counts the ones without room, and is not one to pick from.
        boolean isCut = all.size() > (isTwo ? 2 * most : most) && most > 1;
        int rows = isCut ? most - 1 : most;
        int shown = isTwo ? 2 * rows : rows;
        int from = chosen < shown ? 0 : chosen / shown * shown;
        int to = Math.min(all.size(), from + shown);
        List<PickList.Row> left = all.subList(from, Math.min(to, from + rows));
        List<PickList.Row> right = all.subList(from + left.size(), to);
        int second = isTwo && !right.isEmpty() ? secondColumn(left, right) : room + 1;
        int margin = Layout.of(grid).margin();
        column(left, from, margin, row, second - 1);
        column(right, from + left.size(), margin + second, row, room - second);
        if (isCut) {
            int below = all.size() - to;
            String more = below > 0 ? below + " more below: Down goes on" : from + " more above: Up goes back";
            grid.put(margin + 2, row + most - 1, more, TextRole.QUIET);
        }
    }

    private void column(List<PickList.Row> rows, int from, int column, int top, int width) {
        int widest = widestLine(rows);
        for (int i = 0; i < rows.size(); i++) {
            PickList.Row it = rows.get(i);
            int row = top + i;
            boolean isChosen = from + i == chosen;
            TextRole role = isChosen ? TextRole.CHOSEN : TextRole.NORMAL;
            if (isChosen) {
                grid.fill(column, row, width, TextRole.CHOSEN);
            }
            grid.put(column, row, isChosen ? "►" : " ", role);
            grid.put(column + 2, row, it.line(), isChosen ? TextRole.CHOSEN : TextRole.READOUT);
            int text = Math.max(widest, Width.of(it.line())) + GAP;
            grid.put(column + text, row, TextFit.first(width - text, it.text(), it.name()), role);
        }
    }

    /** The widest line but for overlong ones: such a one pushes its own meaning to the right, and not those of all. */
    private int widestLine(List<PickList.Row> rows) {
        int most = isTwo ? room / 4 : room / 2;
        int widest = 0;
        for (PickList.Row row : rows) {
            int width = Width.of(row.line());
            widest = width <= most ? Math.max(widest, width) : widest;
        }
        return widest;
    }

    /**
     * Where the right column begins: so that no meaning is cut if there is room for that at all, else in the middle.
     */
    private int secondColumn(List<PickList.Row> left, List<PickList.Row> right) {
        for (Wording rightWording : Wording.values()) {
            for (Wording leftWording : Wording.values()) {
                int first = width(left, leftWording) + 1;
                int second = width(right, rightWording);
                if (first + second <= room) {
                    return Math.max(first, Math.min(room / 2, room - second));
                }
            }
        }
        return room / 2;
    }

    /** Whether no name is cut where two stand side by side; else one column shows the rating of each film, too. */
    private boolean fitsInTwo() {
        int half = (Math.min(all.size(), 2 * most) + 1) / 2;
        int widest = 0;
        for (PickList.Row row : all) {
            widest = Math.max(widest, Width.of(row.line()));
        }
        int left = width(all.subList(0, half), widest);
        int right = width(all.subList(half, all.size()), widest);
        return left + 1 + right <= room;
    }

    private static int width(List<PickList.Row> rows, int widest) {
        int width = 0;
        for (PickList.Row row : rows) {
            width = Math.max(width, Math.min(widest, Width.of(row.line())) + GAP + Width.of(row.name()));
        }
        return width;
    }

    private int width(List<PickList.Row> rows, Wording wording) {
        int widest = widestLine(rows);
        int width = 0;
        for (PickList.Row row : rows) {
            width = Math.max(width, Math.max(widest, Width.of(row.line())) + GAP + Width.of(wording.of(row)));
        }
        return width;
    }

    /** How a row is called beside its line, the fullest first. */
    private enum Wording {
        TEXT,
        NAME;

        String of(PickList.Row row) {
            return this == TEXT ? row.text() : row.name();
        }
    }
}
