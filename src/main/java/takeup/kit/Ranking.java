package takeup.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
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

    /** What rows are compared by: the least is the best. */
    private enum Measure {
        ERROR_BAND(Suggestions.Rule.ERROR),
        WRONG_SIDE(Suggestions.Rule.ERROR),
        STOPS_TO_HAND(Suggestions.Rule.NEAREST_IN_HAND),
        SHAKE(Suggestions.Rule.HAND_HOLDABLE),
        APERTURE_STOPS_TO_HAND(Suggestions.Rule.APERTURE_IN_HAND),
        STOPS_TO_MIDDLE(Suggestions.Rule.MIDDLE_OF_LENS);

        private final Suggestions.Rule rule;

        Measure(Suggestions.Rule rule) {
            this.rule = rule;
        }
    }

    /** The rows that are left, and what dropped the others. */
    private static final class Rows {
        private final List<Suggestion> rows;
        private final Suggestions.Request asked;
        private final List<Optional<Suggestions.Rule>> droppedBy = new ArrayList<>();

        Rows(List<Suggestion> rows, Suggestions.Request asked) {
            this.rows = rows;
            this.asked = asked;
            droppedBy.addAll(Collections.nCopies(rows.size(), Optional.empty()));
        }

        Ranking ranked() {
            keep(Suggestions.Rule.USABLE);
            keep(Suggestions.Rule.KEEPS_HELD);
            if (!asked.support().tripod() && isThereShort()) {
                keep(Suggestions.Rule.STEADY);
            }
            keepLeast(Measure.ERROR_BAND, 0);
            keepLeast(Measure.WRONG_SIDE, 0);
            keep(Suggestions.Rule.SPOILS_NOTHING);
            boolean isInHand = asked.wishes().inHand().isPresent();
            if (isInHand) {
                keepLeast(Measure.STOPS_TO_HAND, 2 * SIXTH);
            } else {
                keep(Suggestions.Rule.SHOWN_BY_METER);
            }
            keepLeast(Measure.SHAKE, 0);
            if (isInHand) {
                keepLeast(Measure.APERTURE_STOPS_TO_HAND, 0);
            }
            if (asked.optics().lens().isPresent()) {
                keepLeast(Measure.STOPS_TO_MIDDLE, 0);
            }
            return withFirstLeft();
        }

        /** Of those that no rule told apart the first one, which has the widest aperture. */
        private Ranking withFirstLeft() {
            int best = -1;
            for (int i = 0; i < rows.size(); i++) {
                if (isLeft(i) && best < 0) {
                    best = i;
                } else if (isLeft(i)) {
                    droppedBy.set(i, Optional.of(Suggestions.Rule.MIDDLE_OF_LENS));
                }
            }
            return new Ranking(best, droppedBy);
        }

        private boolean isLeft(int row) {
            return droppedBy.get(row).isEmpty();
        }

        private void keep(Suggestions.Rule rule) {
            boolean[] meets = new boolean[rows.size()];
            for (int i = 0; i < meets.length; i++) {
                meets[i] = isLeft(i) && meets(rule, rows.get(i));
            }
            dropOthers(rule, meets);
        }

        private void keepLeast(Measure by, double tolerance) {
            double[] measured = new double[rows.size()];
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < measured.length; i++) {
                if (isLeft(i)) {
                    measured[i] = measured(by, rows.get(i));
                    least = Math.min(least, measured[i]);
                }
            }
            boolean[] meets = new boolean[rows.size()];
            for (int i = 0; i < meets.length; i++) {
                meets[i] = isLeft(i) && measured[i] <= least + tolerance + 1e-6;
            }
            dropOthers(by.rule, meets);
        }

        private void dropOthers(Suggestions.Rule rule, boolean[] meets) {
            boolean isAny = false;
            for (boolean meetsIt : meets) {
                isAny |= meetsIt;
            }
            for (int i = 0; i < meets.length; i++) {
                if (isAny && isLeft(i) && !meets[i]) {
                    droppedBy.set(i, Optional.of(rule));
                }
            }
        }

        private boolean meets(Suggestions.Rule rule, Suggestion row) {
            return switch (rule) {
                case USABLE -> isUsable(row);
                case KEEPS_HELD -> keepsHeld(row);
                case STEADY -> !isLong(row);
                case SPOILS_NOTHING -> !spoils(row);
                case SHOWN_BY_METER -> isShown(row);
                case ERROR, NEAREST_IN_HAND, HAND_HOLDABLE, APERTURE_IN_HAND, MIDDLE_OF_LENS ->
                    throw new IllegalArgumentException(rule + " is measured");
            };
        }

        private double measured(Measure by, Suggestion row) {
            return switch (by) {
                case ERROR_BAND -> errorBand(row);
                case WRONG_SIDE -> wrongSide(row);
                case STOPS_TO_HAND -> asked.wishes().inHand().orElseThrow().stopsTo(row);
                case SHAKE -> shake(row);
                case APERTURE_STOPS_TO_HAND ->
                    asked.wishes().inHand().orElseThrow().apertureStopsTo(row);
                case STOPS_TO_MIDDLE -> stopsToMiddle(row);
            };
        }

        private boolean keepsHeld(Suggestion row) {
            Optional<Hold> hold = asked.wishes().hold();
            return hold.isPresent() && hold.get().isKeptBy(row);
        }

        private double stopsToMiddle(Suggestion row) {
            Ring ring = asked.optics().lens().orElseThrow().ring();
            return Math.abs(row.aperture().stops()
                    - (ring.widest().stops() + ring.narrowest().stops()) / 2);
        }

        private boolean isUsable(Suggestion row) {
            if (row.time().isPresent() && BesideFlash.makesUp(row.errorStops(), asked)) {
                return true;
            }
            if (row.time().isEmpty()) {
                return false;
            }
            Optional<ExposureTime> held = asked.wishes().heldTime();
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
            for (int i = 0; i < rows.size(); i++) {
                double error = Math.abs(rows.get(i).errorStops().orElse(Double.MAX_VALUE));
                if (isLeft(i) && !isLong(rows.get(i)) && !Stops.above(error, 2 * SIXTH)) {
                    return true;
                }
            }
            return false;
        }

        private boolean isLong(Suggestion row) {
            return BesideFlash.counts(asked) && row.has(Warning.Code.HAND_HELD)
                    || row.time().isPresent() && row.time().get().exactSeconds() >= 1;
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
                    && row.time().isPresent()
                    && Stops.above(row.time().get().stops(), 0);
            return isLong || row.has(Warning.Code.HAND_HELD)
                    ? row.time().orElseThrow().stops()
                    : NO_SHAKE;
        }

        private boolean isShown(Suggestion row) {
            Optional<MeteredPair> shown = asked.wishes().shown();
            return shown.isPresent()
                    && row.time().isPresent()
                    && shown.get().aperture().isSameMark(row.aperture())
                    && Math.abs(row.time().get().stops() - shown.get().time().stops()) < Stops.TOLERANCE;
        }
    }
}
