package takeup.dispatch;

import takeup.prompt.CommandRejected;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.text.Nearest;

/** What is said to a line whose first word is in no table: what it could have meant. */
final class UnknownWord {
    private UnknownWord() {}

    static CommandRejected rejected(String word) {
        if (word.startsWith("+") || word.startsWith("-")) {
            return new CommandRejected(word + " could be " + (word.startsWith("+") ? "more" : "less")
                    + " light on the film (bias " + word + ") or an order to the lab ("
                    + (word.startsWith("+") ? "push " : "pull ") + word.substring(1) + "): say which");
        }
        if (Tokens.token(word).is(Token.Kind.INDEX)) {
            return new CommandRejected(word + " could be the meter's speed (m 5.6 125 " + word
                    + ") or the roll's index (load cn400 " + word + ", fix roll " + word + "): say which");
        }
        if (Tokens.token(word).is(Token.Kind.EV)
                || Tokens.token(word).is(Token.Kind.LUX)
                || Tokens.token(word).is(Token.Kind.CANDELAS)) {
            return new CommandRejected(word + " is light: m " + word + " takes a reading");
        }
        String ours = ours(word);
        return new CommandRejected(word + " is no word known here"
                + (ours.isEmpty()
                        ? Nearest.question(word, CommandTable.firstWords()) + "; help lists them"
                        : ": " + ours));
    }

    /** What serves whoever types a word of habit that is none here; "" for any other. */
    private static String ours(String word) {
        return switch (word) {
            case "exit", "q", ":q", "bye", "close" -> "quit leaves";
            case "save", ":w" -> "what was answered is on disk already";
            case "delete", "del", "remove", "rm" -> "undo takes back the last line, drop 7 a frame that never was";
            case "iso", "asa" -> "the film's index goes with load or fix roll (@400), the meter's with a reading";
            case "wind" -> "rewind takes a roll out before its end";
            case "developer" -> "developed r7 in fine-grain 1+1 9m45s at 20C says how a roll was developed";
            case "film", "stock" -> "load cn400 puts a film in";
            default -> "";
        };
    }
}
