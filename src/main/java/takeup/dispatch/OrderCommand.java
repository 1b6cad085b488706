package takeup.dispatch;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.history.ShootState;
import takeup.json.Json;

/** {@code order [WORDS]}: the lab order on the screen. What it holds is on the disk, so it is not read here. */
final class OrderCommand implements Command {
    private static final CommandInfo INFO = CommandInfo.of(
                    "order", "hands over: makes the lab order of the finished rolls, shows its sheet, writes it")
            .usage("order", "order without r3", "order write")
            .form("order", "shows it: rolls, lab, sizes, wishes, sender; Enter changes the row")
            .form("order without r3", "r3 stays here this time; order with r3 takes it in again")
            .form("order lab lab", "to another lab")
            .form("order scan-size large", "a wish; order no scan-size takes it out")
            .form("order name Ada Lindqvist", "who sends it; also account, telephone, email, address")
            .form("order sheet", "the sheet that goes with the film, to look at first")
            .form("order write", "writes order, sheet and labels")
            .form("order mark 1 sent", "where an order is: sent, scans, negatives; ordered takes it back")
            .with(CommandInfo.Trait.SHOWS_ONLY, CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return context.shows(
                new ScreenAction.MakeOrder(arguments.textAfterWords(1)),
                "state",
                "A lab order is made on the screen (F7), or with takeup order new.",
                Json.object());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(
                before, List.of("sheet", "write", "with", "without", "lab", "no", "scan-size", "name", "mark"));
    }
}
