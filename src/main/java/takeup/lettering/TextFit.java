package takeup.lettering;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.text.Width;

/**
 * Makes texts fit: picks the fullest wording that has room, breaks a long one into rows, drops the start of a line,
 * sets plates side by side.
 */
public final class TextFit {
    /** Columns between two words side by side. */
    private static final int GAP = 2;

    private TextFit() {}

    /** The first of these wordings that fits into so many columns; where none does, the last one, cut. */
    public static String first(int columns, String... wordings) {
        for (String wording : wordings) {
            if (Width.of(wording) <= columns) {
                return wording;
            }
        }
        return Width.cut(wordings[wordings.length - 1], columns);
    }

    /** A text broken at blanks into rows of so many columns. */
    public static List<String> rows(String text, int columns) {
        return rows(text, columns, Integer.MAX_VALUE);
    }

    /** The same in so many rows at most; the last one has all the rest, and may be too long. */
    public static List<String> rows(String text, int columns, int most) {
        return Width.rows(text, columns, most);
    }

    /** A text without its first columns. */
    public static String without(int columns, String text) {
        int at = 0;
        int passed = 0;
        while (at < text.length() && passed < columns) {
            int end = at + Character.charCount(text.codePointAt(at));
            passed += Width.of(text.substring(at, end));
            at = end;
        }
        return text.substring(at);
    }

    /** The text of a plate, with its rims. */
    public static StyledText plate(String text) {
        return StyledText.caution(" " + text + " ");
    }

    /** How many rows words take in so many columns. */
    public static int plateRows(List<StyledText> words, int width) {
        return broken(words, width).size();
    }

    /** Draws them from a row on, over so many rows at most: the last one counts what finds no room. */
    public static void drawPlates(Grid grid, List<StyledText> words, int column, int row, int width, int most) {
        List<List<StyledText>> rows = broken(words, width);
        int drawn = 0;
        for (int i = 0; i < Math.min(most, rows.size()); i++) {
            boolean isCut = i == most - 1 && rows.size() > most;
            int at = column;
            for (StyledText word : rows.get(i)) {
                int rest = words.size() - drawn;
                int more = isCut ? GAP + Width.of("+" + rest) : 0;
                if (isCut && at > column && at + Width.of(word.text()) + more > column + width) {
                    break;
                }
                at = grid.put(at, row + i, Width.cut(word.text(), width - more), word.role()) + GAP;
                drawn++;
            }
            if (isCut) {
                grid.put(at, row + i, "+" + (words.size() - drawn), TextRole.STRONG);
            }
        }
    }

    private static List<List<StyledText>> broken(List<StyledText> words, int width) {
        List<List<StyledText>> rows = new ArrayList<>();
        int used = Integer.MAX_VALUE / 2;
        for (StyledText word : words) {
            int wide = Width.of(word.text());
            if (used + GAP + wide > width) {
                rows.add(new ArrayList<>());
                used = -GAP;
            }
            rows.get(rows.size() - 1).add(word);
            used += GAP + wide;
        }
        return rows;
    }
}
