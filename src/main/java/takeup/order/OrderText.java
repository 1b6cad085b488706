package takeup.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.text.English;
import takeup.text.Padding;

/** An order as plain text: for a letter, a mail, or to read. */
public final class OrderText {
    private static final int WIDTH = 100;

    private OrderText() {}

    /** The order, as lines that end in a line feed. */
    public static String of(Order order) {
        List<String> lines = new ArrayList<>();
        lines.add("Film order " + order.order() + (order.withdrawn() ? " (WITHDRAWN)" : ""));
        lines.add("");
        heads(order).forEach((name, words) -> lines.add(Padding.cell(name, 13) + words));
        lines.add("");
        order.counts().forEach((what, many) -> lines.add(Padding.cell(English.count(many, "roll"), 13) + what));
        lines.add("");
        for (OrderedRoll roll : order.rolls()) {
            lines.add(Padding.cell(roll.roll(), 11) + roll.words());
            List<String> rest = new ArrayList<>();
            RollFilm film = roll.film();
            rest.add(order.lab().asksFor(FormColumn.FRAME_SIZE) ? film.format() : film.filmSize());
            if (order.lab().asksFor(FormColumn.STOCK)) {
                rest.add(PrintedText.of(film.stock()));
            }
            if (order.lab().asksFor(FormColumn.FRAMES)) {
                rest.add(English.count(roll.framesExpected(), "frame"));
            }
            lines.add(Padding.cell("", 11) + String.join(" · ", rest));
            roll.labNumber().ifPresent(it -> lines.add(Padding.cell("", 11) + "lab's number " + PrintedText.of(it)));
            String notes = roll.notes().printed();
            if (!notes.isEmpty()) {
                wrap(Padding.cell("", 11), notes, lines);
            }
        }
        return String.join("\n", lines) + "\n";
    }

    /** What holds for the whole order, each with its name. */
    static Map<String, String> heads(Order order) {
        Map<String, String> heads = new LinkedHashMap<>();
        heads.put("for", PrintedText.of(order.lab().name()));
        order.reference().ifPresent(it -> heads.put("reference", PrintedText.of(it)));
        order.instructions().client().ifPresent(it -> heads.put("client", PrintedText.of(it)));
        heads.put("date", order.madeAt().toLocalDate().toString());
        order.parcel().ifPresent(it -> heads.put("parcel", it.words().substring("parcel ".length())));
        if (order.instructions().flies()) {
            heads.put("transport", "this film travels by air: no X-rays, no CT, please inspect by hand");
        }
        for (Wish wish : Wish.values()) {
            order.instructions().wishes().of(wish).ifPresent(it -> heads.put(wish.words(), PrintedText.of(it)));
        }
        return heads;
    }

    private static void wrap(String indent, String text, List<String> lines) {
        String rest = text;
        while (indent.length() + rest.length() > WIDTH) {
            int cut = rest.lastIndexOf(' ', WIDTH - indent.length());
            if (cut <= 0) {
                break;
            }
            lines.add(indent + rest.substring(0, cut));
            rest = rest.substring(cut + 1);
        }
        lines.add(indent + rest);
    }
}
