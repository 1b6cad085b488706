package takeup.loading;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.history.ShootState;

/** {@code condition torn at the rewind}: what the lab must know of a roll. */
public final class ConditionCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "condition", "what the lab must know: torn, opened, stuck, partial")
            .usage("condition torn at the rewind")
            .form("condition torn at the rewind", "what the lab must know: torn, opened, stuck, partial")
            .form("condition r7 opened", "of another roll")
            .needs(Need.ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return RollCommands.condition(context, arguments);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return List.of("torn", "opened", "stuck", "partial");
    }
}
