package takeup.text;

/**
 * Text as one cell of a CSV file: {@code "bow seat, standing"} (RFC 4180, Common Format and MIME Type for
 * Comma-Separated Values Files).
 *
 * <p>A spreadsheet runs a cell as a formula that begins with one of {@code = + - @} or a tab; a single quote in front
 * keeps it text. A carriage return, which begins one too, and whatever else steers a terminal or turns the writing
 * direction ({@link Hidden#printed}) becomes an escape that can be seen. Numbers do not come here, so a minus in front
 * of one stays.
 */
public final class CsvCell {
    /** The signs that begin a formula, and their full-width twins. */
    private static final String FORMULA = "=+-@\uff1d\uff0b\uff0d\uff20";

    private CsvCell() {}

    /**
     * The cell, guarded and in quotes: a spreadsheet that takes quoted cells for text makes no date of {@code 1/8} and
     * none of {@code 3-4}. Nothing is an empty cell.
     */
    public static String text(String value) {
        return value.isEmpty() ? "" : '"' + guarded(shown(value)).replace("\"", "\"\"") + '"';
    }

    /** A quote in front of the cell, and of each line in it, that would begin a formula, blanks passed over. */
    private static String guarded(String value) {
        StringBuilder safe = new StringBuilder(value.length() + 2);
        int from = 0;
        for (int at = 0; at <= value.length(); at++) {
            if (at == value.length() || isBreak(value.charAt(at))) {
                String line = value.substring(from, at);
                safe.append(isFormula(line) || from == 0 && isFormula(value) ? "'" : "")
                        .append(line);
                if (at < value.length()) {
                    safe.append(value.charAt(at));
                }
                from = at + 1;
            }
        }
        return safe.toString();
    }

    private static boolean isFormula(String text) {
        if (!text.isEmpty() && text.charAt(0) == '\t') {
            return true;
        }
        int at = 0;
        while (at < text.length() && (isBlank(text.charAt(at)) || isBreak(text.charAt(at)))) {
            at++;
        }
        return at < text.length() && FORMULA.indexOf(text.charAt(at)) >= 0;
    }

    private static boolean isBlank(char c) {
        return c == '\t' || Character.isSpaceChar(c);
    }

    private static boolean isBreak(char c) {
        return c == '\n';
    }

    /**
     * What a terminal might obey as escapes that can be seen; a tab and a line feed, which a quoted cell may hold,
     * stay.
     */
    private static String shown(String value) {
        String text = value.replace("\r\n", "\n");
        StringBuilder seen = new StringBuilder(text.length());
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            String one = Character.toString(text.codePointAt(at));
            seen.append(one.equals("\t") || one.equals("\n") ? one : Hidden.printed(one));
        }
        return seen.toString();
    }
}
