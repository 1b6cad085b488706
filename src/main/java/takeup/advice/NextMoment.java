package takeup.advice;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.day.CameraPlace;
import takeup.day.KeyMoment;
import takeup.day.ShootingPace;
import takeup.history.ShootState;
import takeup.roll.Roll;

/**
 * The next key moment, how long it is away, and the one thing that is best done about it, such as to change the roll
 * now: 4 frames are left, and Prize-giving in 6 min wants 12.
 *
 * @param moment the moment
 * @param minutes how many minutes it is away; 0 or less once it has begun
 * @param place the camera or back that it will be on; empty while none is in hand
 * @param roll the roll that is in there
 * @param advice what is best done
 * @param means with what
 */
public record NextMoment(
        KeyMoment moment, long minutes, Optional<CameraPlace> place, Optional<Roll> roll, Advice advice, Means means) {
    /** So many minutes before a moment it begins to be advised on: a rule of our own. */
    public static final int LEAD = 15;
    /** Minutes that a change of roll is given: a rule of our own, nobody has published one. */
    static final int CHANGE = 3;

    /** What is best done. Those behind {@code KEEP} are urgent and warned of. */
    public enum Advice {
        NOTHING,
        READY,
        KEEP,
        USE_UP,
        LOAD,
        OTHER,
        CHANGE,
        STOCK
    }

    /**
     * What the advice is carried out with, as far as it needs it.
     *
     * @param film the film to load
     * @param other the roll to use instead, in another place
     * @param costOfLeft what the frames that are left cost, where the bag knows a price
     * @param isBagEmpty whether a bag is kept and nothing in it fits
     */
    public record Means(
            Optional<StockChoice> film, Optional<Roll> other, Optional<BigDecimal> costOfLeft, boolean isBagEmpty) {
        private static final Means NONE = new Means(Optional.empty(), Optional.empty(), Optional.empty(), false);

        private static Means film(StockChoice film) {
            return new Means(Optional.of(film), Optional.empty(), Optional.empty(), false);
        }

        private static Means other(Roll other) {
            return new Means(Optional.empty(), Optional.of(other), Optional.empty(), false);
        }
    }

    /** The moment to be ready for, if one is planned for today. */
    public static Optional<NextMoment> of(ShootState s, OffsetDateTime now) {
        Optional<KeyMoment> next = s.day().plan().next(now.toLocalDateTime());
        return next.isPresent() ? Optional.of(of(next.get(), s, now)) : Optional.empty();
    }

    private static NextMoment of(KeyMoment moment, ShootState s, OffsetDateTime now) {
        long minutes = moment.minutesFrom(now.toLocalDateTime());
        Optional<CameraPlace> place = place(moment, s);
        Optional<Roll> roll = place.isPresent() ? s.rollIn(place.get()) : Optional.empty();
        NextMoment plain = new NextMoment(moment, minutes, place, roll, Advice.NOTHING, Means.NONE);
        if (place.isEmpty() || minutes > LEAD || minutes <= 0) {
            return plain;
        }
        if (roll.isEmpty()) {
            Optional<StockChoice> film = StockChoice.of(s, place.get(), moment, Optional.empty());
            return plain.with(
                    Advice.LOAD, new Means(film, Optional.empty(), Optional.empty(), isBagEmpty(s, place.get())));
        }
        return plain.left() < moment.wants() ? tooFew(plain, s, now) : enough(plain, s, now);
    }

    /**
     * The place that the plan names; of a camera with backs the one in hand or last in hand; else the place in hand.
     */
    private static Optional<CameraPlace> place(KeyMoment moment, ShootState s) {
        if (moment.camera().isEmpty()) {
            return s.placeInHand();
        }
        String camera = moment.camera().get();
        if (moment.back().isPresent()) {
            return Optional.of(new CameraPlace(camera, moment.back()));
        }
        Optional<CameraPlace> active = s.placeInHand().filter(it -> it.camera().equals(camera));
        Optional<String> back = Optional.ofNullable(s.day().lastBack().get(camera))
                .or(() -> s.camera(camera).flatMap(it -> it.backNames().stream().findFirst()));
        return active.or(() -> Optional.of(new CameraPlace(camera, back)));
    }

    private static NextMoment tooFew(NextMoment plain, ShootState s, OffsetDateTime now) {
        KeyMoment moment = plain.moment;
        Roll roll = plain.roll.orElseThrow();
        Optional<Roll> other = other(moment, s, roll);
        if (other.isPresent()) {
            return plain.with(Advice.OTHER, Means.other(other.get()));
        }
        if (plain.framesOnFreshRoll() <= plain.left()) {
            return plain.with(Advice.READY, Means.NONE);
        }
        CameraPlace place = plain.place.orElseThrow();
        Optional<StockChoice> film =
                StockChoice.of(s, place, moment, plain.roll).filter(it -> !it.isOn(roll));
        boolean isBagEmpty = isBagEmpty(s, place);
        OptionalDouble pace = pace(s, now);
        if (plain.left() > 0 && pace.isPresent() && plain.left() / pace.getAsDouble() + CHANGE < plain.minutes) {
            return plain.with(Advice.USE_UP, new Means(film, Optional.empty(), Optional.empty(), isBagEmpty));
        }
        Optional<BigDecimal> cost = s.day().bag().costLeft(roll);
        return plain.with(Advice.CHANGE, new Means(film, Optional.empty(), cost, isBagEmpty));
    }

    private static NextMoment enough(NextMoment plain, ShootState s, OffsetDateTime now) {
        KeyMoment moment = plain.moment;
        Optional<StockChoice> better = StockChoice.of(s, plain.place.orElseThrow(), moment, plain.roll)
                .filter(it -> it.isOther(plain.roll.orElseThrow()));
        if (better.isPresent()) {
            return plain.with(Advice.STOCK, Means.film(better.get()));
        }
        OptionalDouble pace = pace(s, now);
        boolean isSoonGone =
                moment.wants() > 0 && pace.isPresent() && plain.spare() < pace.getAsDouble() * plain.minutes;
        return isSoonGone ? plain.with(Advice.KEEP, Means.NONE) : plain;
    }

    private static boolean isBagEmpty(ShootState s, CameraPlace place) {
        return s.day().bag().kept() && StockChoice.inBag(s, place).isEmpty();
    }

    /**
     * Another roll in use that has frames enough: on another back of that camera, or anywhere where the plan names no
     * camera.
     */
    private static Optional<Roll> other(KeyMoment moment, ShootState s, Roll roll) {
        if (moment.back().isPresent()) {
            return Optional.empty();
        }
        Optional<Roll> best = Optional.empty();
        for (CameraPlace place : s.placesInUse()) {
            Optional<Roll> found =
                    s.rollIn(place).filter(it -> !it.id().equals(roll.id()) && it.framesLeft() >= moment.wants());
            boolean fits = moment.camera().isEmpty() || moment.camera().get().equals(place.camera());
            boolean nearer = best.isEmpty()
                    || place.camera().equals(roll.camera().key())
                            && !best.get().camera().key().equals(roll.camera().key());
            if (found.isPresent() && fits && nearer) {
                best = found;
            }
        }
        return best.filter(it -> StockChoice.serves(s, it, moment));
    }

    /** The photographer's own pace today. */
    public static OptionalDouble pace(ShootState s, OffsetDateTime now) {
        List<OffsetDateTime> times = new ArrayList<>();
        for (Roll roll : s.rolls().values()) {
            roll.frames()
                    .forEach(it -> it.exposure()
                            .at()
                            .filter(at -> at.toLocalDate().equals(now.toLocalDate()) && it.mayComeBack())
                            .ifPresent(times::add));
        }
        return ShootingPace.of(times);
    }

    private NextMoment with(Advice other, Means with) {
        return new NextMoment(moment, minutes, place, roll, other, with);
    }

    /** Frames left on the roll that is in; -1 where no film is in. */
    public int left() {
        return roll.isPresent() ? Math.max(0, roll.get().framesLeft()) : -1;
    }

    /** How many frames are left beyond those that the moment wants. */
    public int spare() {
        return left() - moment.wants();
    }

    /** How many frames a full roll of the film that is in gives. */
    public int framesOnFreshRoll() {
        Roll in = roll.orElseThrow();
        return in.camera().frames().getOrDefault(in.film().size(), in.film().framesNominal());
    }

    /** When a change of roll must begin at the latest. */
    public LocalTime changeBy() {
        return moment.at().minusMinutes(CHANGE).toLocalTime();
    }

    /** Whether something should be done now that is not merely useful to know. */
    public boolean isUrgent() {
        return advice.compareTo(Advice.KEEP) > 0;
    }

    /**
     * Whether it says nothing new after another: what was said once is not said again, nor while it is being followed.
     */
    boolean saysAgain(NextMoment before) {
        boolean follows = (advice == Advice.LOAD || advice == Advice.USE_UP)
                && (before.advice == Advice.CHANGE || before.advice == Advice.USE_UP);
        return before.moment.number() == moment.number() && (before.advice == advice || follows);
    }
}
