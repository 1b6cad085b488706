package takeup.day;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * What a day is for and what there is for it: the shoot, its key moments, the film in the bag.
 *
 * @param occasion the shoot that is open
 * @param plan its key moments
 * @param bag the film; it lives longer than a day
 */
public record Job(Optional<Occasion> occasion, Plan plan, Bag bag) {
    /** Nothing said about it. */
    public static final Job NONE = new Job(Optional.empty(), Plan.NONE, Bag.NONE);

    /** For another shoot. */
    public Job with(Occasion other) {
        return new Job(Optional.of(other), plan, bag);
    }

    /** With another plan. */
    public Job with(Plan other) {
        return new Job(occasion, other, bag);
    }

    /** With another bag. */
    public Job with(Bag other) {
        return new Job(occasion, plan, other);
    }

    /** Where the shoot is. */
    public Optional<Position> position() {
        return occasion.flatMap(Occasion::position);
    }

    /** What the next day begins with: a shoot that is over is closed, but for a night that goes on. */
    Job carried(OffsetDateTime now) {
        return new Job(
                occasion.filter(it -> !it.date().isBefore(now.minusHours(6).toLocalDate())),
                plan.carried(now.toLocalDateTime()),
                bag.carried());
    }
}
