package takeup.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.text.English;
import takeup.text.HtmlWriter;
import takeup.text.Width;

/**
 * The sheet that goes with the film: who sends it, what is wished, and a row for each roll, the rolls of one process
 * together. It parts itself into pages, for no browser numbers those of a printed page in the same way; a row's height
 * is reckoned a little too large, so that what is parted here never runs over.
 */
final class OrderSheet {
    /**
     * What holds on a page below its first line, in mm: a sheet of Letter, which is the lower one, less its margins.
     */
    private static final double HEIGHT = 250;
    /** The name of a process and the heads of the columns above its rows, in mm. */
    private static final double GROUP = 15;

    private final Order order;
    private final boolean isNoted;

    private OrderSheet(Order order) {
        this.order = order;
        this.isNoted = order.rolls().stream()
                .anyMatch(it -> !it.flags().isEmpty() || it.notes().note().isPresent());
    }

    /** The rolls of one process, or some of them where a page ends among them. */
    private record Group(String process, boolean isContinued, List<OrderedRoll> rolls) {}

    static List<OrderPage> of(Order order) {
        OrderSheet sheet = new OrderSheet(order);
        List<List<Group>> parted = sheet.parted();
        List<OrderPage> pages = new ArrayList<>();
        for (int at = 0; at < parted.size(); at++) {
            boolean isFirst = at == 0;
            boolean isLast = at == parted.size() - 1;
            List<Group> groups = parted.get(at);
            pages.add(new OrderPage("sheet", html -> {
                if (isFirst) {
                    sheet.heads(html);
                }
                groups.forEach(it -> sheet.group(html, it));
                if (isLast) {
                    html.element(
                            "p class=\"foot\"",
                            "The roll number is on each cassette or backing paper. Rated is the speed that it was "
                                    + "exposed for, box the speed on its box.");
                }
            }));
        }
        return pages;
    }

    private List<List<Group>> parted() {
        List<List<Group>> pages = new ArrayList<>();
        List<Group> page = new ArrayList<>();
        double left = HEIGHT - headsHeight();
        for (Map.Entry<String, List<OrderedRoll>> all : byProcess().entrySet()) {
            List<OrderedRoll> rolls = all.getValue();
            int from = 0;
            double used = GROUP;
            for (int at = 0; at < rolls.size(); at++) {
                double height = height(rolls.get(at));
                if (used + height > left) {
                    if (at > from) {
                        page.add(new Group(all.getKey(), from > 0, rolls.subList(from, at)));
                    }
                    pages.add(page);
                    page = new ArrayList<>();
                    from = at;
                    used = GROUP;
                    left = HEIGHT;
                }
                used += height;
            }
            page.add(new Group(all.getKey(), from > 0, rolls.subList(from, rolls.size())));
            left -= used;
        }
        pages.add(page);
        return pages;
    }

    private Map<String, List<OrderedRoll>> byProcess() {
        Map<String, List<OrderedRoll>> parted = new LinkedHashMap<>();
        order.sorted()
                .forEach(it -> parted.computeIfAbsent(it.atLab().process(), process -> new ArrayList<>())
                        .add(it));
        return parted;
    }

    /** The height of a row in mm, by the letters that fit into its cells. */
    private double height(OrderedRoll roll) {
        String order = roll.development().order();
        double development = (order.equals("NORMAL") ? 5.2 : 2 + 5.2 * lines(order, 12))
                + 3.9 * lines(speeds(roll.development()), 25);
        double process = 5.2 * lines(OrderPage.shortened(roll.atLab().process(), 24), 9);
        double film = 3.4 * lines(sizes(roll), 15)
                + (asks(FormColumn.STOCK)
                        ? 3.4 * lines(OrderPage.shortened(roll.film().stock(), 40), 15)
                        : 0);
        double known = 0;
        for (RollFlag flag : roll.flags()) {
            known += 5.2 * lines(flag.word(), 15) + 3.8 * lines(flag.details(), 21);
        }
        known += 3.8 * lines(roll.notes().note().orElse(""), 21);
        return 1.8 + Math.max(Math.max(development, process), Math.max(film, known));
    }

    private static int lines(String words, int across) {
        return words.isEmpty() ? 0 : 1 + Width.of(PrintedText.of(words)) / (across + 1);
    }

    private double headsHeight() {
        double lines = 0;
        for (String words : OrderText.wishes(order).values()) {
            lines += lines(words, 30);
        }
        double sender = 0;
        for (String words : OrderText.sender(order).values()) {
            sender += 5.2 * lines(words, 30);
        }
        double to = 0;
        for (String words : OrderText.recipient(order).values()) {
            to += 5.2 * lines(words, 30);
        }
        return 6 + Math.max(Math.max(sender, to), 27) + 4.2 * Math.ceil(lines / 2 + 1) + 7 * lines(counts(), 60);
    }

    private String counts() {
        StringBuilder words = new StringBuilder(English.count(order.rolls().size(), "roll"));
        order.counts().forEach((what, many) -> words.append("   ").append(many + " × " + what));
        return words.toString();
    }

    private void heads(HtmlWriter html) {
        html.raw("<div class=\"ends\">");
        Map<String, String> sender = OrderText.sender(order);
        if (sender.isEmpty()) {
            // Room to write it by hand.
            List.of("from", "telephone", "e-mail", "return to").forEach(it -> sender.put(it, ""));
        }
        list(html, "sender", sender);
        list(html, "recipient", OrderText.recipient(order));
        html.raw("</div>\n");
        list(html, "wishes", OrderText.wishes(order));
        html.raw("<p class=\"counts\">")
                .element("span", English.count(order.rolls().size(), "roll"));
        order.counts().forEach((what, many) -> html.raw(" ").element("span", many + " × " + what));
        html.raw("</p>\n");
    }

    private static void list(HtmlWriter html, String look, Map<String, String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        html.raw("<dl class=\"" + look + "\">\n");
        lines.forEach((name, words) -> html.raw("<div>")
                .element("dt", name)
                .element("dd" + look(name, words), words)
                .raw("</div>\n"));
        html.raw("</dl>\n");
    }

    private static String look(String name, String words) {
        if (words.isEmpty()) {
            return " class=\"write\"";
        }
        return name.equals(Wish.WANTED_BY.words()) ? " class=\"wanted\"" : "";
    }

    private boolean asks(FormColumn column) {
        return order.lab().asksFor(column);
    }

    private void group(HtmlWriter html, Group group) {
        html.element(
                "h2",
                OrderPage.shortened(group.process, 40)
                        + (group.isContinued ? ", continued: " : ": ")
                        + English.count(group.rolls.size(), "roll"));
        html.raw("<table class=\"rolls\">\n<thead><tr>");
        columns().forEach((head, look) -> html.element("th class=\"" + look + "\"", head));
        html.raw("</tr></thead>\n<tbody>\n");
        group.rolls.forEach(it -> row(html, it));
        html.raw("</tbody>\n</table>\n");
    }

    /** The heads of the columns, with the name of their look. */
    private Map<String, String> columns() {
        Map<String, String> columns = new LinkedHashMap<>();
        columns.put("roll", "number");
        if (asks(FormColumn.LAB_NUMBER)) {
            columns.put("your number", "yours");
        }
        columns.put("process", "process");
        columns.put("development", "dev");
        if (isNoted) {
            columns.put("special instructions", "known");
        }
        columns.put("film", "film");
        return columns;
    }

    private void row(HtmlWriter html, OrderedRoll roll) {
        html.raw("<tr>").element("td class=\"number\"", roll.roll());
        if (asks(FormColumn.LAB_NUMBER)) {
            html.element("td class=\"yours\"", roll.labNumber().orElse(""));
        }
        html.element("td class=\"process\"", OrderPage.shortened(roll.atLab().process(), 24))
                .raw("<td class=\"dev\">");
        OrderPage.development(html, roll.development());
        html.raw("<br>").element("span", speeds(roll.development())).raw("</td>");
        if (isNoted) {
            html.raw("<td class=\"known\">");
            for (RollFlag flag : roll.flags()) {
                if (!flag.word().isEmpty()) {
                    html.element("b", flag.word()).raw(" ");
                }
                if (!flag.details().isEmpty()) {
                    html.element("span", flag.details()).raw(" ");
                }
            }
            roll.notes().note().ifPresent(it -> html.element("p", it));
            html.raw("</td>");
        }
        html.raw("<td class=\"film\">").element("span", sizes(roll));
        if (asks(FormColumn.STOCK)) {
            html.raw("<br>").element("span", OrderPage.shortened(roll.film().stock(), 40));
        }
        html.raw("</td></tr>\n");
    }

    private String sizes(OrderedRoll roll) {
        RollFilm film = roll.film();
        boolean isSized = asks(FormColumn.FRAME_SIZE) || film.special().isPresent();
        return (isSized ? film.sizes() : film.filmSize())
                + (asks(FormColumn.FRAMES) ? " · " + English.count(roll.framesExpected(), "frame") : "");
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
}
