package takeup.journal;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.records.Fields;

/**
 * Reads one file of {@link JournalLines} from its first byte to its last. A damaged line is passed over and reported,
 * what is whole is kept, and what was never confirmed at the end is left out.
 */
final class JournalReader {
    /** So many problems are reported one by one; a file full of rubbish must not fill the memory with sentences. */
    private static final int MOST_PROBLEMS = 1000;

    private final String file;
    private final byte[] bytes;
    private final List<JournalLines.Line> lines = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private final ByteArrayOutputStream damaged = new ByteArrayOutputStream();
    private int further;
    private int number;
    private int lastN;
    private boolean outOfOrder;
    private boolean hasHeader;
    private boolean newer;
    private Optional<JournalLines.Line> loading = Optional.empty();
    /** Where the first damaged line begins that no record stands before, and its number; below 0 if none does. */
    private int firstDamaged = -1;

    private int firstDamagedLine;

    private JournalReader(String file, byte[] bytes) {
        this.file = file;
        this.bytes = bytes;
    }

    /** What the bytes of a file hold. Whatever they are, this gives problems and throws nothing. */
    static JournalLines.Content read(String file, byte[] bytes) {
        return new JournalReader(file, bytes).read();
    }

    private JournalLines.Content read() {
        int length = bytes.length;
        while (length > 0 && bytes[length - 1] == 0) {
            length--;
        }
        int good = 0;
        boolean lacksLineFeed = false;
        while (good < length && !lacksLineFeed) {
            number++;
            int end = good;
            while (end < length && bytes[end] != '\n') {
                end++;
            }
            boolean ended = end < length;
            Optional<JournalLines.Sealed> record = JournalLines.record(bytes, good, end);
            if (record.isPresent()) {
                take(record.get());
            }
            if (ended) {
                if (record.isEmpty()) {
                    damaged(good, end);
                }
                good = end + 1;
                continue;
            }
            int whole = record.isPresent() ? end : takeWholeRecords(good, end);
            if (whole == good) {
                report("the last line stops in the middle; it was never confirmed on screen, so it is left out");
                break;
            }
            report("the end of the last line is damaged; its record is whole and is kept");
            good = whole;
            lacksLineFeed = true;
        }
        if (length < bytes.length && good == length) {
            number++;
            report("zeros follow the last line; nothing confirmed is in them, so they are left out");
        }
        if (!hasHeader && !lines.isEmpty()) {
            problems.add(file + ":1: the line that names the format is missing; the records are read all the same");
        }
        if (further > 0) {
            problems.add(file + ":" + number + ": up to here " + further + " more lines are damaged");
        }
        if (outOfOrder) {
            lines.sort(Comparator.comparingInt(JournalLines.Line::n));
        }
        if (lines.isEmpty() || lines.get(0).n() > 1) {
            addLoading();
        }
        return new JournalLines.Content(
                lines, problems, good, lastN, good < bytes.length, lacksLineFeed, newer, damaged.toByteArray());
    }

    /** The first record, without which the others say nothing, from its copy or with a bit turned back. */
    private void addLoading() {
        String what = "the record of the loading is damaged or missing; the copy of it in this line is read";
        if (loading.isEmpty() && firstDamaged >= 0) {
            loading = turnedBack();
            what = "one bit of the first record is flipped; it is read with that bit turned back";
        }
        if (loading.isPresent()) {
            lines.add(0, loading.get());
            lastN = Math.max(lastN, 1);
            problems.add(file + ":" + loading.get().number() + ": " + what);
        }
    }

    /**
     * Versions that kept no copy of the loading wrote its record once. The flipped bit may have made a line feed in the
     * middle of its line.
     */
    private Optional<JournalLines.Line> turnedBack() {
        number = firstDamagedLine;
        int end = firstDamaged;
        for (int lineFeeds = 0; lineFeeds < 2 && end < bytes.length; lineFeeds++) {
            end += lineFeeds;
            while (end < bytes.length && bytes[end] != '\n') {
                end++;
            }
            Optional<JournalLines.Line> first =
                    FlippedBit.turnedBack(bytes, firstDamaged, end).flatMap(this::first);
            if (first.isPresent()) {
                return first;
            }
        }
        return Optional.empty();
    }

    private Optional<JournalLines.Line> first(JournalLines.Sealed record) {
        try {
            return Optional.of(line(record)).filter(it -> it.n() == 1);
        } catch (Fields.Unreadable e) {
            return Optional.empty();
        }
    }

    private void damaged(int start, int end) {
        damaged.write(bytes, start, end + 1 - start);
        int before = lines.size();
        if (before == 0 && firstDamaged < 0) {
            firstDamaged = start;
            firstDamagedLine = number;
        }
        takeWholeRecords(start, end);
        report(
                lines.size() > before
                        ? "this line is damaged; what is whole in it is kept"
                        : "this line is damaged and is left out" + after());
    }

    private void take(JournalLines.Sealed record) {
        try {
            Fields fields = new Fields(record.object());
            int n = fields.count("n");
            if (n > 0) {
                add(line(record));
            } else if (n == 0) {
                hasHeader = true;
                newer |= !fields.text("format").equals(JournalLines.FORMAT)
                        || fields.whole("version") > JournalLines.VERSION;
                loading = JournalLines.loading(fields);
            } else {
                throw new Fields.Unreadable("records are numbered from 1");
            }
        } catch (Fields.Unreadable e) {
            report("this line cannot be read (" + e.getMessage() + ") and is left out" + after());
        }
    }

    private JournalLines.Line line(JournalLines.Sealed record) throws Fields.Unreadable {
        Fields fields = new Fields(record.object());
        return new JournalLines.Line(
                number, fields.count("n"), fields.whole("step"), fields.time("at"), record.object(), record.text());
    }

    private void add(JournalLines.Line line) {
        if (line.n() > lastN) {
            lastN = line.n();
        } else if (seen.isEmpty()) {
            for (JournalLines.Line before : lines) {
                seen.add(before.text());
            }
        }
        if (!seen.isEmpty() && !seen.add(line.text())) {
            report("record " + line.n() + " stands here a second time; it counts once");
            return;
        }
        int before = lines.isEmpty() ? 0 : lines.get(lines.size() - 1).n();
        if (line.n() == before) {
            report("a second record " + line.n() + " stands here, and says something else; both are kept");
        } else if (line.n() < before) {
            report("record " + line.n() + " stands behind record " + before + "; it is read in its place");
            outOfOrder = true;
        }
        lines.add(line);
    }

    /**
     * Takes the records that stand whole inside a bad stretch: where the line feed between two was damaged, both are. A
     * quote inside a string is escaped, so neither mark occurs in a note. Each closing mark is tried with the first and
     * with the last opening one before it, and never again: what is no journal costs no more than its length.
     *
     * @return where the last of them ends, or the start
     */
    private int takeWholeRecords(int start, int end) {
        int whole = start;
        int from = start;
        while (true) {
            int close = find(JournalLines.CRC, from, end);
            if (close < 0 || close + JournalLines.TAIL > end) {
                return whole;
            }
            int after = close + JournalLines.TAIL;
            int first = find(JournalLines.START, from, close);
            int last = first;
            for (int next = first; next >= 0; next = find(JournalLines.START, next + 1, close)) {
                last = next;
            }
            Optional<JournalLines.Sealed> record =
                    first < 0 ? Optional.empty() : JournalLines.record(bytes, first, after);
            if (record.isEmpty() && last > first) {
                record = JournalLines.record(bytes, last, after);
            }
            if (record.isPresent()) {
                take(record.get());
                whole = after;
            }
            from = record.isPresent() ? after : close + JournalLines.CRC.length();
        }
    }

    private int find(String mark, int from, int end) {
        for (int at = from; at + mark.length() <= end; at++) {
            int same = 0;
            while (same < mark.length() && bytes[at + same] == mark.charAt(same)) {
                same++;
            }
            if (same == mark.length()) {
                return at;
            }
        }
        return -1;
    }

    private void report(String what) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(file + ":" + number + ": " + what);
        } else {
            further++;
        }
    }

    private String after() {
        return lines.isEmpty()
                ? ""
                : "; the record before it is number "
                        + lines.get(lines.size() - 1).n();
    }
}
