package takeup.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.OrderFolder;
import takeup.index.RollsAsLoaded;
import takeup.json.Json;
import takeup.json.JsonListText;
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
    /** So many lines go out in one write. */
    private static final int LINES = 1000;

    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() throws IOException {
        Console console = global.console();
        RollsAsLoaded rolls = global.index().asLoaded();
        List<String> problems = new ArrayList<>(rolls.problems());
        OrderFolder.Found<Order> orders = new OrderFolder(global.folder(), false).allOrders();
        problems.addAll(orders.problems());
        problems.forEach(console::error);
        OrderTracker where = new OrderTracker(orders.all());
        if (json.isAsked()) {
            JsonListText all = console.json("rolls", Json.object(), "rolls");
            rolls.forEach(it -> {
                all.item(json(it, where));
                return !console.failed();
            });
            all.end(Json.object());
        } else {
            print(rolls, where);
        }
        return problems.isEmpty() ? 0 : 1;
    }

    private void print(RollsAsLoaded rolls, OrderTracker where) throws IOException {
        Console console = global.console();
        LocalDate today = Clock.wall().toLocalDate();
        OrderTracker.Waiting waiting = where.waiting(today);
        List<String> lines = new ArrayList<>();
        AtomicBoolean isAny = new AtomicBoolean();
        rolls.forEach(it -> {
            isAny.set(true);
            lines.add(line(it, where));
            if (it.state() == Roll.State.FINISHED) {
                it.finishedAt().ifPresent(at -> waiting.add(it.id().toString(), at.toLocalDate()));
            }
            if (lines.size() == LINES) {
                console.lines(lines);
                lines.clear();
            }
            return !console.failed();
        });
        if (isAny.get()) {
            lines.addAll(where.due(today));
            waiting.sentence().ifPresent(lines::add);
        } else {
            lines.add("no roll yet in " + global.folder());
        }
        console.lines(lines);
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
