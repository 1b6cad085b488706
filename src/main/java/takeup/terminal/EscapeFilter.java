package takeup.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * Stands between the terminal and the key decoder and lets an escape sequence through only when it is whole. A slow
 * line tears sequences: without this, arrow up in three pieces would be read as Esc, {@code [} and {@code A}, and
 * letters do things.
 *
 * <p>A character within 30 ms after Escape makes it Alt with that character; what begins a sequence may come up to 120
 * ms later, and Escape alone is let through then. A sequence that stops for longer than 150 ms is thrown away, and so
 * is the rest of it if that comes within a further 400 ms.
 *
 * <p>Not every terminal marks what is pasted. More text with line ends in it than hands can type at once, 256 bytes
 * without a pause, is marked here, so that a text on its way into the wrong window lies on the prompt and runs nothing.
 */
final class EscapeFilter extends InputStream {
    private static final int ALT = 30;
    private static final int LONE_ESCAPE = 120;
    private static final int GAP = 150;
    private static final int TAIL_GAP = 100;
    private static final int LATE = 400;
    private static final int AFTER_ESCAPE = 250;
    /** Longer than any key or any answer of a terminal; what is longer is read and thrown away. */
    private static final int LONGEST = 1024;

    /** So many bytes in one go may be a paste; then it is looked whether more follows at once. */
    private static final int MANY = 16;

    private static final int FLOOD = 256;
    private static final int AT_ONCE = 4;
    /** A flood is over after so much silence. */
    private static final int EBB = 60;

    private final TimedByteReader in;
    private final byte[] open = new byte[TimedByteReader.MOST + LONGEST];
    private int openAt;
    private int openEnd;

    private boolean marked;
    private boolean flooded;
    private boolean escapeJustPassed;
    /**
     * So many times nothing is said to be there after a lone Escape, so that the decoder takes it for the key. It asks
     * twice.
     */
    private int silent;

    EscapeFilter(InputStream in, TimedByteReader.Nap nap) {
        this.in = new TimedByteReader(in, nap);
    }

    @Override
    public int available() throws IOException {
        if (openAt == openEnd && silent > 0) {
            silent--;
            return 0;
        }
        if (openAt == openEnd && flooded && !in.comes(EBB)) {
            ebb();
        }
        while (openAt == openEnd && in.pending()) {
            pass(in.next());
        }
        return openEnd - openAt;
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
        while (openAt == openEnd) {
            silent = 0;
            if (flooded && !in.comes(EBB)) {
                ebb();
                break;
            }
            // The rest of a sequence whose Escape was taken for the key comes soon or never.
            escapeJustPassed = escapeJustPassed && in.comes(AFTER_ESCAPE);
            int one = in.next();
            if (one < 0) {
                return -1;
            }
            pass(one);
        }
        int many = Math.min(length, openEnd - openAt);
        System.arraycopy(open, openAt, to, from, many);
        openAt += many;
        return many;
    }

    /** Lets one byte through with what belongs to it, and the plain ones behind it. */
    private void pass(int first) throws IOException {
        openAt = 0;
        openEnd = 0;
        if (first == EscapeSequence.ESCAPE) {
            escapeJustPassed = false;
            sequence();
        } else if (escapeJustPassed && (first == '[' || first == 'O')) {
            escapeJustPassed = false;
            tail(first);
        } else {
            escapeJustPassed = false;
            if (!marked && !flooded && in.here() >= MANY && isFlood()) {
                flooded = true;
                let(EscapeSequence.PASTE_BEGINS);
            }
            let(first);
        }
        while (openEnd > 0
                && !escapeJustPassed
                && in.here() > 0
                && in.after(0) != EscapeSequence.ESCAPE
                && openEnd < TimedByteReader.MOST) {
            let(in.next());
        }
    }

    private void sequence() throws IOException {
        EscapeSequence sequence = new EscapeSequence();
        sequence.add(EscapeSequence.ESCAPE);
        let(EscapeSequence.ESCAPE);
        boolean tooLong = false;
        while (true) {
            if (!(sequence.isIntroduced()
                    ? in.comes(GAP)
                    : in.comes(ALT) || in.comes(LONE_ESCAPE - ALT) && begins(peek()))) {
                if (sequence.isIntroduced()) {
                    openEnd = 0;
                    swallow(sequence);
                } else {
                    escapeJustPassed = true;
                    silent = 3;
                }
                return;
            }
            int one = in.next();
            EscapeSequence.State state = one < 0 ? EscapeSequence.State.BROKEN : sequence.add(one);
            if (state == EscapeSequence.State.BROKEN) {
                openEnd = 0;
                // A byte that breaks a sequence is none of it.
                in.back(one);
                return;
            }
            tooLong |= openEnd == LONGEST;
            if (!tooLong) {
                let(one);
            }
            if (state == EscapeSequence.State.WHOLE) {
                openEnd = tooLong ? 0 : openEnd;
                marks(new String(open, 0, openEnd, StandardCharsets.ISO_8859_1));
                return;
            }
        }
    }

    /** A terminal that marks what is pasted needs no help, and inside a flood its marks are text like any other. */
    private void marks(String sequence) {
        boolean isMark = sequence.equals(EscapeSequence.PASTE_BEGINS) || sequence.equals(EscapeSequence.PASTE_ENDS);
        if (isMark && flooded) {
            openEnd = 0;
        } else if (isMark) {
            marked = sequence.equals(EscapeSequence.PASTE_BEGINS);
        }
    }

    /** Whether so much text with a line end in it stands here, or follows at once, that nobody typed it. */
    private boolean isFlood() throws IOException {
        in.gather(FLOOD, AT_ONCE);
        boolean lines = false;
        int plain = 0;
        while (plain < in.here() && in.after(plain) != EscapeSequence.ESCAPE) {
            lines |= in.after(plain) == '\r' || in.after(plain) == '\n';
            plain++;
        }
        return lines && plain >= FLOOD - 1;
    }

    private void ebb() {
        flooded = false;
        openAt = 0;
        openEnd = 0;
        let(EscapeSequence.PASTE_ENDS);
    }

    /** What may be the rest of a torn sequence: thrown away if it is, let through as typed if it is not. */
    private void tail(int first) throws IOException {
        EscapeSequence sequence = new EscapeSequence();
        sequence.add(EscapeSequence.ESCAPE);
        sequence.add(first);
        let(first);
        while (openEnd < LONGEST && in.comes(TAIL_GAP)) {
            int one = in.next();
            EscapeSequence.State state = one < 0 ? EscapeSequence.State.BROKEN : sequence.add(one);
            if (state == EscapeSequence.State.WHOLE) {
                openEnd = 0;
                return;
            }
            if (state == EscapeSequence.State.BROKEN) {
                in.back(one);
                return;
            }
            let(one);
        }
    }

    /**
     * Whether this is the second character of a sequence that a program sends, and hardly anybody types after Escape.
     */
    private static boolean begins(int second) {
        return second == '[' || second == 'O' || second == ']' || second == 'P';
    }

    private int peek() throws IOException {
        int one = in.next();
        in.back(one);
        return one;
    }

    private void swallow(EscapeSequence sequence) throws IOException {
        while (in.comes(LATE)) {
            int one = in.next();
            EscapeSequence.State state = one < 0 ? EscapeSequence.State.BROKEN : sequence.add(one);
            if (state == EscapeSequence.State.BROKEN) {
                in.back(one);
            }
            if (state != EscapeSequence.State.OPEN) {
                return;
            }
        }
    }

    private void let(int one) {
        open[openEnd++] = (byte) one;
    }

    private void let(String sequence) {
        for (byte one : sequence.getBytes(StandardCharsets.ISO_8859_1)) {
            let(one & 0xff);
        }
    }
}
