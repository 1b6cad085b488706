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
public record ShootPlan(Optional<ShootInfo> occasion, Plan plan, Bag bag) {
    /** Nothing said about it. */
    public static final ShootPlan NONE = new ShootPlan(Optional.empty(), Plan.NONE, Bag.NONE);

    /** For another shoot. */
    public ShootPlan with(ShootInfo other) {
        return new ShootPlan(Optional.of(other), plan, bag);
    }

    /** With another plan. */
    public ShootPlan with(Plan other) {
        return new ShootPlan(occasion, other, bag);
    }

    /** With another bag. */
    public ShootPlan with(Bag other) {
        return new ShootPlan(occasion, plan, other);
    }

    /** Where the shoot is. */
    public Optional<Coordinates> position() {
        return occasion.flatMap(ShootInfo::position);
    }

    /** What the next day begins with: a shoot that is over is closed, but for a night that goes on. */
    ShootPlan carried(OffsetDateTime now) {
        return new ShootPlan(
                occasion.filter(it -> !it.date().isBefore(now.minusHours(6).toLocalDate())),
                plan.carried(now.toLocalDateTime()),
                bag.carried());
    }
}
