package takeup.demo;

import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.text.Width;

/** A step of the tour in words, drawn over the view that it is about. */
final class TourPlate {
    private TourPlate() {}

    /** Draws it so that it ends above a row; answers its first row. */
    static int draw(Grid grid, int at, int end) {
        TourStep step = TourStep.ALL.get(at);
        int room = Math.max(1, grid.columns() - 2);
        List<String> rows = TextFit.rows(step.text(), room);
        int top = Math.max(0, end - rows.size() - 1);
        for (int row = top; row < end; row++) {
            grid.fill(row, TextRole.BAR);
        }
        String number = "Tour " + (at + 1) + " of " + TourStep.ALL.size() + "  ";
        int column = grid.put(1, top, number, TextRole.BAR);
        grid.put(column, top, Width.cut(step.title(), grid.columns() - column), TextRole.KEY);
        for (int i = 0; i < rows.size(); i++) {
            grid.put(1, top + 1 + i, rows.get(i), TextRole.BAR);
        }
        return top;
    }

    /** The keys of the tour, in the last row. */
    static void footer(Grid grid, int at) {
        int row = grid.rows() - 1;
        boolean isLast = at == TourStep.ALL.size() - 1;
        grid.fill(row, TextRole.BAR);
        int column = key(grid, 1, "Enter", isLast ? "ends the tour" : "goes on");
        column = at > 0 ? key(grid, column, "Backspace", "back") : column;
        column = isLast ? column : key(grid, column, "Esc", "leaves the tour");
        if (column + 27 < grid.columns()) {
            grid.put(column, row, "all other keys work", TextRole.BAR);
        }
    }

    private static int key(Grid grid, int column, String key, String does) {
        int row = grid.rows() - 1;
        return grid.put(grid.put(column, row, key, TextRole.KEY), row, " " + does + "   ", TextRole.BAR);
    }
}
