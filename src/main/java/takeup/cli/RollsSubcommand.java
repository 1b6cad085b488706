package takeup.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.AllRolls;
import takeup.files.OrderFolder;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.text.IsoTime;
import takeup.text.Padding;

/** {@code takeup rolls}: all rolls, where they are, and what is due. Only reads. */
@Command(
        name = "rolls",
        description = "Lists all rolls in the order of loading.",
        footer = {"", "For example:", "  takeup rolls", "  takeup rolls --json"})
final class RollsSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() throws IOException {
        Console console = global.console();
        AllRolls<RollSummary> all = AllRolls.summaries(global.index());
        List<RollSummary> rolls = all.rolls();
        List<String> problems = new ArrayList<>(all.problems());
        OrderFolder.Found<Order> orders = new OrderFolder(global.folder(), false).allOrders();
        problems.addAll(orders.problems());
        problems.forEach(console::error);
        OrderTracker where = new OrderTracker(orders.all());
        if (json.isAsked()) {
            console.json(
                    "rolls",
                    Json.object()
                            .and(
                                    "rolls",
                                    rolls.stream().map(it -> json(it, where)).toList()));
        } else if (rolls.isEmpty()) {
            console.line("no roll yet in " + global.folder());
        } else {
            List<String> lines = new ArrayList<>();
            rolls.forEach(it -> lines.add(line(it, where)));
            lines.addAll(due(rolls, where));
            console.lines(lines);
        }
        return problems.isEmpty() ? 0 : 1;
    }

    /** What is due of the orders, and which exposed rolls have waited too long. */
    private static List<String> due(List<RollSummary> rolls, OrderTracker where) {
        LocalDate today = Clock.wall().toLocalDate();
        Map<String, LocalDate> since = new LinkedHashMap<>();
        rolls.stream()
                .filter(it -> it.state() == Roll.State.FINISHED)
                .forEach(it -> it.finishedAt().ifPresent(at -> since.put(it.id().toString(), at.toLocalDate())));
        List<String> due = new ArrayList<>(where.due(today));
        where.waiting(since, today).ifPresent(due::add);
        return due;
    }

    private static String where(RollSummary roll, OrderTracker orders) {
        return switch (roll.state()) {
            case FINISHED -> orders.stage(roll.id().toString());
            case WITHDRAWN -> "withdrawn";
            case REWOUND -> "rewound";
            default -> "in camera";
        };
    }

    private static Json.Obj json(RollSummary roll, OrderTracker orders) {
        return Json.object()
                .and("roll", roll.id())
                .and("state", roll.state())
                .and("name", roll.name())
                .and("camera", roll.place().camera())
                .and("back", roll.place().back())
                .and("stock", roll.film().stock())
                .and("exposureIndex", roll.film().exposureIndex())
                .and("framesUsed", roll.framesUsed())
                .and("framesNominal", roll.film().framesNominal())
                .and("loadedAt", IsoTime.of(roll.loadedAt()))
                .and("finishedAt", roll.finishedAt().map(IsoTime::of))
                .and("where", where(roll, orders))
                .and("order", orders.order(roll.id().toString()).map(Order::order));
    }

    private static String line(RollSummary roll, OrderTracker orders) {
        return roll.id() + "  " + Padding.cell(roll.state().toString(), 10)
                + Padding.cell(roll.place().toString(), 14)
                + Padding.cell(roll.film().stock(), 12)
                + Padding.cell(roll.framesUsed() + " of " + roll.film().framesNominal(), 10)
                + roll.loadedAt().toLocalDate() + "  " + roll.film().development()
                + (roll.state() == Roll.State.FINISHED
                        ? "  " + orders.words(roll.id().toString())
                        : "")
                + roll.name().map(it -> "  named " + it).orElse("");
    }
}
