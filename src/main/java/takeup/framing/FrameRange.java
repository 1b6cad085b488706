package takeup.framing;

import takeup.command.FrameNumbering;
import takeup.prompt.CommandRejected;
import takeup.roll.Roll;

/** A frame or a row of frames as they are typed: {@code 7}, {@code 3-5}. */
record FrameRange(int from, int to) {
    static FrameRange of(String word, String example) {
        int dash = word.indexOf('-');
        if (dash <= 0) {
            int number = FrameNumbering.number(word, example);
            return new FrameRange(number, number);
        }
        int from = FrameNumbering.number(word.substring(0, dash), example);
        int to = FrameNumbering.number(word.substring(dash + 1), example);
        if (to < from) {
            throw new CommandRejected(word + " runs backwards: " + to + "-" + from);
        }
        return new FrameRange(from, to);
    }

    boolean isOne() {
        return from == to;
    }

    /** The same range, if the roll holds each frame of it. */
    FrameRange on(Roll roll) {
        for (int number = from; number <= to; number++) {
            if (roll.indexOf(number) < 0) {
                throw new CommandRejected(roll.id() + " has no frame " + number + hint(roll, number));
            }
        }
        return this;
    }

    private static String hint(Roll roll, int number) {
        if (roll.isPassed(number)) {
            return ", which the counter went past: insert " + number + " and what was set writes it down";
        }
        if (roll.frames().isEmpty()) {
            return ": none is logged yet";
        }
        int last = roll.frames().get(roll.frames().size() - 1).number();
        return "; it holds " + FrameNumbering.words(roll.frames().get(0).number(), last);
    }

    /** The range at the start of a sentence: {@code Frames 3 to 5}. */
    String title() {
        return FrameNumbering.title(from, to);
    }

    @Override
    public String toString() {
        return FrameNumbering.words(from, to);
    }
}
