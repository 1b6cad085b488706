package takeup.journal;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.zip.CRC32C;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.records.Fields;

/**
 * A journal's lines: one JSON object each, which ends in a CRC-32C of all the bytes in front of {@code ,"crc"}. The
 * first line says which format it is.
 */
final class JournalLines {
    static final int VERSION = 1;
    static final String FORMAT = "takeup-journal";
    private static final String LOADED = "{\"event\":\"loaded\",";
    static final String START = "{\"n\":";
    static final String CRC = ",\"crc\":\"";
    static final int TAIL = CRC.length() + 8 + 2;

    private JournalLines() {}

    /**
     * A record with its place in the file.
     *
     * @param number which line of the file it is, from 1
     * @param n its own number, from 1
     * @param step the line that did it
     * @param at when
     * @param whole all of its fields
     * @param text the line as it stands
     */
    record Line(int number, int n, long step, OffsetDateTime at, Json.Obj whole, String text)
            implements Supplier<String> {
        /**
         * The event letter for letter, without number, step, time and CRC: what this version does not know is kept so.
         */
        @Override
        public String get() {
            String front = START + n + ",\"step\":" + step + ",\"at\":\"";
            int comma = text.startsWith(front) ? text.indexOf('"', front.length()) + 1 : -1;
            if (comma > 0 && text.charAt(comma) == ',') {
                return "{" + text.substring(comma + 1, text.length() - TAIL) + "}";
            }
            Json.Obj event = Json.object();
            whole.fields().forEach((name, value) -> {
                if (!List.of("n", "step", "at", "crc").contains(name)) {
                    event.and(name, value);
                }
            });
            return JsonText.line(event);
        }
    }

    /**
     * What a file holds.
     *
     * @param lines the good records, by their numbers
     * @param problems what was wrong, each with file and line
     * @param goodBytes how many bytes from the start are to be kept, damaged lines in the middle included
     * @param lastN the highest record number
     * @param torn whether something stands behind the good bytes
     * @param lacksLineFeed whether the line feed is missing at the end of the good bytes
     * @param newer whether a later version wrote the file
     * @param damaged the damaged lines, letter for letter, one after the other
     */
    record Content(
            List<Line> lines,
            List<String> problems,
            long goodBytes,
            int lastN,
            boolean torn,
            boolean lacksLineFeed,
            boolean newer,
            byte[] damaged) {}

    static byte[] header() {
        return sealed(
                JsonText.line(Json.object().and("n", 0).and("format", FORMAT).and("version", VERSION)));
    }

    /**
     * The first line of a journal that begins with that event. Of a loading it holds the same facts once more, so that
     * no single damage to the file costs the whole roll; versions that do not know of it pass it over.
     */
    static byte[] header(long step, OffsetDateTime at, String event) {
        if (!event.startsWith(LOADED)) {
            return header();
        }
        String plain =
                JsonText.line(Json.object().and("n", 0).and("format", FORMAT).and("version", VERSION));
        return sealed(plain.substring(0, plain.length() - 1) + ",\"loaded\":{\"step\":" + step + ",\"at\":\"" + at
                + "\"," + event.substring(LOADED.length()) + "}");
    }

    /** The loading as the first line of a journal holds it; empty where it holds none. */
    static Optional<Line> loading(Fields header) {
        Optional<Fields> copy = header.inside("loaded");
        if (copy.isEmpty()) {
            return Optional.empty();
        }
        Json.Obj whole = Json.object().and("event", "loaded");
        for (Map.Entry<String, Json> field : copy.get().object().fields().entrySet()) {
            whole.and(field.getKey(), field.getValue());
        }
        return Optional.of(
                new Line(1, 1, copy.get().whole("step"), copy.get().time("at"), whole, JsonText.line(whole)));
    }

    /**
     * A line for an event, given as the text of a JSON object.
     *
     * @throws IllegalArgumentException for an event that could not be read back: a number that is none, endless words
     */
    static byte[] of(int n, long step, OffsetDateTime at, String event) {
        byte[] line = ofChecked(n, step, at, event);
        if (JsonText.isSurelyReadable(event)) {
            return line;
        }
        if (event.indexOf('\n') >= 0 || record(line, 0, line.length - 1).isEmpty()) {
            throw new IllegalArgumentException(
                    "this cannot be written down so that it can be read again; a note holds up to 20000 letters");
        }
        return line;
    }

    /** The same for an event that was tried already. */
    static byte[] ofChecked(int n, long step, OffsetDateTime at, String event) {
        return sealed(START + n + ",\"step\":" + step + ",\"at\":\"" + at + "\"," + event.substring(1));
    }

    static byte[] sealed(String object) {
        byte[] front = object.substring(0, object.length() - 1).getBytes(StandardCharsets.UTF_8);
        byte[] back = (CRC + crc(front, 0, front.length) + "\"}\n").getBytes(StandardCharsets.US_ASCII);
        byte[] all = new byte[front.length + back.length];
        System.arraycopy(front, 0, all, 0, front.length);
        System.arraycopy(back, 0, all, front.length, back.length);
        return all;
    }

    private static String crc(byte[] bytes, int from, int length) {
        CRC32C crc = new CRC32C();
        crc.update(bytes, from, length);
        String hex = Long.toHexString(crc.getValue());
        return "00000000".substring(hex.length()) + hex;
    }

    /** A stretch of bytes that is a whole object with the right CRC. */
    record Sealed(Json.Obj object, String text) {}

    static Optional<Sealed> record(byte[] bytes, int start, int end) {
        int front = end - start - TAIL;
        if (front < 2 || !isTail(bytes, start + front, crc(bytes, start, front))) {
            return Optional.empty();
        }
        try {
            String text = text(bytes, start, end);
            // A document that ends in a brace is an object.
            return Optional.of(new Sealed((Json.Obj) JsonText.readLine(text), text));
        } catch (CharacterCodingException | JsonText.NotJson e) {
            return Optional.empty();
        }
    }

    /**
     * The class library reads UTF-8 four times as quickly where it may put U+FFFD for what is none, so only a line with
     * one is read strictly.
     */
    private static String text(byte[] bytes, int start, int end) throws CharacterCodingException {
        String text = new String(bytes, start, end - start, StandardCharsets.UTF_8);
        return text.indexOf('\ufffd') < 0
                ? text
                : StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT)
                        .decode(ByteBuffer.wrap(bytes, start, end - start))
                        .toString();
    }

    private static boolean isTail(byte[] bytes, int from, String crc) {
        return new String(bytes, from, TAIL, StandardCharsets.ISO_8859_1).equals(tail(crc));
    }

    private static String tail(String crc) {
        return CRC + crc + "\"}";
    }

    /** The end that belongs to a record with those bytes in front of it. */
    static byte[] tail(byte[] bytes, int from, int length) {
        return tail(crc(bytes, from, length)).getBytes(StandardCharsets.US_ASCII);
    }
}
