package takeup.command;

/** {@code unload}: finishes a roll. */
public final class UnloadCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("unload", "finishes the roll and writes its JSON")
            .form("unload", "finishes the roll; asks while frames are left")
            .form("unload yes", "the same without the question")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return RollCommands.unload(context, arguments.rest());
    }
}
