package takeup.framing;

import java.util.List;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.prompt.CommandRejected;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** The words of a line about a roll: the roll that is named first, or the one in hand, and what follows. */
record RollArguments(Roll roll, List<String> words) {
    static RollArguments of(List<String> words, CommandContext context, String example) {
        Optional<RollId> id = context.rollNumber(words);
        return new RollArguments(context.roll(id, example), words.subList(id.isPresent() ? 1 : 0, words.size()));
    }

    /** A word by its place; the refusal where there is none says what belongs there. */
    String word(int at, String why) {
        if (words.size() <= at) {
            throw new CommandRejected(why);
        }
        return words.get(at);
    }

    List<String> from(int at) {
        return words.subList(at, words.size());
    }
}
