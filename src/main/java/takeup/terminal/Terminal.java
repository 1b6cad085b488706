package takeup.terminal;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.grid.Theme;

/**
 * The terminal that the program runs in: the whole of it while the program runs, and given back as it was found. Keys
 * come in one at a time, pictures go out as a {@link Grid}; what happens in between is kept in this class.
 *
 * <p>Of Lanterna its decoder of keys is used, and not its terminal: that starts seven processes, asks for the size and
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
    private final Thread givingBack = new GivingBack();
    private final EscapeFilter keys;

    private boolean hasEnded;
    /** Null until somebody listens. */
    private volatile TerminalListener listener;

    private volatile KeyThread keyThread;
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
        this.keys = new EscapeFilter(keys, new RealTime());
        Runtime.getRuntime().addShutdownHook(givingBack);
        Signals.tell(this);
        this.out.write(bytes(ENTER));
    }

    /** Takes the terminal over. Refused with the reason where there is none that can be drawn on. */
    public static Terminal open(TerminalEnvironment environment, Theme theme) throws NoTerminal {
        if (!environment.canMoveItsCursor()) {
            throw new NoTerminal("The screen needs a terminal that can move its cursor, and TERM says "
                    + (environment.term().isEmpty() ? "nothing" : environment.term()) + ": takeup line does without.");
        }
        Optional<Stty> handedOver = Stty.handedOver(System.getProperty("takeup.terminal", ""));
        Stty stty = handedOver.isPresent() ? handedOver.get() : Stty.take();
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

    /** Starts listening, and tells this listener from now on. */
    public void listen(TerminalListener told) {
        listener = told;
        keyThread = new KeyThread(keys, told, this);
        keyThread.start();
    }

    /** Whether the key that was handed over last came alone; asked on the thread that hands it over. */
    public boolean cameAlone() {
        return keys.cameAlone();
    }

    /** The key was taken: the next one may come. Ask for it at once, unless the program is about to end. */
    public void next() {
        keyThread.next();
    }

    /** No key can come any more, or no picture be shown. */
    void end() {
        if (isFirstEnd() && listener != null) {
            listener.ended("the terminal was closed");
        }
    }

    /** By hand, as an AtomicBoolean takes 1 ms of the start to be made ready. */
    private synchronized boolean isFirstEnd() {
        boolean isFirst = !hasEnded;
        hasEnded = true;
        return isFirst;
    }

    /** Another size: the next picture is drawn whole. */
    void resized() {
        sizeChanged = true;
        painter.forget();
        if (listener != null) {
            listener.changed();
        }
    }

    /** After a stop: the shell has changed the modes and written on the screen in the meantime. */
    void continued() {
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
        resized();
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
        giveBack(); // another thread may be giving it back: this waits for it
        try {
            Runtime.getRuntime().removeShutdownHook(givingBack);
        } catch (IllegalStateException ending) {
            // the program is ending anyway
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

    /** Gives the terminal back when the program is told to end. */
    private final class GivingBack extends Thread {
        GivingBack() {
            super("terminal given back");
        }

        @Override
        public void run() {
            giveBack();
        }
    }
}
