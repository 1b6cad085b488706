package takeup.day;

import java.util.ArrayList;
import java.util.List;
import takeup.roll.RollId;

/**
 * A paper form that is being read back, line by line.
 *
 * @param roll the roll that it is about
 * @param aside the lines that did not fit, letter for letter
 */
public record Paper(RollId roll, List<String> aside) {
    public Paper {
        aside = List.copyOf(aside);
    }

    Paper and(String line) {
        List<String> all = new ArrayList<>(aside);
        all.add(line);
        return new Paper(roll, all);
    }
}
