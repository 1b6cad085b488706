package takeup.command;

/** {@code counter 9}: what the counter of the camera shows. */
public final class CounterCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("counter", "the camera's counter shows 9 for the next frame")
            .usage("counter 9")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return CorrectionCommands.counter(context, arguments.rest());
    }
}
