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

    private static final String BLOCKS_BY_GROUND = " ▄▀";

    private final OutputStream out;
    private final ColourDepth depth;
    private final CharacterSet characterSet;
    private final String[] sequences = new String[TextRole.values().length];
    private final String[] filled = new String[TextRole.values().length];

    /** A plate of alarm between its letters: the line below them would cross it. */
    private String alarmGround = "";

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
    private TextRole role;

    public Painter(OutputStream out, ColourDepth depth, CharacterSet characterSet, Theme theme) {
        this.out = out;
        this.depth = depth;
        this.characterSet = characterSet;
        theme(theme);
    }

    /** Draws in this theme from now on, everything anew. Without colour every theme looks like {@link Theme#MONO}. */
    synchronized void theme(Theme theme) {
        Theme seen = depth == ColourDepth.NONE ? Theme.MONO : theme;
        for (TextRole each : TextRole.values()) {
            sequences[each.ordinal()] = seen.style(each).sequence(depth);
            filled[each.ordinal()] = seen.style(each).filling().sequence(depth);
        }
        alarmGround = seen.style(TextRole.ALARM).unlined().sequence(depth);
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
        role = null;
        if (before == null) {
            // The background is set first, so that an erase in it leaves no other colour at the margins.
            frame.append(HIDE).append(sequences[TextRole.NORMAL.ordinal()]).append("\u001b[2J");
            role = TextRole.NORMAL;
        }
    }

    private void paint(Grid grid, Grid before, int row) {
        if (before != null && !differs(grid, before, row)) {
            return;
        }
        // Where the terminal may count columns differently, any change redraws the whole row.
        boolean whole = before == null || uncertain(grid, row) || uncertain(before, row);
        for (int column = 0; column < grid.columns(); column++) {
            Cell cell = grid.cell(column, row);
            if (!cell.isSecondHalf() && (whole || !cell.equals(before.cell(column, row)))) {
                paint(cell, column, row, grid.columns());
            }
        }
    }

    private void paint(Cell cell, int column, int row, int columns) {
        if (penRow != row || penColumn != column) {
            move(column, row);
        }
        if (cell.isPicture() && isHidden(column, row)) {
            frame.append(sequences[TextRole.NORMAL.ordinal()]).append(' ');
            role = TextRole.NORMAL;
        } else if (cell.isPicture()) {
            if (depth == ColourDepth.NONE && role != TextRole.NORMAL) {
                frame.append(sequences[TextRole.NORMAL.ordinal()]);
            }
            frame.append(cell.pixels().written(depth, characterSet));
            role = depth == ColourDepth.NONE ? TextRole.NORMAL : null;
        } else if (ground(cell.text()) >= 0) {
            // No font draws a block to the very edge of its cell, but every terminal fills a background that far.
            frame.append(filled[cell.role().ordinal()]).append(BLOCKS_BY_GROUND.charAt(ground(cell.text())));
            role = null;
        } else if (cell.role() == TextRole.ALARM && cell.text().equals(" ")) {
            frame.append(alarmGround).append(' ');
            role = null;
        } else {
            if (role != cell.role()) {
                role = cell.role();
                frame.append(sequences[role.ordinal()]);
            }
            frame.append(cell.text());
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

    private static boolean differs(Grid grid, Grid before, int row) {
        for (int column = 0; column < grid.columns(); column++) {
            Cell cell = grid.cell(column, row);
            if (cell != before.cell(column, row) && !cell.equals(before.cell(column, row))) {
                return true;
            }
        }
        return false;
    }

    private static boolean uncertain(Grid grid, int row) {
        for (int column = 0; column < grid.columns(); column++) {
            if (grid.cell(column, row).isUncertain()) {
                return true;
            }
        }
        return false;
    }
}
