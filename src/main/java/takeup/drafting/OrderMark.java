package takeup.drafting;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.order.Order;
import takeup.order.OrderNumbers;
import takeup.order.OrderedRoll;
import takeup.order.Stage;
import takeup.prompt.CommandRejected;

/**
 * How far an order has come, as it is said on the screen: {@code order mark ORD-001 sent}.
 *
 * @param order the number of the order
 * @param stage what its rolls came to
 */
public record OrderMark(String order, Stage stage) {
    /** The word it begins with. */
    public static final String WORD = "mark";

    /** From the words behind {@code order}; what names no order of these or no stage is rejected. */
    public static OrderMark parse(String words, List<Order> orders) {
        String[] parts = words.strip().split("[ ]+");
        String example = "order mark " + newest(orders) + " sent; also " + String.join(", ", Stage.all());
        if (parts.length != 3) {
            throw new CommandRejected(example);
        }
        Optional<String> number = OrderNumbers.parse(parts[1])
                .filter(it -> orders.stream().anyMatch(order -> order.order().equals(it)));
        if (number.isEmpty()) {
            throw new CommandRejected(parts[1] + " is not an order here. Try: " + example);
        }
        Stage stage = Stage.named(parts[2].toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new CommandRejected(
                        parts[2] + " is not a stage. It is one of " + String.join(", ", Stage.all())));
        return new OrderMark(number.get(), stage);
    }

    private static String newest(List<Order> orders) {
        return orders.isEmpty() ? "ORD-001" : orders.get(orders.size() - 1).order();
    }

    /** Why it cannot be so on that day: a roll came to another stage after it. */
    public Optional<String> whyNot(Order found, LocalDate day) {
        return found.rolls().stream()
                .map(OrderedRoll::roll)
                .flatMap(roll -> found
                        .lastOther(roll, stage)
                        .filter(it -> day.isBefore(it.on()))
                        .map(it -> day + " is before " + it.on() + ", when " + roll + " was marked "
                                + it.stage().word())
                        .stream())
                .findFirst();
    }

    /** The order with this said of it. */
    public Order on(Order found, LocalDate day) {
        return found.with(new Order.Progress(stage, day, List.of()));
    }
}
