package takeup.cli;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import takeup.console.Console;
import takeup.history.ShootState;
import takeup.options.ClockOption;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.report.PlanJson;
import takeup.report.PlanTable;

/** {@code takeup plan}: the plan of the day. Only reads. */
@Command(
        name = "plan",
        description = "Prints the plan of the day.",
        footer = {"", "For example:", "  takeup plan", "  takeup plan import day.csv"},
        subcommands = PlanImportSubcommand.class)
final class PlanSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Mixin
    ClockOption clock;

    @Override
    public Integer call() throws IOException {
        OffsetDateTime now = clock.clock().now();
        ShootState state = global.open().withToday(global.archive(), now).asOf(now);
        Console console = global.console();
        if (json.isAsked()) {
            console.json("plan", PlanJson.of(state, now));
        } else {
            PlanLines.of(state, now).forEach(console::line);
            PlanTable.remarks(state, now).forEach(it -> console.line(it.text()));
        }
        return 0;
    }
}
