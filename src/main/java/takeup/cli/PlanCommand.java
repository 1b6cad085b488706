package takeup.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import takeup.journal.Trouble;
import takeup.kit.JsonText;
import takeup.shoot.Happened;
import takeup.shoot.Outcome;
import takeup.shoot.PlanSheet;
import takeup.shoot.PlanTable;
import takeup.shoot.Prepare;
import takeup.shoot.Situation;

/** {@code takeup prepare} and {@code takeup plan}: the night-before list, the plan, and moments from a file. */
final class PlanCommand {
    private static final int LARGEST = 1 << 20;

    private final Commands commands;
    private final OffsetDateTime now;

    PlanCommand(Commands commands, Clock clock) {
        this.commands = commands;
        this.now = clock.now();
    }

    private Situation situation() throws IOException {
        return commands.opening().withToday(commands.archive(), now).turned(now);
    }

    int prepare(boolean json, boolean withClient) throws IOException {
        Situation s = situation();
        if (json) {
            commands.out().raw(JsonText.pretty(Prepare.json(s, now, withClient)));
            return 0;
        }
        for (Prepare.Section section : Prepare.of(s, now, withClient)) {
            commands.out().line(section.title());
            section.items().forEach(it -> commands.out().line("  " + it.text()));
        }
        table(s);
        return 0;
    }

    int list(boolean json) throws IOException {
        Situation s = situation();
        if (json) {
            commands.out().raw(JsonText.pretty(Prepare.plan(s, now)));
        } else {
            table(s);
            PlanTable.remarks(s, now).forEach(it -> commands.out().line(it.text()));
        }
        return 0;
    }

    private void table(Situation s) {
        commands.out().line("Plan: " + PlanTable.title(s));
        for (PlanTable.Row row : PlanTable.of(s, now)) {
            commands.out()
                    .line("  " + pad(row.number(), 4) + pad(row.when(), 7) + pad(row.in(), 14) + row.what()
                            + (row.more().isEmpty() ? "" : ", " + row.more().replace("  ", ", ")));
        }
        if (s.day().job().plan().moments().isEmpty()) {
            commands.out()
                    .line("  nothing is planned: takeup plan import FILE, or plan 16:30 Prize-giving wants 12 "
                            + "on the prompt");
        }
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    /** Moments from a file into the plan: all of them, or none and what is wrong with each line. */
    int read(Path file, boolean json) throws IOException {
        String text;
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
                throw new Commands.Unfit(
                        1, file + (Files.exists(file) ? " is no small file of text" : " is not there"));
            }
            text = Files.readString(file);
        } catch (CharacterCodingException e) {
            throw new Commands.Unfit(1, file + ":1: this is not UTF-8: save it as UTF-8 text");
        }
        Disk taken;
        try {
            taken = Disk.take(commands.archive());
        } catch (IOException e) {
            throw new Commands.Unfit(
                    1, "the data folder " + commands.folder() + " cannot be used: " + Trouble.words(e));
        }
        try (Disk disk = taken) {
            Situation s = commands.opening().situation();
            PlanSheet.Read read = PlanSheet.read(
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
            Situation after = s.turned(now);
            if (read.does().isPresent()) {
                Outcome.Does does = read.does().get();
                disk.keep(new Happened(s.nextStep(), now, does.entries()));
                after = does.after();
            }
            disk.remarks().forEach(commands.out()::error);
            if (json) {
                commands.out().raw(JsonText.pretty(Prepare.plan(after, now)));
            } else {
                commands.out()
                        .line(read.does().map(it -> it.answer().text()).orElse("All of it is in the plan already."));
                table(after);
            }
        }
        return 0;
    }
}
