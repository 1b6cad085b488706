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
        Map<String, String> heads = heads(order);
        int across = Math.max(
                13, 2 + heads.keySet().stream().mapToInt(String::length).max().orElse(0));
        heads.forEach((name, words) -> lines.add(Padding.cell(name, across) + words));
        lines.add("");
        order.counts().forEach((what, many) -> lines.add(Padding.cell(English.count(many, "roll"), across) + what));
        lines.add("");
        for (OrderedRoll roll : order.sorted()) {
            List<RollFlag> flags = roll.flags();
            lines.add(Padding.cell(roll.roll(), 11)
                    + roll.words()
                    + (flags.isEmpty() ? "" : " · " + RollFlag.words(flags)));
            List<String> rest = new ArrayList<>();
            RollFilm film = roll.film();
            rest.add(order.lab().asksFor(FormColumn.FRAME_SIZE) ? film.sizes() : film.filmSize());
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

    private static Map<String, String> heads(Order order) {
        Map<String, String> heads = sender(order);
        heads.putAll(recipient(order));
        heads.putAll(wishes(order));
        return heads;
    }

    /** Who sends it; empty where nobody is named. */
    static Map<String, String> sender(Order order) {
        Map<String, String> lines = new LinkedHashMap<>();
        order.instructions()
                .sender()
                .ifPresent(it -> it.lines().forEach((name, words) -> lines.put(name, PrintedText.of(words))));
        return lines;
    }

    /** Whom it goes to and when, and what is said of the parcel. */
    static Map<String, String> recipient(Order order) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("for", PrintedText.of(order.lab().name()));
        order.reference().ifPresent(it -> lines.put("reference", PrintedText.of(it)));
        order.instructions().client().ifPresent(it -> lines.put("client", PrintedText.of(it)));
        lines.put("date", order.madeAt().toLocalDate().toString());
        order.instructions()
                .wishes()
                .of(Wish.WANTED_BY)
                .ifPresent(it -> lines.put(Wish.WANTED_BY.words(), PrintedText.of(it)));
        order.parcel().ifPresent(it -> lines.put("parcel", it.words().substring("parcel ".length())));
        if (order.instructions().flies()) {
            lines.put("transport", "this film travels by air: no X-rays, no CT, please inspect by hand");
        }
        return lines;
    }

    /** All else that the lab is asked for, each with its name. */
    static Map<String, String> wishes(Order order) {
        Map<String, String> lines = new LinkedHashMap<>();
        for (Wish wish : Wish.values()) {
            if (wish != Wish.WANTED_BY) {
                order.instructions().wishes().of(wish).ifPresent(it -> lines.put(wish.words(), PrintedText.of(it)));
            }
        }
        return lines;
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
