package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import takeup.message.Key;

/** Keys that nobody meant: letters, blanks, signs, function keys, pastes with anything in them. */
public final class RandomKeys {
    private RandomKeys() {}

    /** One that can change nothing on its own: no Enter, no Ctrl, no paste, no semicolon. */
    static Key unmodified(Random random) {
        Key key = any(random);
        while (key.name() == Key.Name.ENTER
                || key.name() == Key.Name.CTRL
                || key.name() == Key.Name.PASTE
                || key.equals(Key.typed(";"))) {
            key = any(random);
        }
        return key;
    }

    /** Any key. */
    public static Key any(Random random) {
        int what = random.nextInt(10);
        if (what < 4) {
            return random.nextInt(4) == 0 ? Key.typed(" ") : Key.typed(Character.toString(' ' + random.nextInt(95)));
        }
        if (what == 4) {
            return Key.ctrl((char) ('a' + random.nextInt(26)));
        }
        if (what == 5) {
            return random.nextInt(3) == 0
                    ? Key.pasted(odd(random))
                    : Key.typed(Character.toString(0x1F6A0 + random.nextInt(20)));
        }
        List<Key.Name> names = new ArrayList<>(List.of(Key.Name.values()));
        names.removeAll(List.of(Key.Name.CHARACTER, Key.Name.CTRL, Key.Name.ALT, Key.Name.PASTE));
        return what == 6 ? Key.of(Key.Name.ESCAPE) : Key.of(names.get(random.nextInt(names.size())));
    }

    private static String odd(Random random) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(30);
        for (int i = 0; i < length; i++) {
            text.appendCodePoint(random.nextInt(6) == 0 ? random.nextInt(0x2000) : ' ' + random.nextInt(95));
        }
        return text.toString();
    }
}
