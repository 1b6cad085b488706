package takeup.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import takeup.files.JournalStore;
import takeup.message.Effect;
import takeup.message.Message;
import takeup.message.StepStore;
import takeup.message.StoreEffects;

/**
 * The thread of the shoot screen that reads and writes the data folder: one effect after the other, never interrupted,
 * so that no key waits for the disk. Lists of rolls and the search go through the whole archive and have a thread
 * beside it, so that no frame waits for a list. What came of an effect goes into the queue of messages.
 */
final class DiskThread extends Thread implements Consumer<Message> {
    /** After so many milliseconds without an effect it clears up what a program that died left behind. */
    private static final long QUIET = 2000;
    /** So many milliseconds the end waits for what was asked before. */
    private static final long LONGEST_END = 5000;

    private final LinkedBlockingQueue<Effect> effects = new LinkedBlockingQueue<>();
    /** A list that waits sees all that was saved when it begins, so there is never a second one of it to wait for. */
    private final LinkedBlockingQueue<Effect> lists = new LinkedBlockingQueue<>();
    /** What is written down of orders, one after the other. */
    private final LinkedBlockingQueue<Effect> orders = new LinkedBlockingQueue<>();

    /** What is done on this thread besides effects; one of those wakes it. */
    private final LinkedBlockingQueue<Runnable> works = new LinkedBlockingQueue<>();

    private final BlockingQueue<Message> messages;
    private final StepStore store;
    private final Optional<JournalStore> disk;
    private boolean isListing;
    /** Null until an order is written for the first time. */
    private Thread ordering;

    /**
     * A thread that is not started yet.
     *
     * @param store where steps are kept and read
     * @param disk what is swept and closed; empty where the folder can only be read
     */
    DiskThread(StepStore store, Optional<JournalStore> disk, BlockingQueue<Message> messages) {
        super("disk");
        setDaemon(true);
        this.messages = messages;
        this.store = store;
        this.disk = disk;
    }

    /** What came of an effect. */
    @Override
    public void accept(Message message) {
        messages.add(message);
    }

    void ask(Effect effect) {
        effects.add(effect);
    }

    /** Has something else done on this thread, after what was asked before; returns once it is done. */
    void during(Work work) throws IOException {
        CompletableFuture<Optional<IOException>> done = new CompletableFuture<>();
        works.add(() -> {
            try {
                work.on(disk.orElseThrow(() -> new IOException("this is read only")));
                done.complete(Optional.empty());
            } catch (IOException e) {
                done.complete(Optional.of(e));
            } catch (RuntimeException e) {
                done.complete(Optional.of(new IOException(e)));
            }
        });
        ask(new Effect.Repaint());
        Optional<IOException> failed = done.join();
        if (failed.isPresent()) {
            throw failed.get();
        }
    }

    /** Something that only this thread may do. */
    interface Work {
        void on(JournalStore store) throws IOException;
    }

    /** Has a list read beside this thread: it shows all that was asked for before. */
    private void list(Effect effect) {
        if (!lists.contains(effect)) {
            lists.add(effect);
        }
        if (!isListing) {
            isListing = true;
            Thread thread = new Thread(this::list, "list of rolls");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private void list() {
        StoreEffects listing = new StoreEffects(store, this);
        while (true) {
            try {
                run(listing, lists.take());
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    /** Has an order written beside this thread: it looks at all rolls for it. The end of the program waits for it. */
    private void order(Effect effect) {
        orders.add(effect);
        if (ordering == null) {
            ordering = new Thread(this::order, "orders");
            ordering.setDaemon(true);
            ordering.start();
        }
    }

    private void order() {
        StoreEffects writing = new StoreEffects(store, this);
        try {
            for (Effect effect = orders.take(); !(effect instanceof Effect.Quit); effect = orders.take()) {
                run(writing, effect);
            }
        } catch (InterruptedException e) {
            // nobody does
        }
    }

    private void endOrders(Effect quit) {
        if (ordering != null) {
            orders.add(quit);
            try {
                ordering.join();
            } catch (InterruptedException e) {
                // nobody does
            }
        }
    }

    @Override
    public void run() {
        StoreEffects saving = new StoreEffects(store, this);
        boolean isSwept = disk.isEmpty();
        Optional<String> problem = disk.isPresent() ? disk.get().know() : Optional.empty();
        if (problem.isPresent()) {
            messages.add(new Message.Notice(problem.get()));
        }
        while (true) {
            Effect effect;
            try {
                effect = isSwept ? effects.take() : effects.poll(QUIET, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                continue;
            }
            if (effect == null) {
                disk.ifPresent(it -> it.sweep().forEach(why -> messages.add(new Message.Notice(why))));
                isSwept = true;
                continue;
            }
            if (effect instanceof Effect.Quit) {
                endOrders(effect);
                return;
            }
            for (Runnable work = works.poll(); work != null; work = works.poll()) {
                work.run();
            }
            if (effect instanceof Effect.ListRolls
                    || effect instanceof Effect.ReadOrders
                    || effect instanceof Effect.Find) {
                list(effect);
            } else if (effect instanceof Effect.WriteOrder || effect instanceof Effect.MarkOrder) {
                order(effect);
            } else {
                run(saving, effect);
            }
        }
    }

    private void run(StoreEffects through, Effect effect) {
        try {
            through.run(effect);
        } catch (RuntimeException e) {
            if (effect instanceof Effect.Fetch fetch) {
                messages.add(new Message.Fetched(
                        fetch.roll(), List.of(), List.of(fetch.roll() + " cannot be read: " + e.getMessage())));
            }
            messages.add(new Message.Notice("something went wrong on the way to the disk: " + e.getMessage()));
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
