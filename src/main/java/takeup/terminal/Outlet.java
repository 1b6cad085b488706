package takeup.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The way out to the terminal, which can be shut: a picture that is being painted while the program is told to end must
 * not write over the shell's own screen. After {@link #shut} what is written is dropped.
 */
final class Outlet extends OutputStream {
    private final OutputStream out;
    private final ReentrantLock lock = new ReentrantLock();
    private volatile boolean shut;

    Outlet(OutputStream out) {
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
            if (!shut) {
                out.write(bytes, from, length);
            }
        } finally {
            lock.unlock();
        }
    }

    @Override
    public void flush() throws IOException {
        if (!shut) {
            out.flush();
        }
    }

    /** Writes these last bytes and drops all later ones. A write that hangs is waited for half a second at most. */
    void shut(byte[] last) {
        boolean mine = false;
        try {
            mine = lock.tryLock(500, TimeUnit.MILLISECONDS);
            if (mine && !shut) {
                out.write(last);
                out.flush();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } catch (IOException gone) {
            // The terminal has gone, and with it the screen that was to be put back.
        } finally {
            shut = true;
            if (mine) {
                lock.unlock();
            }
        }
    }

    /** Writes on the main screen, once shut. */
    void afterwards(byte[] bytes) throws IOException {
        out.write(bytes);
        out.flush();
    }
}
