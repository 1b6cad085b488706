package takeup.command;

import java.util.List;
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
        return LightCommands.meter(context, arguments.rest());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, state.kit().keys(Kit.Sort.METERS));
    }
}
