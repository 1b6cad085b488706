package takeup.loading;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

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
        return LoadCheckAnswer.answer(context, arguments.word(), arguments.rest());
    }
}
