package takeup.drafting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.OrderInstructions;
import takeup.order.OrderedRoll;
import takeup.order.Sender;
import takeup.order.Wish;
import takeup.prompt.CommandRejected;
import takeup.roll.RollId;
import takeup.text.Nearest;

/** What stands behind {@code order} on the prompt, {@code scan-size large}, done to an order that is being made. */
public final class OrderWords {
    /** The lines of the sender, each a word of its own. */
    static final List<String> SENDER = List.of("name", "account", "telephone", "email", "address");

    private final OrderDraft draft;

    private OrderWords(OrderDraft draft) {
        this.draft = draft;
    }

    /** The order after some words; words that mean nothing here are rejected. */
    public static OrderDraft apply(OrderDraft draft, String typed) {
        String word = typed.split(" ", 2)[0].toLowerCase(Locale.ROOT);
        String rest = typed.substring(word.length()).strip();
        if (draft.step() == OrderDraft.Step.WRITTEN) {
            throw new CommandRejected("this order is written: Esc leaves it, and F7 begins another one");
        }
        if (word.equals("sheet")) {
            return new OrderWords(draft).sheet();
        }
        OrderDraft chosen = draft.at(OrderDraft.Step.CHOOSING);
        return word.isEmpty() ? chosen : new OrderWords(chosen).changed(word, rest);
    }

    private OrderDraft sheet() {
        if (draft.rolls().isEmpty()) {
            throw new CommandRejected("no roll is in this order: Enter on a roll takes it in");
        }
        return draft.at(OrderDraft.Step.SHEET);
    }

    private OrderDraft changed(String word, String rest) {
        return switch (word) {
            case "with", "without" -> rolls(word, rest);
            case "lab" -> lab(rest);
            case "flies" -> with(draft.instructions().reference(), isYes(word, rest));
            case "roll-notes" -> draft.sending(OrderedRoll.Extra.NOTES, isYes(word, rest));
            case "client" -> draft.sending(OrderedRoll.Extra.CLIENT, isYes(word, rest));
            case "no" -> said(rest.toLowerCase(Locale.ROOT), "");
            default -> said(word, given(word, rest));
        };
    }

    private static String given(String word, String rest) {
        if (rest.isEmpty()) {
            throw new CommandRejected("order " + word + " and its words; order no " + word + " takes it out");
        }
        return rest;
    }

    private static boolean isYes(String word, String rest) {
        return switch (rest.toLowerCase(Locale.ROOT)) {
            case "yes", "" -> true;
            case "no" -> false;
            default -> throw new CommandRejected("order " + word + " yes, or no");
        };
    }

    private OrderDraft rolls(String word, String rest) {
        TreeSet<String> out = new TreeSet<>(draft.leftOut());
        for (String typed : given(word, rest).split("[ ,]+")) {
            String number = draft.source().rolls().stream()
                    .filter(it -> it.isCalled(typed))
                    .map(ExposedRoll::roll)
                    .findFirst()
                    .or(() -> RollId.parse(typed).map(RollId::toString))
                    .orElse(typed);
            if (!draft.numbers().contains(number)) {
                throw new CommandRejected(
                        typed + " does not wait for an order; those that do: " + String.join(", ", draft.numbers()));
            }
            if (word.equals("with")) {
                out.remove(number);
            } else {
                out.add(number);
            }
        }
        return draft.withLeftOut(out);
    }

    private OrderDraft lab(String key) {
        Lab lab = draft.source()
                .lab(key.toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new CommandRejected(key + " is not a lab here. Known: "
                        + String.join(
                                ", ",
                                draft.source().labs().stream().map(Lab::key).toList())));
        return draft.to(lab);
    }

    private OrderDraft with(Optional<String> reference, boolean flies) {
        OrderInstructions old = draft.instructions();
        return draft.with(OrderInstructions.of(reference, flies, old.wishes()).from(old.sender()));
    }

    /** A line of the sender, the reference, or a wish; "" takes it out. */
    private OrderDraft said(String word, String text) {
        if (SENDER.contains(word)) {
            return sender(word, text);
        }
        OrderInstructions old = draft.instructions();
        if (word.equals("reference")) {
            return with(Optional.of(text), old.flies());
        }
        Wish wish = Wish.named("--" + word).orElseThrow(() -> new CommandRejected(unknown(word)));
        draft.lab().whyNot(wish, text).ifPresent(it -> {
            throw new CommandRejected(it);
        });
        try {
            return draft.with(OrderInstructions.of(
                            old.reference(), old.flies(), old.wishes().with(wish, text))
                    .from(old.sender()));
        } catch (IllegalArgumentException e) {
            throw new CommandRejected(e.getMessage());
        }
    }

    private static String unknown(String word) {
        List<String> known = new ArrayList<>(
                List.of("with", "without", "lab", "sheet", "write", "reference", "flies", "roll-notes", "client"));
        known.addAll(SENDER);
        Arrays.stream(Wish.values()).map(it -> it.option().substring(2)).forEach(known::add);
        return "order " + word + " means nothing here" + Nearest.question(word, known);
    }

    private OrderDraft sender(String word, String text) {
        Sender old = draft.instructions().sender().orElse(Sender.NOBODY);
        try {
            Sender now = new Sender(
                    word.equals("name") ? text : old.name(),
                    word.equals("account") ? text : old.account(),
                    word.equals("telephone") ? text : old.telephone(),
                    word.equals("email") ? text : old.email(),
                    word.equals("address") ? text : old.address());
            return draft.with(draft.instructions().from(Optional.of(now)));
        } catch (IllegalArgumentException e) {
            throw new CommandRejected(e.getMessage());
        }
    }
}
