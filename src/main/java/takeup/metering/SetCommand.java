package takeup.metering;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** {@code set 4 125}: the setting in hand, without a frame. */
public final class SetCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("set", "changes the setting in hand, logs nothing")
            .usage("set 4 125")
            .form("set 4 125", "aperture and time in hand")
            .form("set 50mm", "focal length of a zoom")
            .form("set 3m", "distance of the subject")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return SettingCommands.set(context, arguments.rest());
    }
}
