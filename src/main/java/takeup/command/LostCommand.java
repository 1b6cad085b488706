package takeup.command;

/** {@code lost 7}: a frame that is fogged or lost. */
public final class LostCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("lost", "frame 7 is fogged or lost")
            .usage("lost 7")
            .needs(Need.FRAME)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return CorrectionCommands.lost(context, arguments.rest(), arguments.note());
    }
}
