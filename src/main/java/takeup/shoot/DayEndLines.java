package takeup.shoot;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.roll.RollId;

/**
 * {@code day-end [ROLLS]}: where every roll of the day is; with the numbers of those that are in the hand, which are
 * not.
 */
final class DayEndLines {
    private final Interpreter in;

    DayEndLines(Interpreter in) {
        this.in = in;
    }

    Outcome read(List<String> words) {
        Optional<Set<RollId>> held = words.isEmpty() ? Optional.empty() : Optional.of(held(words));
        DayRolls.unread(in.s, in.now, in.letters(), Set.of()).ifPresent(it -> {
            throw new Interpreter.NotReadYet(it);
        });
        DayEnd end = DayEnd.of(in.s, in.now, in.letters(), held);
        return new Outcome.Does(
                List.of(),
                in.original,
                new Outcome.Answer(
                        "day-end", end.sentence(), end.json().and("held", String.join(" ", words)), List.of()),
                Outcome.Act.SHOW_DAY_END,
                List.of());
    }

    private static Set<RollId> held(List<String> words) {
        try {
            return DayEnd.held(words, Optional.empty());
        } catch (IllegalArgumentException e) {
            throw new Refusal(e.getMessage());
        }
    }
}
