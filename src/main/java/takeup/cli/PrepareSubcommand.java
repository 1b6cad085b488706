package takeup.cli;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import takeup.console.Console;
import takeup.history.ShootState;
import takeup.options.ClockOption;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.report.CheckList;
import takeup.report.NightBefore;
import takeup.report.NightBeforeJson;
import takeup.report.NightBeforeText;
import takeup.report.NightBeforeText.ClientName;

/** {@code takeup prepare}: the list for the night before. Only reads. */
@Command(
        name = "prepare",
        description = "The night-before list: film in the bag, what is in the cameras, whether it is enough for "
                + "the plan, what to check.",
        footer = {"", "For example:", "  takeup prepare", "  takeup prepare --clock 2026-09-11T20:00+02:00"})
final class PrepareSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Option(
            names = "--with-client",
            description = "The words about the client too; otherwise they stay on this machine.")
    boolean withClient;

    @Mixin
    ClockOption clock;

    @Override
    public Integer call() throws IOException {
        OffsetDateTime now = clock.clock().now();
        ShootState state = global.open().withToday(global.archive(), now).asOf(now);
        Console console = global.console();
        ClientName client = withClient ? ClientName.SHOWN : ClientName.HIDDEN;
        if (json.isAsked()) {
            console.json("prepare", NightBeforeJson.of(state, now, client));
            return 0;
        }
        for (CheckList.Section section : NightBeforeText.sections(NightBefore.of(state, now), client)) {
            console.line(section.title());
            section.items().forEach(it -> console.line("  " + it.text()));
        }
        PlanLines.of(state, now).forEach(console::line);
        return 0;
    }
}
