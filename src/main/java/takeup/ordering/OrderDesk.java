package takeup.ordering;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.console.InTerminal;
import takeup.disk.FolderInUse;
import takeup.disk.IoErrorText;
import takeup.files.LabFiles;
import takeup.files.OrderFolder;
import takeup.files.SenderFile;
import takeup.options.GlobalOptions;
import takeup.options.RollArgument;
import takeup.order.ExposedRoll;
import takeup.order.Order;
import takeup.order.OrderNumbers;
import takeup.order.OrderTracker;
import takeup.order.OrderedRoll;
import takeup.order.Sender;
import takeup.order.Stage;

/**
 * What all commands about orders share: where the orders lie, what the time is, what typed numbers mean.
 *
 * @param global the options of takeup itself
 * @param folder where orders and rolls lie
 * @param clock the time of day
 */
record OrderDesk(GlobalOptions global, OrderFolder folder, Clock clock) {
    Console console() {
        return global.console();
    }

    LabFiles labs() {
        return LabFiles.of(global.folder());
    }

    /** Who sends the film, whatever folder the rolls lie in. */
    SenderFile sender() {
        return new SenderFile(global.folder());
    }

    /**
     * Asks a person for the lines of the sender and keeps them, so that it is asked once; where nobody sits at a
     * terminal nothing is asked and nothing kept.
     */
    Sender askSender() throws IOException {
        if (!InTerminal.isAnswered()) {
            return Sender.NOBODY;
        }
        console()
                .line("Who sends the film? It is printed on sheet and labels, and asked once. Enter leaves a line "
                        + "empty.");
        try {
            Sender sender = new Sender(
                    asked("Name?"),
                    asked("Account at the lab?"),
                    asked("Telephone?"),
                    asked("E-mail?"),
                    asked("Return address, on one line?"));
            sender().save(sender);
            return sender;
        } catch (IllegalArgumentException e) {
            throw new CommandFailed(2, e.getMessage());
        }
    }

    private String asked(String question) {
        return InTerminal.answer(console()::line, question).orElse("");
    }

    /** Something to do while nobody else writes in the folder. */
    interface Work {
        int run() throws IOException;
    }

    /** Does it while nobody else writes in the folder. */
    int alone(Work work) throws IOException {
        Closeable taken;
        try {
            taken = folder.take();
        } catch (FolderInUse e) {
            throw new CommandFailed(
                    1, e.getMessage() + ". Orders can be made on its screen: press F7 there, or leave it first");
        } catch (IOException e) {
            throw new CommandFailed(1, folder.base() + " cannot be used: " + IoErrorText.words(e));
        }
        try (taken) {
            return work.run();
        }
    }

    /** All orders; nothing is done while one cannot be read, for its rolls would be ordered twice. */
    List<Order> orders() {
        OrderFolder.Found<Order> found = folder.allOrders();
        if (!found.problems().isEmpty()) {
            found.problems().forEach(console()::error);
            throw new CommandFailed(
                    1,
                    "nothing was done: an order cannot be read, and its rolls could be ordered twice; put it "
                            + "right, or move it out of "
                            + folder.orders());
        }
        return found.all();
    }

    /** The order that was typed. */
    Order order(String typed) {
        String number = OrderNumbers.parse(typed)
                .orElseThrow(() -> new CommandFailed(2, typed + " is no order number: ORD-001, or 1"));
        OrderFolder.Found<Order> found = folder.allOrders();
        return found.all().stream()
                .filter(it -> it.order().equals(number))
                .findFirst()
                .orElseThrow(() -> new CommandFailed(
                        1,
                        found.problems().stream()
                                .filter(it -> it.contains(number))
                                .findFirst()
                                .orElse("there is no order " + number + " in " + folder.orders())));
    }

    /** The order that was typed, unless it was withdrawn. */
    Order standing(String typed) {
        Order order = order(typed);
        if (order.withdrawn()) {
            throw new CommandFailed(1, order.order() + " was withdrawn");
        }
        return order;
    }

    /** The rolls of an order as they are now. */
    List<ExposedRoll> rolls(Order order) throws IOException {
        return folder.rolls(order::holds).all();
    }

    /** The numbers that were typed, each once. */
    List<String> numbers(List<RollArgument> typed) {
        return typed.stream().map(it -> it.id(global).toString()).distinct().toList();
    }

    /** The rolls of an order that were typed; what it does not hold is refused. */
    List<String> rollsOf(Order order, List<RollArgument> typed) {
        List<String> rolls = numbers(typed);
        rolls.stream().filter(it -> !order.holds(it)).findFirst().ifPresent(it -> {
            throw new CommandFailed(1, it + " is not in " + order.order());
        });
        return rolls;
    }

    /** Where the rolls of an order are: {@code at the lab since 2026-09-14}, or how many are where. */
    static String where(Order order) {
        if (order.withdrawn()) {
            return "withdrawn";
        }
        TreeSet<String> all = new TreeSet<>();
        List<String> words = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            long many = order.rolls().stream()
                    .filter(it -> order.stage(it.roll()) == stage)
                    .count();
            if (many > 0) {
                words.add(String.format(Locale.ROOT, "%d %s", many, stage.where()));
            }
            order.rolls().stream()
                    .filter(it -> order.stage(it.roll()) == stage)
                    .forEach(it -> all.add(stage.where()
                            + order.last(it.roll())
                                    .map(step -> " since " + step.on())
                                    .orElse("")));
        }
        return all.size() == 1 ? all.first() : String.join(", ", words);
    }

    /** What is due, and which rolls of orders were corrected since. */
    List<String> due(List<Order> orders) throws IOException {
        List<String> due =
                new ArrayList<>(new OrderTracker(orders).due(clock.now().toLocalDate()));
        Map<String, List<String>> corrected =
                corrected(orders.stream().filter(it -> !isOver(it)).toList());
        for (Order order : orders) {
            corrected.getOrDefault(order.order(), List.of()).forEach(it -> due.add(order.order() + ": " + it));
        }
        return due;
    }

    private static boolean isOver(Order order) {
        return order.withdrawn()
                || order.rolls().stream().allMatch(it -> order.stage(it.roll()).compareTo(Stage.SCANS) >= 0);
    }

    /** A roll as an order knows it. */
    private record Ordered(String order, OrderedRoll roll) {}

    /** What was corrected, by the numbers of the orders. Each roll is read once, however many orders there are. */
    private Map<String, List<String>> corrected(List<Order> orders) throws IOException {
        Map<String, List<Ordered>> byRoll = new HashMap<>();
        for (Order order : orders) {
            for (OrderedRoll roll : order.rolls()) {
                byRoll.computeIfAbsent(roll.roll(), it -> new ArrayList<>()).add(new Ordered(order.order(), roll));
            }
        }
        Map<String, List<String>> said = new HashMap<>();
        OrderFolder.Found<Map<String, String>> found = folder.rolls(byRoll::containsKey, roll -> {
            Map<String, String> byOrder = new HashMap<>();
            for (Ordered it : byRoll.get(roll.roll())) {
                OrderTracker.corrected(it.roll, roll).ifPresent(words -> byOrder.put(it.order, words));
            }
            return Optional.of(byOrder).filter(it -> !it.isEmpty());
        });
        for (Map<String, String> roll : found.all()) {
            roll.forEach((order, words) ->
                    said.computeIfAbsent(order, it -> new ArrayList<>()).add(words));
        }
        return said;
    }
}
