package takeup.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.StartupState;
import takeup.grid.Theme;
import takeup.journal.Archive;
import takeup.kit.Kit;
import takeup.options.GlobalOptions;
import takeup.terminal.NoTerminal;
import takeup.terminal.Terminal;

/** {@code takeup demo}: regatta day in a temporary folder, shot through the same lines that anybody types. */
@Command(
        name = "demo",
        description = "Regatta day: the shoot screen in a temporary folder, with some rolls already shot.")
final class DemoSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Override
    public Integer call() throws IOException {
        Path folder = Path.of(
                System.getProperty("java.io.tmpdir", "."),
                "takeup-demo-" + ProcessHandle.current().pid() + "-" + System.nanoTime());
        Console console = global.console();
        String theme = global.theme();
        Terminal terminal;
        try {
            terminal = Terminal.open(global.terminal(), Theme.named(theme).orElseThrow());
        } catch (NoTerminal e) {
            throw new CommandFailed(2, e.getMessage());
        }
        try {
            shoot(folder, Clock.wall().withNano(0).minusMinutes(95), console);
        } catch (IOException e) {
            terminal.close();
            throw GlobalOptions.unusable(folder, e);
        }
        int status = new ScreenCommand(folder, global.settings(), console).run(terminal, theme);
        if (status == 0) {
            console.line("takeup: the demo is in " + folder + "; delete it when you like.");
        }
        return status;
    }

    /** Types the demo's day into a folder, beginning at that time. */
    static void shoot(Path folder, OffsetDateTime from, Console out) throws IOException {
        Archive archive = new Archive(folder);
        Kit kit = new Kit(ProfileFiles.of(folder));
        Console silent = new Console(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Map.of());
        try (JournalStore disk = JournalStore.take(archive);
                InputStream day = DemoSubcommand.class.getResourceAsStream("/takeup/demo.txt")) {
            if (day == null) {
                out.error("the demo's day is missing from this program");
                return;
            }
            new PromptPipe(
                            disk,
                            StartupState.of(archive, kit).state(),
                            Clock.of(Optional.of(from)),
                            silent,
                            PromptPipe.Format.TEXT)
                    .run(day);
        }
    }
}
