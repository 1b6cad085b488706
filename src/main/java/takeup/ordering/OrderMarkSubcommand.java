package takeup.ordering;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.options.RollArgument;
import takeup.order.Order;
import takeup.order.OrderedRoll;
import takeup.order.Stage;
import takeup.text.Nearest;

/** {@code takeup order mark}: how far an order, or some of its rolls, have come. */
@Command(
        name = "mark",
        description = "Notes where an order is: sent, scans (they are back), negatives (they are back), or ordered "
                + "(it is still here).",
        footer = {
            "",
            "For example:",
            "  takeup order mark 1 sent",
            "  takeup order mark ORD-001 scans R0001 --on 2026-09-21"
        })
final class OrderMarkSubcommand implements Callable<Integer> {
    @ParentCommand
    OrderOptions order;

    @Parameters(index = "0", paramLabel = "ORDER", description = "Its number: ORD-001, or 1.")
    String number;

    @Parameters(index = "1", paramLabel = "STAGE", description = "sent, scans, negatives, or ordered.")
    String stage;

    @Parameters(index = "2..*", paramLabel = "ROLL", description = "Some of its rolls; else all.")
    List<RollArgument> rolls = List.of();

    @Option(names = "--on", paramLabel = "DATE", description = "The day, such as 2026-09-14; else today.")
    String on;

    @Override
    public Integer call() throws IOException {
        Stage reached = Stage.named(stage)
                .orElseThrow(() -> new CommandFailed(
                        2,
                        stage + " is no stage: " + String.join(", ", Stage.all())
                                + Nearest.question(stage, Stage.all())));
        OrderDesk desk = order.desk();
        LocalDate day = day(desk);
        desk.rollsOf(desk.order(number), rolls);
        return desk.alone(() -> {
            Order found = desk.standing(number);
            List<String> some = desk.rollsOf(found, rolls);
            refuseDayBeforeAnotherStage(found, some, reached, day);
            Order marked = found.with(new Order.Progress(reached, day, some));
            desk.folder().save(marked);
            desk.console()
                    .line(marked.order() + (some.isEmpty() ? "" : ", " + String.join(", ", some)) + ": "
                            + reached.where() + " since " + day);
            desk.due(List.of(marked)).forEach(desk.console()::line);
            return 0;
        });
    }

    /** What comes later cannot have been earlier; the same stage again puts its day right. */
    private static void refuseDayBeforeAnotherStage(Order found, List<String> some, Stage reached, LocalDate day) {
        for (OrderedRoll roll : found.rolls()) {
            Optional<Order.Progress> last = found.lastOther(roll.roll(), reached)
                    .filter(it -> some.isEmpty() || some.contains(roll.roll()))
                    .filter(it -> day.isBefore(it.on()));
            if (last.isPresent()) {
                String word = last.get().stage().word();
                throw new CommandFailed(
                        1,
                        day + " is before " + last.get().on() + ", when " + roll.roll() + " was marked " + word
                                + ": give a later day, or put that one right first (takeup order mark " + found.order()
                                + " " + word + " --on DATE)");
            }
        }
    }

    private LocalDate day(OrderDesk desk) {
        try {
            return on == null ? desk.clock().now().toLocalDate() : LocalDate.parse(on);
        } catch (DateTimeException e) {
            throw new CommandFailed(2, on + " is no date, such as 2026-09-14");
        }
    }
}
