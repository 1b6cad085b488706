package takeup.options;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The usual command lines of the quick commands, read by hand: {@code rolls --json}, {@code roll 7 --data DIR}. Getting
 * picocli ready takes longer than their answer. Whatever else stands on a line is left to it.
 *
 * @param words all that is no option
 * @param data the data folder that was typed
 */
public record PlainLine(List<String> words, boolean isJson, Optional<String> data) {
    private static final String DATA = "--data";
    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz";
    private static final String FIRST = LETTERS + "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";

    /** What the line asks for; empty where it is no such line. */
    public static Optional<PlainLine> of(String[] arguments) {
        List<String> words = new ArrayList<>();
        boolean isJson = false;
        Optional<String> data = Optional.empty();
        for (int i = 0; i < arguments.length; i++) {
            String argument = arguments[i];
            boolean isData = argument.equals(DATA) && i + 1 < arguments.length || argument.startsWith(DATA + "=");
            if (isData && data.isEmpty()) {
                data = Optional.of(argument.equals(DATA) ? arguments[++i] : argument.substring(DATA.length() + 1));
                // After a blank it may be a command whose data folder was forgotten.
                boolean mayBeCommand = argument.equals(DATA) && isMadeOf(data.get(), LETTERS + "-");
                if (mayBeCommand
                        || data.get().isBlank()
                        || data.get().startsWith("-")
                        || data.get().startsWith("\"")) {
                    return Optional.empty();
                }
            } else if (argument.equals("--json") && !isJson && !words.isEmpty()) {
                isJson = true;
            } else if (isWord(argument, isFind(words) ? "./ -" : "-")) {
                words.add(argument);
            } else {
                return Optional.empty();
            }
        }
        PlainLine line = new PlainLine(words, isJson, data);
        return line.isKnown() ? Optional.of(line) : Optional.empty();
    }

    /** Whether it is letters, digits and these, and begins with none of these. */
    private static boolean isWord(String argument, String further) {
        return isMadeOf(argument, FIRST + further) && FIRST.indexOf(argument.charAt(0)) >= 0;
    }

    private static boolean isMadeOf(String argument, String characters) {
        for (int i = 0; i < argument.length(); i++) {
            if (characters.indexOf(argument.charAt(i)) < 0) {
                return false;
            }
        }
        return !argument.isEmpty();
    }

    /** Settings and dates are looked for, too: f2.8, 1/125. */
    private static boolean isFind(List<String> words) {
        return !words.isEmpty() && words.get(0).equals("find");
    }

    /** The command; blank where there is none. */
    public String name() {
        return words.isEmpty() ? "" : words.get(0);
    }

    /** The word behind the command, where there is one. */
    public Optional<String> word() {
        return words.size() > 1 ? Optional.of(words.get(1)) : Optional.empty();
    }

    private boolean isKnown() {
        return switch (name()) {
            case "rolls", "frames", "review", "day-end", "line" -> words.size() == 1;
            case "paths", "check" -> words.size() == 1 && !isJson;
            case "keys" -> words.size() == 1 && data.isEmpty();
            case "roll" -> words.size() == 2;
            case "stock", "camera" -> words.size() <= 2 && !words.contains("new");
            case "find" -> words.size() > 1;
            case "order" -> words.size() == 2 && words.get(1).equals("list") || words.size() == 1 && !isJson;
            default -> false;
        };
    }
}
