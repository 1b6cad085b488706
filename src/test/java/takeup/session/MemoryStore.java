package takeup.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Assertions;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderMark;
import takeup.drafting.OrderSource;
import takeup.handoff.MadeBy;
import takeup.handoff.RollJson;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.kit.Kit;
import takeup.message.Message;
import takeup.message.SaveError;
import takeup.message.StepStore;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.LeftInCamera;
import takeup.order.Order;
import takeup.report.RollSummary;
import takeup.review.Review;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.search.FindQuery;
import takeup.search.FoundFrames;
import takeup.search.FrameRow;
import takeup.search.RollHead;

/** A data folder in memory: what was written, in order, and nothing more once it is full. */
public final class MemoryStore implements StepStore {
    private static final Lab LAB = Lab.of("lab", "labs/lab.json", """
                    {"name": "Harbour Lab", "processes": {"C-41": "C-41"}, "scanSizes": ["small", "medium", "large"],
                     "asks": ["stock"], "needs": ["scanSize"], "usual": {"scanSize": "medium"}, "paper": "A4",
                     "sendWithinDays": 14, "scansKeptDays": 30, "negativesKeptDays": 14}
                    """).lab().orElseThrow();

    private final Kit kit;
    private final List<JournalStep> written = new ArrayList<>();
    private final List<OrderDraft> ordered = new ArrayList<>();
    private final List<Order> orders = new ArrayList<>();
    private boolean isFull;

    public MemoryStore(Kit kit) {
        this.kit = kit;
    }

    /** From now on nothing more can be written, or all can again. */
    void full(boolean on) {
        isFull = on;
    }

    List<JournalStep> written() {
        return written;
    }

    @Override
    public Optional<SaveError> save(JournalStep step) {
        if (isFull) {
            return Optional.of(new SaveError("the disk is full", "the disk is full; free some space"));
        }
        Assertions.assertTrue(
                written.isEmpty() || written.get(written.size() - 1).step() < step.step(),
                "a step is written once, and in order");
        written.add(step);
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
        return new Message.Fetched(roll, stepsOf(roll), List.of());
    }

    /** A roll's own records, as its file holds them. */
    List<JournalStep> stepsOf(RollId roll) {
        List<JournalStep> steps = new ArrayList<>();
        for (JournalStep step : written) {
            List<JournalEntry> entries = step.entries().stream()
                    .filter(it -> it instanceof JournalEntry.OnRoll onRoll
                            && onRoll.roll().equals(roll))
                    .toList();
            if (!entries.isEmpty()) {
                steps.add(new JournalStep(step.step(), step.at(), entries));
            }
        }
        return steps;
    }

    @Override
    public RollList list() {
        return new RollList(
                Optional.of(ShootState.of(kit, written, Optional.empty(), Set.of()).rolls().values().stream()
                        .map(RollSummary::of)
                        .toList()),
                List.of());
    }

    List<OrderDraft> ordered() {
        return ordered;
    }

    @Override
    public Message readOrders() {
        List<ExposedRoll> rolls = ShootState.of(kit, written, Optional.empty(), Set.of()).rolls().values().stream()
                .map(it -> ExposedRoll.of(it.id().toString(), RollJson.text(it, MadeBy.version("test"))))
                .filter(it -> ordered.stream()
                        .noneMatch(order -> order.rolls().stream()
                                .anyMatch(other -> other.roll().equals(it.roll()))))
                .toList();
        return new Message.OrderRead(new OrderSource(
                rolls.stream().filter(ExposedRoll::isFinished).toList(),
                rolls.stream()
                        .filter(ExposedRoll::isLoaded)
                        .map(it -> new LeftInCamera(it, Optional.empty()))
                        .toList(),
                List.copyOf(orders),
                List.of(LAB),
                LAB.key(),
                Optional.empty(),
                List.of()));
    }

    @Override
    public Message writeOrder(OrderDraft draft, OffsetDateTime at) {
        ordered.add(draft);
        orders.add(draft.order(at));
        return new Message.OrderWritten(draft.order(at).order(), draft.written("orders/ORD-001.html"));
    }

    @Override
    public Message markOrder(OrderMark mark, OffsetDateTime at) {
        orders.replaceAll(it -> it.order().equals(mark.order()) ? mark.on(it, at.toLocalDate()) : it);
        return new Message.OrderMarked(
                mark.order() + ": " + mark.stage().where(), ((Message.OrderRead) readOrders()).source());
    }

    @Override
    public FoundFrames find(FindQuery query) {
        FoundFrames.Collector collector = new FoundFrames.Collector(query);
        ShootState.of(kit, written, Optional.empty(), Set.of())
                .rolls()
                .values()
                .forEach(roll -> FrameRow.lines(roll, Review.NONE)
                        .lines()
                        .map(it -> new FrameRow(RollHead.of(roll), it))
                        .filter(query::matches)
                        .forEach(collector::take));
        return collector.found(List.of());
    }

    @Override
    public void draft(String text) {
        // nothing is typed here that a crash could take away
    }
}
