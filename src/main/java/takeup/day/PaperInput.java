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
public record PaperInput(RollId roll, List<String> aside) {
    public PaperInput {
        aside = List.copyOf(aside);
    }

    PaperInput and(String line) {
        List<String> all = new ArrayList<>(aside);
        all.add(line);
        return new PaperInput(roll, all);
    }
}
