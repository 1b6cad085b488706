package takeup.review;

import takeup.text.HtmlWriter;
import takeup.text.Plain;

/** A lesson as one HTML page with its plots drawn as SVG. It runs and fetches nothing. */
public final class LessonHtml {
    private static final int WIDTH = 640;
    private static final int ROW = 56;
    private static final int MARGIN = 70;
    private static final int LEFT = LessonText.LEFT;
    private static final int RIGHT = LessonText.RIGHT;
    private static final String STYLE = """

            body{font:16px/1.5 sans-serif;max-width:46em;margin:2em auto;padding:0 1em;color:#1c2226;background:#fff}
            table{border-collapse:collapse}
            td,th{padding:.2em .9em .2em 0;text-align:left}
            svg{max-width:100%;height:auto}
            text{font:13px sans-serif;fill:#1c2226}
            .thin{fill:#2b6f9e}.good{fill:#3c7d46}.dense{fill:#9a5a12}line{stroke:#9aa3a8}
            """;

    private final VerdictCounts counts;
    private final HtmlWriter html = new HtmlWriter();

    private LessonHtml(VerdictCounts counts) {
        this.counts = counts;
    }

    /** The page's text. */
    public static String of(VerdictCounts counts, Lesson lesson) {
        LessonHtml page = new LessonHtml(counts);
        page.lesson(lesson);
        return page.html.page("<meta name=\"viewport\" content=\"width=device-width\">\n"
                + HtmlWriter.head("What the verdicts teach", STYLE));
    }

    private void lesson(Lesson lesson) {
        line("h1", "What the verdicts teach");
        line(
                "p",
                counts.judged() + " frames judged on " + counts.rolls() + " rolls; the log tells the exposure of "
                        + counts.usable() + ".");
        html.raw("<ul>\n");
        LessonText.findings(lesson).forEach(it -> line("li", it));
        html.raw("</ul>\n");
        line("h2", "Log against verdict");
        plot();
        html.raw("<p>Each dot stands where the log puts a frame, in stops over box speed; its area is the number "
                + "of frames. Verdicts are by the texture of the shadows; the brightness of a scan may "
                + "be the lab's.</p>\n");
        for (JudgedFrame.Factor factor : JudgedFrame.Factor.values()) {
            table(factor);
        }
        html.raw("<p>Ranges hold the truth in 95 of 100 cases: of shares by Wilson's method, of stops by the "
                + "likelihood ratio of an ordered probit whose limits are the stock's latitude "
                + "(NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1 and 8.2.3.3).</p>\n");
    }

    private void line(String tag, String words) {
        html.element(tag, words).raw("\n");
    }

    private void plot() {
        html.raw("<svg viewBox=\"0 0 " + WIDTH + " " + (3 * ROW + 40)
                + "\" role=\"img\" aria-label=\"Stops over box by the log, by verdict\">\n");
        for (int stop = LEFT; stop <= RIGHT; stop++) {
            String x = number(x(stop));
            html.raw("<line x1=\"" + x + "\" y1=\"10\" x2=\"" + x + "\" y2=\"" + (3 * ROW + 10) + "\"/>");
            line("text x=\"" + x + "\" y=\"" + (3 * ROW + 30) + "\" text-anchor=\"middle\"", Integer.toString(stop));
        }
        for (int row = 0; row < LessonText.ROWS.size(); row++) {
            Density verdict = LessonText.ROWS.get(row);
            int y = 10 + row * ROW + ROW / 2;
            line("text x=\"0\" y=\"" + (y + 5) + "\"", verdict.toString());
            int[] bins = LessonText.bins(counts, verdict, 10);
            for (int bin = 0; bin < bins.length; bin++) {
                if (bins[bin] > 0) {
                    html.raw("<circle class=\"" + verdict + "\" cx=\"" + number(x(LEFT + bin / 10.0)) + "\" cy=\"" + y
                            + "\" r=\"" + number(Math.min(ROW / 2.0, 2.2 * Math.sqrt(bins[bin]))) + "\"/>\n");
                }
            }
        }
        html.raw("</svg>\n");
    }

    private static double x(double stop) {
        return MARGIN + (WIDTH - MARGIN - 20) * (stop - LEFT) / (RIGHT - LEFT);
    }

    private static String number(double value) {
        return Plain.decimals(value, 1);
    }

    private void table(JudgedFrame.Factor factor) {
        line("h2", "By " + factor);
        html.raw("<table><tr><th></th><th>frames</th><th>thin</th><th>good</th><th>dense</th>"
                + "<th>share thin</th></tr>\n");
        counts.by(factor)
                .forEach((name, by) -> html.raw("<tr>")
                        .element("td", name)
                        .element("td", Integer.toString(by.all()))
                        .element("td", Integer.toString(by.thin()))
                        .element("td", Integer.toString(by.good()))
                        .element("td", Integer.toString(by.dense()))
                        .element("td", by.thinShare())
                        .raw("</tr>\n"));
        html.raw("</table>\n");
    }
}
