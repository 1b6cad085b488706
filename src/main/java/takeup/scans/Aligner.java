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
 * share that the proposed alignment has of all of them (Bayes). Where two ways fit alike it is low, and the
 * photographer is asked.
 */
public final class Aligner {
    private static final int CANDIDATES = 16;
    /** A way so much less likely, as a natural logarithm, yields no candidate. */
    private static final double HOPELESS = 8;
    /** What a number in a name may be off by. */
    private static final int[] OFFSETS = {-1, 0, 1};

    private static final boolean[] NO = {false};
    private static final boolean[] NO_AND_YES = {false, true};

    private final List<Scan> scans;
    private final List<Slot> singles;
    private final int room;
    private final Optional<NameNumbers> numbers;
    /** The same where they may mean frames. */
    private final Optional<NameNumbers> frameNumbers;

    private Aligner(List<Scan> scans, List<Slot> singles, int room) {
        this.scans = scans;
        this.singles = singles;
        this.room = room;
        this.numbers = NameNumbers.of(scans.stream().map(Scan::name).toList());
        this.frameNumbers = numbers.filter(it -> !it.isPlain());
    }

    /**
     * The most likely alignment of scans, in natural order, with the frames of one film or of several in a row.
     *
     * @param room how many pictures beside those in the log the film may hold
     */
    public static Proposal of(List<Scan> scans, List<Slot> slots, int room) {
        if (scans.isEmpty() || slots.isEmpty()) {
            return Proposal.none(scans, slots, scans.isEmpty() ? "there are no scans" : "no frame is logged");
        }
        return new Aligner(scans, slots, room).best();
    }

    /** Natural logarithm of how likely these scans are, as scans of these frames: to tell rolls apart. */
    static double evidence(List<Scan> scans, List<Slot> slots, int room) {
        return LogSum.of(new Aligner(scans, slots, room).weigh().stream().mapToDouble(Way::total));
    }

    /**
     * A hypothesis, weighed.
     *
     * @param names what the numbers in the names say of it, as a natural logarithm
     * @param total the natural logarithm of the sum over all of its chains
     */
    private record Way(Hypothesis how, int slots, AlignmentModel model, double names, double total) {
        /** The slots of a chain in the order of the film instead of the scanner's, or back. */
        int[] inFilmOrder(int[] chain) {
            return how.isReversed()
                    ? Arrays.stream(chain)
                            .map(it -> it < 0 ? it : slots - 1 - it)
                            .toArray()
                    : chain;
        }

        /** What one alignment, in the order of the film, comes to under this hypothesis. */
        double score(int[] filmOrder) {
            return names + (how.prior() + model.score(inFilmOrder(filmOrder)));
        }
    }

    private List<Way> weigh() {
        List<Way> ways = new ArrayList<>();
        for (Hypothesis.Layout layout : layouts()) {
            List<Slot> inOrder = slots(layout);
            BrightnessModel first = BrightnessModel.of(scans, inOrder);
            for (boolean reversed : NO_AND_YES) {
                List<Slot> slots = new ArrayList<>(inOrder);
                if (reversed) {
                    Collections.reverse(slots);
                }
                for (double slope : Hypothesis.SLOPES) {
                    Hypothesis plain = new Hypothesis(reversed, layout, false, false, slope, OptionalInt.empty());
                    Hypothesis byName = frameNumbers.isPresent() ? plain.numbered(0) : plain;
                    int[] chain = new AlignmentModel(
                                    LikelihoodTable.of(scans, slots, first, plain), film(slots), byName, numbers)
                            .best();
                    weigh(plain, slots, first.fitted(scans, slots, chain, slope), ways);
                }
            }
        }
        return ways;
    }

    private List<Hypothesis.Layout> layouts() {
        boolean isHalf = Math.abs(singles.get(0).aspect() - 4 / 3.0) < 0.01 && scans.size() < singles.size();
        return isHalf ? List.of(Hypothesis.Layout.values()) : List.of(Hypothesis.Layout.SINGLE);
    }

    private List<Slot> slots(Hypothesis.Layout layout) {
        return switch (layout) {
            case SINGLE -> singles;
            case PAIRS -> Slot.pairs(singles, 0);
            case PAIRS_FIRST_ALONE -> Slot.pairs(singles, -1);
        };
    }

    /** Weighs all that may have happened at the lab to a film that was scanned in this way. */
    private void weigh(Hypothesis plain, List<Slot> slots, BrightnessModel brightness, List<Way> into) {
        LikelihoodTable likelihoods = LikelihoodTable.of(scans, slots, brightness, plain);
        boolean mayBeLeftOut = slots.stream()
                .anyMatch(it -> it.isFarOff() || it.kind() == Frame.Kind.BLANK || it.kind() == Frame.Kind.LOST);
        boolean mayBePiled = scans.size() < slots.size()
                && brightness.mayBePile(scans.get(plain.isReversed() ? 0 : scans.size() - 1));
        for (boolean good : mayBeLeftOut ? NO_AND_YES : NO) {
            for (boolean piled : mayBePiled ? NO_AND_YES : NO) {
                Hypothesis how = plain.with(piled, good);
                into.add(way(how, slots, likelihoods));
                if (frameNumbers.isPresent()) {
                    for (int offset : OFFSETS) {
                        into.add(way(how.numbered(offset), slots, likelihoods));
                    }
                }
            }
        }
    }

    private LoggedFilm film(List<Slot> slots) {
        return new LoggedFilm(slots, room);
    }

    private Way way(Hypothesis how, List<Slot> slots, LikelihoodTable likelihoods) {
        AlignmentModel model = new AlignmentModel(likelihoods, film(slots), how, numbers);
        double names = frameNumbers
                .map(it -> how.offset().isPresent() ? it.asFrameNumbers() : it.asOtherNumbers())
                .orElse(0.0);
        return new Way(how, slots.size(), model, names, how.prior() + names + model.total());
    }

    private Proposal best() {
        List<Way> ways = weigh();
        ways.sort(Comparator.comparingDouble(Way::total).reversed());
        double all = LogSum.of(ways.stream().mapToDouble(Way::total));
        Found best = null;
        Found second = null;
        for (Way way : ways.subList(0, Math.min(CANDIDATES, ways.size()))) {
            if (way.total < ways.get(0).total - HOPELESS) {
                break;
            }
            int[] slotOf = way.inFilmOrder(way.model.best());
            Found found = new Found(way.how, slotOf, Math.exp(share(ways, way.how, slotOf) - all));
            if (best == null || found.share > best.share && !found.isLike(best)) {
                second = best;
                best = found;
            } else if (!found.isLike(best) && (second == null || found.share > second.share)) {
                second = found;
            }
        }
        Hypothesis how = best.how;
        Proposal proposal = new Proposal(
                scans,
                slots(how.layout()),
                Arrays.stream(best.slotOf).boxed().toList(),
                how.isReversed(),
                how.isPiled(),
                Math.min(1, best.share),
                List.of());
        boolean isOtherEndNext = second != null && second.how.isReversed() != how.isReversed();
        return proposal.because(ProposalReasons.of(proposal, how, isOtherEndNext));
    }

    private record Found(Hypothesis how, int[] slotOf, double share) {
        boolean isLike(Found other) {
            return how.layout() == other.how.layout() && Arrays.equals(slotOf, other.slotOf);
        }
    }

    /** What one alignment gets from all ways of the same layout that agree on the pile, together. */
    private static double share(List<Way> ways, Hypothesis how, int[] slotOf) {
        return LogSum.of(ways.stream()
                .filter(it -> it.how.layout() == how.layout() && it.how.isPiled() == how.isPiled())
                .mapToDouble(it -> it.score(slotOf)));
    }
}
