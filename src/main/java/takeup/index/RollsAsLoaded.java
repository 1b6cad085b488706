package takeup.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import takeup.report.RollSummary;
import takeup.roll.RollId;

/**
 * The list of rolls in the order of loading. That is most often the order of their numbers: a first pass over the index
 * finds out and holds no roll, and the second hands them on, so that the longest list takes no more memory than a short
 * one.
 */
public final class RollsAsLoaded {
    private final ArchiveSnapshot archive;
    private final List<String> problems;
    /** The rolls put in order, where their numbers are not; empty where those are. */
    private final Optional<List<ListedRoll>> sorted;

    private RollsAsLoaded(ArchiveSnapshot archive, List<String> problems, Optional<List<ListedRoll>> sorted) {
        this.archive = archive;
        this.problems = problems;
        this.sorted = sorted;
    }

    /** When a roll was loaded, read from its entry in the list. */
    private record Loading(RollId roll, long step) implements Comparable<Loading> {
        static final IndexKind<Loading> KIND = ListedRoll.KIND.readAs(Loading::read);

        /** Steps are counted by each writer apart. */
        @Override
        public int compareTo(Loading other) {
            int letters = roll.letters().compareTo(other.roll.letters());
            if (letters != 0) {
                return letters;
            }
            return step == other.step ? roll.compareTo(other.roll) : Long.compare(step, other.step);
        }

        private static Loading of(ListedRoll listed) {
            return new Loading(listed.head().summary().id(), listed.loading());
        }

        private static Loading read(String text) {
            int number = text.indexOf('\t');
            return new Loading(
                    RollId.parse(text.substring(0, number)).orElseThrow(IllegalArgumentException::new),
                    Long.parseLong(text, number + 1, text.indexOf('\t', number + 1), 10));
        }
    }

    /** Whether what comes is in order. */
    private static final class InOrder {
        private Loading last = new Loading(new RollId("A", 1), -1);
        private boolean isSo = true;

        boolean test(Loading next) {
            isSo = isSo && last.compareTo(next) <= 0;
            last = next;
            return isSo;
        }
    }

    static RollsAsLoaded of(ArchiveSnapshot archive) throws IOException {
        if (archive.isIndexed()) {
            InOrder order = new InOrder();
            List<String> problems = archive.forEach(Loading.KIND, order::test);
            if (order.isSo) {
                return new RollsAsLoaded(archive, ofRolls(problems), Optional.empty());
            }
        }
        List<ListedRoll> all = new ArrayList<>();
        List<String> problems = archive.forEach(ListedRoll.KIND, all::add);
        all.sort((a, b) -> Loading.of(a).compareTo(Loading.of(b)));
        return new RollsAsLoaded(archive, ofRolls(problems), Optional.of(all));
    }

    /** What was decided about scans is none of the list's business. */
    private static List<String> ofRolls(List<String> problems) {
        return problems.stream().filter(it -> !it.startsWith("reviews/")).toList();
    }

    /** What could not be read; those rolls are not in the list. */
    public List<String> problems() {
        return problems;
    }

    /**
     * Each roll.
     *
     * @param isGoingOn takes one after the other, and tells whether the next is wanted
     */
    public void forEach(Predicate<RollSummary> isGoingOn) throws IOException {
        if (sorted.isPresent()) {
            for (ListedRoll roll : sorted.get()) {
                if (!isGoingOn.test(roll.head().summary())) {
                    return;
                }
            }
        } else {
            archive.forEach(ListedRoll.KIND, it -> isGoingOn.test(it.head().summary()));
        }
    }
}
