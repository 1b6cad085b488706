package takeup.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.command.Outcome;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.InputFile;
import takeup.files.JournalStore;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.options.ClockOption;
import takeup.options.JsonOption;
import takeup.planning.PlanImport;
import takeup.report.PlanJson;

/** {@code takeup plan import}: moments from a file into the plan of the day. */
@Command(
        name = "import",
        description = {
            "Reads moments from a CSV file into the plan: all of them, or none and what is wrong with each line.",
            "The file's first line names the columns: time, moment, and any of date, wants, must, camera, back, light.",
            "Other columns are left out, and named."
        },
        footer = {"", "For example:", "  takeup plan import day.csv"})
final class PlanImportSubcommand implements Callable<Integer> {
    private static final int LARGEST = 1 << 20;

    @ParentCommand
    PlanSubcommand plan;

    @Parameters(paramLabel = "FILE", description = "A CSV file with a moment a line.")
    String typed;

    @Mixin
    JsonOption json;

    @Mixin
    ClockOption clock;

    @Override
    public Integer call() throws IOException {
        OffsetDateTime now = clock.clock().now();
        Path file = Path.of(typed);
        String text = text(file);
        try (JournalStore disk = plan.global.take()) {
            return add(text, file.getFileName().toString(), now, disk);
        }
    }

    private static String text(Path file) throws IOException {
        try {
            return InputFile.textOfSpreadsheet(file, LARGEST);
        } catch (InputFile.Unusable e) {
            throw new CommandFailed(1, file + (Files.exists(file) ? " is no small file of text" : " is not there"));
        }
    }

    /** Moments from a file into the plan: all of them, or none and what is wrong with each line. */
    private int add(String text, String name, OffsetDateTime now, JournalStore disk) throws IOException {
        Console console = plan.global.console();
        ShootState state = plan.global.open().state();
        PlanImport.Read read =
                PlanImport.read(text, name, state, now, plan.global.settings().writer());
        if (!read.problems().isEmpty()) {
            read.problems().forEach(console::error);
            console.error("nothing was planned: put these lines right and read the file again");
            return 1;
        }
        if (!read.leftOut().isEmpty()) {
            console.error(name + ": left out, since a plan has no such column: " + String.join(", ", read.leftOut()));
        }
        Optional<Outcome.Accepted> added = read.does();
        if (added.isPresent()) {
            disk.keep(new JournalStep(state.nextStep(), now, added.get().entries()));
        }
        ShootState after = added.map(Outcome.Accepted::after).orElseGet(() -> state.asOf(now));
        disk.remarks().forEach(console::error);
        if (json.isAsked()) {
            console.json("plan", PlanJson.of(after, now));
        } else {
            console.line(added.map(it -> it.answer().text()).orElse("All of it is in the plan already."));
            PlanLines.of(after, now).forEach(console::line);
        }
        return 0;
    }
}
