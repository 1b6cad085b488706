package takeup.ordering;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.InTerminal;
import takeup.files.LabFiles;
import takeup.files.OrderFolder;
import takeup.files.OrderSources;
import takeup.files.Version;
import takeup.options.RollArgument;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.LeftInCamera;
import takeup.order.Order;
import takeup.order.OrderCheck;
import takeup.order.OrderChecks;
import takeup.order.OrderInstructions;
import takeup.order.OrderNumbers;
import takeup.order.OrderTracker;
import takeup.order.OrderedRoll;
import takeup.order.Sender;
import takeup.order.Wishes;
import takeup.text.English;

/** {@code takeup order new}: collects finished rolls, says what to watch out for, and writes the order. */
@Command(
        name = "new",
        sortOptions = false,
        description = {
            "Collects finished rolls into an order, all that are in none if no ROLL is named, and writes "
                    + "its JSON and a page to print.",
            "It is looked at first. A roll without frames, a roll number that is there twice, a process "
                    + "that the film does not belong in and an index above the box speed without a push "
                    + "stop it until yes."
        },
        footer = {
            "",
            "A wish of the lab's profile is taken back with no words: --border \"\".",
            "",
            "For example:",
            "  takeup order new --lab lab",
            "  takeup order new 3 --lab lab --border black"
        })
final class OrderNewSubcommand implements Callable<Integer> {
    @ParentCommand
    OrderOptions order;

    @Parameters(paramLabel = "ROLL", arity = "0..*", description = "Rolls: R0007, r7, or 7.")
    List<RollArgument> rolls = List.of();

    @Option(names = "--without", paramLabel = "ROLL", description = "Leaves a roll out.")
    List<RollArgument> without = List.of();

    @Option(
            names = "--lab",
            paramLabel = "KEY",
            description = "The lab; else that of the last order, or your only one.")
    String lab;

    @Option(names = "--reference", paramLabel = "WORDS", description = "Your own words for the order.")
    String reference;

    @Mixin
    WishOptions wishes;

    @Option(
            names = "--flies",
            description = "The film travels by air: it is said on the sheet, and what to look out for here.")
    boolean flies;

    @Option(names = "--with-notes", description = "Your notes on the rolls go with the order; else they stay here.")
    boolean withNotes;

    @Option(names = "--with-client", description = "The client goes with the order; else it stays here.")
    boolean withClient;

    @Option(names = "--yes", description = "Orders all the same what would stop.")
    boolean yes;

    @Option(names = "--json", description = "The answer is the order as JSON (takeup schema order).")
    boolean json;

    @Override
    public Integer call() throws IOException {
        OrderDesk desk = order.desk();
        if (!Files.isDirectory(desk.folder().base())) {
            throw new CommandFailed(
                    1, "there is no roll yet in " + desk.folder().base());
        }
        // Looked at before the folder is taken: where there is nothing to order, nothing is made in it.
        Chosen first = choose(desk, desk.orders());
        Lab chosenLab = lab(desk, desk.orders());
        Wishes chosenWishes = wishes.with(chosenLab);
        if (first.rolls.isEmpty()) {
            return nothing(desk);
        }
        Optional<Sender> sender = sender(desk);
        return desk.alone(() -> make(desk, chosenLab, chosenWishes, sender));
    }

    private static int nothing(OrderDesk desk) {
        throw new CommandFailed(
                1, "no finished roll waits for an order in " + desk.folder().base());
    }

    /** The rolls of the new order, those that are left in cameras, and what could not be read. */
    private record Chosen(List<ExposedRoll> rolls, List<LeftInCamera> loaded, List<String> problems) {}

    private Chosen choose(OrderDesk desk, List<Order> earlier) throws IOException {
        List<String> asked = desk.numbers(rolls);
        List<String> leftOut = desk.numbers(without);
        OrderTracker where = new OrderTracker(earlier);
        Predicate<String> isFree = number -> where.order(number).isEmpty();
        Predicate<String> wanted = asked.isEmpty()
                ? isFree.and(it -> !leftOut.contains(it))
                : it -> asked.contains(it) && !leftOut.contains(it);
        OrderFolder.Found<ExposedRoll> found = desk.folder().rolls(wanted);
        for (String number : asked) {
            ExposedRoll roll = found.all().stream()
                    .filter(it -> it.roll().equals(number))
                    .findFirst()
                    .orElse(null);
            if (roll == null && !leftOut.contains(number)) {
                found.problems().forEach(desk.console()::error);
                throw new CommandFailed(
                        1,
                        "there is no roll " + number
                                + (found.problems().isEmpty() ? "" : " that can be read")
                                + " in "
                                + desk.folder().base());
            }
            if (roll != null && roll.state().equals("withdrawn")) {
                throw new CommandFailed(1, number + " was withdrawn: there is no such film");
            }
        }
        List<ExposedRoll> chosen = found.all().stream()
                .filter(it -> asked.isEmpty() ? it.isFinished() : !it.state().equals("withdrawn"))
                .toList();
        List<ExposedRoll> loaded = asked.isEmpty()
                ? found.all().stream().filter(ExposedRoll::isLoaded).toList()
                : List.of();
        return new Chosen(chosen, OrderSources.leftInCamera(desk.folder(), loaded), found.problems());
    }

    private Lab lab(OrderDesk desk, List<Order> earlier) {
        LabFiles labs = desk.labs();
        String key = lab != null ? lab : OrderSources.usualLab(labs, earlier);
        Lab.Read read = labs.lab(key);
        if (read.lab().isEmpty()) {
            read.problems().forEach(desk.console()::error);
            throw new CommandFailed(lab == null ? 1 : 2, "the order needs a lab: takeup order labs lists them");
        }
        read.problems().forEach(desk.console()::error);
        return read.lab().get();
    }

    private int make(OrderDesk desk, Lab chosenLab, Wishes chosenWishes, Optional<Sender> sender) throws IOException {
        List<Order> earlier = desk.orders();
        Chosen chosen = choose(desk, earlier);
        if (chosen.rolls.isEmpty()) {
            return nothing(desk);
        }
        OrderInstructions instructions = OrderInstructions.of(Optional.ofNullable(reference), flies, chosenWishes)
                .from(sender);
        List<OrderCheck> checks = OrderChecks.of(chosen.rolls, chosen.loaded, chosenLab, earlier, instructions);
        // A journal that cannot be read is told of, and keeps no other roll from the lab; a folder of files may be
        // half copied, so there it stops.
        List<String> told = new ArrayList<>();
        List<String> stops = new ArrayList<>();
        (desk.folder().isLoose() && !yes ? stops : told).addAll(chosen.problems);
        checks.stream().filter(it -> it.isBlocking() && !yes).forEach(it -> stops.add(it.text()));
        told.addAll(stops);
        told.forEach(desk.console()::error);
        if (!stops.isEmpty()
                && !InTerminal.saysYes(desk.console(), "Order it all the same? Type yes, or Enter for no.")) {
            desk.console()
                    .error("nothing was ordered: put it right, leave a roll out with --without ROLL, or say --yes");
            return 1;
        }
        Order made = Order.of(
                OrderNumbers.next(earlier.stream().map(Order::order).toList()),
                desk.clock().now(),
                chosenLab,
                instructions,
                chosen.rolls,
                checks,
                extras());
        desk.folder().save(made);
        if (json) {
            desk.console().raw(made.json(Version.number()));
        } else {
            say(desk, made, checks);
        }
        return 0;
    }

    /** Who sends it: asked the first time where somebody can answer. */
    private Optional<Sender> sender(OrderDesk desk) throws IOException {
        Optional<Sender> known = desk.sender().read();
        return known.isPresent() || json ? known : Optional.of(desk.askSender());
    }

    private void say(OrderDesk desk, Order made, List<OrderCheck> checks) {
        desk.console().line(made.order() + " for " + made.lab().name() + ", " + made.summary());
        chosenLines(made).forEach(desk.console()::line);
        // What stops was read before the question; after --yes it is said all the same.
        checks.stream()
                .filter(it -> yes || !it.isBlocking())
                .forEach(it -> desk.console().line("to know: " + it.text()));
        desk.console()
                .line("print " + desk.folder().file(made, ".html") + ": the sheet that goes with the film, and labels");
        if (made.instructions().sender().isEmpty()) {
            desk.console()
                    .line("nobody is named as the sender: takeup order sender --name NAME, once for all orders "
                            + "to come");
        }
        desk.console().line("once it is on its way: takeup order mark " + made.order() + " sent");
    }

    private Set<OrderedRoll.Extra> extras() {
        Set<OrderedRoll.Extra> extras = EnumSet.noneOf(OrderedRoll.Extra.class);
        if (withNotes) {
            extras.add(OrderedRoll.Extra.NOTES);
        }
        if (withClient) {
            extras.add(OrderedRoll.Extra.CLIENT);
        }
        return extras;
    }

    private static List<String> chosenLines(Order order) {
        return order.rolls().stream()
                .map(it -> it.roll() + "  " + it.film().filmSize() + " "
                        + it.film().frameSize() + "  "
                        + it.film().stock() + "  "
                        + it.words() + "  " + English.count(it.framesExpected(), "frame"))
                .toList();
    }
}
