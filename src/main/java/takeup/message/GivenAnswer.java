package takeup.message;

import java.util.Optional;

/**
 * What may still be typed of an answer that one key gave: who goes on to the whole word, or presses Enter as after any
 * other line, means the same answer. What follows within a moment is no line of its own.
 *
 * @param typed the letters that came so far: {@code n}
 * @param word the whole word: {@code no}
 * @param ticks when the last of them came, on the clock that only runs forward
 */
public record GivenAnswer(String typed, String word, long ticks) {
    public static final GivenAnswer NOTHING = new GivenAnswer("", "", Long.MIN_VALUE / 2);

    /** So long after the answer, in milliseconds, the next key may still belong to it. */
    private static final long MOMENT_MILLIS = 1000;

    /** The answer of which the first letter was typed. */
    public static GivenAnswer of(String word, long ticks) {
        return new GivenAnswer(word.substring(0, 1), word, ticks);
    }

    private boolean isOpen(long now) {
        return !typed.isEmpty() && now - ticks < MOMENT_MILLIS;
    }

    /** The same with a key that belongs to it; empty where it is a key like any other. */
    public Optional<GivenAnswer> with(Key key, long now) {
        if (!isOpen(now)) {
            return Optional.empty();
        }
        if (key.equals(Key.of(Key.Name.ENTER))) {
            return Optional.of(NOTHING);
        }
        String longer = typed + key.text();
        boolean isNext = key.name() == Key.Name.CHARACTER && word.startsWith(longer);
        return isNext ? Optional.of(new GivenAnswer(longer, word, now)) : Optional.empty();
    }

    /**
     * Letters that another key shows to be the begin of something else: an n that begins a longer word or a note was no
     * answer, and a question is withdrawn by any other line too. A yes is done; only what came after its y goes on.
     */
    public String begun(Key key, long now) {
        boolean isText = key.name() == Key.Name.CHARACTER
                && (Character.isLetter(key.text().codePointAt(0)) || key.text().equals(" "));
        if (!isOpen(now) || !isText) {
            return "";
        }
        return word.equals("no") ? typed : typed.substring(1);
    }
}
