package takeup.text;

import java.util.List;

/**
 * A table as an OpenDocument spreadsheet (ISO/IEC 26300). Each cell says whether it holds words or a number, so that no
 * spreadsheet runs {@code =4412+1} or makes a date of {@code 3-4}, and no word needs a sign in front.
 */
public final class OpenDocument implements TableFormat {
    @Override
    public String start() {
        return """
            <?xml version="1.0" encoding="UTF-8"?>
            <office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" \
            xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" \
            xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.2">
            <office:body><office:spreadsheet><table:table table:name="takeup">
            """;
    }

    @Override
    public String text(String words) {
        if (words.isEmpty()) {
            return "<table:table-cell/>";
        }
        StringBuilder cell = new StringBuilder("<table:table-cell office:value-type=\"string\">");
        for (String line : words.replace("\r\n", "\n").split("\n", -1)) {
            cell.append("<text:p>").append(escaped(line)).append("</text:p>");
        }
        return cell.append("</table:table-cell>").toString();
    }

    @Override
    public String number(String plain) {
        return "<table:table-cell office:value-type=\"float\" office:value=\"" + plain + "\"><text:p>" + plain
                + "</text:p></table:table-cell>";
    }

    @Override
    public String flag(boolean is) {
        return "<table:table-cell office:value-type=\"boolean\" office:boolean-value=\"" + is + "\"><text:p>" + is
                + "</text:p></table:table-cell>";
    }

    @Override
    public String row(List<String> cells) {
        return "<table:table-row>" + String.join("", cells) + "</table:table-row>\n";
    }

    @Override
    public String end() {
        return "</table:table></office:spreadsheet></office:body></office:document-content>\n";
    }

    /** Words as XML; blanks in a row, which it would take for one, are counted, and what is hidden is shown. */
    private static String escaped(String line) {
        StringBuilder xml = new StringBuilder();
        for (int at = 0; at < line.length(); at += Character.charCount(line.codePointAt(at))) {
            String one = Character.toString(line.codePointAt(at));
            xml.append(
                    switch (one) {
                        case "&" -> "&amp;";
                        case "<" -> "&lt;";
                        case ">" -> "&gt;";
                        case "\t" -> "<text:tab/>";
                        case " " -> "<text:s/>";
                        default -> Hidden.printed(one);
                    });
        }
        return xml.toString();
    }
}
