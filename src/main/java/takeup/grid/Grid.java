package takeup.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import takeup.text.Hidden;
import takeup.text.Width;

/**
 * What the screen shows, as cells: {@code Grid.of(80, 24)}. Columns and rows count from 0, from the top left. A view
 * fills a fresh one and hands it on; after that nobody changes it.
 */
public final class Grid {
    /** More marks than this on one letter would spill over its neighbours. */
    private static final int MARKS = 4;

    private final int columns;
    private final Cell[][] cells;
    /** The rows into which letters were put whose columns a terminal may count differently. */
    private final boolean[] uncertain;

    private final List<Placement> placements = new ArrayList<>();
    private int cursorColumn = -1;
    private int cursorRow = -1;

    private Grid(int columns, int rows) {
        this.columns = columns;
        this.cells = new Cell[rows][columns];
        this.uncertain = new boolean[rows];
        Cell blank = Cell.blank(TextRole.NORMAL);
        for (Cell[] row : cells) {
            Arrays.fill(row, blank);
        }
    }

    /** All blank, without a cursor; a grid has at least one cell. */
    public static Grid of(int columns, int rows) {
        Size size = new Size(columns, rows);
        return new Grid(size.columns(), size.rows());
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return cells.length;
    }

    /**
     * Writes a text, with nothing {@link Hidden} in it; what lies beyond the edges is left out. Answers the column
     * after it.
     */
    public int put(int column, int row, String text, TextRole role) {
        return put(column, row, text, role, Integer.MAX_VALUE);
    }

    /**
     * Writes a text into so many columns at most. What is cut is cut without a sign ({@link Width#cut} sets one), and
     * half a wide character is drawn as a blank.
     */
    public int put(int column, int row, String text, TextRole role, int width) {
        int right = (int) Math.min(columns, (long) column + width);
        int at = column;
        int letter = -1;
        if (row < 0 || row >= cells.length) {
            return at;
        }
        String seen = Hidden.shown(text);
        for (int next = 0; next < seen.length() && at <= right; next += Character.charCount(seen.codePointAt(next))) {
            int point = seen.codePointAt(next);
            int wide = Width.of(point);
            if (wide == 0 && at == column) {
                at = put(at, row, Hidden.escaped(point), role, right - at);
            } else if (wide == 0) {
                putMark(letter, row, point);
            } else if (at >= right) {
                break;
            } else if (at < 0 || at + wide > right) {
                blank(Math.max(0, at), Math.min(right, at + wide), row, role);
                letter = -1;
                at = Math.min(right, at + wide);
            } else {
                if (wide == 2 || splitsWide(at, row)) {
                    blank(at, at + wide, row, role);
                }
                letter = at;
                Cell cell = Cell.of(point, role);
                cells[row][at] = cell;
                uncertain[row] |= cell.isUncertain();
                if (wide == 2) {
                    cells[row][at + 1] = new Cell("", role);
                }
                at += wide;
            }
        }
        return at;
    }

    /** Whether a letter here would leave half of a wide one standing. */
    private boolean splitsWide(int column, int row) {
        return cells[row][column].isSecondHalf() || column + 1 < columns && cells[row][column + 1].isSecondHalf();
    }

    /** Draws two dots of a picture into a cell, one above the other; beyond the edges nothing. */
    public void putPixels(int column, int row, PixelPair dots) {
        if (row >= 0 && row < cells.length && column >= 0 && column < columns) {
            blank(column, column + 1, row, TextRole.NORMAL);
            cells[row][column] = new Cell("▀", TextRole.NORMAL, dots);
        }
    }

    /**
     * Sets a picture in true pixels over cells that stand for it where a terminal draws none. It must lie inside, and
     * above the last row, where some terminals would scroll.
     */
    public void put(Placement placement) {
        if (placement.column() >= 0
                && placement.row() >= 0
                && placement.column() + placement.columns() <= columns
                && placement.row() + placement.rows() < cells.length) {
            placements.add(placement);
        }
    }

    /** The pictures in true pixels. */
    public List<Placement> placements() {
        return List.copyOf(placements);
    }

    /** Puts the cells of another grid of the same size here; its cursor and its pictures in true pixels it keeps. */
    public void putAll(Grid other) {
        for (int row = 0; row < cells.length; row++) {
            System.arraycopy(other.cells[row], 0, cells[row], 0, columns);
            uncertain[row] = other.uncertain[row];
        }
    }

    /** Whether a row of another grid of the same size looks the same. */
    public boolean isRowOf(Grid other, int row) {
        Cell[] ours = cells[row];
        Cell[] theirs = other.cells[row];
        for (int column = 0; column < columns; column++) {
            if (ours[column] != theirs[column] && !ours[column].equals(theirs[column])) {
                return false;
            }
        }
        return true;
    }

    /** Whether a terminal may count the columns of a row differently from {@link Width}. */
    public boolean isUncertain(int row) {
        return uncertain[row];
    }

    private void putMark(int column, int row, int mark) {
        if (column >= 0) {
            Cell cell = cells[row][column];
            if (cell.text().codePointCount(0, cell.text().length()) <= MARKS) {
                cells[row][column] = new Cell(cell.text() + Character.toString(mark), cell.role());
                uncertain[row] = true;
            }
        }
    }

    /** Blanks from one column up to another; a wide character that loses one half is blank in the other too. */
    private void blank(int from, int to, int row, TextRole role) {
        if (from >= to) {
            return;
        }
        if (cells[row][from].isSecondHalf() && from > 0) {
            cells[row][from - 1] = Cell.blank(cells[row][from - 1].role());
        }
        if (to < columns && cells[row][to].isSecondHalf()) {
            cells[row][to] = Cell.blank(cells[row][to].role());
        }
        Arrays.fill(cells[row], from, to, Cell.blank(role));
    }

    /** Blanks a whole row in this role, for a bar or a highlighted line. */
    public void fill(int row, TextRole role) {
        fill(0, row, columns, role);
    }

    /** Blanks so many cells in this role. */
    public void fill(int column, int row, int width, TextRole role) {
        if (row >= 0 && row < cells.length) {
            blank(Math.max(0, column), (int) Math.min(columns, (long) column + width), row, role);
        }
    }

    /** Where the cursor blinks; without it, or beyond the edges, the cursor is hidden. */
    public void cursor(int column, int row) {
        boolean inside = column >= 0 && column < columns && row >= 0 && row < cells.length;
        cursorColumn = inside ? column : -1;
        cursorRow = inside ? row : -1;
    }

    /** The column of the cursor, -1 if it is hidden. */
    public int cursorColumn() {
        return cursorColumn;
    }

    /** The row of the cursor, -1 if it is hidden. */
    public int cursorRow() {
        return cursorRow;
    }

    /** The same picture with its cursor as a cell of this role, and none for the terminal to show. */
    public Grid withCursorAs(TextRole role) {
        if (cursorColumn < 0) {
            return this;
        }
        Grid drawn = new Grid(columns, cells.length);
        drawn.putAll(this);
        int column = cells[cursorRow][cursorColumn].isSecondHalf() ? cursorColumn - 1 : cursorColumn;
        drawn.cells[cursorRow][column] = new Cell(cells[cursorRow][column].text(), role);
        return drawn;
    }

    public Cell cell(int column, int row) {
        return cells[row][column];
    }

    /** What a cell is, for tests that ask how something is marked. */
    public TextRole role(int column, int row) {
        return cells[row][column].role();
    }

    /** The rows as plain lines, without the blanks at their ends and without empty lines at the foot. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (Cell[] row : cells) {
            for (Cell cell : row) {
                text.append(cell.text());
            }
            text.setLength(text.length() - blanksAtTheEnd(text));
            text.append('\n');
        }
        int end = text.length();
        while (end > 0 && text.charAt(end - 1) == '\n') {
            end--;
        }
        return text.substring(0, end);
    }

    private static int blanksAtTheEnd(StringBuilder text) {
        int end = text.length();
        while (end > 0 && text.charAt(end - 1) == ' ') {
            end--;
        }
        return text.length() - end;
    }

    @Override
    public String toString() {
        return text();
    }
}
