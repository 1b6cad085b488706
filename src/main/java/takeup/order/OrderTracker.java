package takeup.order;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.text.English;

/**
 * Where rolls are, by the orders that there are, and what is due.
 *
 * @param orders all orders, oldest first
 */
public record OrderTracker(List<Order> orders) {
    public OrderTracker {
        orders = List.copyOf(orders);
    }

    /** The order that a roll is in, the newest one that was not withdrawn. */
    public Optional<Order> order(String roll) {
        Optional<Order> found = Optional.empty();
        for (Order order : orders) {
            if (!order.withdrawn() && order.holds(roll)) {
                found = Optional.of(order);
            }
        }
        return found;
    }

    /** Where a roll is that came out of the camera: {@code exposed}, {@code at the lab since 2026-09-14 (ORD-001)}. */
    public String words(String roll) {
        return order(roll)
                .map(it -> it.stage(roll).where()
                        + it.last(roll).map(step -> " since " + step.on()).orElse("") + " (" + it.order() + ")")
                .orElse("exposed");
    }

    /** Where it is, without date and order: {@code exposed}, {@code at the lab}. */
    public String stage(String roll) {
        return order(roll).map(it -> it.stage(roll).where()).orElse("exposed");
    }

    /** What is due today, each one sentence. */
    public List<String> due(LocalDate today) {
        List<String> due = new ArrayList<>();
        for (Order order : orders) {
            if (!order.withdrawn()) {
                due(order, today, due);
            }
        }
        return due;
    }

    private static void due(Order order, LocalDate today, List<String> due) {
        long waited = ChronoUnit.DAYS.between(order.madeAt().toLocalDate(), today);
        if (!order.isSent() && waited > order.lab().deadlines().sendWithin()) {
            due.add(order.order() + " was made " + waited
                    + " days ago and has not gone to the lab: exposed film fades, so send it, or say takeup order mark "
                    + order.order() + " sent");
        }
        Optional<LocalDate> scans = Optional.empty();
        for (OrderedRoll roll : order.rolls()) {
            Optional<LocalDate> since = order.last(roll.roll())
                    .filter(it -> it.stage() == Stage.SCANS)
                    .map(Order.Progress::on);
            scans = since.isPresent() && (scans.isEmpty() || since.get().isBefore(scans.get())) ? since : scans;
        }
        if (scans.isPresent()) {
            kept(
                    order.order(),
                    "the scans are deleted",
                    ": save them before",
                    scans.get(),
                    order.lab().deadlines().scansKept(),
                    today,
                    due);
            if (order.instructions().wishes().of(Wish.NEGATIVES).isEmpty()) {
                kept(
                        order.order(),
                        "negatives that nobody asked for are destroyed",
                        ": ask for them before",
                        scans.get(),
                        order.lab().deadlines().negativesKept(),
                        today,
                        due);
            }
        }
    }

    private static void kept(
            String order,
            String what,
            String remedy,
            LocalDate from,
            OptionalInt days,
            LocalDate today,
            List<String> due) {
        if (days.isPresent()) {
            LocalDate end = from.plusDays(days.getAsInt());
            long left = ChronoUnit.DAYS.between(today, end);
            due.add(order + ": " + what + " on " + end + ", "
                    + (left < 0
                            ? -left + (left == -1 ? " day" : " days") + " ago; ask at once"
                            : left == 0
                                    ? "today" + remedy.replace(" before", " now")
                                    : "in " + English.count(left, "day") + remedy));
        }
    }

    /** The same, with the days within which the lab of the last order wants film to be sent. */
    public Optional<String> waiting(Map<String, LocalDate> finished, LocalDate today) {
        return waiting(
                finished,
                today,
                orders.isEmpty()
                        ? Lab.WAIT
                        : orders.get(orders.size() - 1).lab().sendWithinDays());
    }

    /**
     * Exposed rolls in no order that have waited longer than so many days, as one sentence; empty if none has.
     *
     * @param finished the finished rolls and the days on which they came out of the camera
     */
    public Optional<String> waiting(Map<String, LocalDate> finished, LocalDate today, int days) {
        List<String> names = new ArrayList<>();
        finished.forEach((roll, since) -> {
            long waited = ChronoUnit.DAYS.between(since, today);
            if (waited > days && order(roll).isEmpty()) {
                names.add(roll + " for " + waited + " days");
            }
        });
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of("exposed and in no order: " + String.join(", ", names)
                        + "; exposed film fades with time and heat, so send it soon");
    }

    /** Rolls of an order whose files have changed since, each one sentence. */
    public static List<String> corrected(Order order, List<ExposedRoll> now) {
        List<String> corrected = new ArrayList<>();
        for (OrderedRoll ordered : order.rolls()) {
            for (ExposedRoll roll : now) {
                if (roll.roll().equals(ordered.roll()) && roll.revision() > ordered.revision()) {
                    boolean isOther = !roll.development().equals(ordered.development());
                    corrected.add(ordered.roll() + " was corrected after it was ordered (revision " + ordered.revision()
                            + ", now " + roll.revision() + ")"
                            + (isOther
                                    ? ": it says "
                                            + PrintedText.of(roll.development().process()) + ", "
                                            + roll.development().words() + " now, and the order says " + ordered.words()
                                    : ""));
                }
            }
        }
        return corrected;
    }
}
