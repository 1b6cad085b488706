package takeup.order;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.text.English;

/** Where rolls are, by the orders that there are, and what is due. */
public final class OrderTracker {
    /** So many rolls that wait are named; the rest is a number. */
    private static final int NAMED = 10;

    private final List<Order> orders;
    private final Map<String, Order> byRoll = new HashMap<>();

    /** @param orders all orders, oldest first */
    public OrderTracker(List<Order> orders) {
        this.orders = List.copyOf(orders);
        for (Order order : orders) {
            if (!order.withdrawn()) {
                order.rolls().forEach(it -> byRoll.put(it.roll(), order));
            }
        }
    }

    /** The order that a roll is in, the newest one that was not withdrawn. */
    public Optional<Order> order(String roll) {
        return Optional.ofNullable(byRoll.get(roll));
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
        Optional<LocalDate> scans = order.rolls().stream()
                .flatMap(it -> order.last(it.roll()).stream())
                .filter(it -> it.stage() == Stage.SCANS)
                .map(Order.Progress::on)
                .min(Comparator.naturalOrder());
        if (scans.isEmpty()) {
            return;
        }
        Deadlines deadlines = order.lab().deadlines();
        ending(scans.get(), deadlines.scansKept(), today)
                .ifPresent(it -> due.add(order.order() + ": the scans are deleted " + it.words("save them")));
        if (order.instructions().wishes().of(Wish.NEGATIVES).isEmpty()) {
            ending(scans.get(), deadlines.negativesKept(), today)
                    .ifPresent(it -> due.add(order.order() + ": negatives that nobody asked for are destroyed "
                            + it.words("ask for them")));
        }
    }

    /** A day on which something ends, and how many days are left until then. */
    private record Ending(LocalDate on, long left) {
        String words(String remedy) {
            if (left < 0) {
                return "on " + on + ", " + English.count(-left, "day") + " ago; ask at once";
            }
            return "on " + on + ", "
                    + (left == 0
                            ? "today: " + remedy + " now"
                            : "in " + English.count(left, "day") + ": " + remedy + " before");
        }
    }

    private static Optional<Ending> ending(LocalDate from, OptionalInt days, LocalDate today) {
        if (days.isEmpty()) {
            return Optional.empty();
        }
        LocalDate end = from.plusDays(days.getAsInt());
        return Optional.of(new Ending(end, ChronoUnit.DAYS.between(today, end)));
    }

    /** Takes exposed rolls one by one, and says which in no order have waited longer than the last lab wants. */
    public final class Waiting {
        private final LocalDate today;
        private final int days = orders.isEmpty()
                ? Lab.WAIT
                : orders.get(orders.size() - 1).lab().deadlines().sendWithin();
        private final FirstFew waiting = new FirstFew();

        private Waiting(LocalDate today) {
            this.today = today;
        }

        /**
         * A finished roll.
         *
         * @param on the day on which it came out of the camera
         */
        public void add(String roll, LocalDate on) {
            long waited = ChronoUnit.DAYS.between(on, today);
            if (waited > days && order(roll).isEmpty()) {
                waiting.add(roll + " for " + waited + " days");
            }
        }

        /** One sentence on all of them; empty if none has waited so long. */
        public Optional<String> sentence() {
            return waiting.words()
                    .map(it -> "exposed and in no order: " + it
                            + "; exposed film fades with time and heat, so send it soon");
        }
    }

    /** Which exposed rolls have waited too long on that day, of those that it is told of. */
    public Waiting waiting(LocalDate today) {
        return new Waiting(today);
    }

    /** The first of many rolls, so that a line of them can be read. */
    public static final class FirstFew {
        private final List<String> named = new ArrayList<>();
        private int more;

        public void add(String roll) {
            if (named.size() < NAMED) {
                named.add(roll);
            } else {
                more++;
            }
        }

        /** {@code R0001, R0002 and 40 more}; empty where there is none. */
        public Optional<String> words() {
            return named.isEmpty()
                    ? Optional.empty()
                    : Optional.of(String.join(", ", named)
                            + (more == 0 ? "" : " and " + more + " more (takeup order list --json names all)"));
        }
    }

    /** Rolls of an order whose files have changed since, each one sentence. */
    public static List<String> corrected(Order order, List<ExposedRoll> now) {
        Map<String, OrderedRoll> ordered = new HashMap<>();
        order.rolls().forEach(it -> ordered.put(it.roll(), it));
        List<String> corrected = new ArrayList<>();
        for (ExposedRoll roll : now) {
            Optional.ofNullable(ordered.get(roll.roll()))
                    .flatMap(it -> corrected(it, roll))
                    .ifPresent(corrected::add);
        }
        return corrected;
    }

    /** What is to be said of a roll whose file has changed since it was ordered; empty if nothing is. */
    public static Optional<String> corrected(OrderedRoll ordered, ExposedRoll roll) {
        if (roll.revision() <= ordered.revision()) {
            return Optional.empty();
        }
        String what = roll.development().equals(ordered.development())
                ? ""
                : ": it says " + PrintedText.of(roll.development().process()) + ", "
                        + roll.development().words() + " now, and the order says " + ordered.words();
        return Optional.of(ordered.roll() + " was corrected after it was ordered (revision " + ordered.revision()
                + ", now " + roll.revision() + ")" + what);
    }
}
