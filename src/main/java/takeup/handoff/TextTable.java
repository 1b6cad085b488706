package takeup.handoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Rows of text in aligned columns, two blanks between them; a column with nothing in any row but the first is left out.
 */
final class TextTable {
    private final Set<Integer> toTheRight;
    private final List<List<String>> rows = new ArrayList<>();

    /** Columns with these heads; those whose place is named, from 0, stand to the right as numbers do. */
    TextTable(List<String> heads, Set<Integer> toTheRight) {
        this.toTheRight = toTheRight;
        rows.add(heads);
    }

    void row(List<String> cells) {
        rows.add(cells);
    }

    /** A line for each row, without blanks at its end. */
    List<String> lines() {
        int count = rows.get(0).size();
        int[] widths = new int[count];
        for (int column = 0; column < count; column++) {
            int at = column;
            boolean used = rows.stream().skip(1).anyMatch(it -> !it.get(at).isEmpty());
            widths[column] =
                    used ? rows.stream().mapToInt(it -> width(it.get(at))).max().orElse(0) : 0;
        }
        return rows.stream().map(it -> line(it, widths)).collect(Collectors.toList());
    }

    private String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            if (widths[column] > 0) {
                String fill = " ".repeat(widths[column] - width(row.get(column)));
                String cell = toTheRight.contains(column) ? fill + row.get(column) : row.get(column) + fill;
                line.append(line.isEmpty() ? "" : "  ").append(cell);
            }
        }
        return line.toString().stripTrailing();
    }

    /** Columns on a screen: an East Asian character takes two, a mark that sits on a letter none. */
    static int width(String text) {
        return text.codePoints()
                .map(it -> {
                    int type = Character.getType(it);
                    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
                        return 0;
                    }
                    boolean wide = Character.isIdeographic(it)
                            || it >= 0x1100 && it <= 0x115f
                            || it >= 0x3001 && it <= 0x30ff
                            || it >= 0xac00 && it <= 0xd7a3
                            || it >= 0xff01 && it <= 0xff60
                            || it >= 0x1f300 && it <= 0x1faff;
                    return wide ? 2 : 1;
                })
                .sum();
    }
}
