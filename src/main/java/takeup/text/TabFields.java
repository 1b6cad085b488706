package takeup.text;

import java.util.Optional;

/** Values in one line, a tab between two: how files keep them that are made and read again in great numbers. */
public final class TabFields {
    private TabFields() {}

    /** A value as it stands in a line: without a tab or a line feed of its own. */
    public static String escaped(String value) {
        boolean isPlain = value.indexOf('\t') < 0
                && value.indexOf('\n') < 0
                && value.indexOf('\r') < 0
                && value.indexOf('\\') < 0;
        return isPlain
                ? value
                : value.replace("\\", "\\\\")
                        .replace("\t", "\\t")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r");
    }

    /** The value again. */
    public static String unescaped(String written) {
        if (written.indexOf('\\') < 0) {
            return written;
        }
        StringBuilder value = new StringBuilder();
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (c == '\\' && i + 1 < written.length()) {
                char next = written.charAt(++i);
                value.append(
                        switch (next) {
                            case 't' -> '\t';
                            case 'n' -> '\n';
                            case 'r' -> '\r';
                            default -> next;
                        });
            } else {
                value.append(c);
            }
        }
        return value.toString();
    }

    /** Values as one line, without a line feed; of an {@link Optional} a mark in front tells empty from not there. */
    public static String line(Object... values) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < values.length; i++) {
            line.append(i == 0 ? "" : "\t")
                    .append(escaped(
                            values[i] instanceof Optional<?> optional
                                    ? optional.map(it -> "=" + it).orElse("")
                                    : values[i].toString()));
        }
        return line.toString();
    }

    /** The values again; an IllegalArgumentException where there are not so many. */
    public static String[] values(String line, int count) {
        String[] values = line.split("\t", -1);
        if (values.length != count) {
            throw new IllegalArgumentException("a line has " + values.length + " values, not " + count);
        }
        for (int i = 0; i < count; i++) {
            values[i] = unescaped(values[i]);
        }
        return values;
    }

    /** What was written of an {@link Optional}. */
    public static Optional<String> optional(String value) {
        return value.isEmpty() ? Optional.empty() : Optional.of(value.substring(1));
    }
}
