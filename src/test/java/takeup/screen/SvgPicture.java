package takeup.screen;

import java.util.Locale;
import takeup.grid.Cell;
import takeup.grid.Grid;
import takeup.grid.Style;
import takeup.grid.TextRole;
import takeup.grid.Theme;

/**
 * A grid as an SVG picture (SVG 1.1) in the colours of a theme: the screens of the README and of the manual. Block
 * glyphs are drawn as shapes and each run of letters is given its width, so that any monospace font will do. It refers
 * to nothing outside.
 */
final class SvgPicture {
    private static final int WIDE = 10;
    private static final int HIGH = 20;
    private static final int RIM = 12;

    private final Grid grid;
    private final Theme theme;
    private final StringBuilder svg = new StringBuilder();

    private SvgPicture(Grid grid, Theme theme) {
        this.grid = grid;
        this.theme = theme;
    }

    /** The picture; {@code title} is what stands for it where it cannot be seen. */
    static String of(Grid grid, Theme theme, String title) {
        return new SvgPicture(theme.isCursorDrawn() ? grid.withCursorAs(TextRole.CURSOR) : grid, theme).draw(title);
    }

    private String draw(String title) {
        int wide = grid.columns() * WIDE + 2 * RIM;
        int high = grid.rows() * HIGH + 2 * RIM;
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
                .append(wide)
                .append(' ')
                .append(high)
                .append("\" role=\"img\">\n<title>")
                .append(escaped(title))
                .append("</title>\n<g font-family=\"monospace\" font-size=\"16\" shape-rendering=\"crispEdges\">\n");
        rect(0, 0, wide, high, colour(theme.style(TextRole.NORMAL), false));
        for (int row = 0; row < grid.rows(); row++) {
            grounds(row);
        }
        for (int row = 0; row < grid.rows(); row++) {
            blocks(row);
            dots(row);
            letters(row);
        }
        if (grid.cursorColumn() >= 0) {
            rect(
                    RIM + grid.cursorColumn() * WIDE,
                    RIM + grid.cursorRow() * HIGH,
                    WIDE,
                    HIGH,
                    colour(theme.style(TextRole.STRONG), true));
        }
        return svg.append("</g>\n</svg>\n").toString();
    }

    private void grounds(int row) {
        String ground = colour(theme.style(TextRole.NORMAL), false);
        for (int from = 0; from < grid.columns(); ) {
            String colour = ground(from, row);
            int to = from;
            while (to < grid.columns() && ground(to, row).equals(colour)) {
                to++;
            }
            if (!colour.equals(ground)) {
                rect(RIM + from * WIDE, RIM + row * HIGH, (to - from) * WIDE, HIGH, colour);
            }
            from = to;
        }
    }

    private String ground(int column, int row) {
        Style style = theme.style(grid.role(column, row));
        return colour(style, style.reverse());
    }

    private void blocks(int row) {
        for (int from = 0; from < grid.columns(); ) {
            String sign = grid.cell(from, row).text();
            TextRole look = grid.role(from, row);
            int to = from + 1;
            if (grid.cell(from, row).isPicture()) {
                from = to;
                continue;
            }
            while (to < grid.columns()
                    && !grid.cell(to, row).isPicture()
                    && grid.cell(to, row).text().equals(sign)
                    && grid.role(to, row) == look
                    && !sign.equals("▌")
                    && !sign.equals("▐")) {
                to++;
            }
            int eighths = sign.isEmpty() ? -1 : "▁▂▃▄▅▆▇█".indexOf(sign) + 1;
            int x = RIM + from * WIDE;
            int y = RIM + row * HIGH;
            String colour = colour(theme.style(look), true);
            if (eighths > 0) {
                int tall = (HIGH * eighths + 4) / 8;
                rect(x, y + HIGH - tall, (to - from) * WIDE, tall, colour);
            } else if (sign.equals("▀")) {
                rect(x, y, (to - from) * WIDE, HIGH / 2, colour);
            } else if (sign.equals("▌") || sign.equals("▐")) {
                rect(sign.equals("▌") ? x : x + WIDE / 2, y, WIDE / 2, HIGH, colour);
            }
            from = to;
        }
    }

    /** The dots of a scan, the upper and the lower half of each cell. */
    private void dots(int row) {
        for (int half = 0; half < 2; half++) {
            for (int from = 0; from < grid.columns(); ) {
                int colour = dot(from, row, half);
                int to = from + 1;
                while (to < grid.columns() && dot(to, row, half) == colour) {
                    to++;
                }
                if (colour >= 0) {
                    rect(
                            RIM + from * WIDE,
                            RIM + row * HIGH + half * HIGH / 2,
                            (to - from) * WIDE,
                            HIGH / 2,
                            colour(colour));
                }
                from = to;
            }
        }
    }

    private int dot(int column, int row, int half) {
        Cell cell = grid.cell(column, row);
        return !cell.isPicture()
                ? -1
                : half == 0 ? cell.pixels().top() : cell.pixels().bottom();
    }

    private void letters(int row) {
        for (int from = 0; from < grid.columns(); ) {
            if (isEmpty(from, row)) {
                from++;
                continue;
            }
            TextRole look = grid.role(from, row);
            StringBuilder run = new StringBuilder();
            int to = from;
            int end = from;
            // Two blanks end a run, and so does anything that is a shape; one blank belongs to it.
            while (to < grid.columns()
                    && grid.role(to, row) == look
                    && (!isEmpty(to, row) || grid.cell(to, row).isBlank() && to == end)) {
                run.append(grid.cell(to, row).text());
                end = isEmpty(to, row) ? end : to + 1;
                to++;
            }
            text(from, row, run.toString().stripTrailing(), end - from, theme.style(look));
            from = Math.max(to, end);
        }
    }

    private boolean isEmpty(int column, int row) {
        String sign = grid.cell(column, row).text();
        return sign.isEmpty() || "▁▂▃▄▅▆▇█▀▌▐ ".contains(sign);
    }

    private void text(int column, int row, String words, int columns, Style style) {
        svg.append("<text x=\"")
                .append(RIM + column * WIDE)
                .append("\" y=\"")
                .append(RIM + row * HIGH + 15)
                .append("\" textLength=\"")
                .append(columns * WIDE)
                .append("\" lengthAdjust=\"spacingAndGlyphs\" fill=\"")
                .append(colour(style, true))
                .append('"')
                .append(style.bold() ? " font-weight=\"bold\"" : "")
                .append(style.underline() ? " text-decoration=\"underline\"" : "")
                .append('>')
                .append(escaped(words))
                .append("</text>\n");
    }

    private void rect(int x, int y, int wide, int high, String colour) {
        svg.append("<rect x=\"")
                .append(x)
                .append("\" y=\"")
                .append(y)
                .append("\" width=\"")
                .append(wide)
                .append("\" height=\"")
                .append(high)
                .append("\" fill=\"")
                .append(colour)
                .append("\"/>\n");
    }

    private static String colour(Style style, boolean letters) {
        return colour((letters ? style.foreground() : style.background()).value());
    }

    private static String colour(int value) {
        String digits = Integer.toHexString(value).toLowerCase(Locale.ROOT);
        return "#" + "000000".substring(digits.length()) + digits;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
