package takeup.drafting;

import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.Order;
import takeup.order.OrderCheck;
import takeup.order.OrderChecks;
import takeup.order.OrderInstructions;
import takeup.order.OrderNumbers;
import takeup.order.OrderedRoll;

/**
 * A lab order while it is made on the screen: what it is made from, and what was chosen so far. Nothing is written
 * here; every change makes another one.
 *
 * @param source what it is made from
 * @param leftOut the rolls that stay here this time
 * @param lab whom it goes to
 * @param instructions what is wished of the whole order, and who sends it
 * @param extras what goes along only where it is asked for
 * @param step how far it is
 * @param sheet where the sheet lies, once the order is written; "" before
 */
public record OrderDraft(
        OrderSource source,
        Set<String> leftOut,
        Lab lab,
        OrderInstructions instructions,
        Set<OrderedRoll.Extra> extras,
        Step step,
        String sheet) {
    /** How far an order is. */
    public enum Step {
        CHOOSING,
        SHEET,
        WRITTEN
    }

    public OrderDraft {
        leftOut = Set.copyOf(leftOut);
        extras = Set.copyOf(extras);
    }

    /** A new one: all rolls that wait, to the usual lab, with its usual wishes. */
    public static OrderDraft of(OrderSource source) {
        Lab lab = source.lab(source.usualLab()).orElse(source.labs().get(0));
        OrderInstructions usual =
                OrderInstructions.of(Optional.empty(), false, lab.usual()).from(source.sender());
        return new OrderDraft(source, Set.of(), lab, usual, Set.of(), Step.CHOOSING, "");
    }

    /** The same choices over what the folder holds now; a lab that is gone gives way to the usual one. */
    public OrderDraft over(OrderSource now) {
        return now.lab(lab.key())
                .map(it -> new OrderDraft(now, leftOut, it, instructions, extras, Step.CHOOSING, ""))
                .orElseGet(() -> of(now));
    }

    OrderDraft withLeftOut(Set<String> rolls) {
        return new OrderDraft(source, rolls, lab, instructions, extras, step, sheet);
    }

    /** To another lab, with its usual wishes, since sizes and words are its own. */
    OrderDraft to(Lab other) {
        OrderInstructions there = OrderInstructions.of(instructions.reference(), instructions.flies(), other.usual())
                .from(instructions.sender());
        return new OrderDraft(source, leftOut, other, there, extras, step, sheet);
    }

    OrderDraft with(OrderInstructions others) {
        return new OrderDraft(source, leftOut, lab, others, extras, step, sheet);
    }

    /** With something of the rolls that goes along, or without it. */
    OrderDraft sending(OrderedRoll.Extra extra, boolean isSent) {
        Set<OrderedRoll.Extra> all = EnumSet.noneOf(OrderedRoll.Extra.class);
        all.addAll(extras);
        if (isSent) {
            all.add(extra);
        } else {
            all.remove(extra);
        }
        return new OrderDraft(source, leftOut, lab, instructions, all, step, sheet);
    }

    /** At the sheet, to be looked at before it is written, or back at what is chosen. */
    public OrderDraft at(Step other) {
        return new OrderDraft(source, leftOut, lab, instructions, extras, other, sheet);
    }

    /** Written: the sheet that goes with the film lies there. */
    public OrderDraft written(String where) {
        return new OrderDraft(source, leftOut, lab, instructions, extras, Step.WRITTEN, where);
    }

    /** The rolls that go. */
    public List<ExposedRoll> rolls() {
        return source.rolls().stream()
                .filter(it -> !leftOut.contains(it.roll()))
                .toList();
    }

    Set<String> numbers() {
        Set<String> numbers = new TreeSet<>();
        source.rolls().forEach(it -> numbers.add(it.roll()));
        return numbers;
    }

    /** What to look at before it goes. */
    public List<OrderCheck> checks() {
        return OrderChecks.of(rolls(), source.loaded(), lab, source.earlier(), instructions);
    }

    /** What nothing goes before a yes to; empty where all is well. */
    public List<String> stops() {
        return checks().stream()
                .filter(OrderCheck::isBlocking)
                .map(OrderCheck::text)
                .toList();
    }

    /** The order as it is written now. */
    public Order order(OffsetDateTime at) {
        return Order.of(
                OrderNumbers.next(source.earlier().stream().map(Order::order).toList()),
                at,
                lab,
                instructions,
                rolls(),
                checks(),
                extras);
    }

    /** Whether the sender was changed here, and is to be kept for all orders to come. */
    public boolean isSenderChanged() {
        return !instructions.sender().equals(source.sender());
    }
}
