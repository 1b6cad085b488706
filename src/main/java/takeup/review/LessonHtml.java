package takeup.review;

import java.util.Map;
import takeup.text.Plain;

/** A lesson as one HTML page with its plots drawn as SVG. It runs and fetches nothing. */
public final class LessonHtml {
    private static final int WIDTH = 640;
    private static final int ROW = 56;
    private static final int MARGIN = 70;
    private static final int LEFT = -4;
    private static final int RIGHT = 6;
    private static final String STYLE =
            "body{font:16px/1.5 sans-serif;max-width:46em;margin:2em auto;padding:0 1em;color:#1c2226;background:#fff}"
                    + "table{border-collapse:collapse}td,th{padding:.2em .9em .2em "
                    + "0;text-align:left}svg{max-width:100%;height:auto}text{font:13px sans-serif;fill:#1c2226}"
                    + ".thin{fill:#2b6f9e}.good{fill:#3c7d46}.dense{fill:#9a5a12}line{stroke:#9aa3a8}";

    private LessonHtml() {}

    /** The page's text. */
    public static String of(VerdictCounts tally, Lesson lesson) {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src "
                + "'unsafe-inline'\">"
                + "<meta name=\"viewport\" content=\"width=device-width\"><title>What the verdicts teach</title><style>"
                + STYLE + "</style></head><body>\n<h1>What the verdicts teach</h1>\n");
        page.append("<p>")
                .append(tally.judged())
                .append(" frames judged on ")
                .append(tally.rolls())
                .append(" rolls; the log tells the exposure of ")
                .append(tally.usable())
                .append(".</p>\n<ul>\n");
        LessonText.findings(lesson)
                .forEach(it -> page.append("<li>").append(encoded(it)).append("</li>\n"));
        page.append("</ul>\n<h2>Log against verdict</h2>\n");
        plot(tally, page);
        page.append("<p>Each dot stands where the log puts a frame, in stops over box speed; its area is the number "
                + "of frames. Verdicts are by the texture of the shadows; the brightness of a scan may "
                + "be the lab's.</p>\n");
        for (JudgedFrame.Factor factor : JudgedFrame.Factor.values()) {
            table(tally, factor, page);
        }
        page.append("<p>Ranges hold the truth in 95 of 100 cases: of shares by Wilson's method, of stops by the "
                + "likelihood ratio of an ordered probit whose limits are the stock's latitude "
                + "(NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1 and 8.2.3.3).</p>\n</body></html>\n");
        return page.toString();
    }

    private static void plot(VerdictCounts tally, StringBuilder page) {
        int height = 3 * ROW + 40;
        page.append("<svg viewBox=\"0 0 ")
                .append(WIDTH)
                .append(' ')
                .append(height)
                .append("\" role=\"img\" aria-label=\"Stops over box by the log, by verdict\">\n");
        for (int stop = LEFT; stop <= RIGHT; stop++) {
            String x = number(x(stop));
            page.append("<line x1=\"")
                    .append(x)
                    .append("\" y1=\"10\" x2=\"")
                    .append(x)
                    .append("\" y2=\"")
                    .append(3 * ROW + 10)
                    .append("\"/><text x=\"")
                    .append(x)
                    .append("\" y=\"")
                    .append(3 * ROW + 30)
                    .append("\" text-anchor=\"middle\">")
                    .append(stop)
                    .append("</text>\n");
        }
        Density[] rows = {Density.DENSE, Density.GOOD, Density.THIN};
        for (int row = 0; row < rows.length; row++) {
            int y = 10 + row * ROW + ROW / 2;
            page.append("<text x=\"0\" y=\"")
                    .append(y + 5)
                    .append("\">")
                    .append(rows[row])
                    .append("</text>\n");
            int[] bins = new int[10 * (RIGHT - LEFT) + 1];
            for (Map.Entry<JudgedFrame, Integer> each : tally.counts().entrySet()) {
                if (each.getKey().verdict() == rows[row]) {
                    bins[Math.max(0, Math.min(bins.length - 1, each.getKey().overTenths() - 10 * LEFT))] +=
                            each.getValue();
                }
            }
            for (int bin = 0; bin < bins.length; bin++) {
                if (bins[bin] > 0) {
                    page.append("<circle class=\"")
                            .append(rows[row])
                            .append("\" cx=\"")
                            .append(number(x(LEFT + bin / 10.0)))
                            .append("\" cy=\"")
                            .append(y)
                            .append("\" r=\"")
                            .append(number(Math.min(ROW / 2.0, 2.2 * Math.sqrt(bins[bin]))))
                            .append("\"/>\n");
                }
            }
        }
        page.append("</svg>\n");
    }

    private static double x(double stop) {
        return MARGIN + (WIDTH - MARGIN - 20) * (stop - LEFT) / (RIGHT - LEFT);
    }

    private static String number(double value) {
        return Plain.decimals(value, 1);
    }

    private static void table(VerdictCounts tally, JudgedFrame.Factor factor, StringBuilder page) {
        page.append("<h2>By ")
                .append(factor)
                .append(
                        "</h2>\n<table><tr><th></th><th>frames</th><th>thin</th><th>good</th><th>dense</th><th>share thin</th></tr>\n");
        tally.by(factor).forEach((name, counts) -> {
            int all = counts[0] + counts[1] + counts[2];
            ConfidenceInterval thin = ConfidenceInterval.share(counts[0], all, ConfidenceInterval.CONFIDENCE);
            page.append("<tr><td>")
                    .append(encoded(name))
                    .append("</td><td>")
                    .append(all)
                    .append("</td><td>")
                    .append(counts[0])
                    .append("</td><td>")
                    .append(counts[1])
                    .append("</td><td>")
                    .append(counts[2])
                    .append("</td><td>")
                    .append(Math.round(100 * thin.low()))
                    .append(" to ")
                    .append(Math.round(100 * thin.high()))
                    .append(" %</td></tr>\n");
        });
        page.append("</table>\n");
    }

    /** Words of the photographer's own as text: signs that mean something in HTML as references. */
    static String encoded(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(it -> {
            if (it == '&' || it == '<' || it == '>' || it == '"' || it == '\'' || it < ' ' || it >= 0x7f && it < 0xa0) {
                safe.append("&#")
                        .append(it < ' ' || it >= 0x7f && it < 0xa0 ? 0xfffd : it)
                        .append(';');
            } else {
                safe.appendCodePoint(it);
            }
        });
        return safe.toString();
    }
}
