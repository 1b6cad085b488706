package takeup.order;

import java.util.Arrays;
import java.util.List;
import takeup.text.CsvCell;
import takeup.text.CsvFormat;

/**
 * An order as a table for a spreadsheet, one row a roll. A cell that would run as a formula gets a single quote in
 * front; the JSON holds the words as they are.
 */
public final class OrderCsv {
    private OrderCsv() {}

    /** The table; its first row names the columns. A push is given in words only. */
    public static String of(Order order, CsvFormat format) {
        StringBuilder table = new StringBuilder(format.start());
        table.append(format.row(texts(
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
            table.append(format.row(List.of(
                    cell(order.order()),
                    cell(roll.roll()),
                    cell(roll.labNumber().orElse("")),
                    cell(roll.film().filmSize()),
                    cell(roll.film().frameSize()),
                    cell(roll.film().special().orElse("")),
                    cell(roll.film().stock()),
                    format.number(PrintedText.number(development.boxSpeed())),
                    format.number(PrintedText.number(development.index())),
                    cell(roll.atLab().process()),
                    cell(development.order()),
                    Integer.toString(roll.framesExpected()),
                    cell(String.join("; ", roll.notes().condition())),
                    cell(roll.notes().note().orElse("")),
                    cell(order.stage(roll.roll()).where()))));
        }
        return table.toString();
    }

    private static List<String> texts(String... words) {
        return Arrays.stream(words).map(OrderCsv::cell).toList();
    }

    /** One line of text, guarded, in quotes. */
    static String cell(String value) {
        return CsvCell.text(PrintedText.of(value));
    }
}
