package takeup.loading;

import java.util.Optional;
import takeup.advice.LoadChecks;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.prompt.CommandRejected;
import takeup.report.LoadCheckText;
import takeup.roll.LoadCheck;
import takeup.roll.RollEvent;

/** Answers a look of the load routine; a question of another line is answered before lines are read. */
public enum AnswerCommand implements Command {
    YES(CommandInfo.of("yes", "answers a question").needs(Need.QUESTION).with(CommandInfo.Trait.WORKS_DURING_PAPER)),
    NO(CommandInfo.of("no", "answers a question, or a look of the load routine: not so")
            .needs(Need.QUESTION)
            .with(CommandInfo.Trait.WORKS_DURING_PAPER));

    private final CommandInfo info;

    AnswerCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        arguments.alone();
        return answered(this == YES ? LoadCheck.Answer.YES : LoadCheck.Answer.NO, context);
    }

    /** The answer to the look that stands. */
    static Outcome answered(LoadCheck.Answer answer, CommandContext context) {
        LoadChecks look = LoadChecks.of(context.state()).orElseThrow(() -> new CommandRejected("nothing was asked"));
        Reply reply = context.reply(context.on(look.roll(), new RollEvent.LoadChecked(look.check(), answer)));
        Optional<String> next = LoadChecks.of(reply.after()).map(LoadCheckText::question);
        String text = switch (answer) {
            case YES -> found(look) + "." + next.map(it -> " Next, " + it).orElse("");
            case NO -> LoadCheckText.afterNo(look);
            case SKIPPED -> "the load routine is skipped.";
        };
        return reply.event("routine")
                .says(look.roll().id().toString(), ": " + text)
                .titled("load routine of " + look.roll().id())
                .fields(CommandContext.fields(reply.roll(look.roll().id()))
                        .and("check", look.check())
                        .and("answer", answer)
                        .and("next", next))
                .accepted();
    }

    private static String found(LoadChecks look) {
        return switch (look.check()) {
            case FILM -> "the right film at the right index";
            case METER -> "the meter says " + look.roll().film().index();
            case MOVING -> "the film moves";
        };
    }
}
