package takeup.order;

import java.util.Arrays;
import java.util.List;
import takeup.text.TableFormat;

/**
 * An order as a table for a spreadsheet, one row a roll. A cell that would run as a formula gets a single quote in
 * front; the JSON holds the words as they are.
 */
public final class OrderCsv {
    private OrderCsv() {}

    /** The table; its first row names the columns. A push is given in words only. */
    public static String of(Order order, TableFormat format) {
        StringBuilder table = new StringBuilder(format.start());
        table.append(format.row(texts(
                format,
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
                    cell(format, order.order()),
                    cell(format, roll.roll()),
                    cell(format, roll.labNumber().orElse("")),
                    cell(format, roll.film().filmSize()),
                    cell(format, roll.film().frameSize()),
                    cell(format, roll.film().special().orElse("")),
                    cell(format, roll.film().stock()),
                    format.number(PrintedText.number(development.boxSpeed())),
                    format.number(PrintedText.number(development.index())),
                    cell(format, roll.atLab().process()),
                    cell(format, development.order()),
                    format.number(Integer.toString(roll.framesExpected())),
                    cell(format, String.join("; ", roll.notes().condition())),
                    cell(format, roll.notes().note().orElse("")),
                    cell(format, order.stage(roll.roll()).where()))));
        }
        return table.append(format.end()).toString();
    }

    private static List<String> texts(TableFormat format, String... words) {
        return Arrays.stream(words).map(it -> cell(format, it)).toList();
    }

    /** One line of text. */
    private static String cell(TableFormat format, String value) {
        return format.text(PrintedText.of(value));
    }
}
