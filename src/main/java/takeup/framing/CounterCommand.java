package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code counter 9}: what the counter of the camera shows. */
public final class CounterCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("counter", "the camera's counter shows 9 for the next frame")
            .usage("counter 9")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return Correction.counter(context, arguments.rest());
    }
}
