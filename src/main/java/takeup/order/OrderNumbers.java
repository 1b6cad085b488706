package takeup.order;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The numbers of orders: {@code ORD-001}, and from a thousand on {@code ORD-1000}. */
public final class OrderNumbers {
    private static final String LETTERS = "ORD-";

    private OrderNumbers() {}

    /** The next free number: {@code ORD-002} after {@code ORD-001}. */
    public static String next(List<String> taken) {
        return id(taken.stream().mapToInt(OrderNumbers::number).max().orElse(0) + 1);
    }

    private static String id(int number) {
        String digits = Integer.toString(number);
        return LETTERS + "000".substring(Math.min(3, digits.length())) + digits;
    }

    private static int number(String id) {
        return Integer.parseInt(id.substring(LETTERS.length()));
    }

    /** A number as it is typed: {@code ORD-001}, {@code ord1} or {@code 1}. */
    public static Optional<String> parse(String typed) {
        String word = typed.toUpperCase(Locale.ROOT);
        String digits = word.replaceFirst("^ORD-?", "");
        boolean isNumber =
                !digits.isEmpty() && digits.length() <= 6 && digits.chars().allMatch(it -> it >= '0' && it <= '9');
        return isNumber && Integer.parseInt(digits) > 0 ? Optional.of(id(Integer.parseInt(digits))) : Optional.empty();
    }
}
