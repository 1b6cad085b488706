package takeup.command;

import java.util.List;
import takeup.history.ShootState;
import takeup.prompt.Tokens;

/**
 * A word of the prompt: what is known of it, and what a line that begins with it comes to. It is listed in the table of
 * all words and named nowhere else; it keeps no state.
 */
public interface Command {
    /** Its word, its forms and what it needs. */
    CommandInfo info();

    /** What a line comes to; a line that cannot be followed is refused with {@code CommandRejected}. */
    Outcome run(Arguments arguments, CommandContext context);

    /** Whether a line is one of this command. */
    default boolean takes(Tokens tokens) {
        return !tokens.words().isEmpty() && info().isNamed(tokens.words().get(0));
    }

    /**
     * The words that could come next.
     *
     * @param before the words in front of it, with that of the command; never empty
     */
    default List<String> completions(List<String> before, ShootState state) {
        return List.of();
    }
}
