package takeup.panel;

import java.util.Locale;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.roll.Roll;

/**
 * The stops above box speed drawn as a bar, from where the film gets thin to where it gets dense: what rating, bias and
 * the error of the setting add up to, before the frame is exposed. {@code thin ──┼█████▌──── dense}; ┼ is box speed.
 * The strip shows the same of each frame by its height. A sum beyond the film ends in an arrow: the bar is as long as
 * it gets.
 *
 * @param low where thin begins, in stops above box speed; below 0 on negative film
 * @param high where dense begins
 * @param sum what the setting in hand comes to
 * @param ends the words at both ends
 */
record ExposureBar(double low, double high, double sum, Ends ends) {
    /** What too little and too much light make of the film. */
    enum Ends {
        /** Of a negative. */
        THIN_DENSE("thin", "dense"),
        /** Of a slide. */
        DARK_LIGHT("dark", "light");

        private final String under;
        private final String over;

        Ends(String under, String over) {
            this.under = under;
            this.over = over;
        }
    }

    /** Columns that the words at both ends take, with their blanks: {@code thin } and {@code dense}. */
    private static final int ENDS = 11;

    private static final int LEAST = 8;

    /** For a roll: pushing it moves both ends. */
    static ExposureBar of(Roll roll, double sum) {
        double push = roll.film().development().pushStops();
        double low = -roll.film().stock().underStops() - push;
        double high = roll.film().stock().overStops() - push;
        Ends ends = roll.film().stock().kind().isNegative() ? Ends.THIN_DENSE : Ends.DARK_LIGHT;
        return new ExposureBar(low, Math.max(high, low + 0.5), sum, ends);
    }

    /** One row: the ends in words, in capitals where the sum lies beyond. Nothing where there is no room for it. */
    void inline(Grid grid, int column, int row, int width) {
        int cells = Math.min(48, width - ENDS);
        if (cells < LEAST) {
            return;
        }
        int at = end(grid, column, row, isThin(), ends.under);
        line(grid, at + 1, row, cells);
        end(grid, at + 2 + cells, row, isDense(), ends.over);
    }

    /** Two rows: above the bar the ends, box speed and the whole stops. */
    void ruler(Grid grid, int column, int row, int width) {
        int cells = Math.min(72, width);
        if (cells < 2 * LEAST) {
            return;
        }
        int free = end(grid, column, row, isThin(), ends.under) + 1;
        int dense = column + cells - 5;
        for (int stop = (int) Math.ceil(low); stop <= high; stop++) {
            String words = stop == 0 ? "box" : Integer.toString(Math.abs(stop));
            int from = column + cell(stop, cells) - (words.length() - 1) / 2;
            if (from >= free && from + words.length() < dense) {
                free = grid.put(from, row, words, TextRole.LABEL) + 1;
            }
        }
        end(grid, dense, row, isDense(), ends.over);
        line(grid, column, row + 1, cells);
        for (int stop = (int) Math.ceil(low); stop <= high; stop++) {
            int at = column + cell(stop, cells);
            if (grid.cell(at, row + 1).text().equals("─")) {
                grid.put(at, row + 1, "┴", TextRole.QUIET);
            }
        }
    }

    private boolean isThin() {
        return sum < low - 0.01;
    }

    private boolean isDense() {
        return sum > high + 0.01;
    }

    private static int end(Grid grid, int column, int row, boolean isBeyond, String word) {
        return grid.put(
                column,
                row,
                isBeyond ? word.toUpperCase(Locale.ROOT) : word,
                isBeyond ? TextRole.CAUTION : TextRole.LABEL);
    }

    /** The cell of a bar in which a number of stops lies. */
    private int cell(double stops, int cells) {
        return (int) Math.max(0, Math.min(cells - 1, Math.round((stops - low) / (high - low) * (cells - 1))));
    }

    /** The line, and the bar from box speed to the sum in half cells; box speed itself has a cell of its own. */
    private void line(Grid grid, int column, int row, int cells) {
        grid.put(column, row, "─".repeat(cells), TextRole.QUIET);
        int box = cell(0, cells);
        boolean isOver = sum > 0;
        int room = isOver ? cells - 1 - box : box;
        double reach = isOver ? high : -low;
        int halves = reach <= 0 ? 0 : (int) Math.min(2L * room, Math.round(2 * room * Math.abs(sum) / reach));
        for (int i = 0; i < halves / 2; i++) {
            grid.put(column + (isOver ? box + 1 + i : box - 1 - i), row, "█", TextRole.READOUT);
        }
        if (halves % 2 == 1) {
            grid.put(
                    column + (isOver ? box + 1 + halves / 2 : box - 1 - halves / 2),
                    row,
                    isOver ? "▌" : "▐",
                    TextRole.READOUT);
        }
        grid.put(column + box, row, "┼", TextRole.STRONG);
        if (isThin() || isDense()) {
            grid.put(column + (isOver ? cells - 1 : 0), row, isOver ? ">" : "<", TextRole.CAUTION);
        }
    }
}
