package takeup.report;

import takeup.roll.Roll;

/** What is said about a roll in many places: {@code 23 left}. */
public final class RollText {
    private RollText() {}

    /** Frames left in plain words: {@code 23 left} or {@code 2 past the end}. */
    public static String left(Roll roll) {
        int left = roll.framesLeft();
        return left >= 0 ? left + " left" : -left + " past the end";
    }
}
