package takeup.panel;

import java.util.OptionalDouble;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.kit.FilmSize;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.text.Width;

/**
 * The roll drawn as film: a bar for each frame; its height shows the exposure between thin and dense. The numbers are
 * on the rebate below. A roll that is longer than the screen shows the part around the next frame.
 */
public final class FilmStrip {
    private final Grid grid;
    private final Roll roll;
    private final int column;
    private final int row;
    private final int high;
    private final int step;
    private final int first;
    private final int end;
    private final int shown;
    private final int width;

    /** A strip of so many rows, without its rebates, and so many columns. */
    public FilmStrip(Grid grid, Roll roll, int column, int row, int high, int width) {
        this.grid = grid;
        this.roll = roll;
        this.column = column;
        this.row = row;
        this.high = high;
        this.shown = Math.max(roll.film().framesNominal(), roll.next());
        this.step = Math.max(1, Math.min(7, (width - 3) / shown));
        this.width = width;
        int most = (width - 3) / step;
        this.first = shown <= most ? 0 : Math.max(0, Math.min(shown - most, roll.next() - 1 - most / 2));
        this.end = Math.min(shown, first + most);
    }

    /** The frames, and their numbers on the row below. */
    public void draw() {
        for (int y = 0; y < high; y++) {
            edge(row + y, first > 0 ? "…" : "│", end < shown ? "…" : "│");
            endOfRoll(row + y);
        }
        edge(row + high, " ", " ");
        int bar = Math.max(1, step - 1);
        for (int i = first; i < end; i++) {
            int number = i + 1;
            int at = column(i);
            int index = roll.indexOf(number);
            boolean isNext = number == roll.next();
            if (index >= 0) {
                bar(roll.frames().get(index), at, bar);
            } else {
                TextRole role = number <= roll.next() ? TextRole.FRAME : TextRole.EMPTY;
                grid.put(at + (bar - 1) / 2, row + high - 1, isNext ? "◇" : unexposed(number), role);
            }
            if (isLabelled(number)) {
                String label = Integer.toString(number);
                grid.put(
                        Math.max(column, at + (bar - label.length() + 1) / 2),
                        row + high,
                        label,
                        isNext ? TextRole.FRAME : TextRole.FILM);
            }
        }
    }

    /** Where a frame begins; past the end of the roll, behind the mark of that. */
    private int column(int index) {
        return column + 1 + (index - first) * step + (index >= roll.film().framesNominal() ? 1 : 0);
    }

    /** Where the film that was paid for ends. */
    private void endOfRoll(int at) {
        int nominal = roll.film().framesNominal();
        if (nominal > first && nominal <= end) {
            grid.put(column(nominal) - 1, at, "▌", TextRole.FRAME);
        }
    }

    /** The next frame, the first, every fifth and the last, where they do not run into the number of the next. */
    private boolean isLabelled(int number) {
        int distance = Math.abs(number - roll.next()) * step;
        return distance == 0
                || number == 1 && distance > 1
                || number % 5 == 0 && distance > 2
                || number == shown && distance > 2 && shown % 5 > (step > 2 ? 0 : 2);
    }

    /** A frame that the film went past without a record of it is not one that is still to come. */
    private String unexposed(int number) {
        return number < roll.next() ? "?" : "·";
    }

    /** The upper rebate, on the row above: the perforation of 135 film, the edge print of any other. */
    public void upperRebate() {
        edge(row - 1, " ", " ");
        int wide = width - 2;
        if (roll.film().size() == FilmSize.F135) {
            grid.put(column + 1, row - 1, "▪ ".repeat(wide / 2), TextRole.FILM, wide);
        } else {
            String print = roll.film().stock().name() + "   " + roll.id() + "   EI "
                    + roll.film().index();
            grid.put(column + 2, row - 1, Width.cut(print, Math.max(0, wide - 2)), TextRole.FILM);
        }
    }

    /** The ends of a row, and its ground. */
    private void edge(int at, String left, String right) {
        int wide = width - 2;
        grid.fill(column, at, width, TextRole.FILM);
        grid.put(column, at, left, TextRole.FILM);
        grid.put(column + width - 1, at, right, TextRole.FILM);
    }

    private void bar(Frame frame, int at, int wide) {
        String sign = switch (frame.kind()) {
            case BLANK -> "–";
            case UNLOGGED -> "▫";
            case LOST -> "×";
            default -> "▪";
        };
        OptionalDouble over = frame.kind() == Frame.Kind.EXPOSED || frame.kind() == Frame.Kind.SLATE
                ? ExposureResult.of(roll, frame).overBoxStops()
                : OptionalDouble.empty();
        if (over.isEmpty()) {
            grid.put(at + (wide - 1) / 2, row + high - 1, sign, TextRole.FRAME);
            return;
        }
        double under = roll.film().stock().underStops();
        double span = Math.max(0.5, under + roll.film().stock().overStops());
        double margin = over.getAsDouble() + roll.film().development().pushStops() + under;
        int eighths = (int) Math.max(1, Math.min(8L * high, Math.round(8L * high * margin / span)));
        for (int y = 0; y < high; y++) {
            int here = Math.min(8, eighths - 8 * (high - 1 - y));
            if (here > 0) {
                grid.put(at, row + y, "▁▂▃▄▅▆▇█".substring(here - 1, here).repeat(wide), TextRole.FRAME);
            }
        }
    }
}
