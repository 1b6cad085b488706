package takeup.order;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import takeup.text.English;

/**
 * An order to a lab: ORD-001.
 *
 * @param order its number
 * @param version when it was made, and how often it was changed since
 * @param lab whom it goes to
 * @param instructions what is wished of the whole order
 * @param parcel which parcel of how many it is
 * @param rolls in the order in which they were numbered
 * @param checks what the checks found before it went
 * @param progress what became of it, oldest first
 */
public record Order(
        String order,
        Version version,
        Recipient lab,
        OrderInstructions instructions,
        Optional<Parcel> parcel,
        List<OrderedRoll> rolls,
        List<OrderCheck> checks,
        List<Progress> progress) {
    public Order {
        rolls = List.copyOf(rolls);
        checks = List.copyOf(checks);
        progress = List.copyOf(progress);
    }

    /**
     * Which state of an order it is.
     *
     * @param revision rises with each change of the order
     * @param madeAt when it was made
     * @param withdrawn whether it was taken back before it went
     */
    record Version(int revision, OffsetDateTime madeAt, boolean withdrawn) {
        Version next() {
            return new Version(revision + 1, madeAt, withdrawn);
        }
    }

    /**
     * The lab as it was when the order was made.
     *
     * @param asks what its form asks of each roll
     * @param paper A4 or Letter
     */
    public record Recipient(String key, String name, List<String> asks, String paper, Deadlines deadlines) {
        public Recipient {
            asks = List.copyOf(asks);
        }

        static Recipient of(Lab lab) {
            return new Recipient(
                    lab.key(), lab.name(), lab.form().asks(), lab.form().paper(), lab.deadlines());
        }

        boolean asksFor(FormColumn column) {
            return asks.contains(column.field());
        }
    }

    /**
     * One of several parcels that hold what belongs together.
     *
     * @param number from 1
     * @param of how many there are
     * @param others the orders of the others
     */
    public record Parcel(int number, int of, List<String> others) {
        public Parcel {
            others = List.copyOf(others);
        }

        /** {@code parcel 1 of 2; the other is ORD-002}. */
        String words() {
            return "parcel " + number + " of " + of
                    + (others.isEmpty()
                            ? ""
                            : "; the other" + English.agree(others.size(), " is ", "s are ")
                                    + String.join(", ", others));
        }
    }

    /**
     * Rolls came to a stage.
     *
     * @param stage which
     * @param on the day
     * @param rolls which of them; none means all
     */
    public record Progress(Stage stage, LocalDate on, List<String> rolls) {
        public Progress {
            rolls = List.copyOf(rolls);
        }
    }

    /** A new order. */
    public static Order of(
            String number,
            OffsetDateTime at,
            Lab lab,
            OrderInstructions instructions,
            List<ExposedRoll> rolls,
            List<OrderCheck> checks,
            Set<OrderedRoll.Extra> extras) {
        String clients = rolls.stream()
                .flatMap(it -> it.shoot().client().stream())
                .filter(it -> !it.isBlank())
                .distinct()
                .collect(Collectors.joining(", "));
        boolean isNamed = extras.contains(OrderedRoll.Extra.CLIENT) && !clients.isEmpty();
        return new Order(
                number,
                new Version(1, at, false),
                Recipient.of(lab),
                isNamed ? instructions.with(clients) : instructions,
                Optional.empty(),
                rolls.stream().map(it -> OrderedRoll.of(it, lab, extras)).toList(),
                checks,
                List.of());
    }

    /** The order that a file of format takeup-order holds; the file is named in what is wrong with it. */
    public static Order read(String file, String json) {
        return JsonOrder.read(file, json);
    }

    /** The file of the order, ending in a line feed; it names the program's version. */
    public String json(String programVersion) {
        return JsonOrder.text(this, programVersion);
    }

    public int revision() {
        return version.revision;
    }

    public OffsetDateTime madeAt() {
        return version.madeAt;
    }

    /** Whether it was taken back before it went. */
    public boolean withdrawn() {
        return version.withdrawn;
    }

    /** The photographer's own words for it. */
    public Optional<String> reference() {
        return instructions.reference();
    }

    /** Whether it holds a roll. */
    public boolean holds(String roll) {
        return rolls.stream().anyMatch(it -> it.roll().equals(roll));
    }

    /** The rolls of this order among some others, in the order's order. */
    public List<ExposedRoll> rollsAmong(List<ExposedRoll> others) {
        return rolls.stream()
                .map(OrderedRoll::roll)
                .distinct()
                .flatMap(number ->
                        others.stream().filter(it -> it.roll().equals(number)).limit(1))
                .toList();
    }

    /** The last step that a roll came to; empty while it is ordered and no more. */
    public Optional<Progress> last(String roll) {
        return last(roll, it -> true).filter(it -> it.stage() != Stage.ORDERED);
    }

    /** The last step of a roll to another stage than this one. */
    public Optional<Progress> lastOther(String roll, Stage than) {
        return last(roll, it -> it != than);
    }

    private Optional<Progress> last(String roll, Predicate<Stage> which) {
        return progress.stream()
                .filter(it -> which.test(it.stage())
                        && (it.rolls().isEmpty() || it.rolls().contains(roll)))
                .reduce((before, after) -> after);
    }

    /** Where a roll of the order is. */
    public Stage stage(String roll) {
        return last(roll).map(Progress::stage).orElse(Stage.ORDERED);
    }

    /** Whether any of it has gone to the lab. */
    public boolean isSent() {
        return rolls.stream().anyMatch(it -> stage(it.roll()) != Stage.ORDERED);
    }

    /** The rolls as they are printed, so that those of one tank are together: by process, then by number. */
    List<OrderedRoll> sorted() {
        return rolls.stream().sorted(OrderedRoll.BY_PROCESS).toList();
    }

    /** How many rolls go through which process and development, as they are sorted: {@code C-41, NORMAL} 3. */
    public Map<String, Integer> counts() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        sorted().forEach(it -> counts.merge(
                PrintedText.of(it.atLab().process()) + ", " + it.development().order(), 1, Integer::sum));
        return counts;
    }

    /** {@code 2 rolls: 2 C-41, NORMAL}. */
    public String summary() {
        List<String> parts = new ArrayList<>();
        counts().forEach((what, many) -> parts.add(many + " " + what));
        return English.count(rolls.size(), "roll") + ": " + String.join(" · ", parts);
    }

    /** With a step of progress. */
    public Order with(Progress step) {
        List<Progress> more = new ArrayList<>(progress);
        more.add(step);
        return changed(rolls, more);
    }

    /** With the lab's own number of a roll. */
    public Order withLabNumber(String roll, String number) {
        return changed(
                rolls.stream()
                        .map(it -> it.roll().equals(roll) ? it.withLabNumber(number) : it)
                        .toList(),
                progress);
    }

    private Order changed(List<OrderedRoll> all, List<Progress> steps) {
        return new Order(order, version.next(), lab, instructions, parcel, all, checks, steps);
    }

    /** Taken back: its rolls can be ordered again. */
    public Order asWithdrawn() {
        Version taken = new Version(revision() + 1, madeAt(), true);
        return new Order(order, taken, lab, instructions, parcel, rolls, checks, progress);
    }

    /** As one of several parcels, with some of its rolls. */
    public Order asParcel(String number, Parcel of, List<String> kept) {
        return new Order(
                number,
                number.equals(order) ? version.next() : new Version(1, madeAt(), withdrawn()),
                lab,
                instructions,
                Optional.of(of),
                rolls.stream().filter(it -> kept.contains(it.roll())).toList(),
                checks.stream()
                        .filter(it ->
                                it.rolls().isEmpty() || it.rolls().stream().anyMatch(kept::contains))
                        .toList(),
                progress);
    }
}
