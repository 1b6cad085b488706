package takeup.loading;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;

/** {@code routine off}: the three looks after loading. */
public final class RoutineCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "routine", "three looks after loading: on, off, skip; alone: what is asked")
            .usage("routine off")
            .form("routine off", "no looks after loading, also on the days to come")
            .form("routine on", "after the first roll of the day in each camera or back: film, meter, is it moving?")
            .form("routine skip", "leaves out what is asked now; Esc does it too")
            .form("routine", "what is asked now");

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return LoadCheckAnswer.routine(context, arguments.rest());
    }
}
