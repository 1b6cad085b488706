package takeup.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import takeup.command.Outcome;
import takeup.command.PlanImport;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.disk.IoErrorText;
import takeup.files.JournalStore;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.json.JsonText;
import takeup.report.NightBefore;
import takeup.report.PlanTable;
import takeup.text.Padding;

/** {@code takeup prepare} and {@code takeup plan}: the night-before list, the plan, and moments from a file. */
final class PlanSubcommand {
    private static final int LARGEST = 1 << 20;

    private final Subcommands commands;
    private final OffsetDateTime now;

    PlanSubcommand(Subcommands commands, Clock clock) {
        this.commands = commands;
        this.now = clock.now();
    }

    private ShootState situation() throws IOException {
        return commands.opening().withToday(commands.archive(), now).asOf(now);
    }

    int prepare(boolean json, boolean withClient) throws IOException {
        ShootState s = situation();
        if (json) {
            commands.out().raw(JsonText.pretty(NightBefore.json(s, now, withClient)));
            return 0;
        }
        for (NightBefore.Section section : NightBefore.of(s, now, withClient)) {
            commands.out().line(section.title());
            section.items().forEach(it -> commands.out().line("  " + it.text()));
        }
        table(s);
        return 0;
    }

    int list(boolean json) throws IOException {
        ShootState s = situation();
        if (json) {
            commands.out().raw(JsonText.pretty(NightBefore.plan(s, now)));
        } else {
            table(s);
            PlanTable.remarks(s, now).forEach(it -> commands.out().line(it.text()));
        }
        return 0;
    }

    private void table(ShootState s) {
        commands.out().line("Plan: " + PlanTable.title(s));
        for (PlanTable.Row row : PlanTable.of(s, now)) {
            commands.out()
                    .line("  " + Padding.cell(row.number(), 4) + Padding.cell(row.when(), 7)
                            + Padding.cell(row.in(), 14) + row.what()
                            + (row.more().isEmpty() ? "" : ", " + row.more().replace("  ", ", ")));
        }
        if (s.day().job().plan().moments().isEmpty()) {
            commands.out()
                    .line("  nothing is planned: takeup plan import FILE, or plan 16:30 Prize-giving wants 12 "
                            + "on the prompt");
        }
    }

    /** Moments from a file into the plan: all of them, or none and what is wrong with each line. */
    int read(Path file, boolean json) throws IOException {
        String text;
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
                throw new CommandFailed(1, file + (Files.exists(file) ? " is no small file of text" : " is not there"));
            }
            text = Files.readString(file);
        } catch (CharacterCodingException e) {
            throw new CommandFailed(1, file + ":1: this is not UTF-8: save it as UTF-8 text");
        }
        JournalStore taken;
        try {
            taken = JournalStore.take(commands.archive());
        } catch (IOException e) {
            throw new CommandFailed(
                    1, "the data folder " + commands.folder() + " cannot be used: " + IoErrorText.words(e));
        }
        try (JournalStore disk = taken) {
            ShootState s = commands.opening().situation();
            PlanImport.Read read = PlanImport.read(
                    text,
                    file.getFileName().toString(),
                    s,
                    now,
                    commands.settings().writer());
            if (!read.problems().isEmpty()) {
                read.problems().forEach(commands.out()::error);
                commands.out().error("nothing was planned: put these lines right and read the file again");
                return 1;
            }
            ShootState after = s.asOf(now);
            if (read.does().isPresent()) {
                Outcome.Accepted does = read.does().get();
                disk.keep(new JournalStep(s.nextStep(), now, does.entries()));
                after = does.after();
            }
            disk.remarks().forEach(commands.out()::error);
            if (json) {
                commands.out().raw(JsonText.pretty(NightBefore.plan(after, now)));
            } else {
                commands.out()
                        .line(read.does().map(it -> it.answer().text()).orElse("All of it is in the plan already."));
                table(after);
            }
        }
        return 0;
    }
}
