package takeup.screen;

import com.googlecode.lanterna.input.AltAndCharacterPattern;
import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.CtrlAltAndCharacterPattern;
import com.googlecode.lanterna.input.CtrlAndCharacterPattern;
import com.googlecode.lanterna.input.EscapeSequenceCharacterPattern;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.input.NormalCharacterPattern;
import com.googlecode.lanterna.terminal.ansi.UnixLikeTerminal;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import takeup.shoot.Key;

/**
 * The terminal that the program runs in, taken over whole and given back as it was. Keys come in one at a time, pictures go
 * out as a {@link Grid}; what happens in between is kept in this class.
 *
 * <p>Lanterna's own terminal class is not used as it is: it starts seven helpers, asks the terminal for its size and waits
 * for an answer, goes deaf after Ctrl-Z, and lets sequences it does not know through as typed letters.
 */
public final class Terminal implements AutoCloseable {
    // The other screen; plain arrows; no mouse and no focus reports, should another program have left them on;
    // pasted text marked as such; no cursor.
    private static final String ENTER = "\u001b[?1049h\u001b[?1l\u001b>\u001b[?1000l\u001b[?1002l\u001b[?1003l\u001b[?1004l"
            + "\u001b[?2004h\u001b[?25l";
    private static final String LEAVE = "\u001b[0m\u001b[?2004l\u001b[?25h\u001b[?1049l";

    private final Stty stty;
    private final Outlet out;
    private final Painter painter;
    private final boolean colourless;
    private final Lettering lettering;
    private final Wire wire;

    private final Semaphore permits = new Semaphore(0);
    private final AtomicBoolean ended = new AtomicBoolean();
    private volatile Consumer<String> atTheEnd = sentence -> { };
    private volatile boolean sizeChanged = true;
    private volatile Size size = Size.USUAL;
    private final Object leaving = new Object();
    private boolean left;

    private Terminal(Stty stty, InputStream keys, OutputStream out, Environment environment, Theme theme) throws IOException {
        this.stty = stty;
        this.out = new Outlet(out);
        lettering = environment.lettering();
        colourless = environment.depth() == Depth.NONE;
        painter = new Painter(this.out, environment.depth(), lettering, theme);
        wire = new Wire(keys);
        this.out.write(bytes(ENTER));
    }

    /** Takes the terminal over. Refused, with a sentence that says why, where there is none that can be drawn on. */
    public static Terminal open(Environment environment, Theme theme) throws NoTerminal {
        if (!environment.canMoveItsCursor()) {
            throw new NoTerminal("The screen needs a terminal that can move its cursor, and TERM says "
                    + (environment.term().isEmpty() ? "nothing" : environment.term()) + ": takeup line does without.");
        }
        Stty stty = Stty.take();
        try {
            return new Terminal(stty, new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out), environment, theme);
        } catch (IOException | IllegalStateException gone) {
            stty.restore();
            throw new NoTerminal("The terminal went away while it was set up.");
        }
    }

    /** A terminal that nobody sees: keys come from a stream until it ends, and pictures go nowhere. */
    public static Terminal unseen(InputStream keys, Environment environment, Theme theme) throws IOException {
        return new Terminal(Stty.none(), keys, OutputStream.nullOutputStream(), environment, theme);
    }

    /**
     * Starts listening. One key is handed over, on a thread of its own, and the next is read only after {@link #next()}: so no
     * thread waits in a read when the program ends, which would hold up the end by 300 ms. After {@code resized} and
     * {@code continued} (the program was stopped and goes on) ask {@link #size()} and show a picture; it is drawn whole.
     * {@code ended} comes once, when the terminal is gone.
     */
    public void listen(Consumer<Key> keys, Runnable resized, Runnable continued, Consumer<String> ended) {
        atTheEnd = ended;
        Signals.on("WINCH", () -> {
            sizeChanged = true;
            painter.forget();
            resized.run();
        });
        Signals.on("CONT", () -> {
            again();
            continued.run();
        });
        Thread thread = new Thread(() -> listen(keys), "keys");
        thread.setDaemon(true);
        thread.start();
    }

    private void listen(Consumer<Key> keys) {
        Keyboard keyboard = new Keyboard(wire.getInputDecoder(), Thread::sleep);
        try {
            for (Key key = keyboard.read(); key != null; key = keyboard.read()) {
                keys.accept(key);
                permits.acquire();
            }
            end();
        } catch (IOException gone) {
            end();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** The key was taken: the next one may come. Ask for it at once, unless the program is about to end. */
    public void next() {
        permits.release();
    }

    private void end() {
        if (!ended.getAndSet(true)) {
            atTheEnd.accept("the terminal was closed");
        }
    }

    /** The shell had the terminal in the meantime, and set its modes and wrote on its screen as it liked. */
    private void again() {
        synchronized (leaving) {
            if (left) {
                return;
            }
            stty.again();
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
            wire.close();
        } catch (IOException | IllegalStateException ending) {
            leave(); // the program is ending anyway, and another thread may be giving the terminal back: wait for it
        }
    }

    private void leave() {
        synchronized (leaving) {
            if (!left) {
                left = true;
                out.shut(bytes(LEAVE));
                stty.restore();
            }
        }
    }

    /** Closes, and prints a line on the shell's own screen; nothing hidden in it steers the terminal. */
    public void farewell(String line) {
        close();
        try {
            out.afterwards(bytes(lettering.of(line) + "\n"));
        } catch (IOException gone) {
            end();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Lanterna's part: its decoder of keys, and its hook that gives the terminal back when the program is told to end. */
    private final class Wire extends UnixLikeTerminal {
        Wire(InputStream keys) throws IOException {
            super(new Gate(keys, Thread::sleep), out, StandardCharsets.UTF_8, CtrlCBehaviour.TRAP);
        }

        @Override
        protected KeyDecodingProfile getDefaultKeyDecodingProfile() {
            return Keyboard::patterns;
        }

        @Override
        protected void restoreTerminalSettings() {
            leave();
        }

        // The rest is done already, by one helper instead of five, and the size is never asked from here.

        @Override
        protected void saveTerminalSettings() { }

        @Override
        protected void canonicalMode(boolean enabled) { }

        @Override
        protected void keyEchoEnabled(boolean enabled) { }

        @Override
        protected void keyStrokeSignalsEnabled(boolean enabled) { }

        @Override
        protected void registerTerminalResizeListener(Runnable onResize) { }
    }

    /** Lanterna's key strokes to ours: pasted text whole, characters of two halves joined, unknown sequences harmless. */
    static final class Keyboard {
        private static final KeyStroke PASTE_BEGINS = new KeyStroke(KeyType.Unknown);
        private static final KeyStroke PASTE_ENDS = new KeyStroke(KeyType.Unknown);
        /** A paste whose end is lost ends after two seconds of silence. */
        private static final int SILENCE = 2000;
        private static final int STEP = 5;

        private final InputDecoder decoder;
        private final Incoming.Nap nap;

        Keyboard(InputDecoder decoder, Incoming.Nap nap) {
            this.decoder = decoder;
            this.nap = nap;
        }

        /** The next key; null when no more can come. */
        Key read() throws IOException, InterruptedException {
            KeyStroke stroke = decoder.getNextCharacter(true);
            while (stroke == null || stroke.getKeyType() != KeyType.EOF) {
                if (stroke == PASTE_BEGINS) {
                    return Key.pasted(pasted());
                }
                if (isHalf(stroke)) {
                    KeyStroke second = decoder.getNextCharacter(true);
                    if (isHalf(second) && Character.isSurrogatePair(stroke.getCharacter(), second.getCharacter())) {
                        return Key.typed(new String(new char[] {stroke.getCharacter(), second.getCharacter()}));
                    }
                    stroke = second; // half a character is none
                } else if (stroke == null || stroke == PASTE_ENDS) {
                    stroke = decoder.getNextCharacter(true);
                } else {
                    return key(stroke);
                }
            }
            return null;
        }

        private String pasted() throws IOException, InterruptedException {
            StringBuilder text = new StringBuilder();
            int silent = 0;
            while (silent < SILENCE) {
                KeyStroke stroke = decoder.getNextCharacter(false);
                if (stroke == null) {
                    silent += STEP;
                    nap.millis(STEP);
                } else if (stroke == PASTE_ENDS || stroke.getKeyType() == KeyType.EOF) {
                    break;
                } else {
                    silent = 0;
                    text.append(written(stroke));
                }
            }
            return text.toString();
        }

        private static String written(KeyStroke stroke) {
            return switch (stroke.getKeyType()) {
                case Enter -> "\n";
                case Tab -> "\t";
                case Character -> stroke.isAltDown() || stroke.isCtrlDown() ? "" : stroke.getCharacter().toString();
                default -> "";
            };
        }

        private static boolean isHalf(KeyStroke stroke) {
            return stroke != null && stroke.getKeyType() == KeyType.Character && !stroke.isAltDown()
                    && Character.isSurrogate(stroke.getCharacter());
        }

        private static Key key(KeyStroke stroke) {
            boolean held = stroke.isAltDown() || stroke.isCtrlDown();
            return switch (stroke.getKeyType()) {
                case Character -> character(stroke);
                // An arrow with a held key is the arrow: some terminals send Ctrl where nobody holds it.
                case ArrowUp -> Key.of(Key.Name.UP);
                case ArrowDown -> Key.of(Key.Name.DOWN);
                case ArrowLeft -> Key.of(Key.Name.LEFT);
                case ArrowRight -> Key.of(Key.Name.RIGHT);
                case Home -> Key.of(Key.Name.HOME);
                case End -> Key.of(Key.Name.END);
                case PageUp -> Key.of(Key.Name.PAGE_UP);
                case PageDown -> Key.of(Key.Name.PAGE_DOWN);
                case ReverseTab -> Key.of(Key.Name.SHIFT_TAB);
                case Escape -> Key.of(Key.Name.ESCAPE);
                case Enter -> Key.of(Key.Name.ENTER);
                case Tab -> Key.of(Key.Name.TAB);
                case Backspace -> Key.of(held ? Key.Name.UNKNOWN : Key.Name.BACKSPACE);
                case Delete -> Key.of(held ? Key.Name.UNKNOWN : Key.Name.DELETE);
                default -> Key.of(held || stroke.isShiftDown() ? Key.Name.UNKNOWN : function(stroke.getKeyType()));
            };
        }

        private static Key character(KeyStroke stroke) {
            char written = stroke.getCharacter();
            if (stroke.isAltDown()) {
                return stroke.isCtrlDown() || Character.isSurrogate(written) ? Key.of(Key.Name.UNKNOWN)
                        : new Key(Key.Name.ALT, String.valueOf(written));
            }
            return stroke.isCtrlDown() ? Key.ctrl(written) : Key.typed(String.valueOf(written));
        }

        private static Key.Name function(KeyType type) {
            return switch (type) {
                case F1 -> Key.Name.F1;
                case F2 -> Key.Name.F2;
                case F3 -> Key.Name.F3;
                case F4 -> Key.Name.F4;
                case F5 -> Key.Name.F5;
                case F6 -> Key.Name.F6;
                case F7 -> Key.Name.F7;
                case F8 -> Key.Name.F8;
                case F9 -> Key.Name.F9;
                case F10 -> Key.Name.F10;
                case F11 -> Key.Name.F11;
                case F12 -> Key.Name.F12;
                default -> Key.Name.UNKNOWN;
            };
        }

        /** Of two patterns that both fit the last one wins, so the one that takes any sequence stands first. */
        static List<CharacterPattern> patterns() {
            char escape = Sequence.ESCAPE;
            return List.of(
                    new Any(),
                    new BasicCharacterPattern(new KeyStroke(KeyType.Escape), escape),
                    new BasicCharacterPattern(new KeyStroke(KeyType.Tab), '\t'),
                    new BasicCharacterPattern(new KeyStroke(KeyType.Enter), '\n'),
                    new BasicCharacterPattern(new KeyStroke(KeyType.Enter), '\r'),
                    new BasicCharacterPattern(new KeyStroke(KeyType.Backspace), '\u007f'),
                    new BasicCharacterPattern(new KeyStroke(KeyType.Backspace), '\b'),
                    new BasicCharacterPattern(new KeyStroke(KeyType.F1), escape, '[', '[', 'A'), // the Linux console
                    new BasicCharacterPattern(new KeyStroke(KeyType.F2), escape, '[', '[', 'B'),
                    new BasicCharacterPattern(new KeyStroke(KeyType.F3), escape, '[', '[', 'C'),
                    new BasicCharacterPattern(new KeyStroke(KeyType.F4), escape, '[', '[', 'D'),
                    new BasicCharacterPattern(new KeyStroke(KeyType.F5), escape, '[', '[', 'E'),
                    new Known(), new NormalCharacterPattern(), new Alt(), new CtrlAndCharacterPattern(),
                    new CtrlAltAndCharacterPattern());
        }

        /** Any well-formed sequence, as one key that does nothing; and the two that stand around pasted text. */
        private static final class Any implements CharacterPattern {
            @Override
            public Matching match(List<Character> read) {
                Sequence sequence = new Sequence();
                Sequence.State state = Sequence.State.OPEN;
                for (char one : read) {
                    if (state != Sequence.State.OPEN) {
                        return null;
                    }
                    state = sequence.add(one);
                }
                if (state == Sequence.State.OPEN) {
                    return Matching.NOT_YET;
                }
                return state == Sequence.State.WHOLE && sequence.isIntroduced() ? new Matching(meaning(read)) : null;
            }

            private static KeyStroke meaning(List<Character> read) {
                if (read.size() == 6 && read.get(1) == '[' && read.get(2) == '2' && read.get(3) == '0' && read.get(5) == '~') {
                    return read.get(4) == '0' ? PASTE_BEGINS : read.get(4) == '1' ? PASTE_ENDS : new KeyStroke(KeyType.Unknown);
                }
                return new KeyStroke(KeyType.Unknown);
            }
        }

        /** The sequences of known keys, but a report of the cursor's place is not F3. */
        private static final class Known extends EscapeSequenceCharacterPattern {
            @Override
            protected KeyStroke getKeyStrokeRaw(char first, int number, int held, char last, boolean twice) {
                return last == 'R' && held > 0 ? null : super.getKeyStrokeRaw(first, number, held, last, twice);
            }
        }

        /** Alt with a character, but for those that begin a sequence. */
        private static final class Alt extends AltAndCharacterPattern {
            @Override
            public Matching match(List<Character> read) {
                return read.size() == 2 && "[O]P_^X".indexOf(read.get(1)) >= 0 ? null : super.match(read);
            }
        }
    }
}
