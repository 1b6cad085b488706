package takeup.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import takeup.kit.Warning;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.scans.Proposal;
import takeup.text.English;
import takeup.text.HtmlWriter;

/** The scans of a roll on one HTML page, each beside its frame, verdict and warnings. It runs and fetches nothing. */
public final class ScansHtml {
    private static final String STYLE = """

            body{font:15px/1.45 sans-serif;max-width:72em;margin:2em auto;padding:0 1em;color:#1c2226;background:#fff}
            main{display:grid;grid-template-columns:repeat(auto-fill,minmax(21em,1fr));gap:1.6em 1.2em}
            figure{margin:0;break-inside:avoid}
            img{max-width:100%;max-height:22em;display:block;background:#e9ecee}
            .none{padding:2.5em 1em;border:1px dashed #68747c;color:#4a555c}
            figcaption b{font-size:1.25em}
            .verdict{font-weight:bold;border:1px solid #1c2226;padding:0 .4em}
            .warning{font-weight:bold}
            """;

    private final Roll roll;
    private final List<List<Warning>> warnings;
    private final HtmlWriter html = new HtmlWriter();

    private ScansHtml(Roll roll) {
        this.roll = roll;
        this.warnings = FrameWarnings.of(roll);
    }

    /**
     * The page's text.
     *
     * @param image the address of a scan as an image, by the name of its file; empty where it cannot be shown
     */
    public static String of(Roll roll, Proposal proposal, Review review, Function<String, Optional<String>> image) {
        ScansHtml page = new ScansHtml(roll);
        String title = "Scans of " + roll.id();
        page.html
                .element("h1", title)
                .raw("\n")
                .element("p", page.summary(proposal))
                .raw("\n<ul>\n");
        proposal.reasons().forEach(it -> page.html.element("li", it).raw("\n"));
        page.html.raw("</ul>\n<main>\n");
        ScanRow.of(proposal, roll, review).forEach(it -> page.figure(it, image));
        page.html.raw("</main>\n");
        return page.html.page("<meta name=\"viewport\" content=\"width=device-width\">\n"
                + HtmlWriter.headWithPictures(title, STYLE));
    }

    private String summary(Proposal proposal) {
        return roll.film().stock().name() + ", " + roll.film().developmentWords() + ": "
                + English.count(proposal.scans().size(), "scan") + " beside "
                + English.count(roll.frames().size(), "frame") + ". Verdicts are by the texture of the shadows; the "
                + "brightness of a scan may be the lab's.";
    }

    private void figure(ScanRow row, Function<String, Optional<String>> image) {
        html.raw("<figure>");
        Optional<String> source = row.scan() < 0 ? Optional.empty() : image.apply(row.file());
        if (source.isPresent()) {
            html.raw("<img src=\"" + HtmlWriter.escaped(source.get()) + "\" alt=\"" + HtmlWriter.escaped(row.file())
                    + "\">");
        } else {
            html.element("div class=\"none\"", row.scan() < 0 ? "no scan" : "it cannot be shown here");
        }
        html.raw("<figcaption>").element("b", row.places().isEmpty() ? "not in the log" : "Frame " + row.frame());
        html.text(row.settings().isEmpty() ? "" : " · " + row.settings());
        html.text(row.reading().isEmpty() ? "" : " · " + row.reading());
        if (!row.verdict().isEmpty()) {
            html.raw(" ").element("span class=\"verdict\"", row.verdict());
        }
        for (int place : row.places()) {
            for (Warning warning : warnings.get(place)) {
                html.raw("<br>").element("span class=\"warning\"", warning.text());
            }
        }
        if (!row.places().isEmpty() && !row.note().isEmpty()) {
            html.raw("<br>").text(row.note());
        }
        html.raw("<br>").text(row.scan() < 0 ? "" : row.file()).raw("</figcaption></figure>\n");
    }
}
