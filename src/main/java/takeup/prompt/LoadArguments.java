package takeup.prompt;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.exposure.FilmSpeed;
import takeup.kit.FilmSize;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.roll.RollChange;

/** Reads what {@code load} and {@code fix roll} take: stock, film size, index, development, frames. */
public final class LoadArguments {
    private LoadArguments() {}

    /**
     * What the words say.
     *
     * @param words behind {@code load} or {@code fix roll}
     * @param process what stands behind {@code process}, letter for letter
     */
    public static RollChange read(List<String> words, String process, Kit kit) {
        Optional<Stock> stock = Optional.empty();
        Optional<FilmSize> size = Optional.empty();
        Optional<FilmSpeed> index = Optional.empty();
        OptionalDouble push = OptionalDouble.empty();
        boolean named = false;
        OptionalInt frames = OptionalInt.empty();
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            Token token = Tokens.token(word);
            if (word.equals("push") || word.equals("pull") || word.equals("normal")) {
                if (push.isPresent()) {
                    throw new CommandRejected("development is said twice");
                }
                push = OptionalDouble.of(push(word, word.equals("normal") ? "" : next(words, ++at, word)));
            } else if (word.equals("frames")) {
                if (frames.isPresent()) {
                    throw new CommandRejected("frames is said twice");
                }
                String count = next(words, ++at, word);
                frames = OptionalInt.of(Tokens.number(count)
                        .filter(it -> it >= 1 && it <= 250 && it == Math.rint(it))
                        .map(Double::intValue)
                        .orElseThrow(() -> new CommandRejected("frames " + count + ": a roll holds 1 to 250 frames")));
            } else if (word.equals("process")) {
                if (process.isEmpty()) {
                    throw new CommandRejected("which process? process takes the rest of the line");
                }
                named = true;
                at = words.size();
            } else if (FilmSize.named(word).isPresent()) {
                if (size.isPresent()) {
                    throw new CommandRejected("two film sizes: " + size.get() + " and " + word);
                }
                size = FilmSize.named(word);
            } else if (token.is(Token.Kind.INDEX)) {
                if (index.isPresent()) {
                    throw new CommandRejected("two film speeds: @" + index.get() + " and " + word);
                }
                index = Optional.of(speed(token));
            } else if (token.is(Token.Kind.BARE)) {
                throw new CommandRejected(
                        word + " is no film size (" + FilmSize.words() + "); an index is typed @" + word);
            } else {
                if (stock.isPresent()) {
                    throw new CommandRejected("two stocks: " + stock.get().key() + " and " + word);
                }
                stock = Optional.of(
                        kit.stock(word).orElseThrow(() -> new CommandRejected(kit.whyNot(Kit.Sort.STOCKS, word))));
            }
        }
        return new RollChange(stock, size, index, push, named ? Optional.of(process) : Optional.empty(), frames);
    }

    public static FilmSpeed speed(Token token) {
        if (!(token.value() >= 0.8 && token.value() <= 102_400)) {
            throw new CommandRejected(token.text() + " is no film speed: @1 to @102400");
        }
        return new FilmSpeed(token.value());
    }

    /** Stops of development for {@code push N}, {@code pull N} or {@code normal}. */
    public static double push(String word, String number) {
        if (word.equals("normal")) {
            return 0;
        }
        double stops = Fractions.read(number)
                .filter(it -> it > 0 && it <= 5)
                .orElseThrow(() -> new CommandRejected(
                        word + " " + number + ": stops above 0 and up to 5, such as " + word + " 1"));
        return word.equals("push") ? stops : -stops;
    }

    private static String next(List<String> words, int at, String before) {
        if (at >= words.size()) {
            throw new CommandRejected("a number is missing after " + before);
        }
        return words.get(at);
    }
}
