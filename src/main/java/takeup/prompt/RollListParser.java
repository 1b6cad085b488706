package takeup.prompt;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import takeup.roll.RollId;

/** Several roll numbers as they are typed: {@code r1 r2 r4-r7}. */
public final class RollListParser {
    private static final int MOST = 999;

    private RollListParser() {}

    /**
     * The rolls that are named.
     *
     * @param letters those of a bare number, where one is allowed
     */
    public static Set<RollId> read(List<String> words, Optional<String> letters) {
        return read(words, letters, name -> Optional.empty());
    }

    /** The same, where a roll may be called by a name of the photographer's own too. */
    public static Set<RollId> read(
            List<String> words, Optional<String> letters, Function<String, Optional<RollId>> named) {
        Set<RollId> all = new LinkedHashSet<>();
        for (String word : words) {
            Optional<RollId> own = named.apply(word);
            if (own.isPresent()) {
                all.add(own.get());
                continue;
            }
            int dash = word.indexOf('-');
            RollId from = number(dash < 0 ? word : word.substring(0, dash), letters);
            RollId to = dash < 0 ? from : number(word.substring(dash + 1), Optional.of(from.letters()));
            if (!to.letters().equals(from.letters())
                    || to.number() < from.number()
                    || to.number() - from.number() > MOST) {
                throw new CommandRejected(word + " is no row of rolls: r4-r7");
            }
            for (int number = from.number(); number <= to.number(); number++) {
                all.add(new RollId(from.letters(), number));
            }
        }
        return all;
    }

    private static RollId number(String word, Optional<String> letters) {
        return RollId.parse(word)
                .or(() -> letters.flatMap(it -> RollId.parse(it + word)))
                .orElseThrow(() ->
                        new CommandRejected((word.isEmpty() ? "nothing" : word) + " is no roll number: r1 r2 r4-r7"));
    }
}
