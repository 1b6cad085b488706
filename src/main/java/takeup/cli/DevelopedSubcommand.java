package takeup.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.JournalStore;
import takeup.files.OrderFolder;
import takeup.history.ShootState;
import takeup.index.ListedRoll;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.search.FindQuery;
import takeup.text.English;
import takeup.text.IsoTime;
import takeup.text.Padding;

/** {@code takeup developed}: which rolls wait for development, or how one was developed, as on the prompt. */
@Command(
        name = "developed",
        description = {
            "Lists the finished rolls that wait for development and are in no lab order.",
            "With words it notes how a roll was developed, as on the prompt."
        },
        footer = {
            "",
            "For example:",
            "  takeup developed r2 in \"fine-grain 1+1\" 9m45s at 20C by me",
            "  takeup developed"
        })
final class DevelopedSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Parameters(paramLabel = "WORD", arity = "0..*", description = "Roll and recipe; the roll alone: as the last one.")
    List<String> words = List.of();

    @Override
    public Integer call() throws IOException {
        return words.isEmpty() ? list() : note();
    }

    private int note() throws IOException {
        Clock time = Clock.ofOption(null);
        String line = "developed " + FindQuery.joined(words) + "\n";
        try (JournalStore disk = global.take()) {
            ShootState state = global.open(disk).withToday(global.archive(), time.now());
            return new PromptPipe(
                            disk,
                            state,
                            time,
                            global.console(),
                            json.isAsked() ? PromptPipe.Format.JSON : PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(line.getBytes(StandardCharsets.UTF_8)));
        }
    }

    private int list() throws IOException {
        Console console = global.console();
        OrderFolder.Found<Order> orders = new OrderFolder(global.folder(), false).allOrders();
        OrderTracker where = new OrderTracker(orders.all());
        List<RollSummary> waiting = new ArrayList<>();
        List<String> problems = new ArrayList<>(global.index().forEach(ListedRoll.KIND, it -> {
            RollSummary roll = it.head().summary();
            if (roll.state() == Roll.State.FINISHED
                    && it.head().developed().isEmpty()
                    && where.order(roll.id().toString()).isEmpty()) {
                waiting.add(roll);
            }
            return true;
        }));
        problems.addAll(orders.problems());
        problems.forEach(console::error);
        if (json.isAsked()) {
            console.json(
                    "waiting",
                    Json.object()
                            .and(
                                    "waiting",
                                    waiting.stream()
                                            .map(DevelopedSubcommand::json)
                                            .toList()));
        } else {
            waiting.forEach(it -> console.line(line(it)));
            console.line(
                    waiting.isEmpty()
                            ? "No roll waits for development."
                            : English.count(waiting.size(), "roll") + " to develop");
        }
        return problems.isEmpty() ? 0 : 1;
    }

    private static Json json(RollSummary roll) {
        return Json.object()
                .and("roll", roll.id())
                .and("stock", roll.film().stock())
                .and("development", roll.film().development())
                .and("finishedAt", roll.finishedAt().map(IsoTime::of));
    }

    private static String line(RollSummary roll) {
        return Padding.cell(roll.id().toString(), 7)
                + Padding.cell(roll.film().stock(), 12)
                + Padding.cell(
                        roll.finishedAt().map(it -> it.toLocalDate().toString()).orElse(""), 12)
                + roll.film().development();
    }
}
