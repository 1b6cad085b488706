package takeup.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the verdicts on all judged frames teach: consistent, change the rating; scattered, technique or equipment; one
 * body only, that shutter (two training manuals say so: US Army SS0508, on film speed, and SS0514, on evaluating
 * negatives). Causes are taken up one by one, the one that explains most first, as long as a likelihood ratio speaks
 * for it.
 *
 * @param frames how many judged frames could be used
 * @param findings what was found, the weightiest first
 * @param scatter how far frames lie from the log once the findings are accounted for, in stops
 */
public record Lesson(int frames, List<Finding> findings, ConfidenceInterval scatter) {
    /** Fewer judged frames than this teach nothing. Opinion. */
    public static final int FEWEST = 12;
    /** A cause needs so many frames of its own. Opinion. */
    static final int FEWEST_OF_ONE = 8;
    /** Less than this is not worth a change: a third of a stop, the step of film speeds. */
    static final double LEAST = 0.3;
    /** More scatter than this, in stops, is no usual scatter. Opinion: meters agree within a stop or so. */
    static final double WILD = 0.75;
    /** So many verdicts against the log are no slips. Opinion. */
    private static final int FEWEST_MIXED = 3;

    private static final double RISK = 0.002;
    private static final int MOST = 4;
    /** Causes whose likelihoods differ by less cannot be distinguished: e² is about 7 to 1. Opinion. */
    private static final double NEAR = 2;

    public Lesson {
        findings = List.copyOf(findings);
    }

    /** Whether there were enough frames. */
    public boolean isEnough() {
        return frames >= FEWEST;
    }

    /** What counted verdicts teach. */
    public static Lesson of(VerdictCounts counts) {
        if (counts.usable() < FEWEST) {
            return new Lesson(counts.usable(), List.of(), new ConfidenceInterval(0, 0, 0));
        }
        List<Map.Entry<JudgedFrame, Integer>> cases =
                new ArrayList<>(counts.counts().entrySet());
        cases.sort((a, b) -> a.getKey().line().compareTo(b.getKey().line()));
        return new Search(cases).lesson();
    }

    /** One cause that is weighed: the cases that it marks. */
    private record Suspect(
            JudgedFrame.Factor factor, String name, Optional<JudgedFrame.Rating> rating, boolean[] marked, int frames) {
        @Override
        public boolean equals(Object other) {
            return this == other;
        }

        @Override
        public int hashCode() {
            return name.hashCode();
        }
    }

    private static final class Search {
        private final List<Map.Entry<JudgedFrame, Integer>> cases;
        private final List<Suspect> suspects = new ArrayList<>();
        private final double[] offsets;
        private final List<Finding> findings = new ArrayList<>();

        Search(List<Map.Entry<JudgedFrame, Integer>> cases) {
            this.cases = cases;
            offsets = new double[cases.size()];
            for (JudgedFrame.Factor factor : JudgedFrame.Factor.values()) {
                Map<String, JudgedFrame> names = new TreeMap<>();
                cases.forEach(it -> names.putIfAbsent(it.getKey().name(factor), it.getKey()));
                names.remove("");
                names.forEach((name, one) -> suspect(factor, name, one.rating()));
            }
        }

        private void suspect(JudgedFrame.Factor factor, String name, JudgedFrame.Rating rating) {
            boolean[] marked = new boolean[cases.size()];
            int frames = 0;
            for (int i = 0; i < marked.length; i++) {
                marked[i] = cases.get(i).getKey().name(factor).equals(name);
                frames += marked[i] ? cases.get(i).getValue() : 0;
            }
            if (frames >= FEWEST_OF_ONE) {
                boolean isRating = factor == JudgedFrame.Factor.RATING;
                suspects.add(new Suspect(factor, name, Optional.of(rating).filter(it -> isRating), marked, frames));
            }
        }

        Lesson lesson() {
            double limit = ConfidenceInterval.chiSquared(1 - RISK / Math.max(1, suspects.size()), 1);
            boolean isMore = true;
            while (isMore && findings.size() < MOST) {
                isMore = takeUp(limit);
            }
            ConfidenceInterval scatter = new ExposureFit(cases, offsets).scatterInterval();
            scattered(scatter);
            return new Lesson(frames(), findings, scatter);
        }

        private int frames() {
            return cases.stream().mapToInt(Map.Entry::getValue).sum();
        }

        /**
         * Takes up the cause that explains most of what is left, if it explains enough. The limit allows for how many
         * are tried (Bonferroni: NIST/SEMATECH e-Handbook, 7.4.7.3).
         */
        private boolean takeUp(double limit) {
            Map<Suspect, Double> gains = new LinkedHashMap<>();
            Suspect best = null;
            double bestOffset = 0;
            for (Suspect suspect : suspects) {
                // By its own scatter: where that is large, a mean that is off says little.
                ExposureFit own = fitOf(suspect);
                boolean[] all = everything(own.size());
                double scatter = own.scatter();
                double before = own.likelihood(0, scatter, all);
                double first = own.offset(scatter, all);
                double left = own.shifted(first).scatter();
                double offset = own.offset(left, all);
                double gain = own.likelihood(offset, left, all) - before;
                gains.put(suspect, gain);
                // Where the log cannot tell them apart the rating comes first: it is what can be changed.
                if (2 * gain > limit && Math.abs(offset) >= LEAST && (best == null || gain > gains.get(best) + 1e-6)) {
                    best = suspect;
                    bestOffset = offset;
                }
            }
            if (best == null) {
                return false;
            }
            double offset = bestOffset;
            for (int i = 0; i < offsets.length; i++) {
                offsets[i] += best.marked[i] ? offset : 0;
            }
            ConfidenceInterval around = new ExposureFit(cases, without(best, offset))
                    .offsetInterval(fitOf(best).scatter(), best.marked);
            findings.add(new Finding(
                    kind(best.factor),
                    best.factor,
                    best.name,
                    best.rating,
                    best.frames,
                    around,
                    otherCauses(best, gains)));
            return true;
        }

        private double[] without(Suspect suspect, double offset) {
            double[] before = offsets.clone();
            for (int i = 0; i < before.length; i++) {
                before[i] -= suspect.marked[i] ? offset : 0;
            }
            return before;
        }

        private static Finding.Kind kind(JudgedFrame.Factor factor) {
            return switch (factor) {
                case RATING -> Finding.Kind.RATING;
                case BODY, LENS -> Finding.Kind.EQUIPMENT;
                case METHOD, LIGHT -> Finding.Kind.TECHNIQUE;
                case DEVELOPER -> Finding.Kind.DEVELOPMENT;
            };
        }

        private List<String> otherCauses(Suspect best, Map<Suspect, Double> gains) {
            List<String> others = new ArrayList<>();
            gains.forEach((suspect, gain) -> {
                boolean isWithin = suspect.factor == JudgedFrame.Factor.LENS && best.factor == JudgedFrame.Factor.BODY;
                if (suspect != best && !isWithin && gain > gains.get(best) - NEAR) {
                    others.add(suspect.factor + " " + suspect.name);
                }
            });
            return others;
        }

        /** Scatter beyond the usual: of one way of reading light where only that one scatters, else of all. */
        private void scattered(ConfidenceInterval all) {
            List<Finding> wild = new ArrayList<>();
            int tame = 0;
            for (Suspect suspect : suspects) {
                if (suspect.factor == JudgedFrame.Factor.METHOD && suspect.frames >= FEWEST) {
                    ConfidenceInterval own = fitOf(suspect).scatterInterval();
                    if (own.low() > WILD && isMixed(suspect.marked)) {
                        wild.add(scatter(suspect.name, suspect.frames, own));
                    } else {
                        tame++;
                    }
                }
            }
            if (!wild.isEmpty() && tame > 0) {
                findings.addAll(wild);
            } else if (all.low() > WILD && isMixed(everything(offsets.length))) {
                findings.add(scatter("all frames", frames(), all));
            }
        }

        private static Finding scatter(String name, int frames, ConfidenceInterval size) {
            return new Finding(
                    Finding.Kind.SCATTER, JudgedFrame.Factor.METHOD, name, Optional.empty(), frames, size, List.of());
        }

        private static boolean[] everything(int size) {
            boolean[] all = new boolean[size];
            Arrays.fill(all, true);
            return all;
        }

        /**
         * Whether frames that the log has within the stock's limits were judged thin or dense. Where only the limits
         * are crossed without harm, the stock tolerates more than its file says, and nobody's metering is to blame.
         */
        private boolean isMixed(boolean[] marked) {
            int inside = 0;
            for (int i = 0; i < offsets.length; i++) {
                JudgedFrame each = cases.get(i).getKey();
                double light = each.overStops() + offsets[i];
                boolean isOff = each.verdict() == Density.THIN
                                && light > -each.latitude().under() + LEAST
                        || each.verdict() == Density.DENSE
                                && light < each.latitude().over() - LEAST;
                inside += isOff && marked[i] ? cases.get(i).getValue() : 0;
            }
            return inside >= FEWEST_MIXED;
        }

        private ExposureFit fitOf(Suspect suspect) {
            List<Map.Entry<JudgedFrame, Integer>> own = new ArrayList<>();
            List<Double> moved = new ArrayList<>();
            for (int i = 0; i < offsets.length; i++) {
                if (suspect.marked[i]) {
                    own.add(cases.get(i));
                    moved.add(offsets[i]);
                }
            }
            return new ExposureFit(
                    own, moved.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }
}
