package takeup.scans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * The numbers in file names that may be frame numbers: 1, 2, 4, 5 of {@code a_01.jpg}, {@code a_02.jpg},
 * {@code a_04.jpg}, {@code a_05.jpg}. A plain count from 1 says no more than the order; one with gaps was made before
 * something was left out.
 *
 * @param values one number a scan, rising
 */
record NameNumbers(List<Integer> values) {
    private static final Pattern DIGITS = Pattern.compile("[0-9]+");
    private static final int LARGEST = 200;
    private static final double MEAN_FRAMES = 0.3;

    NameNumbers {
        values = List.copyOf(values);
    }

    /** The numbers of these names, which are in natural order; empty where none rises from scan to scan. */
    static Optional<NameNumbers> of(List<String> names) {
        List<List<String>> all = names.stream()
                .map(it -> runs(it).stream().map(MatchResult::group).toList())
                .toList();
        if (names.size() < 2
                || all.stream().anyMatch(it -> it.size() != all.get(0).size())) {
            return Optional.empty();
        }
        Optional<NameNumbers> best = Optional.empty();
        for (int field = 0; field < all.get(0).size(); field++) {
            Optional<NameNumbers> found = field(all, field);
            if (found.isPresent()
                    && (best.isEmpty() || found.get().hasGaps() || !best.get().hasGaps())) {
                best = found;
            }
        }
        return best;
    }

    private static Optional<NameNumbers> field(List<List<String>> all, int field) {
        List<Integer> values = new ArrayList<>();
        for (List<String> runs : all) {
            String run = runs.get(field);
            if (run.length() > 4 || Integer.parseInt(run) > LARGEST) {
                return Optional.empty();
            }
            // 00 stands one before 0.
            int value = run.equals("00") && has(all, field, "0") ? -1 : Integer.parseInt(run);
            if (!values.isEmpty() && value <= values.get(values.size() - 1)) {
                return Optional.empty();
            }
            values.add(value);
        }
        return Optional.of(new NameNumbers(values));
    }

    private static boolean has(List<List<String>> all, int field, String run) {
        return all.stream().anyMatch(it -> it.get(field).equals(run));
    }

    /** The runs of digits in a name, the ending left out. */
    static List<MatchResult> runs(String name) {
        int dot = name.lastIndexOf('.');
        return DIGITS.matcher(dot > 0 ? name.substring(0, dot) : name).results().toList();
    }

    /** Whether a number is left out between the first and the last. */
    boolean hasGaps() {
        return values.get(values.size() - 1) - values.get(0) + 1 != values.size();
    }

    /** Whether it is a count from 1 that leaves nothing out: it says no more than the order. */
    boolean isPlain() {
        return values.get(0) == 1 && !hasGaps();
    }

    /** How likely it is beforehand that such numbers mean frames, as a natural logarithm. The share is opinion. */
    double asFrameNumbers() {
        return Math.log(MEAN_FRAMES);
    }

    /**
     * How likely these numbers are where they mean no frames, as a natural logarithm: most counts begin at 1 and leave
     * nothing out. The shares are opinion.
     */
    double asOtherNumbers() {
        double sum = Math.log(
                switch (values.get(0)) {
                    case 1 -> 0.7;
                    case 0 -> 0.003;
                    default -> 0.25 / LARGEST;
                });
        for (int i = 1; i < values.size(); i++) {
            sum += values.get(i) == values.get(i - 1) + 1 ? Math.log(0.9995) : Math.log(0.0005 / 10);
        }
        return Math.log(1 - MEAN_FRAMES) + sum;
    }
}
