package takeup.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * Stands between the terminal and the key decoder and lets an escape sequence through only when it is whole. A slow
 * line tears sequences: without this, arrow up in three pieces would be read as Esc, {@code [} and {@code A}, which
 * mean something else.
 *
 * <p>A character other than Enter within 30 ms after Escape makes it Alt with that character; what begins a sequence
 * may come up to 120 ms later, and Escape alone is let through then. A sequence that stops for longer than 150 ms is
 * thrown away, and so is the rest of it if that comes within a further 400 ms.
 *
 * <p>Not every terminal marks what is pasted. More text with line ends in it than hands can type at once, 256 bytes
 * without a pause, is marked here, so that text pasted into the wrong window only stands on the prompt and runs
 * nothing.
 */
final class EscapeFilter extends InputStream {
    /** A character that comes this soon after Escape makes it Alt with that character. */
    private static final int ALT_MILLIS = 30;
    /** What begins a sequence may come this late after its Escape. */
    private static final int LONE_ESCAPE_MILLIS = 120;
    /** The longest pause inside a sequence. */
    private static final int GAP_MILLIS = 150;
    /** The longest pause inside the rest of a sequence whose Escape was taken for the key. */
    private static final int TAIL_GAP_MILLIS = 100;
    /** The rest of a sequence that stopped is thrown away if it comes within this time. */
    private static final int LATE_MILLIS = 400;
    /** The rest of a sequence whose Escape was taken for the key comes within this time or never. */
    private static final int AFTER_ESCAPE_MILLIS = 250;
    /** Longer than any key or any answer of a terminal; what is longer is read and thrown away. */
    private static final int LONGEST = 1024;

    /** So many bytes at once may be the start of a paste. */
    private static final int SUSPICIOUS_BYTES = 16;

    /** So many bytes, each following at once, were pasted. */
    private static final int PASTE_BYTES = 256;

    private static final int PASTE_GAP_MILLIS = 4;
    /** An unmarked paste has ended after a pause of this length. */
    private static final int PASTE_END_MILLIS = 60;

    private final TimedByteReader in;
    private final byte[] passed = new byte[TimedByteReader.BUFFER_SIZE + LONGEST];
    private int passedAt;
    private int passedEnd;

    private boolean isInMarkedPaste;
    private boolean isInUnmarkedPaste;
    private boolean escapeJustPassed;
    /**
     * How often {@link #available} still has to answer 0 after a lone Escape, so that the decoder, which asks twice,
     * takes it for the key.
     */
    private int emptyAnswers;

    /** What was asked of the terminal; null where nothing was, and then nothing of it is loaded. */
    private volatile PixelQuestion question;

    /** Answers to this go there from now on, and are no keys. */
    void expect(PixelQuestion asked) {
        question = asked;
    }

    EscapeFilter(InputStream in, TimedByteReader.Sleeper sleeper) {
        this.in = new TimedByteReader(in, sleeper);
    }

    /** Whether the last byte was all that the terminal sent in one read. */
    boolean cameAlone() {
        return in.lastRead() <= 1;
    }

    @Override
    public int available() throws IOException {
        if (passedAt == passedEnd && emptyAnswers > 0) {
            emptyAnswers--;
            return 0;
        }
        if (passedAt == passedEnd && isInUnmarkedPaste && !in.isReadyWithin(PASTE_END_MILLIS)) {
            endUnmarkedPaste();
        }
        while (passedAt == passedEnd && in.isReady()) {
            pass(in.next());
        }
        return passedEnd - passedAt;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] to, int from, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        while (passedAt == passedEnd) {
            emptyAnswers = 0;
            if (isInUnmarkedPaste && !in.isReadyWithin(PASTE_END_MILLIS)) {
                endUnmarkedPaste();
                break;
            }
            escapeJustPassed = escapeJustPassed && in.isReadyWithin(AFTER_ESCAPE_MILLIS);
            int one = in.next();
            if (one < 0) {
                return -1;
            }
            pass(one);
        }
        int many = Math.min(length, passedEnd - passedAt);
        System.arraycopy(passed, passedAt, to, from, many);
        passedAt += many;
        return many;
    }

    /** Lets one byte through with what belongs to it, and the plain ones behind it. */
    private void pass(int first) throws IOException {
        passedAt = 0;
        passedEnd = 0;
        if (first == EscapeSequence.ESCAPE) {
            escapeJustPassed = false;
            sequence();
        } else if (escapeJustPassed && (first == '[' || first == 'O')) {
            escapeJustPassed = false;
            lateTail(first);
        } else {
            escapeJustPassed = false;
            if (!isInMarkedPaste && !isInUnmarkedPaste && in.buffered() >= SUSPICIOUS_BYTES && looksPasted()) {
                isInUnmarkedPaste = true;
                append(EscapeSequence.PASTE_BEGINS);
            }
            append(first);
        }
        while (passedEnd > 0
                && !escapeJustPassed
                && in.buffered() > 0
                && in.peek(0) != EscapeSequence.ESCAPE
                && passedEnd < TimedByteReader.BUFFER_SIZE) {
            append(in.next());
        }
    }

    /** Lets a sequence through once it is whole, and the Escape key alone where none follows. */
    private void sequence() throws IOException {
        EscapeSequence sequence = new EscapeSequence();
        sequence.add(EscapeSequence.ESCAPE);
        append(EscapeSequence.ESCAPE);
        boolean tooLong = false;
        while (true) {
            if (!goesOn(sequence)) {
                if (sequence.isIntroduced()) {
                    passedEnd = 0;
                    discardRest(sequence);
                } else {
                    escapeJustPassed = true;
                    emptyAnswers = 3;
                }
                return;
            }
            int one = in.next();
            EscapeSequence.State state = sequence.add(one);
            if (state == EscapeSequence.State.BROKEN) {
                passedEnd = 0;
                // A byte that breaks a sequence does not belong to it.
                in.unread(one);
                return;
            }
            tooLong |= passedEnd == LONGEST;
            if (!tooLong) {
                append(one);
            }
            if (state == EscapeSequence.State.WHOLE) {
                passedEnd = tooLong ? 0 : passedEnd;
                String whole = new String(passed, 0, passedEnd, StandardCharsets.ISO_8859_1);
                notePasteMark(whole);
                if (question != null && question.takes(whole)) {
                    passedEnd = 0;
                }
                return;
            }
        }
    }

    /** Whether the next character of a sequence comes in time. */
    private boolean goesOn(EscapeSequence sequence) throws IOException {
        if (sequence.isIntroduced()) {
            return in.isReadyWithin(GAP_MILLIS);
        }
        if (in.isReadyWithin(ALT_MILLIS)) {
            // Alt with Enter means nothing here, but Escape and then Enter is typed quickly.
            int next = peek();
            return next != '\r' && next != '\n';
        }
        return in.isReadyWithin(LONE_ESCAPE_MILLIS - ALT_MILLIS) && beginsSequence(peek());
    }

    /**
     * A terminal that marks what is pasted needs no help; inside a paste that was marked here its marks are dropped.
     */
    private void notePasteMark(String sequence) {
        boolean isMark = sequence.equals(EscapeSequence.PASTE_BEGINS) || sequence.equals(EscapeSequence.PASTE_ENDS);
        if (isMark && isInUnmarkedPaste) {
            passedEnd = 0;
        } else if (isMark) {
            isInMarkedPaste = sequence.equals(EscapeSequence.PASTE_BEGINS);
        }
    }

    /** Whether so much text with a line end in it is here, or follows at once, that nobody can have typed it. */
    private boolean looksPasted() throws IOException {
        in.fill(PASTE_BYTES, PASTE_GAP_MILLIS);
        boolean hasLineEnd = false;
        int plain = 0;
        while (plain < in.buffered() && in.peek(plain) != EscapeSequence.ESCAPE) {
            hasLineEnd |= in.peek(plain) == '\r' || in.peek(plain) == '\n';
            plain++;
        }
        return hasLineEnd && plain >= PASTE_BYTES - 1;
    }

    private void endUnmarkedPaste() {
        isInUnmarkedPaste = false;
        passedAt = 0;
        passedEnd = 0;
        append(EscapeSequence.PASTE_ENDS);
    }

    /** What may be the rest of a torn sequence: thrown away if it is, let through as typed if it is not. */
    private void lateTail(int first) throws IOException {
        EscapeSequence sequence = new EscapeSequence();
        sequence.add(EscapeSequence.ESCAPE);
        sequence.add(first);
        append(first);
        while (passedEnd < LONGEST && in.isReadyWithin(TAIL_GAP_MILLIS)) {
            int one = in.next();
            EscapeSequence.State state = sequence.add(one);
            if (state == EscapeSequence.State.WHOLE) {
                passedEnd = 0;
                return;
            }
            if (state == EscapeSequence.State.BROKEN) {
                in.unread(one);
                return;
            }
            append(one);
        }
    }

    /**
     * Whether this is the second character of a sequence that a program sends, and hardly anybody types after Escape.
     */
    private static boolean beginsSequence(int second) {
        return second == '[' || second == 'O' || second == ']' || second == 'P';
    }

    private int peek() throws IOException {
        int one = in.next();
        in.unread(one);
        return one;
    }

    private void discardRest(EscapeSequence sequence) throws IOException {
        while (in.isReadyWithin(LATE_MILLIS)) {
            int one = in.next();
            EscapeSequence.State state = sequence.add(one);
            if (state == EscapeSequence.State.BROKEN) {
                in.unread(one);
            }
            if (state != EscapeSequence.State.OPEN) {
                return;
            }
        }
    }

    private void append(int one) {
        passed[passedEnd++] = (byte) one;
    }

    private void append(String sequence) {
        for (byte one : sequence.getBytes(StandardCharsets.ISO_8859_1)) {
            append(one & 0xff);
        }
    }
}
