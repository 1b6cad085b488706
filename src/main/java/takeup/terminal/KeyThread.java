package takeup.terminal;

import com.googlecode.lanterna.input.InputDecoder;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
import takeup.message.Key;

/**
 * The thread that reads keys. One is handed over, and the next is read only after {@link #next()}: so no thread waits
 * in a read when the program ends, which would hold up the end by 300 ms.
 */
final class KeyThread extends Thread {
    private final Semaphore permits = new Semaphore(0);
    private final EscapeFilter bytes;
    private final TerminalListener listener;
    private final Terminal terminal;

    KeyThread(EscapeFilter bytes, TerminalListener listener, Terminal terminal) {
        super("keys");
        setDaemon(true);
        this.bytes = bytes;
        this.listener = listener;
        this.terminal = terminal;
    }

    @Override
    public void run() {
        InputDecoder decoder = new InputDecoder(new InputStreamReader(bytes, StandardCharsets.UTF_8));
        decoder.addProfile(new KeyPatterns());
        Keyboard keyboard = new Keyboard(decoder, new RealTime());
        try {
            for (Key key = keyboard.read(); key != null; key = keyboard.read()) {
                listener.pressed(key);
                permits.acquire();
            }
            terminal.end();
        } catch (IOException gone) {
            terminal.end();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** The key was taken: the next one may come. */
    void next() {
        permits.release();
    }
}
