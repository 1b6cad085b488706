package takeup.text;

import java.util.List;
import java.util.Locale;

/** The small grammar that sentences need: {@code 1 frame}, {@code 3 frames}, {@code a, b and c}. */
public final class English {
    private English() {}

    /** A number with its noun: {@code 1 frame}, {@code 3 frames}, {@code 0 frames}. */
    public static String count(long number, String noun) {
        return number + " " + plural(number, noun);
    }

    /** The noun alone, as that number asks for it: {@code frame}, {@code frames}. */
    public static String plural(long number, String noun) {
        return number == 1 ? noun : noun + "s";
    }

    /** The word that agrees with the number, where an s at the end will not do: {@code is}, {@code are}. */
    public static String agree(long number, String singular, String plural) {
        return number == 1 ? singular : plural;
    }

    /** All of them, the last behind {@code and}: {@code a}, {@code a and b}, {@code a, b and c}. */
    public static String list(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** The words with their first letter in upper case, as a sentence begins. */
    public static String capitalised(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
