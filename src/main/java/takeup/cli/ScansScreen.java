package takeup.cli;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import takeup.disk.IoErrorText;
import takeup.files.JournalStore;
import takeup.journal.Archive;
import takeup.review.Review;
import takeup.review.ScansState;
import takeup.scans.Picture;
import takeup.screen.ScansView;
import takeup.screen.Size;
import takeup.screen.Theme;
import takeup.session.Key;
import takeup.session.ScanKeys;
import takeup.terminal.NoTerminal;
import takeup.terminal.Terminal;
import takeup.terminal.TerminalEnvironment;

/** The Scans view on a terminal: one key at a time; what it decides is on the disk before the view says so. */
final class ScansScreen {
    private final Archive archive;
    private final Map<String, Picture> pictures;
    /** A key, or nothing: the terminal changed its size. */
    private final LinkedBlockingQueue<Optional<Key>> keys = new LinkedBlockingQueue<>();

    private volatile boolean ended;

    ScansScreen(Archive archive, Map<String, Picture> pictures) {
        this.archive = archive;
        this.pictures = pictures;
    }

    /** Runs until the photographer leaves. */
    void run(ScansState first, TerminalEnvironment environment, String theme) throws NoTerminal {
        try (Terminal terminal = Terminal.open(environment, Theme.named(theme).orElseThrow())) {
            terminal.listen(
                    key -> keys.add(Optional.of(key)),
                    () -> keys.add(Optional.empty()),
                    () -> keys.add(Optional.empty()),
                    why -> {
                        ended = true;
                        keys.add(Optional.empty());
                    });
            ScansState desk = first;
            while (!ended) {
                Size size = terminal.size();
                terminal.show(ScansView.render(desk, pictures, size.columns(), size.rows()));
                Optional<Key> key = keys.take();
                if (key.isPresent()) {
                    if (ScanKeys.leaves(key.get())) {
                        return;
                    }
                    desk = kept(ScanKeys.after(desk, key.get()));
                    terminal.next();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private ScansState kept(ScansState desk) {
        if (desk.toSave().isEmpty()) {
            return desk;
        }
        try (JournalStore disk = JournalStore.take(archive)) {
            disk.keep(desk.roll().id(), OffsetDateTime.now().truncatedTo(ChronoUnit.MILLIS), desk.toSave());
        } catch (IOException e) {
            return desk.saveFailed(IoErrorText.words(e));
        }
        return desk.saved(Review.of(archive.reviewOf(desk.roll().id()).records()));
    }
}
