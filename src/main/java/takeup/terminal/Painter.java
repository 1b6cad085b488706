package takeup.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import takeup.grid.Cell;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Grid;
import takeup.grid.Placement;
import takeup.grid.TextRole;
import takeup.grid.Theme;

/** Draws a {@link Grid} by writing the cells that differ from the one before: one write and one flush a picture. */
public final class Painter {
    private static final String HIDE = "\u001b[?25l";
    private static final String SHOW = "\u001b[?25h";

    /** Blocks of large figures, and below each what is drawn on a ground of its colour instead. */
    private static final String BLOCKS = "█▀▄";

    private static final String BLOCKS_BY_GROUND = " ▄▄";

    /** The same in plain characters: the letters with the most ink in the half that is not filled. */
    private static final String PLAIN_BLOCKS_BY_GROUND = " g\"";

    /** So many unchanged cells are written rather than gone over. */
    private static final int SHORT_GAP = 4;

    private final OutputStream out;
    private final ColourDepth depth;
    private final CharacterSet characterSet;
    private Pen pen;

    /** What the terminal shows now; null when that is not known. */
    private Grid shown;

    /** How pictures in true pixels are drawn; null where they are not, and then nothing of it is loaded. */
    private PixelProtocol pixels;

    private List<Placement> shownPixels = List.of();
    /** The pictures that cover the cells of what is being drawn. */
    private List<Placement> hidden = List.of();

    private boolean cursorDrawn;

    private final StringBuilder frame = new StringBuilder(8192);
    private int penColumn;
    private int penRow;

    public Painter(OutputStream out, ColourDepth depth, CharacterSet characterSet, Theme theme) {
        this.out = out;
        this.depth = depth;
        this.characterSet = characterSet;
        theme(theme);
    }

    /** Draws in this theme from now on, everything anew. Without colour every theme looks like {@link Theme#MONO}. */
    synchronized void theme(Theme theme) {
        Theme seen = depth == ColourDepth.NONE ? Theme.MONO : theme;
        pen = new Pen(seen, depth);
        cursorDrawn = seen.isCursorDrawn();
        shown = null;
    }

    /** Forgets what the terminal shows: the next picture is drawn whole. */
    synchronized void forget() {
        shown = null;
    }

    /** Draws pictures in true pixels from now on, everything anew. */
    synchronized void pixels(PixelProtocol protocol) {
        pixels = protocol;
        shown = null;
    }

    /** Draws the picture; one that is already there writes nothing. */
    public synchronized void show(Grid picture) throws IOException {
        if (pixels != null && !picture.placements().equals(shownPixels)) {
            shown = null;
        }
        Grid spelt = characterSet.of(picture);
        Grid grid = cursorDrawn ? spelt.withCursorAs(TextRole.CURSOR) : spelt;
        Grid before = shown != null && shown.columns() == grid.columns() && shown.rows() == grid.rows() ? shown : null;
        begin(before);
        hidden = pixels == null ? List.of() : picture.placements();
        for (int row = 0; row < grid.rows(); row++) {
            paint(grid, before, row);
        }
        if (pixels != null && before == null) {
            drawPixels(picture.placements());
        }
        cursor(grid, before);
        shown = null; // until it is written
        if (!frame.isEmpty()) {
            out.write(frame.toString().getBytes(StandardCharsets.UTF_8));
            out.flush();
        }
        shown = grid;
    }

    private void drawPixels(List<Placement> placements) {
        frame.append(pixels.cleared());
        for (Placement each : placements) {
            move(each.column(), each.row());
            frame.append(pixels.drawn(each));
        }
        shownPixels = placements;
        penColumn = -1;
    }

    private void begin(Grid before) {
        frame.setLength(0);
        penColumn = -1;
        penRow = -1;
        pen.lose();
        if (before == null) {
            // The background is set first, so that an erase in it leaves no other colour at the margins.
            frame.append(HIDE).append(pen.in(TextRole.NORMAL)).append("\u001b[2J");
        }
    }

    private void paint(Grid grid, Grid before, int row) {
        if (before != null && grid.isRowOf(before, row)) {
            return;
        }
        // Where the terminal may count columns differently, any change redraws the whole row.
        boolean whole = before == null || grid.isUncertain(row) || before.isUncertain(row);
        for (int column = 0; column < grid.columns(); column++) {
            Cell cell = grid.cell(column, row);
            boolean isChanged = whole || cell != before.cell(column, row) && !cell.equals(before.cell(column, row));
            if (isChanged && !cell.isSecondHalf()) {
                paintGap(grid, column, row);
                paint(cell, column, row, grid.columns());
            }
        }
    }

    /** Some unchanged cells before the next changed one are fewer bytes than a move over them. */
    private void paintGap(Grid grid, int column, int row) {
        if (penRow != row || penColumn < 0 || column - penColumn > SHORT_GAP) {
            return;
        }
        TextRole next = grid.cell(column, row).role();
        for (int at = penColumn; at < column; at++) {
            Cell cell = grid.cell(at, row);
            boolean isOfBoth = pen.isIn(cell.role()) || cell.role() == next;
            if (!isOfBoth
                    || cell.isPicture()
                    || cell.isSecondHalf()
                    || cell.text().length() != 1) {
                return;
            }
        }
        while (penColumn >= 0 && penColumn < column) {
            paint(grid.cell(penColumn, row), penColumn, row, grid.columns());
        }
    }

    private void paint(Cell cell, int column, int row, int columns) {
        if (penRow == row && penColumn >= 0 && penColumn < column) {
            frame.append("\u001b[").append(column - penColumn).append('C');
        } else if (penRow != row || penColumn != column) {
            move(column, row);
        }
        if (cell.isPicture() && isHidden(column, row)) {
            frame.append(pen.in(TextRole.NORMAL)).append(' ');
        } else if (cell.isPicture()) {
            if (depth == ColourDepth.NONE) {
                frame.append(pen.in(TextRole.NORMAL));
            } else {
                pen.lose();
            }
            frame.append(cell.pixels().written(depth, characterSet));
        } else if (ground(cell.text()) >= 0) {
            // No font draws a block to the very top of its cell, but every terminal fills a background that far: of the
            // blocks only the lower half is written, and what is above it is the background.
            boolean isUnicode = characterSet == CharacterSet.UNICODE;
            String blocks = isUnicode ? BLOCKS_BY_GROUND : PLAIN_BLOCKS_BY_GROUND;
            boolean isWritten = isUnicode && cell.text().equals("▄");
            frame.append(isWritten ? pen.unlined(cell.role()) : pen.filling(cell.role()))
                    .append(blocks.charAt(ground(cell.text())));
        } else if (cell.role() == TextRole.ALARM && cell.text().equals(" ")) {
            frame.append(pen.unlined(TextRole.ALARM)).append(' ');
        } else {
            frame.append(pen.in(cell.role())).append(cell.text());
        }
        penRow = row;
        // After the last column terminals disagree where the cursor is.
        penColumn = cell.isUncertain() || column + 1 == columns ? -1 : column + 1;
    }

    private boolean isHidden(int column, int row) {
        for (Placement each : hidden) {
            if (each.covers(column, row)) {
                return true;
            }
        }
        return false;
    }

    private static int ground(String text) {
        return text.length() == 1 ? BLOCKS.indexOf(text.charAt(0)) : -1;
    }

    private void cursor(Grid grid, Grid before) {
        boolean painted = !frame.isEmpty();
        boolean wasShown = before != null && before.cursorColumn() >= 0;
        boolean isShown = grid.cursorColumn() >= 0;
        boolean moved = !painted
                && wasShown
                && isShown
                && (before.cursorColumn() != grid.cursorColumn() || before.cursorRow() != grid.cursorRow());
        if (wasShown && (painted || !isShown)) {
            frame.insert(0, HIDE);
        }
        if (moved || isShown && (painted || !wasShown)) {
            move(grid.cursorColumn(), grid.cursorRow());
            frame.append(moved ? "" : SHOW);
        }
    }

    private void move(int column, int row) {
        frame.append("\u001b[").append(row + 1).append(';').append(column + 1).append('H');
    }
}
