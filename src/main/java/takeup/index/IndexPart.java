package takeup.index;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import takeup.roll.RollId;

/**
 * One file of the index: up to a hundred rolls of one writer with their frames. Its first line tells which program
 * wrote it, and bears a checksum over the rest.
 */
final class IndexPart {
    private static final int ROLLS = 100;
    private static final String FORMAT = "takeup-index 3 ";

    private IndexPart() {}

    /** The file that a roll belongs in. */
    static String fileOf(RollId roll) {
        return roll.letters() + "-" + roll.number() / ROLLS + ".index";
    }

    /** The rolls as one file. */
    static byte[] bytes(Iterable<IndexedRoll> rolls, String version) {
        StringBuilder text = new StringBuilder();
        rolls.forEach(it -> text.append(it.text()));
        byte[] body = text.toString().getBytes(StandardCharsets.UTF_8);
        byte[] head = head(version, body, 0).getBytes(StandardCharsets.UTF_8);
        byte[] all = new byte[head.length + body.length];
        System.arraycopy(head, 0, all, 0, head.length);
        System.arraycopy(body, 0, all, head.length, body.length);
        return all;
    }

    private static String head(String version, byte[] bytes, int from) {
        CRC32 sum = new CRC32();
        sum.update(bytes, from, bytes.length - from);
        return FORMAT + version + " " + Long.toHexString(sum.getValue()) + "\n";
    }

    /** What became of a file: its rolls, or none since another version wrote it or it is damaged. */
    record Content(Map<RollId, IndexedRoll> rolls, boolean isDamaged) {
        static final Content NONE = new Content(Map.of(), false);
    }

    static Content read(byte[] bytes, String version) {
        int end = 0;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        String head = new String(bytes, 0, Math.min(end + 1, bytes.length), StandardCharsets.UTF_8);
        if (head.startsWith("takeup-index ") && !head.startsWith(FORMAT + version + " ")) {
            return Content.NONE;
        }
        if (end == bytes.length || !head.equals(head(version, bytes, end + 1))) {
            return new Content(Map.of(), true);
        }
        return rolls(new String(bytes, end + 1, bytes.length - end - 1, StandardCharsets.UTF_8))
                .map(it -> new Content(it, false))
                .orElse(new Content(Map.of(), true));
    }

    private static Optional<Map<RollId, IndexedRoll>> rolls(String text) {
        Map<RollId, IndexedRoll> rolls = new HashMap<>();
        int from = 0;
        try {
            while (from < text.length()) {
                int line = text.indexOf('\n', from) + 1;
                int next = line;
                while (next < text.length() && !IndexedRoll.isRoll(text, next)) {
                    next = text.indexOf('\n', next) + 1;
                }
                IndexedRoll roll = IndexedRoll.of(text.substring(from, line - 1), text.substring(line, next));
                rolls.put(roll.id(), roll);
                from = next;
            }
            return Optional.of(rolls);
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }
}
