package takeup.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The output of the terminal, which can be closed for good: a picture that is being painted while the program is told
 * to end must not write over the shell's own screen. After {@link #close(byte[])} what is written is dropped.
 */
final class TerminalOutput extends OutputStream {
    private final OutputStream out;
    private final ReentrantLock lock = new ReentrantLock();
    private volatile boolean isClosed;

    TerminalOutput(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        lock.lock();
        try {
            if (!isClosed) {
                out.write(bytes, from, length);
            }
        } finally {
            lock.unlock();
        }
    }

    @Override
    public void flush() throws IOException {
        if (!isClosed) {
            out.flush();
        }
    }

    /** Writes these last bytes and drops all later ones. A write that hangs is waited for half a second at most. */
    void close(byte[] last) {
        boolean hasLock = false;
        try {
            hasLock = lock.tryLock(500, TimeUnit.MILLISECONDS);
            if (hasLock && !isClosed) {
                out.write(last);
                out.flush();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } catch (IOException gone) {
            // The terminal has gone, and with it the screen that was to be put back.
        } finally {
            isClosed = true;
            if (hasLock) {
                lock.unlock();
            }
        }
    }

    /** Writes on the shell's own screen, once closed. */
    void writeAfterClose(byte[] bytes) throws IOException {
        out.write(bytes);
        out.flush();
    }
}
