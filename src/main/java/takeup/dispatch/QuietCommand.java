package takeup.dispatch;

import java.util.Arrays;
import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Outcome;
import takeup.day.DayEvent;
import takeup.history.ShootState;
import takeup.kit.Warning;
import takeup.prompt.CommandRejected;
import takeup.text.Nearest;

/** {@code quiet hand-held}: one warning is silenced for the day. */
public final class QuietCommand implements Command {
    public static final CommandInfo INFO =
            CommandInfo.of("quiet", "one warning silenced for the day").usage("quiet hand-held");

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return quiet(arguments, context);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, codes());
    }

    private static List<String> codes() {
        return Arrays.stream(Warning.Code.values()).map(Object::toString).toList();
    }

    private static Outcome quiet(Arguments arguments, CommandContext context) {
        String word = arguments.one("quiet hand-held");
        Warning.Code code = Warning.Code.named(word)
                .orElseThrow(() -> new CommandRejected(
                        word + " is no warning" + Nearest.question(word, codes()) + "; such as hand-held"));
        return context.reply(new DayEvent.WarningSilenced(code))
                .says(code + " is silenced for the day", ", and that is recorded.")
                .accepted();
    }
}
