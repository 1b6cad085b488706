package takeup.order;

import java.util.List;

/**
 * An order as a table, one row a roll: CSV after RFC 4180 (Common Format and MIME Type for Comma-Separated Values
 * Files). What a spreadsheet would run as a formula, blanks in front of it passed over, gets a single quote in front;
 * the JSON is the faithful form.
 */
public final class OrderCsv {
    private static final String FORMULA = "=+-@\uff1d\uff0b\uff0d\uff20";

    private OrderCsv() {}

    /** The table; its first row names the columns. Push is told in words alone. */
    public static String of(Order order) {
        StringBuilder table = new StringBuilder();
        row(
                table,
                List.of(
                        "order",
                        "roll",
                        "labNumber",
                        "filmSize",
                        "frameSize",
                        "special",
                        "stock",
                        "boxSpeed",
                        "exposureIndex",
                        "process",
                        "development",
                        "framesExpected",
                        "condition",
                        "note",
                        "stage"));
        for (OrderedRoll roll : order.rolls()) {
            LabDevelopment development = roll.development();
            row(
                    table,
                    List.of(
                            order.order(),
                            roll.roll(),
                            roll.labNumber().orElse(""),
                            roll.filmSize(),
                            roll.frameSize(),
                            roll.special().orElse(""),
                            roll.stock(),
                            PrintedText.number(development.boxSpeed()),
                            PrintedText.number(development.index()),
                            roll.labProcess(),
                            development.order(),
                            Integer.toString(roll.framesExpected()),
                            String.join("; ", roll.condition()),
                            roll.note().orElse(""),
                            order.stage(roll.roll()).where()));
        }
        return table.toString();
    }

    private static void row(StringBuilder table, List<String> cells) {
        table.append(String.join(",", cells.stream().map(OrderCsv::cell).toList()))
                .append("\r\n");
    }

    /** One line of text, guarded, and quoted where it must be. */
    static String cell(String value) {
        String text = PrintedText.of(value);
        int at = 0;
        while (at < text.length() && Character.isSpaceChar(text.charAt(at))) {
            at++;
        }
        String safe = at < text.length() && FORMULA.indexOf(text.charAt(at)) >= 0 ? "'" + text : text;
        boolean isQuoted = safe.chars().anyMatch(it -> ",;\"".indexOf(it) >= 0) || !safe.equals(safe.strip());
        return isQuoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
