package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import takeup.exposure.ExposureTime;
import takeup.exposure.Stops;

/**
 * Which of some rows is the best: each rule in its turn drops the rows that are worse by it than the best of those
 * left, until one is left. A rule that no row meets drops none.
 *
 * @param best the index of the best row; -1 where there is none
 * @param droppedBy for each row the rule that dropped it; empty for the best
 */
record Ranking(int best, List<Optional<Suggestions.Rule>> droppedBy) {
    /** Errors up to this, in stops, are as good as none: within it the side does not count either. */
    private static final double SIXTH = 1 / 6.0;

    /** Below every time, as log2 of seconds. */
    private static final double NO_SHAKE = -100;

    Ranking {
        droppedBy = List.copyOf(droppedBy);
    }

    static Ranking of(List<Suggestion> rows, Suggestions.Request asked) {
        return new Rows(rows, asked).ranked();
    }

    /** The rows that are left, and what dropped the others. */
    private static final class Rows {
        private final List<Suggestion> rows;
        private final Suggestions.Request asked;
        private final List<Optional<Suggestions.Rule>> droppedBy = new ArrayList<>();

        Rows(List<Suggestion> rows, Suggestions.Request asked) {
            this.rows = rows;
            this.asked = asked;
            rows.forEach(it -> droppedBy.add(Optional.empty()));
        }

        Ranking ranked() {
            keep(Suggestions.Rule.USABLE, it -> isUsable(rows.get(it)));
            keep(
                    Suggestions.Rule.KEEPS_HELD,
                    it -> asked.wishes()
                            .hold()
                            .filter(hold -> hold.isKeptBy(rows.get(it)))
                            .isPresent());
            if (!asked.support().tripod() && isThereShort()) {
                keep(Suggestions.Rule.STEADY, it -> !isLong(rows.get(it)));
            }
            keepLeast(Suggestions.Rule.ERROR, this::errorBand);
            keepLeast(Suggestions.Rule.ERROR, this::wrongSide);
            keep(Suggestions.Rule.SPOILS_NOTHING, it -> !spoils(rows.get(it)));
            asked.wishes()
                    .inHand()
                    .ifPresentOrElse(
                            it -> keepLeast(Suggestions.Rule.NEAREST_IN_HAND, row -> it.stopsTo(row), 2 * SIXTH),
                            () -> keep(Suggestions.Rule.SHOWN_BY_METER, it -> isShown(rows.get(it))));
            keepLeast(Suggestions.Rule.HAND_HOLDABLE, this::shake);
            asked.wishes()
                    .inHand()
                    .ifPresent(it -> keepLeast(Suggestions.Rule.APERTURE_IN_HAND, row -> it.apertureStopsTo(row)));
            asked.optics()
                    .lens()
                    .map(it ->
                            (it.ring().widest().stops() + it.ring().narrowest().stops()) / 2)
                    .ifPresent(middle -> keepLeast(
                            Suggestions.Rule.MIDDLE_OF_LENS,
                            it -> Math.abs(it.aperture().stops() - middle)));
            int best = left().findFirst().orElse(-1);
            keep(Suggestions.Rule.MIDDLE_OF_LENS, it -> it == best);
            return new Ranking(best, droppedBy);
        }

        private IntStream left() {
            return IntStream.range(0, rows.size())
                    .filter(it -> droppedBy.get(it).isEmpty());
        }

        private void keep(Suggestions.Rule rule, IntPredicate meets) {
            List<Integer> worse = new ArrayList<>();
            int left = 0;
            for (int i = 0; i < rows.size(); i++) {
                if (droppedBy.get(i).isEmpty()) {
                    left++;
                    if (!meets.test(i)) {
                        worse.add(i);
                    }
                }
            }
            if (worse.size() < left) {
                worse.forEach(it -> droppedBy.set(it, Optional.of(rule)));
            }
        }

        private void keepLeast(Suggestions.Rule rule, ToDoubleFunction<Suggestion> measure) {
            keepLeast(rule, measure, 0);
        }

        private void keepLeast(Suggestions.Rule rule, ToDoubleFunction<Suggestion> measure, double tolerance) {
            double[] measured = new double[rows.size()];
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < measured.length; i++) {
                if (droppedBy.get(i).isEmpty()) {
                    measured[i] = measure.applyAsDouble(rows.get(i));
                    least = Math.min(least, measured[i]);
                }
            }
            double most = least + tolerance + 1e-6;
            keep(rule, it -> measured[it] <= most);
        }

        private boolean isUsable(Suggestion row) {
            if (row.time().isPresent() && BesideFlash.makesUp(row.errorStops(), asked)) {
                return true;
            }
            if (row.time().isEmpty()) {
                return false;
            }
            Optional<ExposureTime> held = asked.wishes().hold().flatMap(Hold::time);
            return held.isPresent() && held.equals(row.time())
                    ? ExposureWarnings.beyondRings(
                                    Optional.empty(),
                                    held,
                                    asked.camera(),
                                    asked.optics().lens())
                            .isEmpty()
                    : row.correctedSeconds().isPresent()
                            && ExposureWarnings.beyondDial(
                                            row.correctedSeconds().getAsDouble(),
                                            asked.camera(),
                                            asked.support().flash())
                                    .isEmpty();
        }

        /** 1 within a sixth of a stop, 2 within a third, and so on in sixths. */
        private double errorBand(Suggestion row) {
            return row.errorStops().isEmpty()
                    ? Double.MAX_VALUE
                    : Math.max(1, Math.ceil((Math.abs(row.errorStops().getAsDouble()) - Stops.TOLERANCE) / SIXTH));
        }

        /** 1 where an error that counts lies on the side that the film tolerates less. */
        private double wrongSide(Suggestion row) {
            double error = row.errorStops().orElse(0);
            return !Stops.above(Math.abs(error), SIXTH) || error > 0 == asked.leansToLight() ? 0 : 1;
        }

        /**
         * A second and longer needs a tripod, on the dial or by the watch; beside a flash, which is there so that the
         * camera need not stand, whatever the hand cannot hold. By hand such a time is put in hand only where it keeps
         * what is held, or where no shorter one comes within a third of a stop: nobody holds a camera for 3 s to win a
         * tenth of a stop.
         */
        private boolean isThereShort() {
            return left().mapToObj(rows::get)
                    .anyMatch(it ->
                            !isLong(it) && !Stops.above(Math.abs(it.errorStops().orElse(Double.MAX_VALUE)), 2 * SIXTH));
        }

        private boolean isLong(Suggestion row) {
            return BesideFlash.counts(asked) && row.has(Warning.Code.HAND_HELD)
                    || row.time().filter(it -> it.exactSeconds() >= 1).isPresent();
        }

        private static boolean spoils(Suggestion row) {
            return row.has(Warning.Code.OUT_OF_RANGE)
                    || row.has(Warning.Code.SYNC_SPEED)
                    || row.has(Warning.Code.THIN)
                    || row.has(Warning.Code.DENSE)
                    || row.has(Warning.Code.DARK)
                    || row.has(Warning.Code.LIGHT)
                    || row.has(Warning.Code.RECIPROCITY_BEYOND);
        }

        /**
         * How long a time is that the hand cannot hold; the same for all that it can. Past a second nobody is told so,
         * and it shakes all the same.
         */
        private double shake(Suggestion row) {
            boolean isLong = !asked.support().tripod()
                    && row.time().filter(it -> Stops.above(it.stops(), 0)).isPresent();
            return isLong || row.has(Warning.Code.HAND_HELD)
                    ? row.time().orElseThrow().stops()
                    : NO_SHAKE;
        }

        private boolean isShown(Suggestion row) {
            return asked.wishes()
                    .shown()
                    .filter(it -> it.aperture().isSameMark(row.aperture()))
                    .filter(it -> row.time()
                            .filter(time -> Math.abs(time.stops() - it.time().stops()) < Stops.TOLERANCE)
                            .isPresent())
                    .isPresent();
        }
    }
}
