package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderMark;
import takeup.files.JournalStore;
import takeup.history.JournalStep;
import takeup.journal.Archive;
import takeup.message.Effect;
import takeup.message.Message;
import takeup.message.SaveError;
import takeup.message.StepStore;
import takeup.order.Stage;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.search.FindQuery;
import takeup.search.FoundFrames;

/** A frame while the list of a large archive is read: the list goes on for as long as the test lets it. */
class DiskThreadTest {
    private static final int SECONDS = 20;
    private static final JournalStep STEP =
            new JournalStep(1, OffsetDateTime.parse("2026-09-12T15:00+02:00"), List.of());

    private final LinkedBlockingQueue<Message> messages = new LinkedBlockingQueue<>();
    private final LargeArchive archive = new LargeArchive();
    private final DiskThread disk = new DiskThread(archive, Optional.empty(), messages);

    @Test
    void aFrameIsSavedWhileTheListIsStillRead() throws Exception {
        disk.start();
        disk.ask(new Effect.ListRolls());
        archive.begun.tryAcquire(SECONDS, TimeUnit.SECONDS);
        disk.ask(new Effect.Save(STEP, List.of()));
        assertEquals(new Message.Saved(1), messages.poll(SECONDS, TimeUnit.SECONDS));
        archive.mayEnd.release();
        assertInstanceOf(Message.Listed.class, messages.poll(SECONDS, TimeUnit.SECONDS));
        disk.end();
    }

    @Test
    void listsThatAreAskedForWhileOneIsReadAreOneList() throws Exception {
        disk.start();
        disk.ask(new Effect.ListRolls());
        archive.begun.tryAcquire(SECONDS, TimeUnit.SECONDS);
        for (int frame = 0; frame < 100; frame++) {
            disk.ask(new Effect.ListRolls());
        }
        disk.ask(new Effect.Save(STEP, List.of()));
        assertEquals(new Message.Saved(1), messages.poll(SECONDS, TimeUnit.SECONDS));
        archive.mayEnd.release(200);
        assertInstanceOf(Message.Listed.class, messages.poll(SECONDS, TimeUnit.SECONDS));
        assertInstanceOf(Message.Listed.class, messages.poll(SECONDS, TimeUnit.SECONDS));
        disk.ask(new Effect.ListRolls());
        assertInstanceOf(Message.Listed.class, messages.poll(SECONDS, TimeUnit.SECONDS));
        disk.end();
        assertEquals(3, 200 - archive.mayEnd.availablePermits(), "lists read");
    }

    /** It looks at every roll that is in no order, ten thousand of them where nobody writes orders here. */
    @Test
    void aFrameIsSavedWhileAnOrderIsStillMarkedAndTheEndWaitsForTheOrder() throws Exception {
        disk.start();
        disk.ask(new Effect.MarkOrder(new OrderMark("ORD-2026-001", Stage.SENT), STEP.at()));
        archive.begun.tryAcquire(SECONDS, TimeUnit.SECONDS);
        disk.ask(new Effect.Save(STEP, List.of()));
        assertEquals(new Message.Saved(1), messages.poll(SECONDS, TimeUnit.SECONDS));
        Thread release = new Thread(() -> archive.mayEnd.release());
        release.start();
        disk.end();
        assertEquals(new Message.Notice("marked ORD-2026-001"), messages.poll());
    }

    @Test
    void finishedRollsThatCannotBeListedBehindTheFirstPictureAreToldOf(@TempDir Path folder) throws Exception {
        Archive archive = new Archive(folder);
        Files.writeString(folder.resolve("last-roll"), "R0001");
        try (JournalStore store = JournalStore.take(archive)) {
            Files.delete(folder.resolve("rolls/finished"));
            Files.writeString(folder.resolve("rolls/finished"), "no folder");
            DiskThread thread = new DiskThread(this.archive, Optional.of(store), messages);
            thread.start();
            Message.Notice told = assertInstanceOf(Message.Notice.class, messages.poll(SECONDS, TimeUnit.SECONDS));
            assertTrue(told.text().startsWith("no roll can be loaded: "), told.text());
            thread.end();
        }
    }

    private static final class LargeArchive implements StepStore {
        private final Semaphore begun = new Semaphore(0);
        private final Semaphore mayEnd = new Semaphore(0);

        @Override
        public Optional<SaveError> save(JournalStep step) {
            return Optional.empty();
        }

        @Override
        public Optional<String> export(List<Roll> rolls) {
            return Optional.empty();
        }

        @Override
        public List<String> remarks() {
            return List.of();
        }

        @Override
        public Message.Fetched read(RollId roll) {
            return new Message.Fetched(roll, List.of(), List.of());
        }

        @Override
        public RollList list() {
            begun.release();
            mayEnd.acquireUninterruptibly();
            return new RollList(Optional.of(List.of()), List.of());
        }

        @Override
        public Message readOrders() {
            return new Message.Notice("no order is read here");
        }

        @Override
        public Message writeOrder(OrderDraft draft, OffsetDateTime at) {
            return new Message.Notice("no order is written here");
        }

        @Override
        public Message markOrder(OrderMark mark, OffsetDateTime at) {
            begun.release();
            mayEnd.acquireUninterruptibly();
            return new Message.Notice("marked " + mark.order());
        }

        @Override
        public FoundFrames find(FindQuery query) {
            return new FoundFrames.Collector(query).found(List.of());
        }

        @Override
        public void draft(String text) {
            // nothing is typed here
        }
    }
}
