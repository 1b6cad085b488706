package takeup.terminal;

import com.googlecode.lanterna.input.AltAndCharacterPattern;
import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.CtrlAltAndCharacterPattern;
import com.googlecode.lanterna.input.CtrlAndCharacterPattern;
import com.googlecode.lanterna.input.EscapeSequenceCharacterPattern;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.input.NormalCharacterPattern;
import java.util.List;

/** What terminals send for which key, for Lanterna's decoder. */
final class KeyPatterns implements KeyDecodingProfile {
    /** The two that stand around pasted text, known by being themselves. */
    static final KeyStroke PASTE_BEGINS = new KeyStroke(KeyType.Unknown);

    static final KeyStroke PASTE_ENDS = new KeyStroke(KeyType.Unknown);

    /** Of two patterns that both fit the last one wins, so the one that takes any sequence stands first. */
    @Override
    public List<CharacterPattern> getPatterns() {
        char escape = EscapeSequence.ESCAPE;
        return List.of(
                new AnySequence(),
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
                new KnownSequence(),
                new NormalCharacterPattern(),
                new AltCharacter(),
                new CtrlAndCharacterPattern(),
                new CtrlAltAndCharacterPattern());
    }

    /** Any well-formed sequence, as one key that does nothing; and the two that stand around pasted text. */
    private static final class AnySequence implements CharacterPattern {
        @Override
        public Matching match(List<Character> read) {
            EscapeSequence sequence = new EscapeSequence();
            EscapeSequence.State state = EscapeSequence.State.OPEN;
            for (char one : read) {
                if (state != EscapeSequence.State.OPEN) {
                    return null;
                }
                state = sequence.add(one);
            }
            if (state == EscapeSequence.State.OPEN) {
                return Matching.NOT_YET;
            }
            return state == EscapeSequence.State.WHOLE && sequence.isIntroduced() ? new Matching(meaning(read)) : null;
        }

        private static KeyStroke meaning(List<Character> read) {
            StringBuilder text = new StringBuilder();
            for (char one : read) {
                text.append(one);
            }
            String sequence = text.toString();
            if (sequence.equals(EscapeSequence.PASTE_BEGINS)) {
                return PASTE_BEGINS;
            }
            return sequence.equals(EscapeSequence.PASTE_ENDS) ? PASTE_ENDS : new KeyStroke(KeyType.Unknown);
        }
    }

    /** The sequences of known keys, but a report of the cursor's place is not F3. */
    private static final class KnownSequence extends EscapeSequenceCharacterPattern {
        @Override
        protected KeyStroke getKeyStrokeRaw(char first, int number, int held, char last, boolean twice) {
            return last == 'R' && held > 0 ? null : super.getKeyStrokeRaw(first, number, held, last, twice);
        }
    }

    /** Alt with a character, but for those that begin a sequence. */
    private static final class AltCharacter extends AltAndCharacterPattern {
        @Override
        public Matching match(List<Character> read) {
            return read.size() == 2 && "[O]P_^X".indexOf(read.get(1)) >= 0 ? null : super.match(read);
        }
    }
}
