package takeup.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;

/**
 * Reads the bytes that a terminal sends, with a time limit: it waits so many milliseconds for the next one and no
 * longer, looks ahead at what is buffered, and takes one byte back.
 */
final class TimedByteReader {
    /** How to let time pass; tests have their own. */
    interface Sleeper {
        /** Lets so many milliseconds pass; on a busy machine more do: how many did. */
        int millis(int millis) throws InterruptedException;
    }

    /** What is read in one go at most. */
    static final int BUFFER_SIZE = 4096;

    private static final int STEP_MILLIS = 2;

    private final InputStream in;
    private final Sleeper sleeper;
    private final byte[] bytes = new byte[BUFFER_SIZE];
    private int at;
    private int end;
    private int lastRead;

    TimedByteReader(InputStream in, Sleeper sleeper) {
        this.in = in;
        this.sleeper = sleeper;
    }

    /** How many bytes were read from the terminal and not handed on yet. */
    int buffered() {
        return end - at;
    }

    /** How many bytes came together when the terminal was read last. */
    int lastRead() {
        return lastRead;
    }

    /** The byte after so many others, 0 for the next one; fewer than {@link #buffered}. */
    int peek(int offset) {
        return bytes[at + offset] & 0xff;
    }

    /** The next byte, waited for without a limit; -1 when no more will come. */
    int next() throws IOException {
        if (at == end) {
            at = 0;
            end = Math.max(0, in.read(bytes, 0, bytes.length));
            lastRead = end;
            if (end == 0) {
                return -1;
            }
        }
        return bytes[at++] & 0xff;
    }

    /** Takes back the byte that {@link #next} returned last, to be read again; -1 is no byte. */
    void unread(int one) {
        if (one >= 0) {
            at--;
        }
    }

    /** Whether the next byte can be had now. */
    boolean isReady() throws IOException {
        return at < end || in.available() > 0;
    }

    /** Whether the next byte can be had within so many milliseconds. */
    boolean isReadyWithin(int millis) throws IOException {
        return at < end || isInputWithin(millis);
    }

    /** Reads on until so many bytes are buffered, as long as the next ones follow within so many milliseconds. */
    void fill(int many, int millis) throws IOException {
        System.arraycopy(bytes, at, bytes, 0, buffered());
        end -= at;
        at = 0;
        while (end < many && isInputWithin(millis)) {
            int more = in.read(bytes, end, bytes.length - end);
            if (more <= 0) {
                return;
            }
            end += more;
            lastRead = end;
        }
    }

    private boolean isInputWithin(int millis) throws IOException {
        int left = millis;
        while (in.available() == 0) {
            if (left <= 0) {
                return false;
            }
            left -= pause();
        }
        return true;
    }

    private int pause() throws InterruptedIOException {
        try {
            return Math.max(STEP_MILLIS, sleeper.millis(STEP_MILLIS));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("interrupted in the middle of a key");
        }
    }
}
