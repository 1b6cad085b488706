package takeup.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way from an action to the line that does it: what was taken so far, what is asked now, and what will be. It shows
 * at each step the line that it would type. Every change makes another one.
 *
 * @param line what was taken so far, as it is typed
 * @param field what is asked now
 * @param then what is asked after it
 * @param chosen the highlighted row
 * @param entered what was typed where something can be; "" while nothing was
 * @param before the menu one step back; empty at the first
 */
public record Menu(String line, Field field, List<Field> then, int chosen, String entered, Optional<Menu> before) {
    public Menu {
        then = List.copyOf(then);
    }

    /** A menu at its first step. */
    public static Menu of(Field first) {
        return new Menu("", first, List.of(), first.start(), "", Optional.empty());
    }

    /** What Enter comes to: a further step, or a whole line. */
    public record Taken(String line, Optional<Menu> next) {}

    /** The highlight so many rows further, to the ends at most. */
    public Menu moved(int rows) {
        int last = field.choices().size() - 1;
        return new Menu(line, field, then, Math.max(0, Math.min(last, chosen + rows)), "", before);
    }

    /** Whether what is typed belongs here, and not to the prompt. */
    public boolean takes(String text) {
        char first = text.charAt(0);
        return switch (field.entry()) {
            case WORDS -> true;
            case DIGITS -> isDigit(first) || "./:+-".indexOf(first) >= 0;
            case NUMBERED -> isDigit(first);
        };
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** The row of a number; empty where there is none. */
    public Optional<Menu> numbered(String digit) {
        int row = digit.charAt(0) - '1';
        return field.entry() == Field.Entry.NUMBERED
                        && row >= 0
                        && row < field.choices().size()
                ? Optional.of(moved(row - chosen))
                : Optional.empty();
    }

    /** With more typed; the highlight goes to the first row that begins so. */
    public Menu typed(String text) {
        return entering(entered + text);
    }

    /** With the last character of what was typed taken back. */
    public Menu erased() {
        return entering(entered.substring(0, entered.offsetByCodePoints(entered.length(), -1)));
    }

    private Menu entering(String text) {
        int row = chosen;
        if (field.entry() == Field.Entry.DIGITS && !text.isEmpty()) {
            row = first(bare(text)).orElse(chosen);
        }
        return new Menu(line, field, then, row, text, before);
    }

    /** A time may be typed as it is printed: {@code 1/125} for 125. */
    private String bare(String text) {
        return field.sign().equals("1/") && text.startsWith("1/") ? text.substring(2) : text;
    }

    private Optional<Integer> first(String text) {
        for (int i = 0; i < field.choices().size(); i++) {
            if (printed(field.choices().get(i)).equals(text)) {
                return Optional.of(i);
            }
        }
        for (int i = 0; i < field.choices().size(); i++) {
            if (text.length() > 1
                    && printed(field.choices().get(i)).replace(".", "").equals(text)) {
                return Optional.of(i);
            }
        }
        for (int i = 0; i < field.choices().size(); i++) {
            if (printed(field.choices().get(i)).startsWith(text)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** The number in a row, without its sign: {@code 125} of {@code 1/125}. */
    private static String printed(Choice choice) {
        String typed = choice.typed();
        int at = typed.startsWith("1/") ? 2 : 0;
        while (at < typed.length() && !isDigit(typed.charAt(at))) {
            at++;
        }
        return typed.substring(at);
    }

    /** What Enter takes now: the highlighted row, or what was typed where no row begins so. */
    private Choice choice() {
        boolean isOwn = !entered.isEmpty()
                && (field.entry() == Field.Entry.WORDS
                        || field.entry() == Field.Entry.DIGITS
                                && first(bare(entered)).isEmpty());
        if (isOwn) {
            return Choice.value(field.sign() + bare(entered.strip()));
        }
        return field.choices().isEmpty() ? Choice.value("") : field.choices().get(chosen);
    }

    /** Whether there is something to take. */
    public boolean canEnter() {
        return !entered.isBlank() || !field.choices().isEmpty();
    }

    /** The line as it is with what Enter would take now. */
    public String preview() {
        return joined(choice().typed());
    }

    private String joined(String typed) {
        return (line + " " + typed).strip();
    }

    /** Whether Enter makes the line whole. */
    public boolean isLast() {
        return canEnter() && choice().then().isEmpty() && then.isEmpty();
    }

    /** Takes the highlighted row, or what was typed. */
    public Taken taken() {
        Choice taken = choice();
        List<Field> rest = new ArrayList<>(taken.then());
        rest.addAll(then);
        String more = joined(taken.typed());
        if (rest.isEmpty()) {
            return new Taken(more, Optional.empty());
        }
        Field next = rest.get(0);
        return new Taken(
                more,
                Optional.of(new Menu(more, next, rest.subList(1, rest.size()), next.start(), "", Optional.of(this))));
    }
}
