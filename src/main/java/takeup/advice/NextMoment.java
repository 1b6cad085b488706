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
import takeup.kit.Warning;
import takeup.report.StatusText;
import takeup.roll.Roll;
import takeup.text.ClockText;
import takeup.text.English;

/**
 * The next key moment, how long it is away, and the one thing that is best done about it: "change now: 4 left,
 * Prize-giving in 6 min wants 12; 4 frames = 6.20".
 *
 * @param moment the moment
 * @param minutes how many minutes it is away; 0 or less once it has begun
 * @param place the camera or back that it will be on; empty while none is in hand
 * @param left frames left there; -1 where no film is in
 * @param advice what is best done
 * @param recommendation the same in words; empty where nothing needs to be done
 */
public record NextMoment(
        KeyMoment moment, long minutes, Optional<CameraPlace> place, int left, Advice advice, String recommendation) {
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

    /** The moment to be ready for, if one is planned for today. */
    public static Optional<NextMoment> of(ShootState s, OffsetDateTime now) {
        return s.day().job().plan().next(now.toLocalDateTime()).map(it -> of(it, s, now));
    }

    private static NextMoment of(KeyMoment moment, ShootState s, OffsetDateTime now) {
        long minutes = moment.minutesFrom(now.toLocalDateTime());
        Optional<CameraPlace> place = place(moment, s);
        Optional<Roll> roll = place.flatMap(s::rollIn);
        int left = roll.map(it -> Math.max(0, it.framesLeft())).orElse(-1);
        NextMoment plain = new NextMoment(moment, minutes, place, left, Advice.NOTHING, "");
        if (place.isEmpty() || minutes > LEAD || minutes <= 0) {
            return plain;
        }
        String when = moment.name() + " in " + minutes + " min";
        String wants = moment.wants() > 0 ? when + " wants " + moment.wants() : when;
        if (roll.isEmpty()) {
            Optional<StockChoice> film = StockChoice.of(s, place.get(), moment, Optional.empty());
            return plain.with(
                    Advice.LOAD,
                    film.map(it -> "load " + it.words()).orElse("load") + " now: no film in " + place.get() + ", "
                            + wants + empty(s, place.get()));
        }
        return left < moment.wants()
                ? tooFew(plain, s, roll.get(), wants, now)
                : enough(plain, s, roll.get(), wants, now);
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
                .or(() -> s.camera(camera).flatMap(it -> it.backs().stream().findFirst()));
        return active.or(() -> Optional.of(new CameraPlace(camera, back)));
    }

    private static NextMoment tooFew(NextMoment plain, ShootState s, Roll roll, String wants, OffsetDateTime now) {
        KeyMoment moment = plain.moment;
        Optional<Roll> other = other(moment, s, roll);
        if (other.isPresent()) {
            return plain.with(
                    Advice.OTHER,
                    "take " + other.get().place() + ": " + StatusText.leftWords(other.get()) + ", here " + plain.left
                            + "; " + wants);
        }
        int fresh = roll.camera()
                .frames()
                .getOrDefault(roll.film().size(), roll.film().framesNominal());
        if (fresh <= plain.left) {
            return plain.with(Advice.READY, "have the next roll ready: " + wants + ", a roll holds " + fresh);
        }
        Optional<StockChoice> film = StockChoice.of(s, plain.place.orElseThrow(), moment, Optional.of(roll))
                .filter(it -> !it.isOn(roll));
        String loading = film.map(it -> ", load " + it.words()).orElse("");
        String empty = empty(s, plain.place.get());
        OptionalDouble pace = pace(s, now);
        LocalTime by = moment.at().minusMinutes(CHANGE).toLocalTime();
        if (plain.left > 0 && pace.isPresent() && plain.left / pace.getAsDouble() + CHANGE < plain.minutes) {
            return plain.with(
                    Advice.USE_UP,
                    (plain.left == 1 ? "use up the last frame" : "use up the " + plain.left + " left")
                            + " and change by " + ClockText.clock(by) + loading + ": " + wants + empty);
        }
        Optional<BigDecimal> cost = s.day().job().bag().costLeft(roll);
        return plain.with(
                Advice.CHANGE,
                "change now" + loading + ": " + plain.left + " left, " + wants
                        + cost.map(it -> "; " + English.count(plain.left, "frame") + " = " + it.toPlainString())
                                .orElse("")
                        + empty);
    }

    private static NextMoment enough(NextMoment plain, ShootState s, Roll roll, String wants, OffsetDateTime now) {
        KeyMoment moment = plain.moment;
        Optional<StockChoice> better = StockChoice.of(s, plain.place.orElseThrow(), moment, Optional.of(roll));
        if (better.isPresent() && better.get().isOther(roll)) {
            return plain.with(Advice.STOCK, better.get().words(roll) + "; " + wants);
        }
        int spare = plain.left - moment.wants();
        OptionalDouble pace = pace(s, now);
        boolean soonGone = moment.wants() > 0 && pace.isPresent() && spare < pace.getAsDouble() * plain.minutes;
        return soonGone
                ? plain.with(
                        Advice.KEEP, "keep " + moment.wants() + " for " + moment.name() + ": " + spare + " to spare")
                : plain;
    }

    private static String empty(ShootState s, CameraPlace place) {
        return s.day().job().bag().kept() && StockChoice.inBag(s, place).isEmpty()
                ? "; the bag has no film for it"
                : "";
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

    private NextMoment with(Advice other, String words) {
        return new NextMoment(moment, minutes, place, left, other, words);
    }

    /** Whether something should be done now that is not merely useful to know. */
    public boolean isUrgent() {
        return advice.compareTo(Advice.KEEP) > 0;
    }

    /** The warning that it is; empty where nothing is urgent. */
    public Optional<Warning> warning() {
        return isUrgent() ? Optional.of(new Warning(Warning.Code.MOMENT, recommendation)) : Optional.empty();
    }

    /** Moment and countdown: {@code 16:30 Prize-giving in 6 min, wants 12, must}. */
    public String countdown() {
        String when = minutes > 0
                ? " in " + ClockText.minutes(minutes)
                : minutes == 0 ? " now" : " now, since " + ClockText.minutes(-minutes);
        return ClockText.clock(moment.at()) + " " + moment.name() + when
                + (moment.wants() > 0 ? ", wants " + moment.wants() : "") + (moment.must() ? ", MUST" : "");
    }

    /** All of it in one line: the recommendation where there is one, else the countdown and what is left there. */
    public String line() {
        String there =
                place.isEmpty() ? "" : ": " + place.get() + (left < 0 ? " has no film" : " has " + left + " left");
        return recommendation.isEmpty() ? countdown() + there : recommendation;
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
