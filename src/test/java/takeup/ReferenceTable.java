package takeup;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The tables under {@code reference/}: lines that start with # name the source, the first other line names the columns,
 * an empty cell means "not given".
 */
public final class ReferenceTable {
    private ReferenceTable() {}

    /** One row; it prints as its cells, so that a failing case names itself. */
    public record Row(Map<String, String> cells) {
        /** The cell, empty if not given. */
        public String text(String column) {
            if (!cells.containsKey(column)) {
                throw new IllegalArgumentException("no column " + column + " among " + cells.keySet());
            }
            return cells.get(column);
        }

        /** Whether the cell is given. */
        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        /** The cell as a number; {@code 1/125} is a number too. */
        public double number(String column) {
            String text = text(column);
            return text.startsWith("1/") ? 1 / Double.parseDouble(text.substring(2)) : Double.parseDouble(text);
        }

        @Override
        public String toString() {
            StringBuilder line = new StringBuilder();
            cells.forEach((column, cell) -> line.append(cell.isEmpty() ? "" : column + " " + cell + "  "));
            return line.toString().trim();
        }
    }

    /** The rows of {@code reference/NAME.csv}. */
    public static Stream<Row> rows(String name) {
        List<Row> rows = new ArrayList<>();
        List<String> columns = List.of();
        for (String line : text(name + ".csv").split("\n")) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> cells = cells(line);
            if (columns.isEmpty()) {
                columns = cells;
                continue;
            }
            if (cells.size() != columns.size()) {
                throw new IllegalStateException(
                        name + ": " + cells.size() + " cells for " + columns.size() + " columns: " + line);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                row.put(columns.get(i), cells.get(i));
            }
            rows.add(new Row(row));
        }
        return rows.stream();
    }

    /** The text of a file under {@code reference/}. */
    public static String text(String file) {
        StringBuilder text = new StringBuilder();
        try (InputStream in = ReferenceTable.class.getResourceAsStream("/reference/" + file);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            reader.lines().forEach(line -> text.append(line).append('\n'));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int at = 0; at < line.length(); at++) {
            char c = line.charAt(at);
            if (c == '"' && quoted && at + 1 < line.length() && line.charAt(at + 1) == '"') {
                cell.append('"');
                at++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
