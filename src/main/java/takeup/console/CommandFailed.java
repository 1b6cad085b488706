package takeup.console;

/**
 * Ends a command with one sentence on standard error and an exit status: 1 if it could not be done, 2 if the command
 * line was wrong. Not for mistakes of the program itself, which end in a crash report.
 */
public final class CommandFailed extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int status;

    public CommandFailed(int status, String why) {
        super(why, null, false, false);
        this.status = status;
    }

    /** The exit status of the program. */
    public int status() {
        return status;
    }
}
