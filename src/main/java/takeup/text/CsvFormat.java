package takeup.text;

import java.util.List;

/**
 * How a CSV file is written: RFC 4180 (Common Format and MIME Type for Comma-Separated Values Files), or as
 * spreadsheets of much of Europe read it, with semicolons and decimal commas.
 *
 * @param separator between two cells
 * @param decimal the sign between whole numbers and decimals
 * @param start what stands before the first row: nothing, or the byte order mark
 */
public record CsvFormat(String separator, String decimal, String start) implements TableFormat {
    private static final String BYTE_ORDER_MARK = "\ufeff";

    /** Commas between cells, points in numbers. */
    public static final CsvFormat PLAIN = new CsvFormat(",", ".", "");

    /** Semicolons between cells, commas in numbers, a byte order mark in front. */
    public static final CsvFormat EUROPEAN = new CsvFormat(";", ",", BYTE_ORDER_MARK);

    public CsvFormat {
        if (separator.equals(decimal)) {
            throw new IllegalArgumentException("between cells and in numbers stands the same sign, " + separator);
        }
    }

    /** The same with a byte order mark in front, by which some spreadsheets know UTF-8. */
    public CsvFormat withByteOrderMark() {
        return new CsvFormat(separator, decimal, BYTE_ORDER_MARK);
    }

    @Override
    public String text(String words) {
        return CsvCell.text(words);
    }

    @Override
    public String flag(boolean is) {
        return Boolean.toString(is);
    }

    @Override
    public String row(List<String> cells) {
        return String.join(separator, cells) + "\r\n";
    }

    @Override
    public String number(String plain) {
        return plain.replace(".", decimal);
    }

    @Override
    public String end() {
        return "";
    }
}
