package takeup.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.history.JournalStep;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.roll.Roll;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;

/**
 * Says at once where a line changes the development of a roll that a lab order names already: the lab goes by the
 * order.
 */
final class OrderedDevelopment {
    private final OrderFolder folder;

    OrderedDevelopment(OrderFolder folder) {
        this.folder = folder;
    }

    /** What a step makes wrong in an order, a sentence for each roll; most steps read no order. */
    List<String> remarks(JournalStep step, List<Roll> changed) {
        List<Roll> developed =
                changed.stream().filter(it -> isDeveloped(step, it)).toList();
        if (developed.isEmpty()) {
            return List.of();
        }
        OrderTracker orders = new OrderTracker(folder.allOrders().all());
        List<String> all = new ArrayList<>();
        for (Roll roll : developed) {
            orders.order(roll.id().toString()).map(it -> words(roll, it)).ifPresent(all::add);
        }
        return all;
    }

    private static boolean isDeveloped(JournalStep step, Roll roll) {
        return step.entries().stream()
                .filter(it -> it.isOn(roll.id()))
                .map(it -> it.as(RollEvent.RollCorrected.class).map(RollEvent.RollCorrected::change))
                .flatMap(Optional::stream)
                .anyMatch(OrderedDevelopment::isDevelopment);
    }

    private static boolean isDevelopment(RollChange change) {
        return change.pushStops().isPresent()
                || change.process().isPresent()
                || change.index().isPresent();
    }

    private static String words(Roll roll, Order order) {
        String id = roll.id().toString();
        String since = order.last(id).map(it -> " since " + it.on()).orElse("");
        return switch (order.stage(id)) {
            case ORDERED ->
                id + " is in " + order.order()
                        + ", which was not sent yet and says otherwise: withdraw it, and order anew";
            case SENT ->
                id + " is at the lab" + since + " (" + order.order() + "), and the order says otherwise: tell them "
                        + roll.film().developmentWords();
            case SCANS, NEGATIVES -> id + " is developed already (" + order.order() + ", back" + since + ")";
        };
    }
}
