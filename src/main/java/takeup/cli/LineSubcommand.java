package takeup.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.StandardStreams;
import takeup.disk.IoErrorText;
import takeup.files.JournalStore;
import takeup.history.ShootState;
import takeup.options.GlobalOptions;

/** {@code takeup line}: the prompt as a pipe, from standard input to standard output. */
@Command(
        name = "line",
        description = "Reads lines as on the prompt, answers each with one line, in order, after what it logged "
                + "is safe on disk.",
        footer = {
            "",
            "For example:",
            "  printf 'cam 645\\nload cn400\\n' | takeup line",
            "  takeup line --json < day.txt"
        })
final class LineSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Option(names = "--json", description = "Answers are JSON objects.")
    boolean json;

    @Option(
            names = "--clock",
            paramLabel = "TIME",
            description = "Another time than now: 2026-09-12T15:00+02:00. It stands still until a line "
                    + "\"clock +10min\" moves it.")
    String clock;

    /** The command with nothing but this. */
    static LineSubcommand of(GlobalOptions global, boolean isJson) {
        LineSubcommand line = new LineSubcommand();
        line.global = global;
        line.json = isJson;
        return line;
    }

    @Override
    public Integer call() throws IOException {
        Clock time = Clock.ofOption(clock);
        StandardStreams.closed().ifPresent(it -> {
            throw new CommandFailed(2, it);
        });
        try (JournalStore disk = global.take()) {
            disk.sweep().forEach(global.console()::error);
            ShootState state = global.open(disk).withToday(global.archive(), time.now());
            try {
                disk.settleLeftOvers(state.rolls().values());
            } catch (IOException e) {
                global.console().error("the export of a finished roll could not be written: " + IoErrorText.words(e));
            }
            return new PromptPipe(
                            disk, state, time, global.console(), json ? PromptPipe.Format.JSON : PromptPipe.Format.TEXT)
                    .run(System.in);
        }
    }
}
