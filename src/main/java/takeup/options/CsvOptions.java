package takeup.options;

import java.util.Map;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.text.CsvFormat;

/**
 * How a table is written for a spreadsheet: {@code --separator}, {@code --decimal}, {@code --bom}, {@code --european}.
 */
public final class CsvOptions {
    private static final Map<String, String> SEPARATORS =
            Map.of(",", ",", "comma", ",", ";", ";", "semicolon", ";", "\t", "\t", "tab", "\t");
    private static final Map<String, String> DECIMALS = Map.of(".", ".", "point", ".", ",", ",", "comma", ",");

    @Option(
            names = "--separator",
            paramLabel = "SIGN",
            description = "With --csv, between cells: comma, semicolon, tab. Else a comma.")
    String separator;

    @Option(
            names = "--decimal",
            paramLabel = "SIGN",
            description = "With --csv, in numbers: point, comma. Else a point.")
    String decimal;

    @Option(names = "--bom", description = "With --csv: a byte order mark in front, by which some programs know UTF-8.")
    boolean bom;

    @Option(
            names = "--european",
            description = "With --csv: --separator semicolon --decimal comma --bom, as most spreadsheets set to a "
                    + "language of the European mainland read it.")
    boolean european;

    /** Whether any of them was given. */
    public boolean areGiven() {
        return separator != null || decimal != null || bom || european;
    }

    /** The format that was asked for. */
    public CsvFormat format() {
        CsvFormat usual = european ? CsvFormat.EUROPEAN : CsvFormat.PLAIN;
        try {
            CsvFormat format = new CsvFormat(
                    sign(SEPARATORS, separator, usual.separator(), "--separator is comma, semicolon or tab"),
                    sign(DECIMALS, decimal, usual.decimal(), "--decimal is point or comma"),
                    usual.start());
            return bom ? format.withByteOrderMark() : format;
        } catch (IllegalArgumentException e) {
            throw new CommandFailed(2, e.getMessage() + ": name --separator and --decimal, or --european");
        }
    }

    private static String sign(Map<String, String> signs, String typed, String usual, String known) {
        if (typed == null) {
            return usual;
        }
        String sign = signs.get(typed);
        if (sign == null) {
            throw new CommandFailed(2, known + ", not " + typed);
        }
        return sign;
    }
}
