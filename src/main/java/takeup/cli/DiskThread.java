package takeup.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import takeup.files.JournalStore;
import takeup.files.StepFiles;
import takeup.journal.Archive;
import takeup.session.Effect;
import takeup.session.Message;
import takeup.session.StoreEffects;

/**
 * The thread of the shoot screen that reads and writes the data folder: one effect after the other, never interrupted,
 * so that no key waits for the disk. What came of an effect goes into the queue of messages.
 */
final class DiskThread extends Thread {
    /** After so many milliseconds without an effect it clears up what a program that died left behind. */
    private static final long QUIET = 2000;
    /** So many milliseconds the end waits for what was asked before. */
    private static final long LONGEST_END = 5000;

    private final LinkedBlockingQueue<Effect> effects = new LinkedBlockingQueue<>();
    private final BlockingQueue<Message> messages;
    private final Archive archive;
    private final Optional<JournalStore> disk;

    /**
     * A thread that is not started yet.
     *
     * @param disk what it writes to; empty where the folder can only be read
     */
    DiskThread(Archive archive, Optional<JournalStore> disk, BlockingQueue<Message> messages) {
        super("disk");
        setDaemon(true);
        this.messages = messages;
        this.archive = archive;
        this.disk = disk;
    }

    void ask(Effect effect) {
        effects.add(effect);
    }

    @Override
    public void run() {
        StoreEffects store = new StoreEffects(new StepFiles(archive, disk), messages::add);
        boolean isSwept = disk.isEmpty();
        while (true) {
            Effect effect;
            try {
                effect = isSwept ? effects.take() : effects.poll(QUIET, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                continue;
            }
            if (effect == null) {
                disk.ifPresent(JournalStore::sweep);
                isSwept = true;
                continue;
            }
            if (effect instanceof Effect.Quit) {
                return;
            }
            try {
                store.run(effect);
            } catch (RuntimeException e) {
                if (effect instanceof Effect.Fetch fetch) {
                    messages.add(new Message.Fetched(
                            fetch.roll(), List.of(), List.of(fetch.roll() + " cannot be read: " + e.getMessage())));
                }
                messages.add(new Message.Notice("something went wrong on the way to the disk: " + e.getMessage()));
            }
        }
    }

    /** Ends it after what was asked before, and closes the journals. */
    void end() throws IOException {
        ask(new Effect.Quit(List.of()));
        try {
            join(LONGEST_END);
        } catch (InterruptedException e) {
            // leaving anyway; what was asked is forced or was never acknowledged
        }
        if (disk.isPresent()) {
            disk.get().close();
        }
    }
}
