package takeup.cli;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.demo.DemoExhibits;
import takeup.demo.Tour;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.grid.Theme;
import takeup.message.Message;
import takeup.options.GlobalOptions;
import takeup.session.Session;
import takeup.session.Transition;
import takeup.terminal.NoTerminal;
import takeup.terminal.Terminal;

/** {@code takeup demo}: regatta day in a folder of its own, and the tour through it. */
@Command(
        name = "demo",
        description = "Regatta day: a tour of eight steps through a day under way, in a temporary folder or in that of "
                + "--data.",
        footer = {"", "For example:", "  takeup demo", "  takeup demo --data regatta"})
final class DemoSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Override
    public Integer call() throws IOException {
        Path folder = global.typedFolder().isPresent() ? emptyFolder(global.folder()) : temporaryFolder();
        Console console = global.console();
        String theme = global.theme();
        Terminal terminal;
        try {
            terminal = Terminal.open(global.terminal(), Theme.named(theme).orElseThrow());
        } catch (NoTerminal e) {
            throw new CommandFailed(2, e.getMessage());
        }
        terminal.show(Tour.opening(terminal.size()));
        try {
            new DemoDay(folder, Clock.wall().withNano(0), global::answer).make();
        } catch (IOException | CommandFailed e) {
            terminal.close();
            throw e instanceof IOException io ? GlobalOptions.unusable(folder, io) : (CommandFailed) e;
        }
        DemoExhibits exhibits = new DemoExhibits(folder, global::answer);
        int status = new ScreenCommand(folder, global.settings(), console)
                .behind(new Guided(new Tour(exhibits), exhibits))
                .run(terminal, theme);
        if (status == 0) {
            exhibits.finish();
            console.line("The demo is in " + folder + ". To look on: takeup --data " + folder);
            console.line("Its scans: takeup scans 1 " + exhibits.scansFolder() + " --data " + folder);
            console.line("Now yours: takeup");
        }
        return status;
    }

    /** The tour before the screen; the scans are drawn behind the first picture. */
    private record Guided(Tour tour, DemoExhibits exhibits) implements ScreenCommand.Front {
        @Override
        public Transition update(Session session, Message message) {
            exhibits.begin();
            return tour.update(session, message);
        }

        @Override
        public Grid render(Session session, Size size, PixelShape pixels) {
            return tour.render(session, size.columns(), size.rows(), pixels);
        }
    }

    private static Path temporaryFolder() {
        return Path.of(
                System.getProperty("java.io.tmpdir", "."),
                "takeup-demo-" + ProcessHandle.current().pid() + "-" + System.nanoTime());
    }

    /** The demo never mixes with rolls of one's own. */
    private static Path emptyFolder(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder)) {
                if (inside.iterator().hasNext()) {
                    throw new CommandFailed(
                            1,
                            folder + " is not empty: give the demo a new folder. If the demo is in it already: "
                                    + "takeup --data " + folder);
                }
            }
        }
        return folder;
    }
}
