package takeup.prompt;

import java.util.ArrayList;
import java.util.List;

/**
 * The line being typed, and what can be called back to it.
 *
 * @param text what stands there; several pasted lines are kept with their line feeds
 * @param cursor the place of the cursor, 0 to the length
 * @param past what was cleared or entered, oldest first
 * @param recall how far back PgUp has gone; 0 is the line itself
 * @param selected whether all of it gives way to the next letter, as a refused line does
 */
public record PromptLine(String text, int cursor, List<String> past, int recall, boolean selected) {
    /** Characters that it takes at most. */
    public static final int LONGEST = 20_000;

    private static final int REMEMBERED = 200;

    /** Nothing typed, nothing past. */
    public static final PromptLine EMPTY = new PromptLine("", 0, List.of(), 0, false);

    /** Whether nothing is typed. */
    public boolean isEmpty() {
        return text.isEmpty();
    }

    /** The lines that stand there; more than one after a paste. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int at = 0; at <= text.length(); at++) {
            if (at == text.length() || text.charAt(at) == '\n' || text.charAt(at) == '\r') {
                String line = text.substring(start, at);
                if (!line.isBlank()) {
                    lines.add(line);
                }
                start = at + 1;
            }
        }
        return lines;
    }

    /** Whether so much more has room. */
    public boolean takes(String more) {
        return text.length() + more.length() <= LONGEST;
    }

    /** With more text at the cursor. Blanks alone are nothing: the space bar belongs to an empty prompt. */
    public PromptLine typed(String more) {
        return edited(text.substring(0, cursor) + more + text.substring(cursor), cursor + more.length());
    }

    private PromptLine edited(String now, int place) {
        return now.isBlank() ? new PromptLine("", 0, past, 0, false) : new PromptLine(now, place, past, 0, false);
    }

    public PromptLine with(String other) {
        return new PromptLine(other, other.length(), past, 0, false);
    }

    /** With a text that gives way to the next letter. */
    public PromptLine withSelected(String other) {
        return new PromptLine(other, other.length(), past, 0, !other.isEmpty());
    }

    /** The same to be gone on with: the next letter is put where the cursor is. */
    public PromptLine unselected() {
        return new PromptLine(text, cursor, past, recall, false);
    }

    /** Emptied; what stood there can be called back. */
    public PromptLine cleared() {
        return new PromptLine("", 0, remembered(text), 0, false);
    }

    /** With a line among those that can be called back. */
    public PromptLine remembering(String line) {
        return new PromptLine(text, cursor, remembered(line), 0, selected);
    }

    private List<String> remembered(String line) {
        if (line.isBlank() || !past.isEmpty() && past.get(past.size() - 1).equals(line)) {
            return past;
        }
        List<String> all = new ArrayList<>(past.size() >= REMEMBERED ? past.subList(1, past.size()) : past);
        all.add(line);
        return List.copyOf(all);
    }

    public PromptLine backspace() {
        int before = before();
        return edited(text.substring(0, before) + text.substring(cursor), before);
    }

    public PromptLine delete() {
        return edited(text.substring(0, cursor) + text.substring(after()), cursor);
    }

    public PromptLine left() {
        return at(before());
    }

    public PromptLine right() {
        return at(after());
    }

    public PromptLine home() {
        return at(0);
    }

    public PromptLine end() {
        return at(text.length());
    }

    private PromptLine at(int place) {
        return new PromptLine(text, place, past, recall, false);
    }

    private int before() {
        return cursor == 0 ? 0 : text.offsetByCodePoints(cursor, -1);
    }

    private int after() {
        return cursor == text.length() ? cursor : text.offsetByCodePoints(cursor, 1);
    }

    /** Without the word in front of the cursor. */
    public PromptLine wordErased() {
        int at = cursor;
        while (at > 0 && Character.isWhitespace(text.charAt(at - 1))) {
            at--;
        }
        while (at > 0 && !Character.isWhitespace(text.charAt(at - 1))) {
            at--;
        }
        return edited(text.substring(0, at) + text.substring(cursor), at);
    }

    /** Whether calling back one line further changes nothing. */
    public boolean isOldest() {
        return recalled(1).text().equals(text);
    }

    /** One line further back, or forth for a negative number. What stands there unfinished is remembered first. */
    public PromptLine recalled(int further) {
        PromptLine from = recall == 0 && further > 0 && !text.isBlank()
                ? new PromptLine(text, cursor, remembered(text), 1, false)
                : this;
        int to = Math.max(0, Math.min(from.past.size(), from.recall + further));
        String line = to == 0 ? "" : from.past.get(from.past.size() - to);
        return new PromptLine(line, line.length(), from.past, to, false);
    }
}
