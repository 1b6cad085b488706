package takeup.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;

/**
 * The bytes that a terminal sends, in their order, for a reader that must know what comes <em>soon</em>: it waits for
 * the next one for so many milliseconds and no longer, looks at what lies here already, and gives one byte back.
 */
final class TimedByteReader {
    /** How to let time pass; tests have their own. */
    interface Nap {
        void millis(int millis) throws InterruptedException;
    }

    /** What is read in one go at most. */
    static final int MOST = 4096;

    private static final int STEP = 2;

    private final InputStream in;
    private final Nap nap;
    private final byte[] bytes = new byte[MOST];
    private int at;
    private int end;

    TimedByteReader(InputStream in, Nap nap) {
        this.in = in;
        this.nap = nap;
    }

    /** How many bytes lie here without a look at the terminal. */
    int here() {
        return end - at;
    }

    /** The byte that so many others stand before, 0 for the next one; fewer than {@link #here}. */
    int after(int others) {
        return bytes[at + others] & 0xff;
    }

    /** The next byte, waited for without an end; -1 when no more will come. */
    int next() throws IOException {
        if (at == end) {
            at = 0;
            end = Math.max(0, in.read(bytes, 0, bytes.length));
            if (end == 0) {
                return -1;
            }
        }
        return bytes[at++] & 0xff;
    }

    /** Gives back the byte that {@link #next} answered last, to be read again; what was no byte is not given back. */
    void back(int one) {
        if (one >= 0) {
            at--;
        }
    }

    /** Whether the next byte can be had now. */
    boolean pending() throws IOException {
        return at < end || in.available() > 0;
    }

    /** Whether the next byte can be had within so many milliseconds. */
    boolean comes(int millis) throws IOException {
        return at < end || follows(millis);
    }

    /** Reads on until so many bytes lie here, as long as the next ones follow within so many milliseconds. */
    void gather(int many, int millis) throws IOException {
        System.arraycopy(bytes, at, bytes, 0, here());
        end -= at;
        at = 0;
        while (end < many && follows(millis)) {
            int more = in.read(bytes, end, bytes.length - end);
            if (more <= 0) {
                return;
            }
            end += more;
        }
    }

    private boolean follows(int millis) throws IOException {
        for (int left = millis; in.available() == 0; left -= STEP) {
            if (left <= 0) {
                return false;
            }
            pause();
        }
        return true;
    }

    private void pause() throws InterruptedIOException {
        try {
            nap.millis(STEP);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("interrupted in the middle of a key");
        }
    }
}
