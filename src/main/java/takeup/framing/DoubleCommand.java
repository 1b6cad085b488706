package takeup.framing;

import java.util.OptionalDouble;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.prompt.CommandRejected;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/** {@code double}: the next exposure goes on the same frame. */
public final class DoubleCommand implements Command {
    public static final CommandInfo INFO =
            CommandInfo.of("double", "the next exposure goes on the same frame").needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        arguments.alone();
        Roll roll = context.roll();
        Frame frame = roll.newest()
                .orElseThrow(() -> new CommandRejected("no frame on " + roll.id() + " yet to expose twice"));
        if (roll.doubleAwaited()) {
            throw new CommandRejected("the next exposure goes on frame " + frame.number() + " already");
        }
        if (frame.kind() == Frame.Kind.BLANK) {
            throw new CommandRejected(
                    "frame " + frame.number() + " is blank: fix " + frame.number() + " exposed, if it was not");
        }
        return context.reply(context.on(roll, new RollEvent.DoubleAnnounced()))
                .event("fix")
                .says("The next exposure goes on frame " + frame.number() + " of " + roll.id() + " again", ".")
                .fields(CommandContext.fields(roll)
                        .and("frame", frame.number())
                        .and("errorStops", OptionalDouble.empty()))
                .accepted();
    }
}
