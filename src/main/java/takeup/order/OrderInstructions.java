package takeup.order;

import java.util.Optional;

/**
 * What holds for all rolls of an order.
 *
 * @param reference the photographer's own words for it
 * @param client for whom, where that was asked for
 * @param flies whether the parcel goes by air, or travels with somebody who flies
 * @param wishes what the lab is asked for
 * @param sender whose film it is, where that is known
 */
public record OrderInstructions(
        Optional<String> reference, Optional<String> client, boolean flies, Wishes wishes, Optional<Sender> sender) {
    /** Without client and sender; a blank reference counts as none. */
    public static OrderInstructions of(Optional<String> reference, boolean flies, Wishes wishes) {
        return new OrderInstructions(
                reference.filter(it -> !it.isBlank()), Optional.empty(), flies, wishes, Optional.empty());
    }

    OrderInstructions with(String clients) {
        return new OrderInstructions(reference, Optional.of(clients), flies, wishes, sender);
    }

    /** With the sender; one of whom nothing is known is none. */
    public OrderInstructions from(Optional<Sender> whose) {
        return new OrderInstructions(reference, client, flies, wishes, whose.filter(it -> !it.isNobody()));
    }
}
