package takeup.prompt;

/**
 * A line that cannot be followed, with what to do. It never leaves the room: the reader of lines turns it into an
 * answer.
 */
public final class CommandRejected extends RuntimeException {
    private static final long serialVersionUID = 1;

    public CommandRejected(String why) {
        super(why, null, false, false);
    }
}
