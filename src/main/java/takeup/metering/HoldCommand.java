package takeup.metering;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.history.ShootState;

/** {@code hold f2.8}: what suggestions keep. */
public final class HoldCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("hold", "suggestions keep this aperture or time")
            .usage("hold f2.8", "hold 1/250", "hold off")
            .form("hold f2.8", "suggestions keep this aperture")
            .form("hold 1/250", "suggestions keep this time")
            .form("hold off", "neither is kept")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return SettingCommands.hold(context, arguments.rest());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, List.of("off"));
    }
}
