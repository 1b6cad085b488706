package takeup.roll;

import java.time.OffsetDateTime;

/**
 * One question of the load routine and its answer: whether the film moves, yes, before frame 1.
 *
 * @param at when
 * @param frame the next frame then
 * @param what what was looked at
 * @param answer what was found
 */
public record LoadCheck(OffsetDateTime at, int frame, What what, Answer answer) {
    /** What is looked at: that it is this film at this index, that the meter says the index, that the film moves. */
    public enum What {
        FILM("film"),
        METER("meter"),
        MOVING("moving");

        private final String word;

        What(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** What was found. A question without an answer is not recorded. */
    public enum Answer {
        YES("yes"),
        NO("no"),
        SKIPPED("skipped");

        private final String word;

        Answer(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }
}
