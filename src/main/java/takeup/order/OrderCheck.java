package takeup.order;

import java.util.List;

/**
 * One thing to know before an order goes.
 *
 * @param code such as no-frames
 * @param isBlocking whether nothing goes before it was answered with yes
 * @param rolls the rolls that it is about; none means the order
 * @param text one sentence
 */
public record OrderCheck(String code, boolean isBlocking, List<String> rolls, String text) {
    public OrderCheck {
        rolls = List.copyOf(rolls);
    }
}
