package takeup.panel;

import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.BigText;
import takeup.text.Width;

/**
 * The pair to set as large as it fits: five rows high, three, three with the fraction of a stop in plain letters, three
 * without its f, or plain letters. A pair that is wrong stands between bars of alarm.
 */
public final class PairFigures {
    /** How high the figures may be. */
    public enum Height {
        THREE_ROWS,
        FIVE_ROWS
    }

    /** Whether the pair will do. */
    public enum Pair {
        RIGHT,
        WRONG
    }

    /** Columns of a bar of alarm. */
    private static final int BAR = 2;

    private final Grid grid;
    private final int column;
    private final int row;
    private final int room;
    private final Pair kind;

    /** At a place on the screen, in so many columns. */
    public PairFigures(Grid grid, int column, int row, int room, Pair kind) {
        this.grid = grid;
        this.column = column;
        this.row = row;
        this.room = room - (kind == Pair.WRONG ? BAR + 2 : 0);
        this.kind = kind;
    }

    /** Draws a pair such as {@code f/5.6+3/10 1/125}. */
    public void draw(String pair, Height most) {
        String withoutF = pair.startsWith("f/") ? pair.substring(2) : pair;
        if (most == Height.FIVE_ROWS && pair.indexOf('+') < 0 && fits(pair, BigText.width(pair, 1))) {
            BigText.draw(grid, barred(BigText.width(pair, 1), 5), row, pair, 1, TextRole.READOUT);
        } else if (!small(pair) && !withFraction(pair) && !small(withoutF) && !withFraction(withoutF)) {
            String plain = pair.replace(" ", "  ");
            grid.put(column, row + 1, Width.cut(plain, room), kind == Pair.WRONG ? TextRole.ALARM : TextRole.READOUT);
        }
    }

    private boolean fits(String pair, int width) {
        return BigText.isDrawable(pair) && width <= room;
    }

    private boolean small(String pair) {
        if (!fits(pair, BigText.smallWidth(pair))) {
            return false;
        }
        BigText.drawSmall(grid, barred(BigText.smallWidth(pair), 3), row, pair, TextRole.READOUT);
        return true;
    }

    /** The fraction that an aperture was set beyond its mark stands in plain letters behind it. */
    private boolean withFraction(String pair) {
        int plus = pair.indexOf('+');
        int blank = pair.indexOf(' ');
        if (plus < 0 || blank < plus) {
            return false;
        }
        String mark = pair.substring(0, plus);
        String fraction = pair.substring(plus, blank);
        String time = pair.substring(blank + 1);
        int wide = BigText.smallWidth(mark) + 1 + Width.of(fraction) + 2 + BigText.smallWidth(time);
        if (!fits(mark + time, wide)) {
            return false;
        }
        int at = barred(wide, 3);
        BigText.drawSmall(grid, at, row, mark, TextRole.READOUT);
        at = grid.put(at + BigText.smallWidth(mark) + 1, row + 1, fraction, TextRole.READOUT);
        BigText.drawSmall(grid, at + 2, row, time, TextRole.READOUT);
        return true;
    }

    private int barred(int wide, int rows) {
        return kind == Pair.WRONG ? bars(grid, column, row, wide, rows) : column;
    }

    /**
     * Bars of alarm on both sides of large letters, the right one as far as there is room. Letters on a plate would run
     * into the page where the page has their colour. Answers the column at which the letters begin.
     */
    public static int bars(Grid grid, int column, int row, int wide, int rows) {
        int start = column - 1 + BAR + 1;
        int end = start + wide + 1;
        for (int y = row; y < row + rows; y++) {
            grid.fill(column - 1, y, BAR, TextRole.ALARM);
            grid.fill(end, y, Math.max(0, Math.min(BAR, grid.columns() - end)), TextRole.ALARM);
        }
        return start;
    }
}
