package takeup.report;

import java.util.Locale;
import takeup.roll.Condition;
import takeup.roll.Roll;

/** What is said about a roll in many places: {@code 23 left}. */
public final class RollText {
    private RollText() {}

    /** Frames left in plain words: {@code 23 left} or {@code 2 past the end}. */
    public static String left(Roll roll) {
        int left = roll.framesLeft();
        return left >= 0 ? left + " left" : -left + " past the end";
    }

    /** What is written on the cassette or band: number, film, process and push in words, how it was rated. */
    public static String label(Roll roll) {
        StringBuilder words = new StringBuilder(roll.id() + ", "
                + roll.film().stock().name() + ", " + roll.film().developmentWords());
        if (roll.state() == Roll.State.REWOUND) {
            words.append(", REWOUND after frame ").append(roll.lastPassed());
        }
        roll.conditions().forEach(it -> words.append(", ").append(label(it)));
        return words.toString();
    }

    /** The kind in capitals, then the words; words of another kind stand for themselves. */
    private static String label(Condition condition) {
        String kind = condition.kind().toString().toUpperCase(Locale.ROOT);
        return condition.kind() == Condition.Kind.OTHER
                ? condition.words().orElse(kind)
                : kind + condition.words().map(more -> " " + more).orElse("");
    }
}
