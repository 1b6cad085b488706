package takeup.index;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32;
import takeup.roll.RollId;

/**
 * One file of the index: the entries of one kind of up to a hundred rolls of one writer. Its first line tells which
 * program wrote it, and bears a checksum over the rest.
 */
final class IndexPart {
    private static final int ROLLS = 100;
    private static final String FORMAT = "takeup-index ";
    private static final int VERSION = 6;

    private IndexPart() {}

    /**
     * What is held of a roll.
     *
     * @param stamp sizes and times of the files that it was made of
     */
    record Entry(String stamp, String text) {}

    /** The part that a roll belongs in. */
    static String of(RollId roll) {
        return roll.letters() + "-" + roll.number() / ROLLS;
    }

    /** The file of a part for one kind of entry. */
    static String file(String part, IndexKind<?> kind) {
        return part + "." + kind.name();
    }

    /** What the first line of a file begins with, by which those of other programs are told. */
    static String maker(IndexKind<?> kind, String version) {
        String madeFor = kind.madeFor().isEmpty() ? "" : " " + kind.madeFor();
        return FORMAT + VERSION + " " + kind.name() + madeFor + " " + version + " ";
    }

    /** The entries as one file. */
    static byte[] bytes(Map<RollId, Entry> entries, String maker) {
        StringBuilder text = new StringBuilder();
        entries.forEach((id, entry) -> text.append(id)
                .append('\t')
                .append(entry.stamp)
                .append('\t')
                .append(entry.text.length())
                .append('\n')
                .append(entry.text));
        byte[] body = text.toString().getBytes(StandardCharsets.UTF_8);
        byte[] head = head(maker, body, 0).getBytes(StandardCharsets.UTF_8);
        byte[] all = new byte[head.length + body.length];
        System.arraycopy(head, 0, all, 0, head.length);
        System.arraycopy(body, 0, all, head.length, body.length);
        return all;
    }

    private static String head(String maker, byte[] bytes, int from) {
        CRC32 sum = new CRC32();
        sum.update(bytes, from, bytes.length - from);
        return maker + Long.toHexString(sum.getValue()) + "\n";
    }

    /** What became of a file: its entries, or none since another program wrote it or it is damaged. */
    record Content(SortedMap<RollId, Entry> entries, boolean isDamaged) {
        static final Content NONE = new Content(new TreeMap<>(), false);
    }

    static Content read(byte[] bytes, String maker) {
        int end = 0;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        String head = new String(bytes, 0, Math.min(end + 1, bytes.length), StandardCharsets.UTF_8);
        if (head.startsWith(FORMAT) && !head.startsWith(maker)) {
            return Content.NONE;
        }
        if (end == bytes.length || !head.equals(head(maker, bytes, end + 1))) {
            return new Content(new TreeMap<>(), true);
        }
        return entries(new String(bytes, end + 1, bytes.length - end - 1, StandardCharsets.UTF_8))
                .map(it -> new Content(it, false))
                .orElse(new Content(new TreeMap<>(), true));
    }

    private static Optional<SortedMap<RollId, Entry>> entries(String text) {
        SortedMap<RollId, Entry> entries = new TreeMap<>();
        int at = 0;
        try {
            while (at < text.length()) {
                int stamp = text.indexOf('\t', at) + 1;
                int length = text.indexOf('\t', stamp) + 1;
                int line = text.indexOf('\n', length) + 1;
                int end = line + Integer.parseInt(text.substring(length, line - 1));
                entries.put(
                        RollId.parse(text.substring(at, stamp - 1)).orElseThrow(IllegalArgumentException::new),
                        new Entry(text.substring(stamp, length - 1), text.substring(line, end)));
                at = end;
            }
            return Optional.of(entries);
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }
}
