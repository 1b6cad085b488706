package takeup.terminal;

import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.util.Arrays;
import takeup.message.Key;

/** Turns Lanterna's key strokes into keys: pasted text in one piece, surrogates joined, unknown sequences harmless. */
final class Keyboard {
    /** A paste whose end is lost ends after two seconds of silence. */
    private static final int SILENCE_MILLIS = 2000;

    private static final int STEP_MILLIS = 5;

    private final InputDecoder decoder;
    private final TimedByteReader.Sleeper sleeper;

    Keyboard(InputDecoder decoder, TimedByteReader.Sleeper sleeper) {
        this.decoder = decoder;
        this.sleeper = sleeper;
    }

    /** The next key; null when no more can come. */
    Key read() throws IOException, InterruptedException {
        KeyStroke stroke = decoder.getNextCharacter(true);
        while (stroke == null || stroke.getKeyType() != KeyType.EOF) {
            if (stroke == KeyPatterns.PASTE_BEGINS) {
                return Key.pasted(pasted());
            }
            if (isSurrogate(stroke)) {
                KeyStroke second = decoder.getNextCharacter(true);
                if (isSurrogate(second) && Character.isSurrogatePair(stroke.getCharacter(), second.getCharacter())) {
                    return Key.typed(new String(new char[] {stroke.getCharacter(), second.getCharacter()}));
                }
                stroke = second; // half a character is none
            } else if (stroke == null || stroke == KeyPatterns.PASTE_ENDS) {
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
        while (silent < SILENCE_MILLIS) {
            KeyStroke stroke = decoder.getNextCharacter(false);
            if (stroke == null) {
                silent += Math.max(STEP_MILLIS, sleeper.millis(STEP_MILLIS));
            } else if (stroke == KeyPatterns.PASTE_ENDS || stroke.getKeyType() == KeyType.EOF) {
                break;
            } else {
                silent = 0;
                text.append(textOf(stroke));
            }
        }
        return text.toString();
    }

    private static String textOf(KeyStroke stroke) {
        return switch (stroke.getKeyType()) {
            case Enter -> "\n";
            case Tab -> "\t";
            case Character ->
                stroke.isAltDown() || stroke.isCtrlDown()
                        ? ""
                        : stroke.getCharacter().toString();
            default -> "";
        };
    }

    private static boolean isSurrogate(KeyStroke stroke) {
        return stroke != null
                && stroke.getKeyType() == KeyType.Character
                && !stroke.isAltDown()
                && Character.isSurrogate(stroke.getCharacter());
    }

    private static Key key(KeyStroke stroke) {
        boolean hasModifier = stroke.isAltDown() || stroke.isCtrlDown();
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
            case Backspace -> Key.of(hasModifier ? Key.Name.UNKNOWN : Key.Name.BACKSPACE);
            case Delete -> Key.of(hasModifier ? Key.Name.UNKNOWN : Key.Name.DELETE);
            default -> Key.of(hasModifier || stroke.isShiftDown() ? Key.Name.UNKNOWN : function(stroke.getKeyType()));
        };
    }

    private static Key character(KeyStroke stroke) {
        char written = stroke.getCharacter();
        if (stroke.isAltDown()) {
            return stroke.isCtrlDown() || Character.isSurrogate(written)
                    ? Key.of(Key.Name.UNKNOWN)
                    : new Key(Key.Name.ALT, String.valueOf(written));
        }
        return stroke.isCtrlDown() ? Key.ctrl(written) : Key.typed(String.valueOf(written));
    }

    /** F1 to F12, which both sides name alike; what else there is has no name here. */
    private static Key.Name function(KeyType type) {
        return Arrays.stream(Key.Name.values())
                .filter(it -> it.name().equals(type.name()))
                .findFirst()
                .orElse(Key.Name.UNKNOWN);
    }
}
