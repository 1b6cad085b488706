package takeup.drafting;

import java.util.List;
import java.util.Optional;
import takeup.order.ExposedRoll;
import takeup.order.Lab;
import takeup.order.LeftInCamera;
import takeup.order.Order;
import takeup.order.Sender;

/**
 * What a new order can be made from, as the data folder holds it.
 *
 * @param rolls finished rolls that are in no order
 * @param loaded rolls that are still in a camera and in no order
 * @param earlier the orders so far, oldest first
 * @param labs the labs that there are files for, never none
 * @param usualLab the key of the lab that it goes to if none is named
 * @param sender who sends it, where that was said once
 * @param problems what could not be read
 */
public record OrderSource(
        List<ExposedRoll> rolls,
        List<LeftInCamera> loaded,
        List<Order> earlier,
        List<Lab> labs,
        String usualLab,
        Optional<Sender> sender,
        List<String> problems) {
    public OrderSource {
        rolls = List.copyOf(rolls);
        loaded = List.copyOf(loaded);
        earlier = List.copyOf(earlier);
        labs = List.copyOf(labs);
        problems = List.copyOf(problems);
    }

    /** The lab of that key. */
    Optional<Lab> lab(String key) {
        return labs.stream().filter(it -> it.key().equals(key)).findFirst();
    }
}
