package takeup.terminal;

/**
 * Follows one escape sequence, such as {@code ESC [ 1 5 ~}, character by character, and says when it is whole (ECMA-48,
 * 5.3, 5.4 and 5.6; the two odd ones, {@code ESC [ [ A} of the Linux console and the three characters after {@code ESC
 * [ M} of an old mouse, from console_codes(4) and ctlseqs, "Mouse Tracking").
 */
final class EscapeSequence {
    static final char ESCAPE = 0x1b;

    /** What a terminal puts before and after pasted text (ctlseqs, "Bracketed Paste Mode"). */
    static final String PASTE_BEGINS = "\u001b[200~";

    static final String PASTE_ENDS = "\u001b[201~";

    enum State {
        /** More must follow. */
        OPEN,
        /** It ended with this character. */
        WHOLE,
        /** This character cannot stand here. */
        BROKEN
    }

    private enum Place {
        START,
        ESCAPED,
        CONTROL_START,
        CONTROL,
        COUNTED,
        SINGLE,
        STRING,
        STRING_END
    }

    private Place place = Place.START;
    private boolean hasTwoEscapes;
    private int count;
    private boolean isIntroduced;

    /** The state after this character; the end of all input, -1, breaks every sequence. */
    State add(int character) {
        if (character < 0) {
            return State.BROKEN;
        }
        return switch (place) {
            case START -> character == ESCAPE ? go(Place.ESCAPED) : State.BROKEN;
            case ESCAPED -> afterEscape(character);
            case CONTROL_START, CONTROL -> control(character);
            case COUNTED -> --count == 0 ? State.WHOLE : State.OPEN;
            case SINGLE -> character >= '0' && character <= ';' ? State.OPEN : ends(character, '!');
            case STRING -> string(character);
            case STRING_END -> character == '\\' ? State.WHOLE : State.BROKEN;
        };
    }

    /** True if it is more than the Escape key, or Alt with a character: something that only a program would send. */
    boolean isIntroduced() {
        return isIntroduced;
    }

    private State afterEscape(int character) {
        if (character == ESCAPE) {
            // Some terminals send Alt with an arrow as ESC ESC [ A.
            State state = hasTwoEscapes ? State.BROKEN : State.OPEN;
            hasTwoEscapes = true;
            return state;
        }
        isIntroduced = "[O]P_^X".indexOf(character) >= 0;
        return switch (character) {
            case '[' -> go(Place.CONTROL_START);
            case 'O' -> go(Place.SINGLE);
            case ']', 'P', '_', '^', 'X' -> go(Place.STRING);
            default -> State.WHOLE;
        };
    }

    private State control(int character) {
        if (place == Place.CONTROL_START && (character == '[' || character == 'M')) {
            count = character == '[' ? 1 : 3;
            return go(Place.COUNTED);
        }
        place = Place.CONTROL;
        return character >= ' ' && character <= '?' ? State.OPEN : ends(character, '@');
    }

    private State string(int character) {
        return switch (character) {
            case 0x07 -> State.WHOLE;
            case 0x18, 0x1a -> State.BROKEN;
            case ESCAPE -> go(Place.STRING_END);
            default -> State.OPEN;
        };
    }

    private static State ends(int character, int lowest) {
        return character >= lowest && character <= '~' ? State.WHOLE : State.BROKEN;
    }

    private State go(Place next) {
        place = next;
        return State.OPEN;
    }
}
