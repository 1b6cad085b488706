package takeup.order;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import takeup.text.English;
import takeup.text.HtmlWriter;

/**
 * An order to print: the sheet that goes with the film, labels for the rolls, and a page for each roll's frames where
 * asked for.
 */
public final class OrderHtml {
    /** The paper that can be printed on. */
    public static final List<String> PAPERS = List.of("A4", "Letter");
    // Sizes in mm fit the smaller of both papers in each direction: 210 mm wide (A4) and 279 mm high (Letter).
    private static final String STYLE = """

            @page { size: %1$s; margin: 8mm 10mm; }
            * { box-sizing: border-box; }
            body { margin: 0; padding: 0 0.3mm; color: #000; background: #fff; font: 8.5pt/1.3 "Liberation \
            Sans", Arial, Helvetica, sans-serif; }
            section { break-after: page; }
            section:last-child { break-after: auto; }
            h1 { font-size: 15pt; line-height: 1.2; margin: 0 0 1.5mm; }
            h2 { font-size: 13pt; margin: 0 0 2mm; }
            table { border-collapse: collapse; width: 100%%; }
            th, td { text-align: left; vertical-align: top; padding: 0.7mm 1.5mm; border: 0.2mm solid #000; \
            overflow-wrap: anywhere; }
            th, .rolls th { font-size: 7.5pt; font-weight: bold; }
            thead { display: table-header-group; }
            tr { break-inside: avoid; }
            .heads { display: block; font-size: 8pt; line-height: 1.25; columns: 2; column-gap: 6mm; margin: \
            0 0 2mm; padding: 0; }
            .heads div { display: flex; break-inside: avoid; }
            .heads dt { flex: 0 0 24mm; font-weight: bold; }
            .heads dd { margin: 0; overflow-wrap: anywhere; }
            .counts { margin: 0 0 2mm; padding: 1mm 2mm; border: 0.5mm solid #000; font-weight: bold; font-size: 10pt; }
            .counts span { margin-right: 6mm; display: inline-block; }
            .rolls { table-layout: fixed; font-size: 8pt; line-height: 1.15; }
            .rolls tr { height: 8.2mm; }
            .rolls td { padding-top: 0.4mm; padding-bottom: 0.3mm; }
            .rolls thead tr { height: auto; }
            .number { width: 18mm; font-size: 11pt; font-weight: bold; }
            .blank { width: 18mm; }
            .film { width: 23mm; }
            .stock { width: 31mm; }
            .frames-due { width: 14mm; }
            .rolls span { display: inline-block; }
            .known { width: 42mm; font-size: 6.5pt; }
            .foot { margin: 1.5mm 0 0; font-size: 7pt; }
            .labels { display: grid; grid-template-columns: 62mm 62mm 62mm; grid-auto-rows: 32mm; }
            .label { border: 0.2mm dashed #000; padding: 2mm; overflow: hidden; break-inside: avoid; }
            .label b { font-size: 17pt; line-height: 1.1; display: block; }
            .label p { margin: 0; font-size: 8pt; line-height: 1.25; }
            .label .order { font-weight: bold; font-size: 9pt; }
            .strip { display: block; width: 100%%; margin: 2mm 0; }
            .frames { columns: 2; column-gap: 4mm; }
            .frames table { font-size: 7.5pt; margin-bottom: 2mm; }
            .frames th, .frames td { padding: 0.4mm 0.8mm; }
            .frames table { table-layout: fixed; }
            .at { width: 12mm; }
            .set { width: 21mm; }
            .lens { width: 19mm; }
            .light { width: 16mm; }
            .plain .light { width: auto; }
            .frames .noted { font-size: 6.5pt; line-height: 1.15; }
            .noted th { font-size: 6.5pt; }
            .noted .at { width: 11mm; }
            .noted .set { width: 21mm; }
            .noted .lens { width: 13mm; }
            .noted .light { width: 12mm; }
            """;

    private final Order order;
    private final HtmlWriter html = new HtmlWriter(PrintedText::of);

    private OrderHtml(Order order) {
        this.order = order;
    }

    /**
     * One file that needs nothing else.
     *
     * @param paper A4 or Letter
     * @param frames rolls whose frames get a page each; often none
     * @param extras whether the notes of these frames are printed
     */
    public static String of(Order order, String paper, List<ExposedRoll> frames, Set<OrderedRoll.Extra> extras) {
        OrderHtml page = new OrderHtml(order);
        page.sheet();
        page.labels();
        for (ExposedRoll roll : frames) {
            FrameSheet.into(page.html, order, roll, extras);
        }
        return page.html.page(HtmlWriter.head(PrintedText.of(order.order()), String.format(Locale.ROOT, STYLE, paper)));
    }

    private void sheet() {
        html.raw("<section class=\"sheet\">\n")
                .element("h1", "Film order " + order.order() + (order.withdrawn() ? " (WITHDRAWN)" : ""));
        FrameSheet.heads(html, OrderText.heads(order));
        html.raw("<p class=\"counts\">")
                .element("span", English.count(order.rolls().size(), "roll"));
        order.counts().forEach((what, many) -> html.raw(" ").element("span", many + " × " + what));
        html.raw("</p>\n<table class=\"rolls\">\n<thead><tr>");
        columns().forEach((head, kind) -> html.element("th class=\"" + kind + "\"", head));
        html.raw("</tr></thead>\n<tbody>\n");
        order.rolls().forEach(this::row);
        html.raw("</tbody>\n</table>\n")
                .element(
                        "p class=\"foot\"",
                        "The roll number is on each cassette or backing paper. Rated is the speed that it was "
                                + "exposed for, box the speed on its box.")
                .raw("</section>\n");
    }

    private boolean asks(FormColumn column) {
        return order.lab().asksFor(column);
    }

    /** The heads of the columns, with the name of their look. */
    private Map<String, String> columns() {
        Map<String, String> columns = new LinkedHashMap<>();
        columns.put("roll", "number");
        if (asks(FormColumn.LAB_NUMBER)) {
            columns.put("your number", "blank");
        }
        columns.put("film", "film");
        if (asks(FormColumn.STOCK)) {
            columns.put("stock", "stock");
        }
        columns.put("process and development", "process");
        if (asks(FormColumn.FRAMES)) {
            columns.put("frames", "frames-due");
        }
        if (asks(FormColumn.CONDITION)
                || order.rolls().stream().anyMatch(it -> it.notes().note().isPresent())) {
            columns.put("to be known", "known");
        }
        return columns;
    }

    private void row(OrderedRoll roll) {
        LabDevelopment development = roll.development();
        html.raw("<tr>").element("td class=\"number\"", roll.roll());
        if (asks(FormColumn.LAB_NUMBER)) {
            html.element("td class=\"blank\"", roll.labNumber().orElse(""));
        }
        html.element(
                "td class=\"film\"",
                asks(FormColumn.FRAME_SIZE) || roll.film().special().isPresent()
                        ? roll.film().format()
                        : roll.film().filmSize());
        if (asks(FormColumn.STOCK)) {
            html.element("td class=\"stock\"", shortened(roll.film().stock(), 40));
        }
        html.raw("<td class=\"process\">")
                .element("b", shortened(roll.atLab().process(), 24) + ", " + development.order())
                .raw(" ")
                .element("span", speeds(development))
                .raw("</td>");
        if (asks(FormColumn.FRAMES)) {
            html.element("td class=\"frames-due\"", Integer.toString(roll.framesExpected()));
        }
        if (columns().containsKey("to be known")) {
            html.element(
                    "td class=\"known\"",
                    asks(FormColumn.CONDITION)
                            ? roll.notes().printed()
                            : roll.notes().note().orElse(""));
        }
        html.raw("</tr>\n");
    }

    /**
     * The rating is printed where it matters even if the form does not ask for it: a push without it can be misread.
     */
    private String speeds(LabDevelopment development) {
        if (asks(FormColumn.RATING) || !development.order().equals("NORMAL")) {
            return development.speeds();
        }
        return asks(FormColumn.BOX_SPEED) ? "box " + PrintedText.number(development.boxSpeed()) : "";
    }

    /** Words too long for their place are cut with a mark; the plain text and the JSON have all of them. */
    private static String shortened(String words, int longest) {
        int end = words.offsetByCodePoints(0, Math.min(words.codePointCount(0, words.length()), longest));
        return end == words.length() ? words : words.substring(0, end) + "…";
    }

    private void labels() {
        html.raw("<section class=\"labels\">\n");
        for (OrderedRoll roll : order.rolls()) {
            html.raw("<div class=\"label\">")
                    .element("b", roll.roll())
                    .element(
                            "p class=\"order\"",
                            shortened(roll.atLab().process(), 24) + ", "
                                    + roll.development().order())
                    .element("p", roll.development().speeds())
                    .element(
                            "p",
                            roll.film().format() + " · " + shortened(roll.film().stock(), 40))
                    .element(
                            "p",
                            order.order() + " · EXPOSED" + (order.instructions().flies() ? " · NO X-RAYS" : ""))
                    .raw("</div>\n");
        }
        html.raw("</section>\n");
    }
}
