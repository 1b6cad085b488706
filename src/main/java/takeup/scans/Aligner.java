package takeup.scans;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.roll.Frame;

/**
 * Lays scans beside logged frames. Every way in which the folder may have come about is weighed; the confidence is the
 * share that the proposed alignment has of all of them (Bayes). Where nothing tells two ways apart it is low, and the
 * photographer is asked.
 */
public final class Aligner {
    private static final int CANDIDATES = 16;
    /** A way so much less likely, as a natural logarithm, yields no candidate. */
    private static final double HOPELESS = 8;
    /** What a number in a name may be off by. */
    private static final int[] OFFSETS = {-1, 0, 1};

    private final List<Scan> scans;
    private final List<Slot> singles;
    private final Optional<NameNumbers> numbers;

    private Aligner(List<Scan> scans, List<Slot> singles) {
        this.scans = scans;
        this.singles = singles;
        this.numbers = NameNumbers.of(scans.stream().map(Scan::name).toList());
    }

    /** The most likely alignment of scans, in natural order, with the frames of one film or of several in a row. */
    public static Proposal of(List<Scan> scans, List<Slot> slots) {
        if (scans.isEmpty() || slots.isEmpty()) {
            return new Proposal(
                    scans,
                    slots,
                    Collections.nCopies(scans.size(), -1),
                    false,
                    false,
                    0,
                    List.of(scans.isEmpty() ? "there are no scans" : "no frame is logged"));
        }
        return new Aligner(scans, slots).best();
    }

    /** Natural logarithm of how likely these scans are, as scans of these frames: to tell rolls apart. */
    static double evidence(List<Scan> scans, List<Slot> slots) {
        double sum = Double.NEGATIVE_INFINITY;
        for (Weighed way : new Aligner(scans, slots).weigh()) {
            sum = sum == Double.NEGATIVE_INFINITY ? way.total : AlignmentModel.sum(sum, way.total);
        }
        return sum;
    }

    /** A way with its chain and what all of its chains come to. */
    private record Weighed(Hypothesis how, List<Slot> slots, AlignmentModel strip, double total) {
        /** The best chain in the order of the film. */
        int[] inFilmOrder(int[] chain) {
            int[] slotOf = chain.clone();
            for (int i = 0; i < slotOf.length; i++) {
                slotOf[i] = slotOf[i] < 0 || !how.isReversed() ? slotOf[i] : slots.size() - 1 - slotOf[i];
            }
            return slotOf;
        }

        double of(int[] filmOrder) {
            return how.prior() + strip.score(inFilmOrder(filmOrder));
        }
    }

    private List<Weighed> weigh() {
        List<Weighed> ways = new ArrayList<>();
        for (Hypothesis.Layout layout : layouts()) {
            List<Slot> inOrder = layout == Hypothesis.Layout.SINGLE
                    ? singles
                    : Slot.pairs(singles, layout == Hypothesis.Layout.PAIRS_FIRST_ALONE);
            BrightnessModel first = BrightnessModel.of(scans, inOrder);
            for (boolean reversed : new boolean[] {false, true}) {
                List<Slot> slots = new ArrayList<>(inOrder);
                if (reversed) {
                    Collections.reverse(slots);
                }
                for (double slope : Hypothesis.SLOPES) {
                    Hypothesis plain = new Hypothesis(reversed, layout, false, false, slope, OptionalInt.empty());
                    Hypothesis byName = new Hypothesis(
                            reversed,
                            layout,
                            false,
                            false,
                            slope,
                            numbersMayMean() ? OptionalInt.of(0) : OptionalInt.empty());
                    int[] chain = new AlignmentModel(
                                    LikelihoodTable.of(scans, slots, first, slope, reversed), slots, byName, numbers)
                            .best();
                    weigh(plain, slots, first.fitted(scans, slots, chain, slope), ways);
                }
            }
        }
        return ways;
    }

    private boolean numbersMayMean() {
        return numbers.isPresent() && !numbers.get().isPlain();
    }

    private List<Hypothesis.Layout> layouts() {
        boolean isHalf = Math.abs(singles.get(0).aspect() - 4 / 3.0) < 0.01 && scans.size() < singles.size();
        return isHalf ? List.of(Hypothesis.Layout.values()) : List.of(Hypothesis.Layout.SINGLE);
    }

    private void weigh(Hypothesis plain, List<Slot> slots, BrightnessModel tones, List<Weighed> into) {
        LikelihoodTable looks = LikelihoodTable.of(scans, slots, tones, plain.slope(), plain.isReversed());
        boolean mayBeLeftOut = slots.stream()
                .anyMatch(it -> it.isFarOff() || it.kind() == Frame.Kind.BLANK || it.kind() == Frame.Kind.LOST);
        boolean mayBePiled =
                scans.size() < slots.size() && tones.mayBePile(scans.get(plain.isReversed() ? 0 : scans.size() - 1));
        for (boolean good : mayBeLeftOut ? new boolean[] {false, true} : new boolean[] {false}) {
            for (boolean piled : mayBePiled ? new boolean[] {false, true} : new boolean[] {false}) {
                add(
                        new Hypothesis(
                                plain.isReversed(), plain.layout(), piled, good, plain.slope(), OptionalInt.empty()),
                        slots,
                        looks,
                        into);
                if (numbersMayMean()) {
                    for (int offset : OFFSETS) {
                        add(
                                new Hypothesis(
                                        plain.isReversed(),
                                        plain.layout(),
                                        piled,
                                        good,
                                        plain.slope(),
                                        OptionalInt.of(offset)),
                                slots,
                                looks,
                                into);
                    }
                }
            }
        }
    }

    private void add(Hypothesis how, List<Slot> slots, LikelihoodTable looks, List<Weighed> into) {
        AlignmentModel strip = new AlignmentModel(looks, slots, how, numbers);
        double names = !numbersMayMean()
                ? 0
                : how.offset().isPresent()
                        ? Math.log(numbers.get().prior())
                        : Math.log(1 - numbers.get().prior()) + numbers.get().meaningless();
        into.add(new Weighed(how, slots, strip, how.prior() + names + strip.total()));
    }

    private Proposal best() {
        List<Weighed> ways = weigh();
        ways.sort(Comparator.comparingDouble((Weighed it) -> it.total).reversed());
        double all = Double.NEGATIVE_INFINITY;
        for (Weighed way : ways) {
            all = all == Double.NEGATIVE_INFINITY ? way.total : AlignmentModel.sum(all, way.total);
        }
        Found best = null;
        Found second = null;
        for (Weighed way : ways.subList(0, Math.min(CANDIDATES, ways.size()))) {
            if (way.total < ways.get(0).total - HOPELESS) {
                break;
            }
            int[] slotOf = way.inFilmOrder(way.strip.best());
            Found found = new Found(way.how, slotOf, Math.exp(share(ways, way.how, slotOf) - all));
            if (best == null || found.share > best.share && !found.isLike(best)) {
                second = best;
                best = found;
            } else if (!found.isLike(best) && (second == null || found.share > second.share)) {
                second = found;
            }
        }
        Hypothesis how = best.how;
        List<Slot> slots = how.layout() == Hypothesis.Layout.SINGLE
                ? singles
                : Slot.pairs(singles, how.layout() == Hypothesis.Layout.PAIRS_FIRST_ALONE);
        Proposal proposal = new Proposal(
                scans,
                slots,
                Arrays.stream(best.slotOf).boxed().toList(),
                how.isReversed(),
                how.isPiled(),
                Math.min(1, best.share),
                List.of());
        return new Proposal(
                scans,
                slots,
                proposal.slotOf(),
                how.isReversed(),
                how.isPiled(),
                proposal.confidence(),
                ProposalReasons.of(
                        proposal,
                        how,
                        Optional.ofNullable(second)
                                .map(it -> it.how.isReversed() != how.isReversed())
                                .orElse(false)));
    }

    private record Found(Hypothesis how, int[] slotOf, double share) {
        boolean isLike(Found other) {
            return how.layout() == other.how.layout() && Arrays.equals(slotOf, other.slotOf);
        }
    }

    /** What one alignment gets from all ways of the same layout together, the pile apart. */
    private static double share(List<Weighed> ways, Hypothesis how, int[] slotOf) {
        double sum = Double.NEGATIVE_INFINITY;
        for (Weighed way : ways) {
            if (way.how.layout() == how.layout() && way.how.isPiled() == how.isPiled()) {
                double names = way.total - way.how.prior() - way.strip.total();
                double score = names + way.of(slotOf);
                sum = sum == Double.NEGATIVE_INFINITY ? score : AlignmentModel.sum(sum, score);
            }
        }
        return sum;
    }
}
