package takeup.order;

import java.util.ArrayList;
import java.util.List;
import takeup.text.HtmlWriter;

/** Labels for the rolls of an order, three across, to be cut out and put round each roll. */
final class OrderLabels {
    /** Flags of more letters take a second line; the rest of the label is written closer then. */
    private static final int ONE_LINE = 18;

    private static final int A_PAGE = 21;

    private OrderLabels() {}

    static List<OrderPage> of(Order order) {
        List<OrderPage> pages = new ArrayList<>();
        List<OrderedRoll> rolls = order.sorted();
        for (int from = 0; from < rolls.size(); from += A_PAGE) {
            List<OrderedRoll> some = rolls.subList(from, Math.min(rolls.size(), from + A_PAGE));
            pages.add(new OrderPage("labels", html -> page(html, order, some)));
        }
        return pages;
    }

    private static void page(HtmlWriter html, Order order, List<OrderedRoll> rolls) {
        html.raw("<div class=\"grid\">\n");
        for (OrderedRoll roll : rolls) {
            label(html, order, roll);
        }
        html.raw("</div>\n");
    }

    private static void label(HtmlWriter html, Order order, OrderedRoll roll) {
        String process = OrderPage.shortened(roll.atLab().process(), 24);
        String flags = OrderPage.shortened(RollFlag.words(roll.flags()), 40);
        boolean isFull = flags.length() > ONE_LINE;
        html.raw(isFull ? "<div class=\"label full\">" : "<div class=\"label\">")
                .raw("<p class=\"top\">")
                .element(
                        "b class=\"number\"",
                        roll.roll()
                                + roll.film()
                                        .label()
                                        .name()
                                        .map(it -> " " + OrderPage.shortened(it, 12))
                                        .orElse(""))
                .raw(" ")
                .element(process.length() > 11 ? "b class=\"long\"" : "b class=\"process\"", process)
                .raw("</p><p class=\"dev\">");
        OrderPage.development(html, roll.development());
        html.raw("</p>");
        if (!flags.isEmpty()) {
            html.element("p class=\"flags\"", flags);
        }
        String what = order.order() + " · EXPOSED" + (order.instructions().flies() ? " · NO X-RAYS" : "");
        html.element("p class=\"sender\"", from(order));
        if (!isFull) {
            html.element("p class=\"small\"", what);
        }
        html.element(
                        "p class=\"small\"",
                        (isFull ? what + " · " : "")
                                + roll.film().sizes() + " · "
                                + roll.development().speeds() + " · "
                                + OrderPage.shortened(roll.film().stock(), isFull ? 14 : 40)
                                + roll.film()
                                        .label()
                                        .batch()
                                        .map(it -> " · batch " + OrderPage.shortened(it, 12))
                                        .orElse(""))
                .raw("</div>\n");
    }

    private static String from(Order order) {
        return OrderPage.shortened(
                order.instructions()
                        .sender()
                        .map(Sender::brief)
                        .orElseGet(() -> order.reference().orElse("")),
                60);
    }
}
