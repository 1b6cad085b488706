package takeup.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.exposure.Stops;
import takeup.kit.Filter;
import takeup.text.Nearest;
import takeup.text.Plain;

/**
 * Reads filters: {@code yellow}, {@code yellow 3x}, {@code 3x}, {@code +1.5}, {@code nd0.9} (a density), {@code nd8}
 * (an ND number), stacked by {@code and}.
 */
public final class FilterParser {
    private FilterParser() {}

    /** The filters that all the words name; none for {@code off}. */
    public static List<Filter> read(List<String> words) {
        if (words.equals(List.of("off"))) {
            return List.of();
        }
        List<Filter> filters = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            int end = at;
            while (end < words.size() && !words.get(end).equals("and")) {
                end++;
            }
            filters.add(one(words.subList(at, end)));
            at = end + 1;
            if (at == words.size() && end < words.size()) {
                throw new CommandRejected("a filter is missing after and");
            }
        }
        if (filters.isEmpty()) {
            throw new CommandRejected("which filter? such as filter yellow, filter 3x, filter nd0.9, filter off");
        }
        if (filters.size() > 9) {
            throw new CommandRejected("nine filters at most");
        }
        return filters;
    }

    /** Whether a word can go on a filter that was begun: used where other words may follow. */
    static boolean goesOn(String word, boolean first) {
        return first || word.equals("and") || strength(word).isPresent();
    }

    private static Filter one(List<String> words) {
        if (words.isEmpty()) {
            throw new CommandRejected("a filter is missing beside and");
        }
        String name = words.get(0);
        Optional<Double> own = strength(name);
        if (words.size() == 1) {
            return own.isPresent()
                    ? new Filter(name.startsWith("+") ? name + (own.get() == 1 ? " stop" : " stops") : name, own.get())
                    : Filter.named(name).or(() -> neutral(name)).orElseThrow(() -> unknown(name));
        }
        if (words.size() == 2 && own.isEmpty()) {
            double stops = strength(words.get(1))
                    .orElseThrow(() -> new CommandRejected(
                            words.get(1) + " is no strength of a filter: 3x is a factor, +1.5 is stops"));
            if (name.equals("off") || Tokens.number(name).isPresent()) {
                throw new CommandRejected(
                        String.join(" ", words) + " is no filter: a name and its strength, such as yellow 3x");
            }
            return new Filter(name, stops);
        }
        throw new CommandRejected("too many words for one filter: " + String.join(" ", words) + "; and stacks two");
    }

    /** A factor {@code 3x} or stops {@code +1.5}, in stops. */
    static Optional<Double> strength(String word) {
        if (word.startsWith("+")) {
            return Fractions.read(word.substring(1)).map(it -> allowed(it, word));
        }
        if (word.endsWith("x")) {
            return Tokens.number(word.substring(0, word.length() - 1)).map(it -> {
                if (it < 1) {
                    throw new CommandRejected(word + ": a filter's factor is 1 or more");
                }
                return allowed(Stops.of(it), word);
            });
        }
        return Optional.empty();
    }

    /** {@code nd0.9} is a density, {@code nd8} an ND number. */
    private static Optional<Filter> neutral(String name) {
        if (!name.startsWith("nd")) {
            return Optional.empty();
        }
        String number = name.substring(2);
        return Tokens.number(number).map(it -> {
            if (number.indexOf('.') >= 0) {
                return new Filter(name, allowed(Stops.ofDensity(it), name));
            }
            if (it < 1) {
                throw new CommandRejected(name + ": an ND number is 1 or more; a density has its decimal, nd0.9");
            }
            return new Filter(name, allowed(Stops.of(it), name));
        });
    }

    private static double allowed(double stops, String word) {
        if (!(stops >= 0 && stops <= 30)) {
            throw new CommandRejected(word + ": a filter takes 0 to 30 stops");
        }
        return stops;
    }

    private static CommandRejected unknown(String name) {
        Optional<Double> bare = Tokens.number(name);
        if (bare.isPresent()) {
            return new CommandRejected("filter " + name + " could be a factor or stops: type " + name + "x ("
                    + (bare.get() >= 1 ? Stops.words(Stops.of(bare.get())) : "a factor") + ") or +" + name + " ("
                    + Plain.number(bare.get()) + " stops)");
        }
        Optional<Filter> near = Nearest.to(name, Filter.allNames()).flatMap(Filter::named);
        return new CommandRejected(name + " is no filter known here"
                + near.map(it -> "; did you mean " + it.name() + "? " + it.words())
                        .orElseGet(
                                () -> "; its factor makes it known: filter " + name + " 4x is one that takes 2 stops"));
    }
}
