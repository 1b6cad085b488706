package takeup.files;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import takeup.console.CommandFailed;
import takeup.disk.IoErrorText;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderMark;
import takeup.drafting.OrderSource;
import takeup.index.ArchiveIndex;
import takeup.message.Message;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.LeftInCamera;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.report.RollSummary;

/**
 * What an order on the screen is made from, and the order itself, in the data folder.
 *
 * @param index what is known of its rolls, so that not each of them is read
 */
public record OrderSources(Path data, ArchiveIndex index) {
    private OrderFolder folder() {
        return new OrderFolder(data, false);
    }

    /** What waits for an order; a sentence where that cannot be told. */
    Message read() {
        try {
            OrderFolder.Found<Order> earlier = folder().allOrders();
            return earlier.problems().isEmpty()
                    ? new Message.OrderRead(source(earlier.all()))
                    : new Message.Notice("an order cannot be read, and its rolls could be ordered twice: "
                            + earlier.problems().get(0));
        } catch (IOException e) {
            return new Message.Notice("the rolls cannot be read: " + IoErrorText.words(e));
        } catch (CommandFailed e) {
            return new Message.Notice(e.getMessage());
        }
    }

    private OrderSource source(List<Order> earlier) throws IOException {
        OrderTracker where = new OrderTracker(earlier);
        OrderFolder.Found<ExposedRoll> free =
                folder().rolls(index, it -> where.order(it).isEmpty());
        LabFiles files = LabFiles.of(data);
        List<Lab> labs = files.keys().stream()
                .flatMap(it -> files.lab(it).lab().stream())
                .toList();
        if (labs.isEmpty()) {
            throw new CommandFailed(1, "an order needs a lab, and none can be read: takeup check says why");
        }
        return new OrderSource(
                free.all().stream().filter(ExposedRoll::isFinished).toList(),
                leftInCamera(free.all().stream().filter(ExposedRoll::isLoaded).toList()),
                earlier,
                labs,
                usualLab(files, earlier),
                new SenderFile(data).read(),
                free.problems());
    }

    /** The lab of the last order, or the usual one. */
    public static String usualLab(LabFiles labs, List<Order> earlier) {
        return earlier.isEmpty()
                ? labs.usual()
                : Optional.of(earlier.get(earlier.size() - 1).lab().key())
                        .filter(labs.keys()::contains)
                        .orElseGet(labs::usual);
    }

    private List<LeftInCamera> leftInCamera(List<ExposedRoll> loaded) throws IOException {
        if (loaded.isEmpty()) {
            return List.of();
        }
        List<RollSummary> all = AllRolls.summaries(index).rolls();
        Map<String, RollSummary> byNumber = new HashMap<>();
        all.forEach(it -> byNumber.put(it.id().toString(), it));
        return loaded.stream()
                .map(it -> new LeftInCamera(it, loadedSince(byNumber.get(it.roll()), all)))
                .toList();
    }

    /** The first roll that went into the same camera and back after another one. */
    private static Optional<String> loadedSince(RollSummary roll, List<RollSummary> all) {
        Comparator<RollSummary> inOrder =
                Comparator.comparing(RollSummary::loadedAt).thenComparing(RollSummary::id);
        return all.stream()
                .filter(it -> it.place().equals(roll.place()) && inOrder.compare(it, roll) > 0)
                .map(it -> it.id().toString())
                .min(Comparator.naturalOrder());
    }

    /** Rolls that were not unloaded, and what was loaded into their cameras since; only then are other rolls read. */
    public static List<LeftInCamera> leftInCamera(OrderFolder folder, List<ExposedRoll> loaded) throws IOException {
        if (loaded.isEmpty()) {
            return List.of();
        }
        Map<String, String> since = new ConcurrentHashMap<>();
        folder.rolls(it -> true, later -> {
            loaded.stream()
                    .filter(later::isLoadedAfter)
                    .forEach(it -> since.merge(
                            it.roll(), later.roll(), (one, other) -> one.compareTo(other) <= 0 ? one : other));
            return Optional.empty();
        });
        return loaded.stream()
                .map(it -> new LeftInCamera(it, Optional.ofNullable(since.get(it.roll()))))
                .toList();
    }

    /** Writes the order, and the sender where that was changed; whoever calls it holds the folder. */
    Message write(OrderDraft draft, OffsetDateTime at) {
        Message now = read();
        if (!(now instanceof Message.OrderRead fresh)) {
            return now;
        }
        OrderDraft last = draft.over(fresh.source());
        if (last.rolls().isEmpty()) {
            return new Message.Notice("nothing was ordered: no roll of this order waits any more");
        }
        try {
            if (last.isSenderChanged()) {
                new SenderFile(data).save(last.instructions().sender().orElseThrow());
            }
            Order order = last.order(at);
            folder().save(order);
            return new Message.OrderWritten(
                    order.order(), last.written(folder().file(order, ".html").toString()));
        } catch (IOException e) {
            return new Message.Notice("NOT WRITTEN, the order: " + IoErrorText.words(e));
        }
    }

    /** Says of an order how far it has come; whoever calls it holds the folder. */
    Message mark(OrderMark mark, LocalDate day) {
        try {
            Optional<Order> found = folder().allOrders().all().stream()
                    .filter(it -> it.order().equals(mark.order()))
                    .findFirst();
            if (found.isEmpty()) {
                return new Message.Notice(mark.order() + " is not among the orders any more");
            }
            Optional<String> whyNot = mark.whyNot(found.get(), day);
            if (whyNot.isPresent()) {
                return new Message.Notice(whyNot.get());
            }
            folder().save(mark.on(found.get(), day));
            return new Message.OrderMarked(
                    mark.order() + ": " + mark.stage().where() + " since " + day,
                    source(folder().allOrders().all()));
        } catch (IOException e) {
            return new Message.Notice("NOT SAVED, where " + mark.order() + " is: " + IoErrorText.words(e));
        } catch (CommandFailed e) {
            return new Message.Notice(e.getMessage());
        }
    }
}
