package takeup.message;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class KeyTest {
    @Test
    void aKeyIsNamedAsAPersonWritesIt() {
        named("Space", Key.typed(" "));
        named("m", Key.typed("m"));
        named("Ctrl-Z", Key.ctrl('z'));
        named("Ctrl-\\", Key.ctrl('\\'));
        named("Alt-x", new Key(Key.Name.ALT, "x"));
        named("F2", Key.of(Key.Name.F2));
        named("PgUp", Key.of(Key.Name.PAGE_UP));
        named("Shift-Tab", Key.of(Key.Name.SHIFT_TAB));
        named("paste", Key.pasted("4 125\n4 60"));
    }

    @Test
    void ctrlIIsNamedWithAPlainIInEveryLanguage() {
        named("Ctrl-I", Key.ctrl('i'));
    }

    @Test
    void aCharacterOfTwoHalvesIsOneKey() {
        named("\uD83D\uDEA3", Key.typed("\uD83D\uDEA3"));
    }

    @Test
    void aCharacterKeyWritesOneWholeCharacter() {
        refused(Key.Name.CHARACTER, "");
        refused(Key.Name.CHARACTER, "ab");
        refused(Key.Name.CHARACTER, "\uD83D");
        refused(Key.Name.CTRL, "Z");
        refused(Key.Name.F2, "x");
    }

    private static void named(String words, Key key) {
        assertEquals(words, key.toString());
    }

    private static void refused(Key.Name name, String text) {
        assertThrows(IllegalArgumentException.class, () -> new Key(name, text));
    }
}
