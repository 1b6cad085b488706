package takeup.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import takeup.console.CommandFailed;
import takeup.console.InTerminal;
import takeup.files.LabFiles;
import takeup.files.OrderFolder;
import takeup.files.Version;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.Order;
import takeup.order.OrderCheck;
import takeup.order.OrderChecks;
import takeup.order.Wish;
import takeup.order.Wishes;
import takeup.text.English;

/** {@code takeup order new}: collects finished rolls, says what is to be known of them, and writes the order. */
final class OrderNew {
    private final OrderDesk desk;
    private final OrderSubcommands.New typed;

    OrderNew(OrderDesk desk, OrderSubcommands.New typed) {
        this.desk = desk;
        this.typed = typed;
    }

    int run() throws IOException {
        if (!Files.isDirectory(desk.folder().base())) {
            throw new CommandFailed(
                    1, "there is no roll yet in " + desk.folder().base());
        }
        List<String> asked = OrderDesk.typedRolls(typed.rolls);
        List<String> without = OrderDesk.typedRolls(typed.without);
        // Looked at before the folder is taken: where there is nothing to order, nothing is made in it.
        Chosen first = choose(desk.orders(), asked, without);
        Lab lab = lab(desk.orders());
        Wishes wishes = wishes(lab);
        return first.rolls.isEmpty() ? nothing() : desk.alone(() -> make(asked, without, lab, wishes));
    }

    private int nothing() {
        throw new CommandFailed(
                1, "no finished roll waits for an order in " + desk.folder().base());
    }

    /** The rolls of the new order, those that are left in cameras, and what could not be read. */
    private record Chosen(List<ExposedRoll> rolls, List<ExposedRoll> loaded, List<String> problems) {}

    private Chosen choose(List<Order> earlier, List<String> asked, List<String> without) throws IOException {
        Predicate<String> isFree = number -> earlier.stream().noneMatch(it -> !it.withdrawn() && it.holds(number));
        Predicate<String> wanted = asked.isEmpty()
                ? isFree.and(it -> !without.contains(it))
                : it -> asked.contains(it) && !without.contains(it);
        OrderFolder.Found<ExposedRoll> found = desk.folder().rolls(wanted);
        for (String number : asked) {
            ExposedRoll roll = found.all().stream()
                    .filter(it -> it.roll().equals(number))
                    .findFirst()
                    .orElse(null);
            if (roll == null && found.problems().isEmpty() && !without.contains(number)) {
                throw new CommandFailed(
                        1, "there is no roll " + number + " in " + desk.folder().base());
            }
            if (roll != null && roll.state().equals("withdrawn")) {
                throw new CommandFailed(1, number + " was withdrawn: there is no such film");
            }
        }
        List<ExposedRoll> rolls = found.all().stream()
                .filter(it -> asked.isEmpty() ? it.isFinished() : !it.state().equals("withdrawn"))
                .toList();
        List<ExposedRoll> loaded = asked.isEmpty()
                ? found.all().stream().filter(ExposedRoll::isLoaded).toList()
                : List.of();
        return new Chosen(rolls, loaded, found.problems());
    }

    private Lab lab(List<Order> earlier) {
        LabFiles labs = desk.labs();
        Optional<String> last = earlier.isEmpty()
                ? Optional.empty()
                : Optional.of(earlier.get(earlier.size() - 1).lab().key()).filter(labs.keys()::contains);
        String key = typed.lab != null ? typed.lab : last.orElseGet(labs::usual);
        Lab.Read read = labs.lab(key);
        if (read.lab().isEmpty()) {
            read.problems().forEach(desk.out()::error);
            throw new CommandFailed(typed.lab == null ? 1 : 2, "the order needs a lab: takeup order labs lists them");
        }
        read.problems().forEach(desk.out()::error);
        return read.lab().get();
    }

    private Wishes wishes(Lab lab) {
        Wishes wishes = typed.test ? lab.usual().with(Wish.DENSITY, "no density correction") : lab.usual();
        for (Map.Entry<Wish, String> said : typed.wishes().entrySet()) {
            lab.whyNot(said.getKey(), said.getValue()).ifPresent(it -> {
                throw new CommandFailed(2, it);
            });
            try {
                wishes = wishes.with(said.getKey(), said.getValue());
            } catch (IllegalArgumentException e) {
                throw new CommandFailed(2, e.getMessage());
            }
        }
        return wishes;
    }

    private int make(List<String> asked, List<String> without, Lab lab, Wishes wishes) throws IOException {
        List<Order> earlier = desk.orders();
        Chosen chosen = choose(earlier, asked, without);
        if (chosen.rolls.isEmpty()) {
            return nothing();
        }
        Optional<String> reference = Optional.ofNullable(typed.reference).filter(it -> !it.isBlank());
        List<OrderCheck> checks =
                OrderChecks.of(chosen.rolls, chosen.loaded, lab, earlier, reference, wishes, typed.flies);
        List<String> stops = new ArrayList<>(chosen.problems);
        checks.stream().filter(OrderCheck::isBlocking).forEach(it -> stops.add(it.text()));
        (typed.yes ? chosen.problems : stops).forEach(desk.out()::error);
        if (!stops.isEmpty()
                && !typed.yes
                && !InTerminal.saysYes(desk.out(), "Order it all the same? Type yes, or Enter for no.")) {
            desk.out().error("nothing was ordered: put it right, leave a roll out with --without ROLL, or say --yes");
            return 1;
        }
        Order order = Order.of(
                Order.next(earlier.stream().map(Order::order).toList()),
                desk.clock().now(),
                lab,
                reference,
                typed.flies,
                wishes,
                chosen.rolls,
                checks,
                typed.withNotes,
                typed.withClient);
        desk.folder().save(order);
        if (typed.json) {
            desk.out().raw(order.json(Version.number()));
        } else {
            say(order, checks);
        }
        return 0;
    }

    private void say(Order order, List<OrderCheck> checks) {
        desk.out().line(order.order() + " for " + order.lab().name() + ", " + order.summary());
        chosenLines(order).forEach(desk.out()::line);
        // What stops was read before the question; after --yes it is to be known all the same.
        checks.stream()
                .filter(it -> typed.yes || !it.isBlocking())
                .forEach(it -> desk.out().line("to know: " + it.text()));
        desk.out()
                .line("print " + desk.folder().file(order, ".html")
                        + ": the sheet that goes with the film, and labels");
        desk.out().line("once it is on its way: takeup order mark " + order.order() + " sent");
    }

    private static List<String> chosenLines(Order order) {
        return order.rolls().stream()
                .map(it -> it.roll() + "  " + it.filmSize() + " " + it.frameSize() + "  " + it.stock() + "  "
                        + it.words() + "  " + English.count(it.framesExpected(), "frame"))
                .toList();
    }
}
