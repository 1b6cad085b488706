package takeup.panel;

import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.text.Width;

/** A key in a footer and what it does, {@code F2 frames}. */
public record KeyItem(String key, String action) {
    public int width() {
        return Width.of(key) + 1 + Width.of(action);
    }

    /** Draws keys side by side from a column on; one that finds no room is left out. */
    public static void draw(List<KeyItem> items, Grid grid, int row, int margin) {
        grid.fill(row, TextRole.BAR);
        int column = margin;
        for (KeyItem item : items) {
            if (column + item.width() <= grid.columns() - margin) {
                column = grid.put(column, row, item.key(), TextRole.KEY);
                column = grid.put(column, row, " " + item.action(), TextRole.BAR) + 2;
            }
        }
    }
}
