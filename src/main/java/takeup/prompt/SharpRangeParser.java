package takeup.prompt;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.SharpRange;

/** Reads what is to be sharp: {@code 2m-inf}, {@code 2-5m}, {@code 6ft-20ft}, and a circle of confusion. */
public final class SharpRangeParser {
    private static final List<String> ENDLESS = List.of("inf", "infinity", "endless");

    private SharpRangeParser() {}

    /** Whether a word is meant as a range and not as one distance. */
    public static boolean isRange(String word) {
        return word.indexOf('-') > 0;
    }

    /** The range that a word names. */
    public static SharpRange read(String word) {
        int dash = word.indexOf('-');
        if (dash <= 0 || dash == word.length() - 1) {
            throw unclear(word);
        }
        String far = word.substring(dash + 1);
        String near = withUnit(word.substring(0, dash), far);
        double from = distance(near, word);
        if (ENDLESS.contains(far)) {
            return new SharpRange(from, OptionalDouble.empty());
        }
        double to = distance(far, word);
        if (!(to > from)) {
            throw new CommandRejected(word + ": the near distance first, such as 2m-5m");
        }
        return new SharpRange(from, OptionalDouble.of(to));
    }

    /** The unit of the far distance counts for both: {@code 2-5m}. */
    private static String withUnit(String near, String far) {
        return Tokens.number(near).isPresent() ? near + (far.endsWith("ft") ? "ft" : "m") : near;
    }

    private static double distance(String word, String all) {
        Token token = Tokens.token(word);
        if (!token.is(Token.Kind.METRES)) {
            throw unclear(all);
        }
        return FrameArguments.distance(token);
    }

    /** A circle of confusion in mm, if one is given: {@code coc 0.05mm}. */
    public static OptionalDouble circle(Optional<String> word) {
        if (word.isEmpty()) {
            return OptionalDouble.empty();
        }
        String number =
                word.get().endsWith("mm") ? word.get().substring(0, word.get().length() - 2) : word.get();
        double mm = Tokens.number(number)
                .filter(it -> it >= 0.001 && it <= 1)
                .orElseThrow(() ->
                        new CommandRejected(word.get() + " is no circle of confusion: 0.001 to 1 mm, such as 0.05mm"));
        return OptionalDouble.of(mm);
    }

    private static CommandRejected unclear(String word) {
        return new CommandRejected(word + " is no range: from near to far, such as 2m-inf or 2m-5m");
    }
}
