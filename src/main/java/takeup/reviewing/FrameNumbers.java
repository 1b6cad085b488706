package takeup.reviewing;

import java.util.ArrayList;
import java.util.List;
import takeup.console.CommandFailed;
import takeup.roll.Roll;

/** Frames as they are named in an option: {@code 3-5,9}. */
final class FrameNumbers {
    private FrameNumbers() {}

    /** Their places in the roll's list. */
    static List<Integer> of(String typed, Roll roll) {
        List<Integer> places = new ArrayList<>();
        for (String part : typed.split(",", -1)) {
            int dash = part.indexOf('-');
            int from = number(dash < 0 ? part : part.substring(0, dash));
            int to = dash < 0 ? from : number(part.substring(dash + 1));
            if (from < 0 || to < from || to - from > 250) {
                throw new CommandFailed(2, part + " names no frames: 3, or 3-5, or 3-5,9");
            }
            for (int number = from; number <= to; number++) {
                int at = roll.indexOf(number);
                if (at < 0) {
                    throw new CommandFailed(2, "there is no frame " + number + " on " + roll.id());
                }
                places.add(at);
            }
        }
        return places;
    }

    /** A whole number, -1 for anything else. */
    static int number(String typed) {
        String digits = typed.strip();
        return !digits.isEmpty() && digits.length() < 6 && digits.chars().allMatch(it -> it >= '0' && it <= '9')
                ? Integer.parseInt(digits)
                : -1;
    }
}
