package takeup.dispatch;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.json.Json;
import takeup.prompt.CommandRejected;

/** {@code quit}: leaves the program. */
public final class QuitCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("quit", "leaves; everything is on disk")
            .form("quit", "leaves once all is on disk")
            .form("quit yes", "leaves also while something is NOT SAVED, and prints it")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return quit(arguments, context);
    }

    private static Outcome quit(Arguments arguments, CommandContext context) {
        boolean isAnyway = arguments.rest().equals(List.of("yes"));
        if (!arguments.rest().isEmpty() && !isAnyway) {
            throw new CommandRejected("quit stands alone; quit yes leaves also while something is not saved");
        }
        return context.shows(
                new ScreenAction.Quit(isAnyway ? ScreenAction.Leaving.ANYWAY : ScreenAction.Leaving.WHEN_SAVED),
                "state",
                "Left; everything is on disk.",
                Json.object());
    }
}
