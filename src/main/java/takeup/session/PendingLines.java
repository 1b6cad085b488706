package takeup.session;

import java.util.List;

/**
 * Lines that are to be read one after the other, such as a paste of three after Enter, or the point that a Space stands
 * for.
 *
 * @param lines one or more, none of them blank
 * @param from what gave them
 */
record PendingLines(List<String> lines, From from) {
    /** Where lines come from: only those of the prompt go back to it when they are refused. */
    enum From {
        PROMPT,
        KEY,
        SPACE,
        SUGGESTION
    }

    PendingLines {
        lines = List.copyOf(lines);
    }

    String first() {
        return lines.get(0);
    }

    boolean isLast() {
        return lines.size() == 1;
    }

    PendingLines rest() {
        return new PendingLines(lines.subList(1, lines.size()), from);
    }
}
