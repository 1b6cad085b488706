package takeup.command;

import java.util.List;
import java.util.Optional;
import takeup.prompt.CommandRejected;
import takeup.prompt.Tokens;

/**
 * A line as it was typed, and cut into words.
 *
 * @param line letter for letter, without the blanks around it
 * @param tokens its words in lower case, and the note behind its semicolon
 */
public record Arguments(String line, Tokens tokens) {
    public static Arguments of(String line) {
        return new Arguments(line, Tokens.of(line));
    }

    /** The first word; "" in a line that is a note alone. */
    public String word() {
        return tokens.words().isEmpty() ? "" : tokens.words().get(0);
    }

    /** The words behind the first one. */
    public List<String> rest() {
        return tokens.words().isEmpty()
                ? List.of()
                : tokens.words().subList(1, tokens.words().size());
    }

    public Optional<String> note() {
        return tokens.note();
    }

    /** Refuses a line that has more than its word. */
    public void alone() {
        alone(word(), rest());
    }

    /** The one word behind the first one. */
    public String one(String example) {
        return one(word(), rest(), example);
    }

    public static void alone(String word, List<String> rest) {
        if (!rest.isEmpty()) {
            throw new CommandRejected(word + " stands alone; " + rest.get(0) + " is one word too many");
        }
    }

    public static String one(String word, List<String> rest, String example) {
        if (rest.size() != 1) {
            throw new CommandRejected(word + " takes one word, such as " + example);
        }
        return rest.get(0);
    }

    /** The line behind so many words, letter for letter; a semicolon in front of it is dropped. */
    public String textAfterWords(int words) {
        String left = line;
        for (int i = 0; i < words; i++) {
            int end = 0;
            while (end < left.length() && !Tokens.isBlank(left.charAt(end)) && left.charAt(end) != ';') {
                end++;
            }
            left = stripped(left.substring(end));
        }
        return left.startsWith(";") ? stripped(left.substring(1)) : left;
    }

    /** All that stands behind a word, letter for letter. */
    public String textAfter(String word) {
        for (int words = 1; !textAfterWords(words).isEmpty(); words++) {
            String left = textAfterWords(words);
            if (left.length() > word.length()
                    && left.regionMatches(true, 0, word, 0, word.length())
                    && Tokens.isBlank(left.charAt(word.length()))) {
                return textAfterWords(words + 1);
            }
        }
        return "";
    }

    private static String stripped(String text) {
        int from = 0;
        while (from < text.length() && Tokens.isBlank(text.charAt(from))) {
            from++;
        }
        return text.substring(from).stripTrailing();
    }
}
