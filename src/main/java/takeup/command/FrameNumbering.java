package takeup.command;

import java.util.List;
import takeup.prompt.CommandRejected;
import takeup.prompt.FrameArguments;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.text.English;

/** Numbers and counts of frames, as they are typed and as they are said. */
public final class FrameNumbering {
    private static final int HIGHEST = 250;

    private FrameNumbering() {}

    /** A frame's number; the example shows the whole line. */
    public static int number(String word, String example) {
        return Tokens.number(word)
                .filter(it -> it == Math.rint(it) && it <= HIGHEST)
                .map(Double::intValue)
                .orElseThrow(() -> new CommandRejected(word + " is no frame number: " + example));
    }

    /** A count of frames behind a word, 1 where none is typed. */
    public static int count(String word, List<String> rest) {
        if (rest.isEmpty()) {
            return 1;
        }
        Token token = Tokens.token(Arguments.one(word, rest, word + " x3"));
        if (!token.is(Token.Kind.COUNT)) {
            throw new CommandRejected(rest.get(0) + " is no count: " + word + " x3");
        }
        return FrameArguments.count(token);
    }

    public static String words(int from, int to) {
        return from == to ? "frame " + from : "frames " + from + " to " + to;
    }

    /** The same at the start of a sentence. */
    public static String title(int from, int to) {
        return English.capitalised(words(from, to));
    }
}
