package takeup.screen;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;

/**
 * Stands between the terminal and the key decoder and lets an escape sequence through only when it is whole. A slow line
 * tears sequences: without this, arrow up in three pieces would be read as Esc, {@code [} and {@code A}, and letters do things.
 *
 * <p>A character within 30 ms after Escape makes it Alt with that character; what begins a sequence may come up to 120 ms later, and
 * Escape alone is let through then. A sequence that stops for longer than 150 ms is thrown away, and so is the rest of it if that comes
 * within a further 400 ms.
 */
final class Gate extends InputStream {
    /** How to let time pass; tests have their own. */
    interface Nap {
        void millis(int millis) throws InterruptedException;
    }

    private static final int STEP = 2;
    private static final int ALT = 30;
    private static final int LONE_ESCAPE = 120;
    private static final int GAP = 150;
    private static final int TAIL_GAP = 100;
    private static final int LATE = 400;
    private static final int AFTER_ESCAPE = 250;
    /** Longer than any key or any answer of a terminal; what is longer is read and thrown away. */
    private static final int LONGEST = 1024;

    private final InputStream in;
    private final Nap nap;

    private final byte[] raw = new byte[4096];
    private int rawAt;
    private int rawEnd;

    private final byte[] open = new byte[raw.length + LONGEST];
    private int openAt;
    private int openEnd;

    private boolean escapeJustPassed;
    /** So many times nothing is said to be there after a lone Escape, so that the decoder takes it for the key. It asks twice. */
    private int silent;

    Gate(InputStream in, Nap nap) {
        this.in = in;
        this.nap = nap;
    }

    @Override
    public int available() throws IOException {
        if (openAt == openEnd && silent > 0) {
            silent--;
            return 0;
        }
        while (openAt == openEnd && pending()) {
            pass(next());
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
            // The rest of a sequence whose Escape was taken for the key comes soon or never.
            escapeJustPassed = escapeJustPassed && comes(AFTER_ESCAPE);
            int one = next();
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
        if (first == Sequence.ESCAPE) {
            escapeJustPassed = false;
            sequence();
        } else if (escapeJustPassed && (first == '[' || first == 'O')) {
            escapeJustPassed = false;
            tail(first);
        } else {
            escapeJustPassed = false;
            let(first);
        }
        while (openEnd > 0 && !escapeJustPassed && rawAt < rawEnd && raw[rawAt] != Sequence.ESCAPE && openEnd < raw.length) {
            let(raw[rawAt++]);
        }
    }

    private void sequence() throws IOException {
        Sequence sequence = new Sequence();
        sequence.add(Sequence.ESCAPE);
        let(Sequence.ESCAPE);
        boolean tooLong = false;
        while (true) {
            if (!(sequence.isIntroduced() ? comes(GAP) : comes(ALT) || comes(LONE_ESCAPE - ALT) && begins(peek()))) {
                if (sequence.isIntroduced()) {
                    openEnd = 0;
                    swallow(sequence);
                } else {
                    escapeJustPassed = true;
                    silent = 3;
                }
                return;
            }
            int one = next();
            Sequence.State state = one < 0 ? Sequence.State.BROKEN : sequence.add(one);
            if (state == Sequence.State.BROKEN) {
                openEnd = 0;
                unlessEnded(one);
                return;
            }
            tooLong |= openEnd == LONGEST;
            if (!tooLong) {
                let(one);
            }
            if (state == Sequence.State.WHOLE) {
                openEnd = tooLong ? 0 : openEnd;
                return;
            }
        }
    }

    /** What may be the rest of a torn sequence: thrown away if it is, let through as typed if it is not. */
    private void tail(int first) throws IOException {
        Sequence sequence = new Sequence();
        sequence.add(Sequence.ESCAPE);
        sequence.add(first);
        let(first);
        while (openEnd < LONGEST && comes(TAIL_GAP)) {
            int one = next();
            Sequence.State state = one < 0 ? Sequence.State.BROKEN : sequence.add(one);
            if (state == Sequence.State.WHOLE) {
                openEnd = 0;
                return;
            }
            if (state == Sequence.State.BROKEN) {
                unlessEnded(one);
                return;
            }
            let(one);
        }
    }

    /** Whether this is the second character of a sequence that a program sends, and hardly anybody types after Escape. */
    private static boolean begins(int second) {
        return second == '[' || second == 'O' || second == ']' || second == 'P';
    }

    private int peek() throws IOException {
        int one = next();
        unlessEnded(one);
        return one;
    }

    private void swallow(Sequence sequence) throws IOException {
        while (comes(LATE)) {
            int one = next();
            Sequence.State state = one < 0 ? Sequence.State.BROKEN : sequence.add(one);
            if (state == Sequence.State.BROKEN) {
                unlessEnded(one);
            }
            if (state != Sequence.State.OPEN) {
                return;
            }
        }
    }

    /** A byte that breaks a sequence is none of it: it is read again as the next one. */
    private void unlessEnded(int one) {
        if (one >= 0) {
            rawAt--;
        }
    }

    private void let(int one) {
        open[openEnd++] = (byte) one;
    }

    private boolean pending() throws IOException {
        return rawAt < rawEnd || in.available() > 0;
    }

    private boolean comes(int millis) throws IOException {
        for (int left = millis; !pending(); left -= STEP) {
            if (left <= 0) {
                return false;
            }
            try {
                nap.millis(STEP);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                throw new InterruptedIOException("interrupted in the middle of a key");
            }
        }
        return true;
    }

    private int next() throws IOException {
        if (rawAt == rawEnd) {
            rawAt = 0;
            rawEnd = Math.max(0, in.read(raw, 0, raw.length));
            if (rawEnd == 0) {
                return -1;
            }
        }
        return raw[rawAt++] & 0xff;
    }
}
