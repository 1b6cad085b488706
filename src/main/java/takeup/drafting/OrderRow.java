package takeup.drafting;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import takeup.action.Choice;
import takeup.action.Field;
import takeup.action.Menu;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.Order;
import takeup.order.OrderInstructions;
import takeup.order.OrderedRoll;
import takeup.order.Sender;
import takeup.order.Stage;
import takeup.order.Wish;

/**
 * A row of an order that is being made: what it is about, how it stands, and what Enter does with it.
 *
 * @param name what it is about: {@code R0003}, {@code scan size}
 * @param text how it stands
 * @param line what Enter does at once, as it is typed; "" where it asks first
 * @param asked what Enter asks; empty where it does something at once
 */
public record OrderRow(String name, String text, String line, Optional<Menu> asked) {
    private static final String NOTHING = "not said";

    /** All rows of an order, what writes it first. */
    public static List<OrderRow> of(OrderDraft draft, OffsetDateTime now) {
        List<OrderRow> rows = new ArrayList<>();
        int many = draft.rolls().size();
        rows.add(doing(
                "see it, write it",
                many == 0 ? "no roll is in it" : draft.order(now).summary(),
                "order sheet"));
        Map<String, OrderedRoll> ordered = ordered(draft, now);
        for (ExposedRoll it : draft.source().rolls()) {
            OrderedRoll roll = ordered.get(it.roll());
            boolean isOut = draft.leftOut().contains(it.roll());
            rows.add(doing(
                    it.roll(),
                    (isOut ? "LEFT OUT  " : "") + roll.description(),
                    "order " + (isOut ? "with " : "without ") + it.roll()));
        }
        rows.addAll(earlier(draft.source().earlier()));
        rows.add(lab(draft));
        rows.addAll(sender(draft.instructions()));
        rows.addAll(wishes(draft));
        rows.addAll(rest(draft));
        return rows;
    }

    private static Map<String, OrderedRoll> ordered(OrderDraft draft, OffsetDateTime now) {
        Map<String, OrderedRoll> ordered = new TreeMap<>();
        draft.withLeftOut(Set.of()).order(now).rolls().forEach(it -> ordered.put(it.roll(), it));
        return ordered;
    }

    private static OrderRow doing(String name, String text, String line) {
        return new OrderRow(name, text, line, Optional.empty());
    }

    private static OrderRow asking(String name, String text, Field field) {
        return new OrderRow(name, text, "", Optional.of(Menu.of(field)));
    }

    /** The orders that are not back whole, newest first: Enter says how far one has come. */
    private static List<OrderRow> earlier(List<Order> orders) {
        List<OrderRow> rows = new ArrayList<>();
        for (Order order : orders) {
            if (!order.withdrawn() && !order.rolls().stream().allMatch(it -> isBack(order, it))) {
                rows.add(0, earlier(order));
            }
        }
        return rows;
    }

    private static boolean isBack(Order order, OrderedRoll roll) {
        return order.stage(roll.roll()) == Stage.NEGATIVES;
    }

    private static OrderRow earlier(Order order) {
        String first = order.rolls().get(0).roll();
        Stage now = order.stage(first);
        String since = order.last(first).map(it -> " since " + it.on()).orElse("");
        List<Choice> stages = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            if (stage != now) {
                stages.add(new Choice("order mark " + order.order() + " " + stage.word(), stage.where(), List.of()));
            }
        }
        return asking(
                order.order(),
                now.where() + since + ", " + order.summary(),
                new Field("Where is " + order.order() + "?", Field.Entry.NUMBERED, "", stages, 0));
    }

    private static OrderRow lab(OrderDraft draft) {
        List<Lab> labs = draft.source().labs();
        List<Choice> all = labs.stream()
                .map(it -> new Choice("order lab " + it.key(), it.name(), List.of()))
                .toList();
        return asking("lab", draft.lab().name(), new Field("Which lab?", Field.Entry.NUMBERED, "", all, 0));
    }

    private static List<OrderRow> sender(OrderInstructions instructions) {
        Sender sender = instructions.sender().orElse(Sender.NOBODY);
        List<String> texts =
                List.of(sender.name(), sender.account(), sender.telephone(), sender.email(), sender.address());
        List<OrderRow> rows = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            String word = OrderWords.SENDER.get(i);
            rows.add(words("sender's " + word, word, texts.get(i), List.of()));
        }
        return rows;
    }

    private static List<OrderRow> wishes(OrderDraft draft) {
        return Arrays.stream(Wish.values())
                .map(it -> words(
                        it.words(),
                        it.option().substring(2),
                        draft.instructions().wishes().of(it).orElse(""),
                        draft.lab().offered(it)))
                .toList();
    }

    /** A row of free words, or of some that the lab offers. */
    private static OrderRow words(String name, String word, String now, List<String> offered) {
        List<Choice> all = new ArrayList<>();
        offered.forEach(it -> all.add(new Choice("order " + word + " " + it, "", List.of())));
        if (!now.isEmpty()) {
            all.add(new Choice("order no " + word, "say nothing of it", List.of()));
        }
        Field.Entry entry = offered.isEmpty() ? Field.Entry.WORDS : Field.Entry.NUMBERED;
        return asking(name, now.isEmpty() ? NOTHING : now, new Field(name, entry, "order " + word + " ", all, 0));
    }

    private static List<OrderRow> rest(OrderDraft draft) {
        OrderInstructions all = draft.instructions();
        return List.of(
                words("reference, your own", "reference", all.reference().orElse(""), List.of()),
                yesOrNo("travels by air", "flies", all.flies()),
                yesOrNo("your notes go along", "roll-notes", draft.extras().contains(OrderedRoll.Extra.NOTES)),
                yesOrNo("the client goes along", "client", draft.extras().contains(OrderedRoll.Extra.CLIENT)));
    }

    private static OrderRow yesOrNo(String name, String word, boolean isSo) {
        return doing(name, isSo ? "yes" : "no", "order " + word + (isSo ? " no" : " yes"));
    }
}
