package takeup.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.roll.RollLabel;

/**
 * What stands on a roll, as it is typed in a line: {@code load cn400 as B-12 batch 4711}.
 *
 * @param rest the line without it
 * @param label the photographer's own name, and the number of the emulsion, letter for letter
 */
public record LabelWords(String rest, RollLabel label) {
    private static final int LONGEST = 20;

    /** Of a whole line; what stands behind {@code process} belongs to that. */
    public static LabelWords of(String line) {
        List<String> words = Tokens.split(line);
        List<String> rest = new ArrayList<>();
        Optional<String> name = Optional.empty();
        Optional<String> batch = Optional.empty();
        int at = 0;
        while (at < words.size() && !words.get(at).equalsIgnoreCase("process")) {
            String word = DateTimeParser.small(words.get(at));
            if (at > 0 && (word.equals("as") || word.equals("batch"))) {
                if (at + 1 == words.size()) {
                    throw new CommandRejected("something is missing after " + word + ": load cn400 as B-12 batch 4711");
                }
                Optional<String> said = Optional.of(shortEnough(words.get(at + 1), word));
                name = word.equals("as") ? said : name;
                batch = word.equals("batch") ? said : batch;
                at += 2;
            } else {
                rest.add(words.get(at));
                at++;
            }
        }
        rest.addAll(words.subList(at, words.size()));
        RollLabel label = new RollLabel(name, batch);
        return new LabelWords(label.isNone() ? line : String.join(" ", rest), label);
    }

    private static String shortEnough(String word, String sign) {
        if (word.length() > LONGEST || word.indexOf(';') >= 0) {
            throw new CommandRejected(
                    sign + " takes one word of up to " + LONGEST + " characters: as B-12, batch 4711");
        }
        return word;
    }
}
