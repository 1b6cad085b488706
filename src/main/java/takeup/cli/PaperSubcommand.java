package takeup.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.handoff.PaperForm;
import takeup.history.ShootState;
import takeup.journal.JournalRecords;
import takeup.report.DayEnd;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.text.Hidden;
import takeup.text.Nearest;

/** {@code takeup paper}: a form to go on with by pen, the rolls in the cameras filled in. Only reads. */
@Command(
        name = "paper",
        description = {
            "Prints a form to write frames on with a pen, for the day the laptop dies: a sheet for each roll "
                    + "that is in a camera, and an empty one.",
            "On the prompt, paper ROLL and a line a frame (7 5.6 125 veil) read it back."
        })
final class PaperSubcommand implements Callable<Integer> {
    @ParentCommand
    Subcommands commands;

    @Parameters(
            paramLabel = "ROLL",
            arity = "0..*",
            description =
                    "The rolls to make sheets for: R0007, r7, 7, or a row of them, 4-7; else those in the cameras.")
    List<String> rolls;

    @Option(names = "--html", description = "A page to print; a FILE that ends in .html is one too.")
    boolean html;

    @Option(names = "--paper", paramLabel = "PAPER", description = "With a page: A4 or Letter.")
    String paper;

    @Option(names = "-o", paramLabel = "FILE", description = "Writes it to a file.")
    String file;

    @Option(
            names = "--clock",
            paramLabel = "TIME",
            description = "As if it were that time, such as 2026-09-12T15:00+02:00.")
    String clock;

    @Override
    public Integer call() throws IOException {
        boolean page = html || file != null && (file.endsWith(".html") || file.endsWith(".htm"));
        String size = paper == null
                ? PaperForm.PAPERS.get(0)
                : PaperForm.PAPERS.stream()
                        .filter(it -> it.equalsIgnoreCase(paper))
                        .findFirst()
                        .orElseThrow(() -> new CommandFailed(
                                2,
                                paper + " is no paper known here: " + String.join(", ", PaperForm.PAPERS)
                                        + Nearest.question(paper, PaperForm.PAPERS)));
        if (paper != null && !page) {
            throw new CommandFailed(2, "--paper goes with --html, or a FILE that ends in .html");
        }
        OffsetDateTime now = Subcommands.clock(clock).now();
        ShootState s = commands.opening().situation().asOf(now);
        List<Roll> chosen = rolls == null
                ? s.rolls().values().stream()
                        .filter(it -> it.state() == Roll.State.OPEN || it.state() == Roll.State.REWOUND)
                        .toList()
                : named();
        String next = s.nextRoll(commands.settings().writer()).toString();
        String text = page
                ? PaperForm.html(chosen, next, now.toLocalDate(), size)
                : PaperForm.text(chosen, next, now.toLocalDate());
        if (file != null) {
            RollsSubcommand.write(Path.of(file), (page ? text : shown(text)).getBytes(StandardCharsets.UTF_8));
        } else if (page) {
            commands.out().raw(text);
        } else {
            commands.out().lines(text);
        }
        return 0;
    }

    private static String shown(String text) {
        StringBuilder lines = new StringBuilder();
        text.lines().forEach(it -> lines.append(Hidden.shown(it)).append('\n'));
        return lines.toString();
    }

    private List<Roll> named() throws IOException {
        List<Roll> all = new ArrayList<>();
        try {
            for (RollId id : DayEnd.held(rolls, Optional.of(commands.settings().writer()))) {
                JournalRecords<RollRecord> opened = commands.archive().roll(id);
                all.add(Roll.of(opened.records())
                        .orElseThrow(
                                () -> new CommandFailed(1, "there is no roll " + id + " in " + commands.folder())));
            }
        } catch (IllegalArgumentException e) {
            throw new CommandFailed(2, e.getMessage());
        }
        return all;
    }
}
