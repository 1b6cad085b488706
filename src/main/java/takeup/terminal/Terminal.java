package takeup.terminal;

import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.terminal.ansi.UnixLikeTerminal;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.grid.Theme;
import takeup.message.Key;

/**
 * The terminal that the program runs in: the whole of it while the program runs, and given back as it was found. Keys
 * come in one at a time, pictures go out as a {@link Grid}; what happens in between is kept in this class.
 *
 * <p>Lanterna's own terminal class is not used as it is: it starts seven processes, asks the terminal for its size and
 * waits for an answer, reads no keys any more after Ctrl-Z, and takes unknown sequences for typed letters.
 */
public final class Terminal implements AutoCloseable {
    // The alternate screen; plain arrows; no mouse and no focus reports, should another program have left them on;
    // pasted text marked as such; no cursor.
    private static final String ENTER =
            "\u001b[?1049h\u001b[?1l\u001b>\u001b[?1000l\u001b[?1002l\u001b[?1003l\u001b[?1004l"
                    + "\u001b[?2004h\u001b[?25l";
    private static final String LEAVE = "\u001b[0m\u001b[?2004l\u001b[?25h\u001b[?1049l";

    private final Stty stty;
    private final TerminalOutput out;
    private final TerminalEnvironment environment;
    private final Painter painter;
    private final boolean colourless;
    private final CharacterSet characterSet;
    private final LanternaTerminal lanterna;
    private final EscapeFilter keys;

    private final Semaphore permits = new Semaphore(0);
    private final AtomicBoolean ended = new AtomicBoolean();
    private volatile Consumer<String> onEnd = sentence -> {};
    private volatile boolean sizeChanged = true;
    private volatile Size size = Size.USUAL;
    private final Object giveBackLock = new Object();
    private boolean isGivenBack;
    private boolean isAskedForPixels;

    private Terminal(Stty stty, InputStream keys, OutputStream out, TerminalEnvironment environment, Theme theme)
            throws IOException {
        this.stty = stty;
        this.out = new TerminalOutput(out);
        this.environment = environment;
        characterSet = environment.characterSet();
        colourless = environment.depth() == ColourDepth.NONE;
        painter = new Painter(this.out, environment.depth(), characterSet, theme);
        this.keys = new EscapeFilter(keys, TimedByteReader.Sleeper.THREAD);
        lanterna = new LanternaTerminal();
        this.out.write(bytes(ENTER));
    }

    /** Takes the terminal over. Refused with the reason where there is none that can be drawn on. */
    public static Terminal open(TerminalEnvironment environment, Theme theme) throws NoTerminal {
        if (!environment.canMoveItsCursor()) {
            throw new NoTerminal("The screen needs a terminal that can move its cursor, and TERM says "
                    + (environment.term().isEmpty() ? "nothing" : environment.term()) + ": takeup line does without.");
        }
        Stty stty = Stty.take();
        try {
            return new Terminal(
                    stty,
                    new FileInputStream(FileDescriptor.in),
                    new FileOutputStream(FileDescriptor.out),
                    environment,
                    theme);
        } catch (IOException | IllegalStateException gone) {
            stty.restore();
            throw new NoTerminal("The terminal went away while it was set up.");
        }
    }

    /** No screen at all: keys come from a stream until it ends, and pictures go nowhere. */
    public static Terminal withoutScreen(InputStream keys, TerminalEnvironment environment, Theme theme)
            throws IOException {
        return new Terminal(Stty.none(), keys, OutputStream.nullOutputStream(), environment, theme);
    }

    /**
     * Starts listening. One key is handed over, on a thread of its own, and the next is read only after
     * {@link #next()}: so no thread waits in a read when the program ends, which would hold up the end by 300 ms. After
     * {@code resized} and {@code continued} (the program was stopped and goes on) ask {@link #size()} and show a
     * picture; it is drawn whole. {@code ended} comes once, when the terminal is gone.
     */
    public void listen(Consumer<Key> pressed, Runnable resized, Runnable continued, Consumer<String> ended) {
        onEnd = ended;
        Signals.on("WINCH", () -> {
            sizeChanged = true;
            painter.forget();
            resized.run();
        });
        Signals.on("CONT", () -> {
            resume();
            continued.run();
        });
        Thread thread = new Thread(() -> listen(pressed), "keys");
        thread.setDaemon(true);
        thread.start();
    }

    private void listen(Consumer<Key> pressed) {
        Keyboard keyboard = new Keyboard(lanterna.getInputDecoder(), TimedByteReader.Sleeper.THREAD);
        try {
            for (Key key = keyboard.read(); key != null; key = keyboard.read()) {
                pressed.accept(key);
                permits.acquire();
            }
            end();
        } catch (IOException gone) {
            end();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether the key that was handed over last came alone; asked on the thread that hands it over. */
    public boolean cameAlone() {
        return keys.cameAlone();
    }

    /** The key was taken: the next one may come. Ask for it at once, unless the program is about to end. */
    public void next() {
        permits.release();
    }

    private void end() {
        if (!ended.getAndSet(true)) {
            onEnd.accept("the terminal was closed");
        }
    }

    /** After a stop: the shell has changed the modes and written on the screen in the meantime. */
    private void resume() {
        synchronized (giveBackLock) {
            if (isGivenBack) {
                return;
            }
            stty.setRawModes();
        }
        try {
            out.write(bytes(ENTER));
        } catch (IOException gone) {
            end();
        }
        sizeChanged = true;
        painter.forget();
    }

    /** Columns and rows as they are now; 80x24 where the terminal does not say. */
    public Size size() {
        if (sizeChanged) {
            sizeChanged = false;
            size = stty.size();
        }
        return size;
    }

    /** Shows this picture; writes only what differs from the one before. */
    public void show(Grid grid) {
        try {
            painter.show(grid);
        } catch (IOException gone) {
            end();
        }
    }

    /** Whether every theme looks the same here: NO_COLOR is set, or the terminal has no colours. */
    public boolean isColourless() {
        return colourless;
    }

    /** How pixels are drawn: two to a cell only where there are half blocks. */
    public PixelShape pixels() {
        return characterSet == CharacterSet.UNICODE ? PixelShape.HALF_CELL : PixelShape.WHOLE_CELL;
    }

    /** Asks once whether it draws true pixels, and waits for nothing; {@code answered}: draw the picture again. */
    public void askForPixels(Runnable answered) {
        if (isAskedForPixels || !PixelQuestion.mayBeAsked(environment)) {
            return;
        }
        isAskedForPixels = true;
        keys.expect(new PixelQuestion(size(), protocol -> {
            painter.pixels(protocol);
            answered.run();
        }));
        try {
            out.write(bytes(PixelQuestion.ASK));
        } catch (IOException gone) {
            end();
        }
    }

    /** Draws in this theme from the next picture on. */
    public void theme(Theme theme) {
        painter.theme(theme);
    }

    /** Draws the next picture whole, whatever has been written over the screen. */
    public void repaint() {
        painter.forget();
    }

    /** Rings the terminal's bell. */
    public void bell() {
        try {
            out.write('\u0007');
        } catch (IOException gone) {
            end();
        }
    }

    /** Gives the terminal back: main screen, cursor, modes as they were found. Once is enough, twice does no harm. */
    @Override
    public void close() {
        try {
            lanterna.close();
        } catch (IOException | IllegalStateException ending) {
            giveBack(); // the program is ending anyway, and another thread may be giving the terminal back: wait for it
        }
    }

    private void giveBack() {
        synchronized (giveBackLock) {
            if (!isGivenBack) {
                isGivenBack = true;
                out.close(bytes(LEAVE));
                stty.restore();
            }
        }
    }

    /** Closes, and prints a line on the shell's own screen; nothing hidden in it steers the terminal. */
    public void closeAndPrint(String line) {
        close();
        try {
            out.writeAfterClose(bytes(characterSet.of(line) + "\n"));
        } catch (IOException gone) {
            end();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /**
     * What is used of Lanterna: its decoder of keys, and its hook that gives the terminal back when the program is told
     * to end.
     */
    private final class LanternaTerminal extends UnixLikeTerminal {
        LanternaTerminal() throws IOException {
            super(keys, out, StandardCharsets.UTF_8, CtrlCBehaviour.TRAP);
        }

        @Override
        protected KeyDecodingProfile getDefaultKeyDecodingProfile() {
            return Keyboard::patterns;
        }

        @Override
        protected void restoreTerminalSettings() {
            giveBack();
        }

        // Stty does all this with one process instead of five, and nobody asks Lanterna for the size.

        @Override
        protected void saveTerminalSettings() {}

        @Override
        protected void canonicalMode(boolean enabled) {}

        @Override
        protected void keyEchoEnabled(boolean enabled) {}

        @Override
        protected void keyStrokeSignalsEnabled(boolean enabled) {}

        @Override
        protected void registerTerminalResizeListener(Runnable onResize) {}
    }
}
