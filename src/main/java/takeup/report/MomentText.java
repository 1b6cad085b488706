package takeup.report;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.NextMoment;
import takeup.advice.StockChoice;
import takeup.day.KeyMoment;
import takeup.day.MustHaves;
import takeup.exposure.FilmSpeed;
import takeup.roll.Roll;
import takeup.text.ClockText;
import takeup.text.English;
import takeup.text.Plain;
import takeup.text.Width;

/** A key moment and what is best done about it, in words: {@code 16:30 Prize-giving in 6 min, wants 12, MUST}. */
public final class MomentText {
    /** Columns in which a name can still be told. */
    private static final int SHORTEST_NAME = 8;

    private MomentText() {}

    /** All of it in one line: the recommendation where there is one, else the countdown and what is left there. */
    public static String line(NextMoment next) {
        if (next.advice() != NextMoment.Advice.NOTHING) {
            return advice(next);
        }
        String left = next.left() < 0 ? " has no film" : " has " + next.left() + " left";
        return countdown(next) + (next.place().isPresent() ? ": " + next.place().get() + left : "");
    }

    /** The same with the moment's name cut where it is too long for so many columns: what to do about it is not. */
    public static String fitting(NextMoment next, int columns) {
        String line = line(next);
        String name = next.moment().name();
        int room = Width.of(name) - (Width.of(line) - columns);
        return room >= SHORTEST_NAME && room < Width.of(name)
                ? line.replace(name, Width.cut(name, room).strip())
                : line;
    }

    /** The same without its name: {@code 16:30 in 6 min, wants 12, MUST}, or what to do and how soon. */
    public static String briefly(NextMoment next) {
        KeyMoment moment = next.moment();
        if (next.advice() != NextMoment.Advice.NOTHING) {
            return line(next).replace(moment.name() + " in ", "in ");
        }
        return ClockText.clock(moment.at())
                + away(next.minutes())
                + (moment.wants() > 0 ? ", wants " + moment.wants() : "")
                + (moment.must() ? ", MUST" : "");
    }

    /** Moment and countdown: {@code 16:30 Prize-giving in 6 min, wants 12, must}. */
    public static String countdown(NextMoment next) {
        KeyMoment moment = next.moment();
        return ClockText.clock(moment.at()) + " " + moment.name() + away(next.minutes())
                + (moment.wants() > 0 ? ", wants " + moment.wants() : "") + (moment.must() ? ", MUST" : "");
    }

    private static String away(long minutes) {
        if (minutes > 0) {
            return " in " + ClockText.minutes(minutes);
        }
        return minutes == 0 ? " now" : " now, since " + ClockText.minutes(-minutes);
    }

    /** What is best done; empty where nothing needs to be. */
    static Optional<String> recommendation(NextMoment next) {
        return next.advice() == NextMoment.Advice.NOTHING ? Optional.empty() : Optional.of(advice(next));
    }

    private static String advice(NextMoment next) {
        NextMoment.Means means = next.means();
        String moment = next.moment().name() + " in " + next.minutes() + " min";
        int wants = next.moment().wants();
        String wanted = wants > 0 ? moment + " wants " + wants : moment;
        String loading = means.film().map(it -> ", load " + film(it)).orElse("");
        String emptyBag = means.isBagEmpty() ? "; the bag has no film for it" : "";
        return switch (next.advice()) {
            case NOTHING -> "";
            case READY -> "have the next roll ready: " + wanted + ", a roll holds " + next.framesOnFreshRoll();
            case KEEP -> "keep " + wants + " for " + next.moment().name() + ": " + next.spare() + " to spare";
            case USE_UP ->
                (next.left() == 1 ? "use up the last frame" : "use up the " + next.left() + " left") + " and change by "
                        + ClockText.clock(next.changeBy()) + loading + ": " + wanted + emptyBag;
            case LOAD ->
                means.film().map(it -> "load " + film(it)).orElse("load") + " now: no film in "
                        + next.place().orElseThrow() + ", " + wanted + emptyBag;
            case OTHER ->
                "take " + means.other().orElseThrow().place() + ": "
                        + RollText.left(means.other().orElseThrow()) + ", here " + next.left() + "; " + wanted;
            case CHANGE ->
                "change now" + loading + ": " + next.left() + " left, " + wanted
                        + means.costOfLeft()
                                .map(it -> "; " + English.count(next.left(), "frame") + " = " + it.toPlainString())
                                .orElse("")
                        + emptyBag;
            case STOCK -> instead(next.roll().orElseThrow(), means.film().orElseThrow()) + "; " + wanted;
        };
    }

    /** A film and what for: {@code bw3200 for EV 6}. */
    private static String film(StockChoice film) {
        String fallback = film.serves() ? "" : ", the fastest in the bag";
        return film.stock().key()
                + light(film.ev100()).map(it -> " for " + it + fallback).orElse("");
    }

    /** Why the roll that is in should go: {@code cn400 EI 200 is too slow for EV 6, load bw3200}. */
    private static String instead(Roll roll, StockChoice film) {
        FilmSpeed index = roll.film().index();
        boolean isSlower = index.arithmetic() < film.stock().usualIndex().arithmetic();
        return roll.film().stock().key() + " EI " + index + (isSlower ? " is too slow" : " is too fast") + " for "
                + light(film.ev100()).orElseThrow() + ", load " + film.stock().key();
    }

    /** A planned moment: {@code 3, 16:30 Prize-giving, wants 12, must, 645 back 2, EV 12, in 1 h 24 min}. */
    public static String planned(KeyMoment moment, LocalDateTime now) {
        boolean isOtherDay = !moment.at().toLocalDate().equals(now.toLocalDate());
        long minutes = moment.minutesFrom(now);
        return moment.number() + ", " + (isOtherDay ? moment.at().toLocalDate() + " " : "")
                + ClockText.clock(moment.at()) + " " + moment.name()
                + (moment.wants() > 0 ? ", wants " + moment.wants() : "") + (moment.must() ? ", must" : "")
                + where(moment).map(it -> ", " + it).orElse("")
                + light(moment).map(it -> ", " + it).orElse("")
                + (isOtherDay || minutes <= 0 ? "" : ", in " + ClockText.minutes(minutes));
    }

    /** What is said of a must-have moment that lies on one roll only, or on none. */
    static String unsafe(MustHaves.Held held) {
        return held.moment().name() + " is a must, and "
                + held.rolls().stream()
                        .findFirst()
                        .map(it -> "on " + it + " only: guard that roll")
                        .orElse("no frame is from it");
    }

    /** The photographer's own pace today. */
    static String pace(double framesAMinute) {
        return "Your pace today: " + Plain.decimals(framesAMinute, 1) + " frames a minute in a burst";
    }

    /** The camera and back that are meant for a moment. */
    static Optional<String> where(KeyMoment moment) {
        return moment.camera()
                .map(it -> it + moment.back().map(back -> " back " + back).orElse(""));
    }

    /** The light that is expected: {@code EV 12}. */
    static Optional<String> light(KeyMoment moment) {
        return light(moment.ev100());
    }

    private static Optional<String> light(OptionalDouble ev100) {
        return ev100.stream().mapToObj(it -> "EV " + Plain.digits(it, 3)).findFirst();
    }
}
