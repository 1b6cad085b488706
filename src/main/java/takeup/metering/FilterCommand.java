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
import takeup.kit.Filter;

/** {@code filter yellow}: what is on the lens. */
public final class FilterCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("filter", "what is on the lens, and the light it takes")
            .usage("filter yellow and nd0.9", "filter off")
            .form("filter yellow", "by its name, with its usual factor")
            .form("filter yellow 3x", "with this filter's own factor")
            .form("filter +1.5", "by the stops that it takes")
            .form("filter nd0.9", "grey, by its density; nd8 by its number")
            .form("filter yellow and nd0.9", "two on each other")
            .form("filter off", "none")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return SettingCommands.filter(context, arguments.rest());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.with(Filter.names(), "off", "and");
    }
}
