package takeup.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import takeup.text.HtmlWriter;

/**
 * An order to print: the sheet that goes with the film, labels for the rolls, and a page for each roll's frames where
 * asked for. Each page begins with order, reference, sender and which page of how many it is.
 */
public final class OrderHtml {
    /** The paper that can be printed on. */
    public static final List<String> PAPERS = List.of("A4", "Letter");
    // Sizes in mm fit the smaller of both papers in each direction: 210 mm wide (A4) and 279 mm high (Letter). What a
    // lab must see at arm's length, some 60 cm, is 12 points or more.
    private static final String STYLE = """

            @page { size: %1$s; margin: 8mm 10mm; }
            * { box-sizing: border-box; }
            body { margin: 0; padding: 0 0.3mm; color: #000; background: #fff; font: 9.5pt/1.25 "Liberation \
            Sans", Arial, Helvetica, sans-serif; }
            section { break-after: page; }
            section:last-child { break-after: auto; }
            p, dl, dd { margin: 0; padding: 0; }
            .bar { display: flex; align-items: baseline; gap: 5mm; border-bottom: 0.7mm solid #000; height: 8.5mm; \
            margin: 0 0 2mm; font-size: 12pt; line-height: 1.1; white-space: nowrap; overflow: hidden; }
            .bar .order { font-size: 17pt; font-weight: bold; }
            .bar .words { flex: 1 1 auto; overflow: hidden; text-overflow: ellipsis; }
            .bar .page { font-size: 14pt; font-weight: bold; }
            .ends { display: flex; gap: 5mm; margin: 0 0 2mm; min-height: 25mm; }
            .ends dl { flex: 1 1 0; border: 0.3mm solid #000; padding: 1.2mm 2mm; font-size: 11pt; line-height: 1.3; }
            dl div { display: flex; break-inside: avoid; }
            dt { flex: 0 0 26mm; font-size: 9pt; padding-top: 0.5mm; }
            dd { flex: 1 1 auto; overflow-wrap: anywhere; }
            .ends div:first-child dd { font-size: 13pt; font-weight: bold; }
            .ends .wanted { font-weight: bold; }
            .write { border-bottom: 0.2mm solid #000; height: 5.4mm; }
            .wishes { columns: 2; column-gap: 5mm; margin: 0 0 1.5mm; font-size: 9.5pt; }
            .wishes dt { font-size: 8.5pt; padding-top: 0.3mm; }
            .wishes dd { font-weight: bold; }
            .counts { margin: 0 0 1mm; padding: 1mm 2mm; border: 0.3mm solid #000; font-weight: bold; font-size: 12pt; }
            .counts span { margin-right: 6mm; display: inline-block; }
            h2 { font-size: 14pt; line-height: 1.2; margin: 1.5mm 0 0.8mm; break-after: avoid; }
            table { border-collapse: collapse; width: 100%%; }
            th, td { text-align: left; vertical-align: top; padding: 0.7mm 1.4mm; border: 0.2mm solid #000; \
            overflow-wrap: anywhere; }
            th { font-size: 7.5pt; font-weight: normal; padding-top: 0.2mm; padding-bottom: 0.2mm; \
            overflow-wrap: normal; line-height: 1.05; }
            tr { break-inside: avoid; }
            .rolls { table-layout: fixed; line-height: 1.15; }
            .rolls td.number { font-size: 14pt; font-weight: bold; }
            .rolls td.process { font-size: 12.5pt; font-weight: bold; }
            .rolls td.known b { font-size: 12.5pt; white-space: nowrap; }
            .rolls td.known span, .rolls td.known p, .rolls td.dev span { font-size: 9pt; }
            .rolls td.film { font-size: 8pt; }
            .rolls .number { width: 24mm; }
            .rolls .yours { width: 14mm; }
            .rolls td.yours { font-size: 11pt; }
            .rolls .process { width: 32mm; }
            .rolls .dev { width: 48mm; }
            .rolls .film { width: 28mm; }
            .rolls td.dev .normal { font-size: 12.5pt; }
            .push, .pull { display: inline-block; font-size: 12.5pt; line-height: 1; padding: 0.5mm 0.6mm; \
            margin: 0 0 0.4mm; }
            .push { border: 0.8mm solid #000; }
            .pull { border: 0.8mm dashed #000; }
            .foot { margin: 1.5mm 0 0; font-size: 8.5pt; }
            .grid { display: grid; grid-template-columns: 63mm 63mm 63mm; grid-auto-rows: 35.5mm; }
            .label { border: 0.2mm dashed #000; padding: 1.2mm 1.8mm; overflow: hidden; break-inside: avoid; \
            line-height: 1.15; overflow-wrap: anywhere; }
            .label .top { display: flex; justify-content: space-between; align-items: baseline; gap: 2mm; }
            .label .number { font-size: 16pt; line-height: 1; white-space: nowrap; }
            .label .process { font-size: 13pt; line-height: 1; text-align: right; }
            .label .long { font-size: 10.5pt; line-height: 1; font-weight: bold; text-align: right; }
            .label .dev { margin: 0.5mm 0 0.3mm; }
            .label .dev .normal { font-size: 13pt; }
            .label .flags { font-size: 13pt; font-weight: bold; line-height: 1.05; }
            .label .sender { font-size: 9.5pt; font-weight: bold; white-space: nowrap; }
            .label .small { font-size: 7.5pt; }
            .full { padding: 0.5mm 1.8mm; }
            .full .small { font-size: 7pt; }
            .strip { display: block; width: 100%%; margin: 2mm 0; }
            .heads { columns: 2; column-gap: 6mm; margin: 0 0 2mm; }
            .heads dt { font-weight: bold; }
            .frames { columns: 2; column-gap: 4mm; }
            .frames table { table-layout: fixed; font-size: 7.5pt; margin-bottom: 2mm; }
            .frames th { font-size: 7.5pt; font-weight: bold; }
            .frames th, .frames td { padding: 0.4mm 0.8mm; }
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

    private OrderHtml() {}

    /**
     * One file that needs nothing else.
     *
     * @param paper A4 or Letter
     * @param frames rolls whose frames get a page each; often none
     * @param extras whether the notes of these frames are printed
     */
    public static String of(Order order, String paper, List<ExposedRoll> frames, Set<OrderedRoll.Extra> extras) {
        List<OrderPage> pages = new ArrayList<>(OrderSheet.of(order));
        pages.addAll(OrderLabels.of(order));
        frames.forEach(it -> pages.add(new OrderPage("roll", html -> FrameSheet.into(html, it, extras))));
        HtmlWriter html = new HtmlWriter(PrintedText::of);
        for (int at = 0; at < pages.size(); at++) {
            html.raw("<section class=\"" + pages.get(at).look() + "\">\n");
            bar(html, order, (at + 1) + " of " + pages.size());
            pages.get(at).body().accept(html);
            html.raw("</section>\n");
        }
        return html.page(HtmlWriter.head(PrintedText.of(order.order()), String.format(Locale.ROOT, STYLE, paper)));
    }

    private static void bar(HtmlWriter html, Order order, String page) {
        List<String> words = new ArrayList<>();
        order.reference().ifPresent(words::add);
        order.instructions()
                .sender()
                .map(Sender::name)
                .filter(it -> !it.isEmpty())
                .ifPresent(words::add);
        html.raw("<div class=\"bar\">")
                .element("span class=\"order\"", order.order() + (order.withdrawn() ? " (WITHDRAWN)" : ""))
                .raw(" ")
                .element("span class=\"words\"", words.isEmpty() ? "Film order" : String.join(" · ", words))
                .raw(" ")
                .element("span class=\"page\"", page)
                .raw("</div>\n");
    }
}
