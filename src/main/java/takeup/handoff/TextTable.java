package takeup.handoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import takeup.text.Width;

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
            widths[column] = used
                    ? rows.stream().mapToInt(it -> Width.of(it.get(at))).max().orElse(0)
                    : 0;
        }
        return rows.stream().map(it -> line(it, widths)).toList();
    }

    private String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            if (widths[column] > 0) {
                String fill = " ".repeat(widths[column] - Width.of(row.get(column)));
                String cell = toTheRight.contains(column) ? fill + row.get(column) : row.get(column) + fill;
                line.append(line.isEmpty() ? "" : "  ").append(cell);
            }
        }
        return line.toString().stripTrailing();
    }
}
