package takeup.command;

/** {@code double}: the next exposure goes on the same frame. */
public final class DoubleCommand implements Command {
    public static final CommandInfo INFO =
            CommandInfo.of("double", "the next exposure goes on the same frame").needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return FrameCommands.doubled(context, arguments.rest());
    }
}
