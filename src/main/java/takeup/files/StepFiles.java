package takeup.files;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.disk.IoErrorText;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderMark;
import takeup.history.JournalStep;
import takeup.index.ArchiveIndex;
import takeup.index.FoundInRoll;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.message.Message;
import takeup.message.SaveError;
import takeup.message.StepStore;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.search.FindQuery;
import takeup.search.FoundFrames;

/** The steps in a data folder, for a session: what can go wrong on the disk comes back as a sentence. */
public final class StepFiles implements StepStore {
    private final Archive archive;
    private final Optional<JournalStore> disk;
    private final List<String> remarks = new ArrayList<>();
    private Optional<JournalStep> newest = Optional.empty();

    /** A folder, and the way to write in it; empty where it is read only. */
    public StepFiles(Archive archive, Optional<JournalStore> disk) {
        this.archive = archive;
        this.disk = disk;
    }

    private interface Write {
        void to(JournalStore store) throws IOException;
    }

    private Optional<SaveError> write(Write write) {
        try {
            write.to(disk.orElseThrow(() -> new IOException("this is read only")));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(new SaveError(IoErrorText.reason(e), IoErrorText.words(e)));
        }
    }

    @Override
    public Optional<SaveError> save(JournalStep step) {
        newest = Optional.of(step);
        try {
            return write(it -> it.keep(step));
        } catch (RuntimeException e) {
            String message = String.valueOf(e.getMessage());
            return Optional.of(new SaveError(message, message));
        }
    }

    @Override
    public Optional<String> export(List<Roll> rolls) {
        if (rolls.isEmpty()) {
            return Optional.empty();
        }
        OrderedDevelopment ordered = new OrderedDevelopment(new OrderFolder(archive.folder(), false));
        newest.ifPresent(it -> remarks.addAll(ordered.remarks(it, rolls)));
        return write(it -> it.settle(rolls)).map(SaveError::text);
    }

    @Override
    public List<String> remarks() {
        List<String> all = new ArrayList<>(disk.map(JournalStore::remarks).orElse(List.of()));
        all.addAll(remarks);
        remarks.clear();
        return all;
    }

    @Override
    public Message.Fetched read(RollId roll) {
        JournalRecords<RollRecord> opened = archive.roll(roll);
        return new Message.Fetched(roll, StartupState.stepsOf(roll, opened.records()), opened.problems());
    }

    private ArchiveIndex index() {
        return new ArchiveIndex(archive, Version.number(), told -> {});
    }

    @Override
    public RollList list() {
        try {
            AllRolls<RollSummary> all = AllRolls.summaries(index());
            if (!all.problems().isEmpty()) {
                // A roll that is written to or moved at this very moment may look damaged: what is, is so again.
                all = AllRolls.summaries(index());
            }
            OrderFolder.Found<Order> orders = new OrderFolder(archive.folder(), false).allOrders();
            OrderTracker where = new OrderTracker(orders.all());
            Map<String, String> ordered = new HashMap<>();
            all.rolls().stream()
                    .map(it -> it.id().toString())
                    .filter(it -> where.order(it).isPresent())
                    .forEach(it -> ordered.put(it, where.stage(it)));
            List<String> problems = new ArrayList<>(all.problems());
            problems.addAll(orders.problems());
            return new RollList(Optional.of(all.rolls()), ordered, problems);
        } catch (IOException e) {
            return new RollList(Optional.empty(), List.of("the rolls cannot be listed: " + IoErrorText.words(e)));
        }
    }

    @Override
    public Message readOrders() {
        return new OrderSources(archive.folder(), index()).read();
    }

    @Override
    public Message writeOrder(OrderDraft draft, OffsetDateTime at) {
        return disk.isEmpty()
                ? new Message.Notice("nothing was ordered: this is read only")
                : new OrderSources(archive.folder(), index()).write(draft, at);
    }

    @Override
    public Message markOrder(OrderMark mark, OffsetDateTime at) {
        return disk.isEmpty()
                ? new Message.Notice("nothing was marked: this is read only")
                : new OrderSources(archive.folder(), index()).mark(mark, at.toLocalDate());
    }

    @Override
    public FoundFrames find(FindQuery query) {
        FoundFrames.Collector collector = new FoundFrames.Collector(query);
        try {
            List<String> problems = index().forEach(FoundInRoll.by(query), roll -> {
                roll.frames().forEach(collector::take);
                return true;
            });
            return collector.found(problems);
        } catch (IOException e) {
            return collector.found(List.of("the rolls cannot be read: " + IoErrorText.words(e)));
        }
    }

    /** A draft is a help and no record: nothing that was logged hangs on it. */
    @Override
    public void draft(String text) {
        write(it -> it.draft(text));
    }
}
