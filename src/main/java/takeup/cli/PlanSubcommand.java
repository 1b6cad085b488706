package takeup.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
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
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.planning.PlanImport;
import takeup.report.PlanJson;
import takeup.report.PlanTable;

/** {@code takeup plan}: the plan of the day, and moments from a file into it. */
@Command(
        name = "plan",
        description = {
            "Prints the plan of the day.",
            "plan import FILE reads moments from a CSV file whose first line names the columns: "
                    + "time, moment, and any of date, wants, must, camera, back, light."
        })
final class PlanSubcommand implements Callable<Integer> {
    private static final int LARGEST = 1 << 20;

    @ParentCommand
    GlobalOptions global;

    @Parameters(
            paramLabel = "FILE",
            arity = "0..2",
            description = "The word import and a CSV file with a moment a line; without them the plan is printed.")
    List<String> words = List.of();

    @Mixin
    JsonOption json;

    @Mixin
    ClockOption clock;

    @Override
    public Integer call() throws IOException {
        OffsetDateTime now = clock.clock().now();
        if (words.isEmpty()) {
            return print(now);
        }
        if (!words.get(0).equals("import") || words.size() != 2) {
            throw new CommandFailed(2, "plan import FILE, or plan alone");
        }
        Path file = Path.of(words.get(1));
        String text = text(file);
        try (JournalStore disk = global.take()) {
            return add(text, file.getFileName().toString(), now, disk);
        }
    }

    private int print(OffsetDateTime now) throws IOException {
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

    private static String text(Path file) throws IOException {
        try {
            return InputFile.text(file, LARGEST);
        } catch (InputFile.Unusable e) {
            if (e.fault() == InputFile.Fault.NOT_UTF8) {
                throw new CommandFailed(1, file + ":1: this " + e.fault().words() + " text");
            }
            throw new CommandFailed(1, file + (Files.exists(file) ? " is no small file of text" : " is not there"));
        }
    }

    /** Moments from a file into the plan: all of them, or none and what is wrong with each line. */
    private int add(String text, String name, OffsetDateTime now, JournalStore disk) throws IOException {
        Console console = global.console();
        ShootState state = global.open().state();
        PlanImport.Read read =
                PlanImport.read(text, name, state, now, global.settings().writer());
        if (!read.problems().isEmpty()) {
            read.problems().forEach(console::error);
            console.error("nothing was planned: put these lines right and read the file again");
            return 1;
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
