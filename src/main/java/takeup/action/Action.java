package takeup.action;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import takeup.dispatch.CommandTable;
import takeup.history.ShootState;

/**
 * Something that can be done without typing: its name, the line that it begins, and what is asked for the rest.
 *
 * @param name in a few words
 * @param line the start of the line, or all of it
 * @param fields what is asked for the rest of the line
 * @param makesSense whether it is worth a row, beyond what its word needs
 * @param isLikely whether it is what comes next most likely
 */
record Action(
        String name,
        String line,
        BiFunction<ShootState, LocalTime, List<Field>> fields,
        Predicate<ShootState> makesSense,
        Predicate<ShootState> isLikely) {

    /** A line that is whole as it is. */
    static Action of(String name, String line) {
        return asking(name, line, s -> List.of());
    }

    static Action asking(String name, String line, Function<ShootState, List<Field>> fields) {
        return timed(name, line, (s, now) -> fields.apply(s));
    }

    /** The same where what is asked depends on the time of the day. */
    static Action timed(String name, String line, BiFunction<ShootState, LocalTime, List<Field>> fields) {
        return new Action(name, line, fields, s -> true, s -> false);
    }

    Action where(Predicate<ShootState> other) {
        return new Action(name, line, fields, other, isLikely);
    }

    Action likely(Predicate<ShootState> other) {
        return new Action(name, line, fields, makesSense, other);
    }

    /** Whether it can be done now: its word has what it needs. */
    boolean isPossible(ShootState s) {
        String word = line.isEmpty() ? "4 125" : line.split(" ")[0];
        return CommandTable.find(word)
                        .flatMap(it -> it.whyNot(s, Optional.empty()))
                        .isEmpty()
                && makesSense.test(s);
    }

    Choice choice(ShootState s, LocalTime now) {
        return new Choice(line, name, fields.apply(s, now));
    }
}
