package takeup.loading;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.prompt.LoadArguments;
import takeup.roll.RollChange;

/** How the whole roll is developed: {@code push 1}, {@code pull 1}, {@code normal}. */
public enum DevelopmentCommand implements Command {
    PUSH(CommandInfo.of("push", "development of the whole roll, longer")
            .usage("push 1")
            .needs(Need.FILM)),
    PULL(CommandInfo.of("pull", "development of the whole roll, shorter")
            .usage("pull 1")
            .needs(Need.FILM)),
    NORMAL(CommandInfo.of("normal", "development as usual").needs(Need.FILM));

    private final CommandInfo info;

    DevelopmentCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        String word = info.word();
        if (this == NORMAL) {
            arguments.alone();
        }
        double stops = LoadArguments.push(word, this == NORMAL ? "" : arguments.one(word + " 1"));
        return RollWords.corrected(
                context.roll(),
                RollChange.push(stops),
                it -> ", the whole roll: " + it.film().developmentWords() + ".",
                context);
    }
}
