package takeup.terminal;

import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import takeup.grid.ColourDepth;
import takeup.grid.Size;

/**
 * What a terminal says when it is asked whether it draws true pixels: by the query of the kitty protocol, by the size
 * of its cells or of all its sixels, and by its device attributes, of which 4 is sixel (ctlseqs, "Window manipulation",
 * 16, "XTSMGRAPHICS" and "Primary DA"). The attributes come last, and every terminal sends them; where none comes
 * nothing changes.
 */
final class PixelQuestion {
    static final String ASK = KittyGraphics.asked() + "\u001b[16t\u001b[?2;1;0S\u001b[c";

    private static final Pattern CELL = Pattern.compile("\u001b\\[6;(\\d{1,4});(\\d{1,4})t");
    private static final Pattern AREA = Pattern.compile("\u001b\\[\\?2;0;(\\d{1,5});(\\d{1,5})S");
    private static final Pattern ATTRIBUTES = Pattern.compile("\u001b\\[\\?([\\d;]*)c");
    /** No terminal has cells of more dots. */
    private static final int LARGEST = 200;

    private final Size size;
    private final Consumer<PixelProtocol> onYes;
    private boolean isKitty;
    private int cellColumns;
    private int cellRows;

    /** Asked of a terminal of that size. */
    PixelQuestion(Size size, Consumer<PixelProtocol> onYes) {
        this.size = size;
        this.onYes = onYes;
    }

    /** Not a console of the kernel, which would print part of the question; nor where no colour is wanted. */
    static boolean mayBeAsked(TerminalEnvironment environment) {
        return environment.depth() != ColourDepth.NONE
                && environment.depth() != ColourDepth.SIXTEEN
                && environment.canMoveItsCursor();
    }

    /** Whether a sequence is one of the answers. */
    boolean takes(String sequence) {
        if (sequence.startsWith("\u001b_G")) {
            isKitty |= KittyGraphics.isYes(sequence);
            return true;
        }
        Matcher cell = CELL.matcher(sequence);
        if (cell.matches()) {
            cellRows = Math.min(LARGEST, Integer.parseInt(cell.group(1)));
            cellColumns = Math.min(LARGEST, Integer.parseInt(cell.group(2)));
            return true;
        }
        Matcher area = AREA.matcher(sequence);
        if (area.matches()) {
            // Of a large window some tell less than all of it: then pictures are smaller than their cells, never
            // larger.
            cellColumns = cellColumns > 0 ? cellColumns : Integer.parseInt(area.group(1)) / size.columns();
            cellRows = cellRows > 0 ? cellRows : Integer.parseInt(area.group(2)) / size.rows();
            return true;
        }
        Matcher attributes = ATTRIBUTES.matcher(sequence);
        if (!attributes.matches()) {
            return false;
        }
        boolean isSixel = (";" + attributes.group(1) + ";").contains(";4;");
        if (isKitty) {
            onYes.accept(new KittyGraphics(cellRows > 0 ? cellColumns : 0, cellRows));
        } else if (isSixel && cellColumns > 0 && cellRows > 0) {
            onYes.accept(new Sixels(cellColumns, cellRows));
        }
        return true;
    }
}
