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
    /** The same where room is short. */
    private static final int THIN_BAR = 1;

    private final Grid grid;
    private final int column;
    private final int row;
    private final int room;
    private final Pair kind;
    private final int bar;

    /** At a place on the screen, in so many columns. */
    public PairFigures(Grid grid, int column, int row, int room, Pair kind) {
        this(grid, column, row, room - (kind == Pair.WRONG ? BAR + 2 : 0), kind, BAR);
    }

    private PairFigures(Grid grid, int column, int row, int room, Pair kind, int bar) {
        this.grid = grid;
        this.column = column;
        this.row = row;
        this.room = room;
        this.kind = kind;
        this.bar = bar;
    }

    /** Draws a pair such as {@code f/5.6+3/10 1/125}. */
    public void draw(String pair, Height most) {
        if (most == Height.FIVE_ROWS && pair.indexOf('+') < 0 && fits(pair, BigText.width(pair, 1))) {
            BigText.draw(grid, barred(BigText.width(pair, 1), 5), row, pair, 1, TextRole.READOUT);
        } else if (!threeRows(pair) && (kind == Pair.RIGHT || !thinBarred().threeRows(pair))) {
            String plain = pair.replace(" ", "  ");
            grid.put(column, row + 1, Width.cut(plain, room), kind == Pair.WRONG ? TextRole.ALARM : TextRole.READOUT);
        }
    }

    /** Between bars of one column, the right one only where it has room. */
    private PairFigures thinBarred() {
        return new PairFigures(grid, column, row, room + BAR + 2 - THIN_BAR, kind, THIN_BAR);
    }

    /** Draws it three rows high; answers whether it had room. */
    private boolean threeRows(String pair) {
        String withoutF = pair.startsWith("f/") ? pair.substring(2) : pair;
        return small(pair) || withFraction(pair) || small(withoutF) || withFraction(withoutF);
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
        int least = BigText.smallWidth(mark) + Width.of(fraction) + 1 + BigText.smallWidth(time);
        if (!fits(mark + time, least)) {
            return false;
        }
        int gap = Math.min(1, (room - least) / 2);
        int at = barred(least + 2 * gap, 3);
        BigText.drawSmall(grid, at, row, mark, TextRole.READOUT);
        at = grid.put(at + BigText.smallWidth(mark) + gap, row + 1, fraction, TextRole.READOUT);
        BigText.drawSmall(grid, at + 1 + gap, row, time, TextRole.READOUT);
        return true;
    }

    private int barred(int wide, int rows) {
        return kind == Pair.WRONG ? bars(grid, column, row, wide, rows, bar) : column;
    }

    /**
     * Bars of alarm on both sides of large letters, the right one as far as there is room. Letters on a plate would run
     * into the page where the page has their colour. Answers the column at which the letters begin.
     */
    public static int bars(Grid grid, int column, int row, int wide, int rows) {
        return bars(grid, column, row, wide, rows, BAR);
    }

    private static int bars(Grid grid, int column, int row, int wide, int rows, int bar) {
        int start = column + bar;
        int end = start + wide + 1;
        for (int y = row; y < row + rows; y++) {
            grid.fill(column - 1, y, bar, TextRole.ALARM);
            grid.fill(end, y, Math.max(0, Math.min(bar, grid.columns() - end)), TextRole.ALARM);
        }
        return start;
    }

    /** The same of one column each. */
    static int thinBars(Grid grid, int column, int row, int wide, int rows) {
        return bars(grid, column, row, wide, rows, THIN_BAR);
    }
}
