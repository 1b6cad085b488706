package takeup.shoot;

/**
 * A line that cannot be followed, with what to do. It never leaves the room: the reader of lines turns it into an
 * answer.
 */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    Refusal(String why) {
        super(why, null, false, false);
    }
}
