package takeup.order;

import java.util.List;
import takeup.text.CsvCell;

/**
 * An order as a table for a spreadsheet, one row a roll. A cell that would run as a formula gets a single quote in
 * front; the JSON holds the words as they are.
 */
public final class OrderCsv {
    private OrderCsv() {}

    /** The table; its first row names the columns. A push is given in words only. */
    public static String of(Order order) {
        StringBuilder table = new StringBuilder();
        table.append(row(List.of(
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
                "stage")));
        for (OrderedRoll roll : order.sorted()) {
            LabDevelopment development = roll.development();
            table.append(row(List.of(
                    order.order(),
                    roll.roll(),
                    roll.labNumber().orElse(""),
                    roll.film().filmSize(),
                    roll.film().frameSize(),
                    roll.film().special().orElse(""),
                    roll.film().stock(),
                    PrintedText.number(development.boxSpeed()),
                    PrintedText.number(development.index()),
                    roll.atLab().process(),
                    development.order(),
                    Integer.toString(roll.framesExpected()),
                    String.join("; ", roll.notes().condition()),
                    roll.notes().note().orElse(""),
                    order.stage(roll.roll()).where())));
        }
        return table.toString();
    }

    private static String row(List<String> cells) {
        return CsvCell.row(cells.stream().map(OrderCsv::cell).toList());
    }

    /** One line of text, guarded, and quoted where it must be. */
    static String cell(String value) {
        return CsvCell.text(PrintedText.of(value));
    }
}
