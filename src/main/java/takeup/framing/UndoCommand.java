package takeup.framing;

import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.history.UndoHistory;
import takeup.prompt.CommandRejected;

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
        UndoHistory history = new UndoHistory(context.state().history());
        return this == UNDO
                ? run(history.undo(), "nothing to undo", StepUndo.Direction.BACK, context)
                : run(
                        history.redo(),
                        "nothing to redo: another line came after the undo, or nothing was undone",
                        StepUndo.Direction.AGAIN,
                        context);
    }

    private static Outcome run(
            Optional<Long> step, String whyNone, StepUndo.Direction direction, CommandContext context) {
        long number = step.orElseThrow(() -> new CommandRejected(whyNone));
        return new StepUndo(context.state().history().step(number).orElseThrow(), direction).run(context);
    }
}
