package takeup.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import takeup.console.CommandFailed;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.order.ExposedRoll;
import takeup.order.MustHaveMoment;
import takeup.order.Order;
import takeup.order.OrderHtml;
import takeup.order.Split;

/** {@code takeup order split}: one order becomes two, so that no parcel holds all there is of a moment. */
final class OrderSplit {
    private final OrderDesk desk;
    private final OrderSubcommands.Parted typed;

    OrderSplit(OrderDesk desk, OrderSubcommands.Parted typed) {
        this.desk = desk;
        this.typed = typed;
    }

    int run() throws IOException {
        boolean byMoments = typed.moments != null;
        if (byMoments && typed.by != null) {
            throw new CommandFailed(2, "--moment or --by, one of them");
        }
        if (typed.by != null && !List.of("number", "body").contains(typed.by)) {
            throw new CommandFailed(2, typed.by + " is nothing to part rolls by: number, body");
        }
        List<MustHaveMoment> moments = new ArrayList<>();
        for (String moment : byMoments ? typed.moments : List.<String>of()) {
            moments.add(MustHaveMoment.parse(moment)
                    .orElseThrow(() ->
                            new CommandFailed(2, moment + " is no moment, such as \"16:30-16:45 prize-giving\"")));
        }
        desk.order(typed.number);
        return desk.alone(() -> part(moments));
    }

    private int part(List<MustHaveMoment> moments) throws IOException {
        List<Order> all = desk.orders();
        Order order = desk.order(typed.number);
        String why = order.withdrawn()
                ? "was withdrawn"
                : order.isSent()
                        ? "has gone to the lab"
                        : order.parcel().isPresent()
                                ? "is one of several parcels already"
                                : order.rolls().size() < 2 ? "holds one roll" : "";
        if (!why.isEmpty()) {
            throw new CommandFailed(1, order.order() + " " + why + ", so it cannot be split");
        }
        List<ExposedRoll> rolls = OrderHtml.of(order, desk.rolls(order));
        order.rolls().stream()
                .filter(it -> rolls.stream().noneMatch(roll -> roll.roll().equals(it.roll())))
                .findFirst()
                .ifPresent(it -> {
                    throw new CommandFailed(1, it.roll() + " cannot be read, so " + order.order() + " cannot be split");
                });
        String other = Order.next(all.stream().map(Order::order).toList());
        for (Order later : all) {
            if (!later.withdrawn()
                    && later != order
                    && later.rolls().stream().anyMatch(it -> order.holds(it.roll()))
                    && !later.order().equals(order.order())) {
                throw new CommandFailed(
                        1, later.order() + " holds rolls of " + order.order() + " too: withdraw one of them first");
            }
        }
        Split split = !moments.isEmpty()
                ? Split.byMoments(rolls, moments)
                : "body".equals(typed.by) ? Split.byBody(rolls) : Split.byNumber(rolls);
        if (split.first().isEmpty() || split.second().isEmpty()) {
            throw new CommandFailed(1, order.order() + " cannot be split by that: all its rolls come from one camera");
        }
        Order second = order.asParcel(other, new Order.Parcel(2, 2, List.of(order.order())), split.second());
        Order first = order.asParcel(order.order(), new Order.Parcel(1, 2, List.of(other)), split.first());
        // The new one first: cut short here, its rolls are in two orders, which is told; the other way round they would
        // be in none.
        desk.folder().save(second);
        desk.folder().save(first);
        say(first, second, split.remarks());
        return 0;
    }

    private void say(Order first, Order second, List<String> remarks) {
        if (typed.json) {
            desk.out()
                    .raw(JsonText.pretty(Json.object()
                            .and("parcels", List.of(json(first), json(second)))
                            .and("remarks", remarks)));
            return;
        }
        for (Order part : List.of(first, second)) {
            desk.out()
                    .line(part.order() + ", parcel "
                            + part.parcel().orElseThrow().number() + " of 2: "
                            + String.join(
                                    ", ",
                                    part.rolls().stream().map(it -> it.roll()).toList()));
        }
        remarks.forEach(it -> desk.out().line("to know: " + it));
        desk.out()
                .line("print " + desk.folder().file(first, ".html") + " and "
                        + desk.folder().file(second, ".html"));
    }

    private static Json.Obj json(Order order) {
        return Json.object()
                .and("order", order.order())
                .and("rolls", order.rolls().stream().map(it -> it.roll()).toList());
    }
}
