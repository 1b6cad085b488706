package takeup.loading;

import java.util.Optional;
import takeup.advice.LoadChecks;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.DayEvent;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.report.LoadCheckText;
import takeup.roll.LoadCheck;

/** {@code routine off}: the three looks after loading. */
public final class RoutineCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "routine", "three looks after loading: on, off, skip; alone: what is asked")
            .usage("routine off")
            .form("routine off", "no looks after loading, also on the days to come")
            .form("routine on", "after each loading: film, meter, is it moving?")
            .form("routine skip", "leaves out what is asked now; Esc does it too")
            .form("routine", "what is asked now");

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        if (arguments.rest().isEmpty()) {
            return context.says("routine", standing(context.state()), fields(context.state()));
        }
        String word = arguments.one("routine off");
        return switch (word) {
            case "on" ->
                turned(
                        new DayEvent.RoutineSet(true),
                        "The load routine is on",
                        ": three looks after each loading.",
                        context);
            case "off" ->
                turned(
                        new DayEvent.RoutineSet(false),
                        "The load routine is off",
                        ", also on the days to come.",
                        context);
            case "skip" -> AnswerCommand.answered(LoadCheck.Answer.SKIPPED, context);
            default -> throw new CommandRejected("routine on, off or skip, not " + word);
        };
    }

    private static String standing(ShootState state) {
        String routine = state.day().routine() ? "on: three looks after each loading." : "off.";
        return LoadChecks.of(state)
                .map(it -> "Load routine of " + it.roll().id() + ", " + LoadCheckText.question(it)
                        + " yes, no, or routine skip.")
                .orElse("The load routine is " + routine);
    }

    private static Outcome turned(DayEvent event, String what, String more, CommandContext context) {
        Reply reply = context.reply(event);
        return reply.event("routine")
                .says(what, more)
                .fields(fields(reply.after()))
                .accepted();
    }

    private static Json.Obj fields(ShootState state) {
        Optional<LoadChecks> now = LoadChecks.of(state);
        return Json.object()
                .and("on", state.day().routine())
                .and("roll", now.map(it -> it.roll().id()))
                .and("check", now.map(LoadChecks::check))
                .and("next", now.map(LoadCheckText::question));
    }
}
