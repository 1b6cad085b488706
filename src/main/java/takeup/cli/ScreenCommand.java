package takeup.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.console.MonotonicClock;
import takeup.console.TerminalMessages;
import takeup.disk.FolderInUse;
import takeup.disk.IoErrorText;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.Settings;
import takeup.files.StartupState;
import takeup.files.StepFiles;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.grid.Theme;
import takeup.history.RollsOfDay;
import takeup.journal.Archive;
import takeup.kit.Kit;
import takeup.message.Effect;
import takeup.message.Message;
import takeup.reviewing.ScansOnScreen;
import takeup.roll.RollId;
import takeup.screen.Screen;
import takeup.session.Session;
import takeup.session.Transition;
import takeup.session.Update;
import takeup.terminal.NoTerminal;
import takeup.terminal.Terminal;
import takeup.terminal.TerminalEnvironment;

/** The full screen: opens the data folder and the terminal, and runs the only loop. */
final class ScreenCommand {
    private static final long TICK = 1000;
    /** So many milliseconds the end that the system asks for is put off. */
    private static final long LAST_WORDS = 1000;

    private final Path folder;
    private final Settings settings;
    private final Console out;
    private final LinkedBlockingQueue<Message> messages = new LinkedBlockingQueue<>();
    private final MonotonicClock ticks = new MonotonicClock();
    private final CountDownLatch left = new CountDownLatch(1);
    private final Screen screen = new Screen();
    private Optional<ScansOnScreen> scans = Optional.empty();
    private Optional<Front> front = Optional.empty();

    /** What may stand between the loop and the session: the tour of the demo. */
    interface Front {
        Transition update(Session session, Message message);

        Grid render(Session session, Size size, PixelShape pixels);
    }

    ScreenCommand(Path folder, Settings settings, Console out) {
        this.folder = folder;
        this.settings = settings;
        this.out = out;
    }

    /** The same with something before it. */
    ScreenCommand behind(Front other) {
        front = Optional.of(other);
        return this;
    }

    /** Runs until the photographer leaves. 0 done, 1 it could not be done, 2 there is no terminal for it. */
    int run(TerminalEnvironment environment, String themeName) {
        Terminal terminal;
        try {
            terminal = Terminal.open(environment, Theme.named(themeName).orElseThrow());
        } catch (NoTerminal e) {
            out.error(e.getMessage());
            return 2;
        }
        return run(terminal, themeName);
    }

    /** The same on a terminal that was taken already; it is given back. */
    int run(Terminal terminal, String themeName) {
        Archive archive = new Archive(folder, settings.writer());
        Opened opened;
        try {
            opened = open(archive, themeName);
        } catch (IOException e) {
            terminal.close();
            out.error("the data folder " + folder + " cannot be used: " + IoErrorText.words(e));
            return 1;
        }
        DiskThread disk = new DiskThread(new StepFiles(archive, opened.disk), opened.disk, messages);
        // Behind the first picture, so that the start does not wait for it: pace and must-have moments look at these.
        for (RollId roll : RollsOfDay.finishedUnread(opened.session.saved(), now())) {
            disk.ask(new Effect.Fetch(roll));
        }
        Runtime.getRuntime().addShutdownHook(new LastWords());
        try {
            List<String> farewell = loop(terminal, disk, opened.session, archive);
            terminal.close();
            farewell.forEach(terminal::closeAndPrint);
            return 0;
        } catch (RuntimeException | Error e) {
            terminal.close();
            CrashReport.write(e, folder, now()).forTerminal().forEach(terminal::closeAndPrint);
            return 1;
        } finally {
            left.countDown();
            end(disk);
        }
    }

    /** Lays scans beside a roll; made at the first time, since most days see none. */
    private void open(Archive archive, DiskThread disk, Terminal terminal, Effect.OpenScans what) {
        terminal.askForPixels(() -> messages.add(new Message.Resized()));
        ScansOnScreen opening = scans.orElseGet(() -> new ScansOnScreen(
                archive,
                (roll, events) -> disk.during(it -> it.keep(roll, now(), events)),
                text -> messages.add(text.isEmpty() ? new Message.Resized() : new Message.Notice(text))));
        scans = Optional.of(opening);
        opening.open(what.roll(), what.folder());
    }

    /**
     * The system ends the program: what was pressed is still saved, and the last lines are printed, if that is quick.
     */
    private final class LastWords extends Thread {
        LastWords() {
            super("told to end");
        }

        @Override
        public void run() {
            messages.add(new Message.Ended("told to end"));
            try {
                left.await(LAST_WORDS, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void end(DiskThread disk) {
        try {
            disk.end();
        } catch (IOException e) {
            out.error("closing the journals: " + IoErrorText.words(e));
        }
    }

    /** The session at the start, and the disk to write to; empty where the folder can only be read. */
    private record Opened(Session session, Optional<JournalStore> disk) {}

    private Opened open(Archive archive, String theme) throws IOException {
        Optional<JournalStore> disk = Optional.empty();
        Optional<String> readOnly = Optional.empty();
        try {
            disk = Optional.of(JournalStore.take(archive));
        } catch (FolderInUse e) {
            readOnly = Optional.of(e.getMessage());
        } catch (IOException e) {
            if (!Files.isDirectory(folder)) {
                throw e;
            }
            readOnly = Optional.of(IoErrorText.words(e));
        }
        Kit kit = new Kit(ProfileFiles.of(folder), settings.framesLeft());
        StartupState opening = (disk.isPresent() ? StartupState.of(disk.get(), kit) : StartupState.of(archive, kit))
                .withMovesCompleted(disk);
        List<String> problems = new ArrayList<>(settings.problems());
        problems.addAll(opening.problems());
        if (disk.isPresent()) {
            try {
                disk.get().settleLeftOvers(opening.state().rolls().values());
            } catch (IOException e) {
                problems.add("the export of a finished roll could not be written: " + IoErrorText.words(e));
            }
        }
        Session session = Session.begin(
                opening.state(),
                new Session.Settings(settings.writer(), folder.toString(), readOnly),
                theme,
                problems,
                now(),
                ticks());
        Optional<String> draft = archive.draft();
        return new Opened(draft.isPresent() ? session.offering(draft.get()) : session, disk);
    }

    private static OffsetDateTime now() {
        return Clock.wall().truncatedTo(ChronoUnit.MILLIS);
    }

    private long ticks() {
        return ticks.now();
    }

    private List<String> loop(Terminal terminal, DiskThread disk, Session first, Archive archive) {
        Session session = first;
        terminal.listen(new TerminalMessages(terminal, messages, ticks));
        long wake = Long.MAX_VALUE;
        String theme = session.view().theme();
        DraftPace drafts = new DraftPace(ticks());
        while (true) {
            if (messages.isEmpty()) {
                Size size = terminal.size();
                session = session.in(size.columns(), size.rows());
                terminal.show(render(session, size, terminal.pixels()));
            }
            if (disk.getState() == Thread.State.NEW) {
                disk.start(); // behind the first picture
            }
            String typed = session.prompt().text();
            if (drafts.takes(typed, ticks())) {
                disk.ask(new Effect.Draft(typed)); // behind the picture, which does not wait for it
            }
            long untilDraft = drafts.wait(typed, ticks(), TICK);
            Message message = next(Math.max(0, Math.min(untilDraft, wake - ticks())));
            if (message instanceof Message.Ticked) {
                wake = Long.MAX_VALUE;
            }
            boolean isBeside = scans.isPresent() && scans.get().isOpen();
            if (isBeside && message instanceof Message.Pressed key) {
                scans.get().press(key.key());
                if (TerminalMessages.mayLeave(key.key())) {
                    terminal.next();
                }
                continue;
            }
            Transition step =
                    front.isPresent() ? front.get().update(session, message) : Update.update(session, message);
            session = step.session();
            if (!theme.equals(session.view().theme())) {
                theme = session.view().theme();
                Theme.named(theme).ifPresent(terminal::theme);
                if (terminal.isColourless()) {
                    messages.add(new Message.Notice(
                            "theme " + theme + ", but NO_COLOR or TERM asks for no colour: the screen stays without"));
                }
            }
            for (Effect effect : step.effects()) {
                if (effect instanceof Effect.Quit quit) {
                    if (drafts.takesLast(session.prompt().text())) {
                        disk.ask(new Effect.Draft(session.prompt().text()));
                    }
                    return quit.lines();
                } else if (effect instanceof Effect.Wake in) {
                    wake = ticks() + in.milliseconds();
                } else if (effect instanceof Effect.Bell) {
                    terminal.bell();
                } else if (effect instanceof Effect.OpenScans beside) {
                    open(archive, disk, terminal, beside);
                } else if (effect instanceof Effect.Repaint) {
                    terminal.repaint();
                } else {
                    disk.ask(effect);
                }
            }
            if (message instanceof Message.Pressed pressed && TerminalMessages.mayLeave(pressed.key())) {
                terminal.next();
            }
        }
    }

    private Grid render(Session session, Size size, PixelShape pixels) {
        if (scans.isPresent() && scans.get().isOpen()) {
            return scans.get().render(size);
        }
        return front.isPresent()
                ? front.get().render(session, size, pixels)
                : screen.picture(session, size.columns(), size.rows(), pixels);
    }

    private Message next(long milliseconds) {
        try {
            Message message = messages.poll(milliseconds, TimeUnit.MILLISECONDS);
            return message == null ? new Message.Ticked(now(), ticks()) : message;
        } catch (InterruptedException e) {
            return new Message.Ended("interrupted");
        }
    }
}
