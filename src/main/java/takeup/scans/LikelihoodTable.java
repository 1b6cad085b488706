package takeup.scans;

import java.util.List;

/**
 * How well each scan looks like each frame, worked out once for all hypotheses that agree on direction and slope.
 *
 * @param log natural logarithms, by scan and slot
 * @param plain the same as plain numbers, each row divided by its largest
 * @param top the logarithm of each row's largest
 * @param pile the logarithm for the scan at the film's end, were it a pile, by slot
 * @param extra the logarithm for each scan, were it one that nobody logged
 */
record LikelihoodTable(double[][] log, double[][] plain, double[] top, double[] pile, double[] extra) {
    /** The slots are in the order of the scanner. */
    static LikelihoodTable of(List<Scan> scans, List<Slot> slots, BrightnessModel brightness, Hypothesis how) {
        double[][] log = new double[scans.size()][slots.size()];
        double[][] plain = new double[scans.size()][slots.size()];
        double[] top = new double[scans.size()];
        double[] pile = new double[slots.size()];
        double[] extra = new double[scans.size()];
        int end = how.isReversed() ? 0 : scans.size() - 1;
        for (int i = 0; i < scans.size(); i++) {
            Scan scan = scans.get(i);
            // The tones of a slate say nothing, its code says all.
            boolean isSlate = scan.slate().isPresent();
            extra[i] = isSlate ? 0 : brightness.extra(scan);
            top[i] = Double.NEGATIVE_INFINITY;
            for (int j = 0; j < slots.size(); j++) {
                double shape =
                        MatchProbabilities.shape(scan, slots.get(j)) + MatchProbabilities.slate(scan, slots.get(j));
                log[i][j] = shape + (isSlate ? 0 : brightness.frame(scan, slots.get(j), how.slope()));
                top[i] = Math.max(top[i], log[i][j]);
                if (i == end) {
                    pile[j] = shape + brightness.pile(scan);
                }
            }
            for (int j = 0; j < slots.size(); j++) {
                plain[i][j] = Math.exp(log[i][j] - top[i]);
            }
        }
        return new LikelihoodTable(log, plain, top, pile, extra);
    }
}
