package takeup.action;

import java.util.ArrayList;
import java.util.List;

/**
 * One thing that is asked on the way to a line: a list to pick from, and whether something else can be typed.
 *
 * @param title what is asked
 * @param entry what else can be typed
 * @param sign what stands before something typed: {@code f} before an aperture
 * @param choices the rows, in their order
 * @param start which of them is highlighted first
 */
public record Field(String title, Entry entry, String sign, List<Choice> choices, int start) {
    /** What can be typed where a list is shown. */
    public enum Entry {
        /** A digit takes the row of that number. */
        NUMBERED,
        /** Digits are looked for in the list, and count as they are where it has none such. */
        DIGITS,
        /** Words, as in a note. */
        WORDS
    }

    public Field {
        choices = List.copyOf(choices);
    }

    static Field list(String title, List<Choice> choices) {
        return new Field(title, Entry.NUMBERED, "", choices, 0);
    }

    static Field digits(String title, String sign, List<String> values, int start) {
        return new Field(
                title, Entry.DIGITS, sign, values.stream().map(Choice::value).toList(), Math.max(0, start));
    }

    /** Words behind a sign, such as a note; those of before can be picked. */
    static Field words(String title, String sign, List<String> before) {
        return new Field(
                title,
                Entry.WORDS,
                sign,
                before.stream().map(it -> Choice.of(sign + it, "")).toList(),
                0);
    }

    /** The same with a first row that adds nothing. */
    Field orNothing(String name) {
        List<Choice> all = new ArrayList<>(List.of(Choice.of("", name)));
        all.addAll(choices);
        return new Field(title, entry, sign, all, 0);
    }
}
