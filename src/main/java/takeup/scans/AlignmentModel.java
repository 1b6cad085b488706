package takeup.scans;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Scans and logged frames under one {@link Hypothesis}, as a chain in which each step is a scan with its frame, a frame
 * without a scan, or a scan without a frame: a pair hidden Markov model (Durbin, Eddy, Krogh, Mitchison, "Biological
 * Sequence Analysis", chapter 4). The best chain is the alignment; the sum over all chains says how sure it is.
 */
final class AlignmentModel {
    /** What a number in a name points to, if not to a slot: a frame that is not in the log, or nothing at all. */
    private static final int NO_SLOT = -1;

    private static final int NOTHING = -2;

    private final LikelihoodTable looks;
    private final int scans;
    private final int slots;
    private final int room;
    private final boolean isPileLast;
    private final boolean isPileFirst;
    private final double[] keep;
    private final double[] skip;
    private final double[] skipMore;
    private final double[] logKeep;
    private final double[] logSkip;
    /** What the numbers in the names say, by scan: the slot that they point to. */
    private final int[] pointsTo;

    private final double[] head;
    private final double[] tail;

    AlignmentModel(LikelihoodTable looks, LoggedFilm film, Hypothesis how, Optional<NameNumbers> numbers) {
        List<Slot> slots = film.slots();
        room = film.room();
        this.looks = looks;
        this.scans = looks.top().length;
        this.slots = slots.size();
        isPileLast = how.isPiled() && !how.isReversed();
        isPileFirst = how.isPiled() && how.isReversed();
        keep = new double[this.slots];
        skip = new double[this.slots];
        skipMore = new double[this.slots];
        logKeep = new double[this.slots];
        logSkip = new double[this.slots];
        for (int j = 0; j < this.slots; j++) {
            skip[j] = MatchProbabilities.leftOut(slots.get(j), how.isGoodOnly());
            skipMore[j] = Math.max(skip[j], MatchProbabilities.ONE_MORE_LEFT_OUT);
            keep[j] = 1 - skip[j];
            logKeep[j] = Math.log(keep[j]);
            logSkip[j] = Math.log(skip[j]);
        }
        pointsTo = new int[scans];
        for (int i = 0; i < scans; i++) {
            pointsTo[i] = how.offset().isEmpty() || numbers.isEmpty()
                    ? NOTHING
                    : place(
                            slots,
                            how,
                            numbers.get().values().get(i) - how.offset().getAsInt());
        }
        head = ends(how.isReversed() ? MatchProbabilities.ENDS_EARLY : MatchProbabilities.BEGINS_LATE, false);
        tail = ends(how.isReversed() ? MatchProbabilities.BEGINS_LATE : MatchProbabilities.ENDS_EARLY, true);
    }

    /**
     * From the film's other end the count of the pictures runs against the log: there the place in the scanner counts.
     */
    private static int place(List<Slot> slots, Hypothesis how, int number) {
        if (how.isReversed()) {
            return number >= 1 && number <= slots.size() ? number - 1 : NO_SLOT;
        }
        for (int j = 0; j < slots.size(); j++) {
            if (slots.get(j).number() == number) {
                return j;
            }
        }
        return NO_SLOT;
    }

    /**
     * Frames without a scan at an end: each left out by itself, or all of them because the film began late or ended
     * early.
     */
    private double[] ends(double share, boolean isTail) {
        double[] cost = new double[slots + 1];
        cost[isTail ? slots : 0] = 1;
        double singly = 1;
        for (int count = 1; count <= slots; count++) {
            singly *= (count == 1 ? skip : skipMore)[isTail ? slots - count : count - 1];
            cost[isTail ? slots - count : count] = singly + share / slots;
        }
        return cost;
    }

    /** How likely the number in a scan's name is, where the scan shows that slot, or no slot of the log. */
    private double number(int scan, int slot) {
        if (pointsTo[scan] == NOTHING) {
            return 1;
        }
        return pointsTo[scan] == slot ? MatchProbabilities.NUMBER_IS_RIGHT : MatchProbabilities.NUMBER_IS_WRONG;
    }

    private double extra(int scan, int consumed) {
        if (consumed > 0 && consumed < slots) {
            return number(scan, NO_SLOT) * MatchProbabilities.EXTRA_BETWEEN;
        }
        // At an end all from here to there are such scans, so that they are counted.
        int soFar = consumed == 0 ? scan + 1 : scans - scan;
        return number(scan, NO_SLOT)
                * MatchProbabilities.EXTRA_AT_AN_END
                * (soFar > room ? MatchProbabilities.BEYOND_THE_FILM : 1);
    }

    private boolean isPile(int scan) {
        return scan == 0 && isPileFirst || scan == scans - 1 && isPileLast;
    }

    /** A match of scan and slot as a logarithm; a pile is a match of its own. */
    private double match(int scan, int slot) {
        return (isPile(scan) ? looks.pile()[slot] : looks.log()[scan][slot])
                + logKeep[slot]
                + Math.log(number(scan, slot));
    }

    private double begin(int slot) {
        if (isPileFirst) {
            return slot > 0 ? 1.0 / slots : 0;
        }
        return head[slot];
    }

    private double finish(int consumed) {
        if (isPileLast) {
            return consumed < slots ? 1.0 / slots : 0;
        }
        return tail[consumed];
    }

    /** How likely so many frames are left out before a first scan that nobody logged. */
    private double beforeExtra(int slot) {
        return isPileFirst ? 0 : head[slot];
    }

    /** Natural logarithm of the sum over all chains: the forward algorithm, each row scaled. */
    double total() {
        double[] matched = new double[slots + 1];
        double[] skipped = new double[slots + 1];
        double[] more = new double[slots + 1];
        double log = 0;
        for (int i = 0; i < scans; i++) {
            double[] nowMatched = new double[slots + 1];
            double[] nowSkipped = new double[slots + 1];
            double[] nowMore = new double[slots + 1];
            boolean isPile = isPile(i);
            double lift = Math.exp(looks.extra()[i] - looks.top()[i]);
            double scale = 0;
            for (int j = 0; j <= slots; j++) {
                if (j > 0) {
                    double look = isPile ? Math.exp(looks.pile()[j - 1] - looks.top()[i]) : looks.plain()[i][j - 1];
                    double from = i == 0 ? begin(j - 1) : matched[j - 1] + skipped[j - 1] + more[j - 1];
                    nowMatched[j] = look * keep[j - 1] * number(i, j - 1) * from;
                    nowSkipped[j] = skip[j - 1] * nowMatched[j - 1] + skipMore[j - 1] * nowSkipped[j - 1];
                }
                double from = i == 0 ? beforeExtra(j) : matched[j] + skipped[j] + more[j];
                nowMore[j] = isPile ? 0 : lift * extra(i, j) * from;
                scale += nowMatched[j] + nowSkipped[j] + nowMore[j];
            }
            if (!(scale > 0)) {
                return LogSum.NEVER;
            }
            for (int j = 0; j <= slots; j++) {
                nowMatched[j] /= scale;
                nowSkipped[j] /= scale;
                nowMore[j] /= scale;
            }
            log += Math.log(scale) + looks.top()[i];
            matched = nowMatched;
            skipped = nowSkipped;
            more = nowMore;
        }
        double all = 0;
        for (int j = 0; j <= slots; j++) {
            all += (matched[j] + more[j]) * finish(j);
        }
        return all > 0 ? log + Math.log(all) : LogSum.NEVER;
    }

    /** The slot of each scan in the best chain, -1 where a scan has none: Viterbi. */
    int[] best() {
        double[][] matched = new double[scans + 1][slots + 1];
        double[][] more = new double[scans + 1][slots + 1];
        int[][] cameMatched = new int[scans + 1][slots + 1];
        int[][] cameMore = new int[scans + 1][slots + 1];
        double[] skips = new double[slots + 1];
        for (int j = 0; j < slots; j++) {
            skips[j + 1] = skips[j] + Math.log(skipMore[j]);
        }
        for (int i = 1; i <= scans; i++) {
            double extraFirst = Math.log(extra(i - 1, 0));
            double extraLast = Math.log(extra(i - 1, slots));
            double extraBetween = slots > 1 ? Math.log(extra(i - 1, 1)) : extraLast;
            Arrays.fill(matched[i], LogSum.NEVER);
            Arrays.fill(more[i], LogSum.NEVER);
            // The best place up to here to come from over skipped frames, with the skips up to there taken off.
            double high = LogSum.NEVER;
            int highAt = -1;
            for (int j = 0; j <= slots; j++) {
                if (j > 0) {
                    double next = Math.max(matched[i - 1][j - 1], more[i - 1][j - 1]);
                    double over = high + skips[j - 1];
                    double from = i == 1 ? LogSum.log(begin(j - 1)) : Math.max(next, over);
                    int direct = matched[i - 1][j - 1] >= more[i - 1][j - 1] ? j - 1 : -1;
                    cameMatched[i][j] = over > next ? highAt : direct;
                    matched[i][j] = from + match(i - 1, j - 1);
                }
                double extraBehind = j == slots ? extraLast : extraBetween;
                double next = Math.max(matched[i - 1][j], more[i - 1][j]);
                double over = high + skips[j];
                double before = i == 1 ? LogSum.log(beforeExtra(j)) : Math.max(next, over);
                int direct = matched[i - 1][j] >= more[i - 1][j] ? j : -1;
                cameMore[i][j] = over > next ? highAt : direct;
                more[i][j] = before
                        + looks.extra()[i - 1]
                        + (j == 0 ? extraFirst : extraBehind)
                        + (i == scans && isPileLast ? LogSum.NEVER : 0);
                if (i > 1 && j < slots && matched[i - 1][j] + logSkip[j] - skips[j + 1] > high) {
                    high = matched[i - 1][j] + logSkip[j] - skips[j + 1];
                    highAt = j;
                }
            }
        }
        return trace(matched, more, cameMatched, cameMore);
    }

    private int[] trace(double[][] matched, double[][] more, int[][] cameMatched, int[][] cameMore) {
        int at = 0;
        boolean isMatched = false;
        double best = Double.NEGATIVE_INFINITY;
        for (int j = 0; j <= slots; j++) {
            double end = LogSum.log(finish(j));
            if (Math.max(matched[scans][j], more[scans][j]) + end > best) {
                best = Math.max(matched[scans][j], more[scans][j]) + end;
                at = j;
                isMatched = matched[scans][j] >= more[scans][j];
            }
        }
        int[] slotOf = new int[scans];
        for (int i = scans; i > 0; i--) {
            slotOf[i - 1] = isMatched ? at - 1 : -1;
            int from = (isMatched ? cameMatched : cameMore)[i][at];
            int before = isMatched ? at - 1 : at;
            at = from < 0 ? before : from;
            isMatched = from >= 0;
        }
        return slotOf;
    }

    /** Natural logarithm of how likely one given chain is: the slot of each scan, -1 for none. */
    double score(int[] slotOf) {
        if (slotOf[0] < 0 && isPileFirst || slotOf[scans - 1] < 0 && isPileLast) {
            return LogSum.NEVER;
        }
        int last = scans - 1;
        while (last >= 0 && slotOf[last] < 0) {
            last--;
        }
        double sum = 0;
        int consumed = 0;
        for (int i = 0; i <= last; i++) {
            int j = slotOf[i];
            if (j < 0) {
                sum += looks.extra()[i] + Math.log(extra(i, consumed));
            } else if (j < consumed) {
                return LogSum.NEVER;
            } else {
                sum += (i == 0 ? LogSum.log(begin(j)) : skipped(consumed, j)) + match(i, j);
                consumed = j + 1;
            }
        }
        // Frames that no scan shows may be left out before the last unlogged scans or behind them.
        double before = skipped(consumed, slots);
        double behind = LogSum.log(finish(consumed));
        for (int i = last + 1; i < scans; i++) {
            before += looks.extra()[i] + Math.log(extra(i, slots));
            behind += looks.extra()[i] + Math.log(extra(i, consumed));
        }
        return sum + (last == scans - 1 || consumed == slots || consumed == 0 ? behind : LogSum.add(before, behind));
    }

    private double skipped(int from, int to) {
        double sum = 0;
        for (int j = from; j < to; j++) {
            sum += Math.log((j == from ? skip : skipMore)[j]);
        }
        return sum;
    }
}
