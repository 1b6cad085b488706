package takeup.framing;

import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;

/** Takes back the last line that changed anything, and does it again. */
public enum UndoCommand implements Command {
    UNDO(CommandInfo.of("undo", "takes back the last line that changed anything")
            .usageText("undo  (u)", "undo")
            .spelled("u")
            .form("undo", "takes back the last line that changed anything, on whichever camera")
            .form("u", "the same")
            .needs(Need.STEP_TO_UNDO)
            .with(CommandInfo.Trait.WORKS_DURING_PAPER)),
    REDO(CommandInfo.of("redo", "does again what undo took back")
            .needs(Need.STEP_TO_REDO)
            .with(CommandInfo.Trait.WORKS_DURING_PAPER));

    private final CommandInfo info;

    UndoCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        arguments.alone();
        return this == UNDO ? StepUndo.undo(context) : StepUndo.redo(context);
    }
}
