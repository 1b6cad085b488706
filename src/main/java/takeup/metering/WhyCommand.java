package takeup.metering;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code why}: why the best setting is the best. */
public final class WhyCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("why", "why this setting is the best, and what else would do")
            .needs(Need.FILM, Need.SETTABLE_CAMERA, Need.LIGHT)
            .with(CommandInfo.Trait.SHOWS_ONLY);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return LightReading.why(context, arguments.rest());
    }
}
