package takeup.order;

import java.util.List;
import java.util.Locale;
import takeup.text.English;
import takeup.text.HtmlWriter;

/**
 * A roll drawn as cut film, twelve frames a strip, as SVG. A bar in each frame stands on the line in the middle for
 * more light than was asked for, and hangs from it for less, up to three stops; the words in the table below say the
 * same.
 */
final class FrameStrip {
    private static final int ACROSS = 12;
    private static final double PITCH = 50;
    private static final double WIDTH = 44;
    private static final double HEIGHT = 34;
    private static final double ROW = 66;
    private static final double MOST = 3;

    private final boolean isPerforated;
    private final StringBuilder svg = new StringBuilder();

    private FrameStrip(String filmSize) {
        isPerforated = filmSize.equals("135");
    }

    /** The drawing; film of size 135 has perforations. No number in it is below 0. */
    static String of(List<ExposedFrame> frames, String filmSize) {
        return new FrameStrip(filmSize).drawn(frames);
    }

    private String drawn(List<ExposedFrame> frames) {
        int rows = (frames.size() + ACROSS - 1) / ACROSS;
        svg.append("<svg class=\"strip\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
                + number(ACROSS * PITCH + 4) + " " + number(rows * ROW) + "\" role=\"img\" aria-label=\""
                + English.count(frames.size(), "frame") + ", in the table below\">\n");
        for (int row = 0; row < rows; row++) {
            List<ExposedFrame> strip = frames.subList(row * ACROSS, Math.min(frames.size(), (row + 1) * ACROSS));
            double top = row * ROW + 1;
            svg.append(rectangle(1, top, strip.size() * PITCH + 2, HEIGHT + 24, "#fff"));
            for (int at = 0; at < strip.size(); at++) {
                frame(strip.get(at), 5 + at * PITCH, top + 8);
            }
        }
        return svg.append("</svg>\n").toString();
    }

    private void frame(ExposedFrame frame, double left, double top) {
        if (isPerforated) {
            for (int hole = 0; hole < 6; hole++) {
                svg.append(rectangle(left + 1 + hole * 8, top - 5.5, 3, 3.5, "#fff"))
                        .append(rectangle(left + 1 + hole * 8, top + HEIGHT + 11, 3, 3.5, "#fff"));
            }
        }
        svg.append(rectangle(left, top, WIDTH, HEIGHT, frame.isPicture() ? "#eee" : "#fff"));
        double middle = top + HEIGHT / 2;
        if (frame.kind().equals("blank") || frame.kind().equals("lost")) {
            svg.append(line(left, top, left + WIDTH, top + HEIGHT));
        }
        if (frame.kind().equals("lost")) {
            svg.append(line(left, top + HEIGHT, left + WIDTH, top));
        }
        if (frame.isPicture() && frame.errorStops().isPresent()) {
            double stops = Math.max(0 - MOST, Math.min(MOST, frame.errorStops().get()));
            double height = Math.abs(stops) / MOST * (HEIGHT / 2 - 1);
            svg.append(rectangle(
                    left + WIDTH / 2 - 5, stops > 0 ? middle - height : middle, 10, Math.max(height, 0.5), "#000"));
            svg.append(line(left + 6, middle, left + WIDTH - 6, middle));
        } else if (frame.isPicture()) {
            svg.append(text(left + WIDTH / 2, middle + 5, "?"));
        }
        svg.append(text(left + WIDTH / 2, top + HEIGHT + 8.5, PrintedText.of(Integer.toString(frame.frame()))));
    }

    private static String rectangle(double x, double y, double width, double height, String fill) {
        return "<rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" + number(width) + "\" height=\""
                + number(height) + "\" fill=\"" + fill + "\" stroke=\"#000\" stroke-width=\"0.5\"/>\n";
    }

    private static String line(double x1, double y1, double x2, double y2) {
        return "<line x1=\"" + number(x1) + "\" y1=\"" + number(y1) + "\" x2=\"" + number(x2) + "\" y2=\"" + number(y2)
                + "\" stroke=\"#000\" stroke-width=\"0.7\"/>\n";
    }

    private static String text(double x, double y, String words) {
        return "<text x=\"" + number(x) + "\" y=\"" + number(y)
                + "\" font-size=\"8\" text-anchor=\"middle\" font-family=\"sans-serif\">" + HtmlWriter.escaped(words)
                + "</text>\n";
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
