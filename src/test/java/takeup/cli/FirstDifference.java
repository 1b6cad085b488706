package takeup.cli;

import java.util.List;
import java.util.Optional;

/** Where two long texts part, in three lines; a dump of both would hide it. */
final class FirstDifference {
    private static final int AROUND = 60;

    private FirstDifference() {}

    /** The first line that is not the same, with both; none where every byte is. */
    static Optional<String> of(String name, String expected, String answered) {
        if (expected.equals(answered)) {
            return Optional.empty();
        }
        List<String> lines = List.of(expected.split("\n", -1));
        List<String> others = List.of(answered.split("\n", -1));
        int at = 0;
        while (at < lines.size() && at < others.size() && lines.get(at).equals(others.get(at))) {
            at++;
        }
        String line = at < lines.size() ? lines.get(at) : "(no such line)";
        String other = at < others.size() ? others.get(at) : "(no such line)";
        int from = 0;
        while (from < line.length() && from < other.length() && line.charAt(from) == other.charAt(from)) {
            from++;
        }
        return Optional.of(name + ", line " + (at + 1) + ", column " + (from + 1) + "\n  before: " + about(line, from)
                + "\n  now:    " + about(other, from));
    }

    private static String about(String line, int at) {
        int from = Math.max(0, at - AROUND);
        int to = Math.min(line.length(), at + 3 * AROUND);
        String piece = line.substring(from, to).replace("\r", "\\r");
        return (from > 0 ? "…" : "") + piece + (to < line.length() ? "…" : "");
    }
}
