package takeup.command;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.history.RollsOfDay;
import takeup.prompt.CommandRejected;
import takeup.report.DayEnd;
import takeup.roll.RollId;

/**
 * {@code day-end [ROLLS]}: where every roll of the day is; with the numbers of those that are in the hand, which are
 * not.
 */
final class DayEndCommand {
    private final CommandContext context;

    DayEndCommand(CommandContext in) {
        this.context = in;
    }

    Outcome read(List<String> words) {
        Optional<Set<RollId>> held = words.isEmpty() ? Optional.empty() : Optional.of(held(words));
        RollsOfDay.unread(context.state, context.now, context.letters(), Set.of())
                .ifPresent(it -> {
                    throw new CommandContext.NotReadYet(it);
                });
        DayEnd end = DayEnd.of(context.state, context.now, context.letters(), held);
        return new Outcome.Accepted(
                List.of(),
                context.before,
                new Outcome.Answer(
                        "day-end", end.sentence(), end.json().and("held", String.join(" ", words)), List.of()),
                Outcome.ScreenAction.SHOW_DAY_END,
                List.of());
    }

    private static Set<RollId> held(List<String> words) {
        try {
            return DayEnd.held(words, Optional.empty());
        } catch (IllegalArgumentException e) {
            throw new CommandRejected(e.getMessage());
        }
    }
}
