package takeup.json;

import com.fasterxml.jackson.core.JsonProcessingException;

/** What the parser refused, in words for whoever wrote the text. */
final class JsonMistake {
    private JsonMistake() {}

    /** Where the comma stands that was left behind the last item or field; -1 where the mistake is another one. */
    static int commaBeforeBracket(String text, JsonProcessingException e) {
        int bracket = e.getOriginalMessage().startsWith("Unexpected character ('}'")
                        || e.getOriginalMessage().startsWith("Unexpected character (']'")
                ? (int) Math.min(parserOffset(e), text.length() - 1L)
                : -1;
        while (bracket >= 0 && text.charAt(bracket) != '}' && text.charAt(bracket) != ']') {
            bracket--;
        }
        int at = bracket - 1;
        while (at >= 0 && Character.isWhitespace(text.charAt(at))) {
            at--;
        }
        return at >= 0 && text.charAt(at) == ',' ? at : -1;
    }

    private static long parserOffset(JsonProcessingException e) {
        return e.getLocation() == null ? -1 : e.getLocation().getCharOffset();
    }

    static String beyond(String message, int longest) {
        if (message.contains("nesting")) {
            return "brackets stand in brackets, more than 32 deep";
        }
        if (message.startsWith("Number")) {
            return "a number has more than 64 digits";
        }
        if (message.startsWith("Name")) {
            return "a field's name has more than 200 letters";
        }
        return message.startsWith("String") ? tooLong(longest) : "it is longer than anything that is read here";
    }

    static String tooLong(int longest) {
        return "a text has more than " + longest + " letters";
    }

    /** The first line of a parser's message, without what only a programmer could do about it. */
    static String plainly(String message) {
        int end = message.indexOf('\n');
        String first = end < 0 ? message : message.substring(0, end);
        int advice = first.indexOf(": enable ");
        first = advice < 0 ? first : first.substring(0, advice);
        int aside = first.indexOf(" (");
        return "this is not JSON: " + (aside > 0 ? first.substring(0, aside) : first);
    }
}
