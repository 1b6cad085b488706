package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** Begins the reading of a paper form, and ends it. */
public enum PaperCommand implements Command {
    PAPER(CommandInfo.of("paper", "reads a paper form back, a line a frame: 7 5.6 125 veil; done ends it")
            .usage("paper r1")
            .form("paper r1", "reads the form of R0001 back; alone: of the roll in hand")
            .form("7 5.6 125 veil", "frame 7, and words; 7-9 for a row, \" for the same as above")
            .form("done", "ends it, and names the lines that did not fit")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER)),
    DONE(CommandInfo.of("done", "ends the reading of a paper form, and names the lines that did not fit")
            .needs(Need.PAPER)
            .with(CommandInfo.Trait.WORKS_DURING_PAPER));

    private final CommandInfo info;

    PaperCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        if (this == PAPER) {
            return PaperForm.begin(context, arguments.rest());
        }
        arguments.alone();
        return PaperForm.done(context);
    }
}
