package takeup.prompt;

import java.util.Optional;

/** Counts of stops as they are typed: {@code 1}, {@code 1.5}, {@code 1/3}, {@code 2/3}. */
public final class Fractions {
    private Fractions() {}

    /** The number; empty for anything else. */
    static Optional<Double> read(String text) {
        int slash = text.indexOf('/');
        if (slash < 0) {
            return Tokens.number(text);
        }
        Optional<Double> above = Tokens.number(text.substring(0, slash));
        Optional<Double> below = Tokens.number(text.substring(slash + 1));
        return above.isEmpty() || below.isEmpty() || below.get() == 0
                ? Optional.empty()
                : Optional.of(above.get() / below.get());
    }

    /** A number of stops whose sign was demanded: {@code +1/3}, {@code -1}, {@code 0}. */
    public static double signed(String text) {
        boolean plus = text.startsWith("+");
        boolean minus = text.startsWith("-");
        Optional<Double> number = read(plus || minus ? text.substring(1) : text);
        if (number.isEmpty() || number.get() > 20) {
            throw new CommandRejected(text + " is no number of stops: +1/3, -1 or 0");
        }
        if (!plus && !minus && number.get() != 0) {
            throw new CommandRejected(
                    "bias " + text + " needs its sign: +" + text + " is more light on the film, -" + text + " is less");
        }
        return minus && number.get() != 0 ? -number.get() : number.get();
    }
}
