package takeup.ordering;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.json.Json;
import takeup.options.JsonOption;
import takeup.order.ExposedRoll;
import takeup.order.MustHaveMoment;
import takeup.order.Order;
import takeup.order.OrderNumbers;
import takeup.order.OrderedRoll;
import takeup.order.Split;

/** {@code takeup order split}: one order becomes two, so that no parcel holds all there is of a moment. */
@Command(
        name = "split",
        sortOptions = false,
        description = {
            "Parts the rolls of an order into two, to go in two parcels, best on two days.",
            "With moments, rolls that hold the same one travel apart; else odd and even rolls do, or the cameras."
        },
        footer = {"", "For example:", "  takeup order split 1 --by body"})
final class OrderSplitSubcommand implements Callable<Integer> {
    @ParentCommand
    OrderOptions order;

    @Parameters(paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
    String number;

    @Option(
            names = "--moment",
            paramLabel = "TIMES",
            description = "A moment that must not be lost: \"16:30-16:45 finish\", or with " + "its date in front.")
    List<String> moments = List.of();

    @Option(
            names = "--by",
            paramLabel = "WHAT",
            description = "number: odd and even rolls travel apart. body: the cameras do.")
    String by;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() throws IOException {
        if (!moments.isEmpty() && by != null) {
            throw new CommandFailed(2, "--moment or --by, one of them");
        }
        if (by != null && !List.of("number", "body").contains(by)) {
            throw new CommandFailed(2, by + " is nothing to part rolls by: number, body");
        }
        List<MustHaveMoment> mustNotBeLost =
                moments.stream().map(OrderSplitSubcommand::moment).toList();
        OrderDesk desk = order.desk();
        desk.order(number);
        return desk.alone(() -> part(desk, mustNotBeLost));
    }

    private static MustHaveMoment moment(String typed) {
        return MustHaveMoment.parse(typed)
                .orElseThrow(() -> new CommandFailed(2, typed + " is no moment, such as \"16:30-16:45 prize-giving\""));
    }

    private int part(OrderDesk desk, List<MustHaveMoment> mustNotBeLost) throws IOException {
        List<Order> all = desk.orders();
        Order whole = desk.order(number);
        refuseWhatCannotBeSplit(whole);
        List<ExposedRoll> rolls = whole.rollsAmong(desk.rolls(whole));
        for (OrderedRoll roll : whole.rolls()) {
            if (rolls.stream().noneMatch(it -> it.roll().equals(roll.roll()))) {
                throw new CommandFailed(1, roll.roll() + " cannot be read, so " + whole.order() + " cannot be split");
            }
        }
        String other = OrderNumbers.next(all.stream().map(Order::order).toList());
        refuseRollsThatAreOrderedTwice(whole, all);
        Split split = split(rolls, mustNotBeLost);
        if (split.first().isEmpty() || split.second().isEmpty()) {
            throw new CommandFailed(1, whole.order() + " cannot be split by that: all its rolls come from one camera");
        }
        Order second = whole.asParcel(other, new Order.Parcel(2, 2, List.of(whole.order())), split.second());
        Order first = whole.asParcel(whole.order(), new Order.Parcel(1, 2, List.of(other)), split.first());
        // The new one first: if the program dies in between, its rolls are in two orders, which takeup order list
        // reports; the other way round they would be in none.
        desk.folder().save(second);
        desk.folder().save(first);
        print(desk, List.of(first, second), split.remarks());
        return 0;
    }

    private static void refuseWhatCannotBeSplit(Order whole) {
        String why = "";
        if (whole.withdrawn()) {
            why = "was withdrawn";
        } else if (whole.isSent()) {
            why = "has gone to the lab";
        } else if (whole.parcel().isPresent()) {
            why = "is one of several parcels already";
        } else if (whole.rolls().size() < 2) {
            why = "holds one roll";
        }
        if (!why.isEmpty()) {
            throw new CommandFailed(1, whole.order() + " " + why + ", so it cannot be split");
        }
    }

    private static void refuseRollsThatAreOrderedTwice(Order whole, List<Order> all) {
        for (Order later : all) {
            if (!later.withdrawn()
                    && !later.order().equals(whole.order())
                    && later.rolls().stream().anyMatch(it -> whole.holds(it.roll()))) {
                throw new CommandFailed(
                        1, later.order() + " holds rolls of " + whole.order() + " too: withdraw one of them first");
            }
        }
    }

    private Split split(List<ExposedRoll> rolls, List<MustHaveMoment> mustNotBeLost) {
        if (!mustNotBeLost.isEmpty()) {
            return Split.byMoments(rolls, mustNotBeLost);
        }
        return "body".equals(by) ? Split.byBody(rolls) : Split.byNumber(rolls);
    }

    private void print(OrderDesk desk, List<Order> parcels, List<String> remarks) {
        Console console = desk.console();
        if (json.isAsked()) {
            console.json(
                    "parcels",
                    Json.object()
                            .and(
                                    "parcels",
                                    parcels.stream()
                                            .map(OrderSplitSubcommand::json)
                                            .toList())
                            .and("remarks", remarks));
            return;
        }
        for (Order parcel : parcels) {
            console.line(parcel.order() + ", parcel "
                    + parcel.parcel().orElseThrow().number() + " of 2: " + String.join(", ", rolls(parcel)));
        }
        remarks.forEach(it -> console.line("to know: " + it));
        console.line("print " + desk.folder().file(parcels.get(0), ".html") + " and "
                + desk.folder().file(parcels.get(1), ".html"));
    }

    private static List<String> rolls(Order parcel) {
        return parcel.rolls().stream().map(OrderedRoll::roll).toList();
    }

    private static Json.Obj json(Order parcel) {
        return Json.object().and("order", parcel.order()).and("rolls", rolls(parcel));
    }
}
