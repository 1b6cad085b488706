package takeup.framing;

import java.util.OptionalDouble;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.exposure.Stops;
import takeup.prompt.CommandRejected;
import takeup.report.AdviceJson;
import takeup.report.ExposuresText;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/** {@code double}, {@code double 3}: the next exposures go on the same frame, and are judged together at the last. */
public final class DoubleCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("double", "the next exposure goes on the same frame")
            .form("double", "the frame gets one exposure more")
            .form("double 3", "it gets three in all")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        if (arguments.rest().isEmpty()) {
            arguments.alone();
        }
        Roll roll = context.roll();
        Frame frame = roll.newest()
                .orElseThrow(() -> new CommandRejected("no frame on " + roll.id() + " yet to expose twice"));
        if (roll.doubleAwaited() && arguments.rest().isEmpty()) {
            throw new CommandRejected("the next exposure goes on frame " + frame.number() + " already");
        }
        if (frame.kind() == Frame.Kind.BLANK) {
            throw new CommandRejected(
                    "frame " + frame.number() + " is blank: fix " + frame.number() + " exposed, if it was not");
        }
        int made = 1 + frame.further().size();
        int all = arguments.rest().isEmpty() ? made + 1 : count(arguments.one("double, double 3"), made);
        Reply reply = context.reply(context.on(roll, new RollEvent.DoubleAnnounced(all - made)));
        Roll now = reply.roll(roll.id());
        Frame open = now.newest().orElseThrow();
        double bias = ExposuresText.biasPerPart(all);
        return reply.event("fix")
                .says(
                        "The next exposure goes on frame " + frame.number() + " of " + roll.id() + " again",
                        ": " + ExposuresText.soFar(now, open).orElseThrow() + " so far. For " + all
                                + " equal parts: bias -" + Stops.tenths(bias).replaceAll("\\.0$", "") + " each.")
                .fields(CommandContext.fields(now)
                        .and("frame", frame.number())
                        .and("exposures", made)
                        .and("exposuresInAll", all)
                        .and("soFarStops", AdviceJson.exact(ExposureResult.part(now, open)))
                        .and("biasPerPartStops", AdviceJson.exact(bias))
                        .and("errorStops", OptionalDouble.empty()))
                .accepted();
    }

    private static int count(String word, int made) {
        if (!word.matches("[1-9][0-9]?")) {
            throw new CommandRejected(word + " is no count of exposures on one frame: double, double 3");
        }
        int all = Integer.parseInt(word);
        if (all <= made) {
            throw new CommandRejected(
                    "the frame has " + made + " of " + all + " already: double " + (made + 1) + " adds one");
        }
        return all;
    }
}
