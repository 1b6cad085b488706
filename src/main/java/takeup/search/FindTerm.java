package takeup.search;

import java.util.function.Predicate;

/**
 * One thing that a frame must meet to be found.
 *
 * @param letters what its line has in it in any case, in small letters, so that most lines need not be cut apart; empty
 *     text where that cannot be told
 * @param ofRoll on which rolls every frame meets it, whatever its line has in it
 */
record FindTerm(Predicate<FrameRow> test, String letters, Predicate<RollHead> ofRoll) {
    static FindTerm of(Predicate<FrameRow> test) {
        return new FindTerm(test, "", roll -> false);
    }

    /** The same of a frame whose line has these words in it. */
    FindTerm onlyWith(String words) {
        // Others stand in a line in another form, or have small letters that hang on what is beside them.
        boolean isPlain = words.chars().allMatch(it -> it >= ' ' && it < 0x7f && it != '\\');
        return new FindTerm(test, isPlain ? words : "", ofRoll);
    }

    FindTerm orOnRoll(Predicate<RollHead> all) {
        return new FindTerm(test, letters, all);
    }

    String mustHave(RollHead roll) {
        return letters.isEmpty() || ofRoll.test(roll) ? "" : letters;
    }
}
