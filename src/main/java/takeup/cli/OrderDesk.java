package takeup.cli;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.files.LabFiles;
import takeup.files.OrderFolder;
import takeup.journal.Archive;
import takeup.order.ExposedRoll;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.order.Stage;
import takeup.roll.RollId;

/**
 * What all commands about orders share: where the orders lie, what the time is, how numbers are typed.
 *
 * @param commands what all commands share
 * @param folder where orders and rolls lie
 * @param clock the time of day
 */
record OrderDesk(Subcommands commands, OrderFolder folder, Clock clock) {
    static OrderDesk of(Subcommands commands, String from, String time) {
        Clock clock;
        try {
            clock = Clock.of(Optional.ofNullable(time).map(Clock::parse));
        } catch (IllegalArgumentException e) {
            throw new CommandFailed(2, e.getMessage());
        }
        if (from == null) {
            return new OrderDesk(commands, new OrderFolder(commands.folder(), false), clock);
        }
        Path base = Path.of(from).toAbsolutePath().normalize();
        if (from.isBlank() || !Files.isDirectory(base)) {
            throw new CommandFailed(
                    from.isBlank() ? 2 : 1, from.isBlank() ? "--from names no folder" : base + " is no folder");
        }
        return new OrderDesk(commands, new OrderFolder(base, true), clock);
    }

    Console out() {
        return commands.out();
    }

    LabFiles labs() {
        return LabFiles.of(commands.folder());
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
            found.problems().forEach(out()::error);
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
        String number = Order.parse(typed)
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

    /** The rolls of an order as they are now. */
    List<ExposedRoll> rolls(Order order) throws IOException {
        return folder.rolls(order::holds).all();
    }

    /** A roll number as it is typed: R0007, r7 or 7. */
    static String roll(String typed) {
        return RollId.parse(typed)
                .or(() -> RollId.parse(Archive.FIRST_WRITER + typed))
                .map(RollId::toString)
                .orElseThrow(() -> new CommandFailed(2, typed + " is no roll number: R0007, r7, or 7"));
    }

    static List<String> typedRolls(List<String> typed) {
        return typed == null
                ? List.of()
                : typed.stream().map(OrderDesk::roll).distinct().toList();
    }

    /** The rolls of an order that were typed; what it does not hold is refused. */
    static List<String> rollsOf(Order order, List<String> typed) {
        List<String> rolls = typedRolls(typed);
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
        for (Order order : orders) {
            boolean isOver = order.withdrawn()
                    || order.rolls().stream()
                            .allMatch(it -> order.stage(it.roll()).compareTo(Stage.SCANS) >= 0);
            if (!isOver) {
                OrderTracker.corrected(order, rolls(order)).forEach(it -> due.add(order.order() + ": " + it));
            }
        }
        return due;
    }
}
