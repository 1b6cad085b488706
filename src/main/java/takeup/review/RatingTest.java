package takeup.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import takeup.kit.Stock;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.scans.Slot;
import takeup.text.Plain;

/**
 * What a rating test says once its scans are back: best at one stop over box speed, so rate 400 at 200. Each frame of
 * the test carries a card, {@code 1 STOP OVER}, and a note that names it.
 *
 * @param bestStops stops above box speed of each roll's best frame, of all rolls of the stock; frames that are as good
 *     as each other are one answer, halfway between them
 * @param stops their mean, and how sure it is: within half the way to the next card, and wider the more the answers
 *     differ
 * @param isOpenEnded whether a best frame stands at the end of its bracket, so that a further one might have been
 *     better
 */
public record RatingTest(List<Double> bestStops, ConfidenceInterval stops, boolean isOpenEnded) {
    /** What the note of a test's frame begins with. */
    public static final String NOTE = "rating test: ";
    /** The instruction for the lab. */
    public static final String ORDER = "rating test, no density correction on the scans";
    /** A wider range than this, in stops, offers no rating. Opinion: no source. */
    public static final double WIDEST = 4 / 3.0;

    public RatingTest {
        bestStops = List.copyOf(bestStops);
    }

    /** The words on a card: {@code 1/2 STOP UNDER}. */
    public static String card(double stops) {
        if (stops == 0) {
            return "BOX SPEED";
        }
        double much = Math.abs(stops);
        String number = much == 0.5 ? "1/2" : Plain.number(much);
        return number + (much > 1 ? " STOPS " : " STOP ") + (stops > 0 ? "OVER" : "UNDER");
    }

    /** The places of a test's frames in their roll: those whose light is known. */
    public static List<Integer> frames(Roll roll) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < roll.frames().size(); i++) {
            Frame frame = roll.frames().get(i);
            if (frame.note().map(it -> it.startsWith(NOTE)).orElse(false)
                    && Slot.overBoxStops(roll, frame).isPresent()) {
                places.add(i);
            }
        }
        return places;
    }

    /**
     * What the best frames of one test, or of several, come to.
     *
     * @param tests for each roll the stops over box of its test's frames, and which of them were called the best
     */
    public static Optional<RatingTest> of(List<Answer> tests) {
        List<Double> best = new ArrayList<>();
        double below = 0;
        double above = 0;
        boolean isOpenEnded = false;
        for (Answer test : tests) {
            if (test.best.isEmpty()) {
                continue;
            }
            double least = test.best.stream().mapToDouble(it -> it).min().getAsDouble();
            double most = test.best.stream().mapToDouble(it -> it).max().getAsDouble();
            double middle = test.best.stream().mapToDouble(it -> it).average().getAsDouble();
            OptionalDouble lower =
                    test.bracketStops().filter(it -> it < least - 0.01).max();
            OptionalDouble upper =
                    test.bracketStops().filter(it -> it > most + 0.01).min();
            isOpenEnded |= lower.isEmpty() || upper.isEmpty();
            below += middle - (least + lower.orElse(least - 1)) / 2;
            above += (most + upper.orElse(most + 1)) / 2 - middle;
            best.add(middle);
        }
        int count = best.size();
        if (count == 0) {
            return Optional.empty();
        }
        double mean = best.stream().mapToDouble(it -> it).sum() / count;
        double squares =
                best.stream().mapToDouble(it -> (it - mean) * (it - mean)).sum();
        double reach = count < 2
                ? 0
                : ConfidenceInterval.mean(0, Math.sqrt(squares / (count - 1)), count, ConfidenceInterval.CONFIDENCE)
                        .high();
        ConfidenceInterval stops = new ConfidenceInterval(
                mean, mean - Math.hypot(reach, below / count), mean + Math.hypot(reach, above / count));
        return Optional.of(new RatingTest(best, stops, isOpenEnded));
    }

    /** The answers of one test: the stops over box of all its frames, and of the best. */
    public record Answer(List<Double> bracket, List<Double> best) {
        public Answer {
            bracket = List.copyOf(bracket);
            best = List.copyOf(best);
        }

        private DoubleStream bracketStops() {
            return bracket.stream().mapToDouble(Double::doubleValue);
        }

        /** The answers on a roll: of its test's frames those that were judged good are the best. */
        public static Answer of(Roll roll, Review review) {
            List<Double> bracket = new ArrayList<>();
            List<Double> best = new ArrayList<>();
            List<Optional<Density>> verdicts = review.verdicts(roll);
            for (int place : frames(roll)) {
                double over = Slot.overBoxStops(roll, roll.frames().get(place)).orElseThrow();
                bracket.add(over);
                if (verdicts.get(place).equals(Optional.of(Density.GOOD))) {
                    best.add(over);
                }
            }
            return new Answer(bracket, best);
        }
    }

    /** Whether it is sure enough to be offered for the stock's profile. */
    public boolean isSure() {
        return !isOpenEnded && stops.high() - stops.low() <= WIDEST + 1e-9;
    }

    /** The rating that so many stops over box come to: 200 for a box of 400 and one stop. */
    public static double index(Stock stock, double stops) {
        return stock.boxSpeed().arithmetic() / Math.pow(2, stops);
    }
}
