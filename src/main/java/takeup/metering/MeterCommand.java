package takeup.metering;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Outcome;
import takeup.history.ShootState;
import takeup.kit.Kit;

/** {@code meter hand}: which meter is in hand. */
public final class MeterCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("meter", "the meter in hand, and the time it is preset to")
            .usage("meter hand", "meter preset 1/125")
            .form("meter hand", "the meter in hand")
            .form("meter preset 1/125", "a meter that shows apertures, and the time it is preset to");

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return LightReading.meter(context, arguments.rest());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, state.kit().keys(Kit.Sort.METERS));
    }
}
