package takeup.loading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.history.RollsOfDay;
import takeup.prompt.RollListParser;
import takeup.report.DayEnd;
import takeup.report.DayEndJson;
import takeup.report.DayEndText;
import takeup.roll.RollId;

/**
 * {@code day-end [ROLLS]}: where every roll of the day is; with the numbers of those that are in the hand, which are
 * not.
 */
public final class DayEndCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "day-end", "where every roll of the day is; with the rolls that you hold: which are missing")
            .usage("day-end", "day-end r1 r2 r4-r7")
            .form(
                    "day-end",
                    "every roll of the day: closed, in a camera, or missing; what is odd; what to write on each")
            .form("day-end r1 r2 r4-r7", "these are in your hand: which are not?")
            .with(CommandInfo.Trait.SHOWS_ONLY, CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        List<String> words = arguments.rest();
        Optional<Set<RollId>> held = words.isEmpty()
                ? Optional.empty()
                : Optional.of(RollListParser.read(words, Optional.empty(), context::rollNamed));
        RollsOfDay.unread(context.state(), context.now(), context.letters(), Set.of())
                .ifPresent(it -> {
                    throw new CommandContext.RollNotRead(it);
                });
        DayEnd end = DayEnd.of(context.state(), context.now(), context.letters(), held);
        String typed = String.join(" ", words);
        return context.shows(
                new ScreenAction.ShowDayEnd(held),
                "day-end",
                DayEndText.sentence(end),
                DayEndJson.of(end).and("held", typed));
    }
}
