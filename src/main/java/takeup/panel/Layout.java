package takeup.panel;

import takeup.action.Window;
import takeup.grid.Grid;

/** How a screen of so many columns and rows is divided. The sizes from which on there is room for more are all here. */
public record Layout(int columns, int rows) {
    public static Layout of(Grid grid) {
        return new Layout(grid.columns(), grid.rows());
    }

    /** So small that a line or two and the prompt is all. */
    public boolean isTiny() {
        return columns < 40 || rows < 12;
    }

    /** Too small for the lists of the shoot screen. */
    public boolean isSmall() {
        return columns < 72 || rows < 22;
    }

    /** So large that blank rows part what belongs together. */
    public boolean isAiry() {
        return columns >= 96 && rows >= 28;
    }

    /** So large that the counter doubles and the exposure bar has a scale. */
    public boolean isGrand() {
        return columns >= 112 && rows >= 36;
    }

    /** Whether the film strip has its upper edge too. */
    public boolean hasUpperRebate() {
        return isGrand() && rows >= 38;
    }

    /** How many rows the other cameras and backs have at most. */
    public int placeRows() {
        return isGrand() ? 4 : 2;
    }

    /** How many times five rows the counter is high. */
    public int counterScale() {
        if (!isGrand()) {
            return 1;
        }
        return rows >= 52 && columns >= 160 ? 3 : 2;
    }

    /** Whether the newest frames stand beside the suggestions. */
    public boolean isTwoLists() {
        return columns >= 78;
    }

    /** Whether the suggestions have a column more. */
    boolean isWideList() {
        return columns >= 100;
    }

    /** Whether the time of a frame has room among its other columns. */
    public boolean hasFrameTimes() {
        return columns >= 60;
    }

    /** So narrow that a row of the plan takes several lines. */
    public boolean isNarrow() {
        return columns < 60;
    }

    /** Columns left free at both sides of a wide screen; what is typed begins there too. */
    public int margin() {
        return window().margin();
    }

    /** Columns between the margins. */
    public int room() {
        return window().room();
    }

    /** The column at which the right margin begins. */
    public int right() {
        return columns - margin();
    }

    /** How many lines of a list are seen at once: below the title, above the row of warnings and the prompt. */
    public int listRows() {
        return window().listRows();
    }

    private Window window() {
        return new Window(columns, rows);
    }
}
