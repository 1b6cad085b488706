package takeup.report;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import takeup.advice.FilmBudget;
import takeup.advice.NextMoment;
import takeup.day.DayEvent;
import takeup.day.KeyMoment;
import takeup.day.MustHaves;
import takeup.day.Plan;
import takeup.day.ShootInfo;
import takeup.day.Sun;
import takeup.history.ShootState;
import takeup.roll.Roll;
import takeup.text.ClockText;
import takeup.text.English;

/** The plan as a table: the moments in order of time, the sun's own moments among them, and what there is to say. */
public final class PlanTable {
    private PlanTable() {}

    /**
     * A row of it.
     *
     * @param number the moment's number; empty for the sun's
     * @param when date, if it is another day's, and time
     * @param in how far it is away: {@code in 1 h 24 min}, {@code over}
     * @param what its name
     * @param details frames wanted, camera, light, as far as the plan says them
     * @param kind what sort of row it is
     */
    public record Row(String number, String when, String in, String what, List<String> details, Kind kind) {}

    /** What sort of row it is. */
    public enum Kind {
        NEXT,
        MUST,
        MOMENT,
        SUN,
        OVER
    }

    private record Timed(LocalDateTime at, Row row) {}

    /** The rows. */
    public static List<Row> of(ShootState s, OffsetDateTime now) {
        LocalDateTime local = now.toLocalDateTime();
        Optional<Integer> next = s.day().plan().next(local).map(KeyMoment::number);
        List<Timed> all = new ArrayList<>();
        for (KeyMoment moment : s.day().plan().moments()) {
            boolean isNext = next.equals(Optional.of(moment.number()));
            boolean isOver = !isNext && !moment.at().isAfter(local);
            Kind kind = moment.must() ? Kind.MUST : Kind.MOMENT;
            if (isNext) {
                kind = Kind.NEXT;
            } else if (isOver) {
                kind = Kind.OVER;
            }
            all.add(new Timed(
                    moment.at(),
                    new Row(
                            Integer.toString(moment.number()),
                            when(moment.at(), local),
                            isOver ? "over" : in(moment.at(), local),
                            moment.name(),
                            details(moment),
                            kind)));
        }
        for (Sun.At one : sun(s, now)) {
            LocalDateTime at = one.time().toLocalDateTime();
            all.add(new Timed(
                    at,
                    new Row(
                            "",
                            when(at, local),
                            at.isBefore(local) ? "over" : in(at, local),
                            one.event().toString(),
                            List.of(),
                            at.isBefore(local) ? Kind.OVER : Kind.SUN)));
        }
        all.sort(Comparator.comparing(Timed::at));
        return all.stream().map(Timed::row).toList();
    }

    private static List<String> details(KeyMoment moment) {
        List<String> details = new ArrayList<>();
        if (moment.wants() > 0) {
            details.add("wants " + moment.wants() + (moment.must() ? " MUST" : ""));
        } else if (moment.must()) {
            details.add("MUST");
        }
        MomentText.where(moment).ifPresent(details::add);
        MomentText.light(moment).ifPresent(details::add);
        return details;
    }

    private static String when(LocalDateTime at, LocalDateTime now) {
        return (at.toLocalDate().equals(now.toLocalDate()) ? "" : at.toLocalDate() + " ") + ClockText.clock(at);
    }

    private static String in(LocalDateTime at, LocalDateTime now) {
        long minutes = Math.floorDiv(Duration.between(now, at).getSeconds() + 59, 60);
        if (minutes <= 0) {
            return "now";
        }
        long days = minutes / (24 * 60);
        return "in " + (days == 0 ? ClockText.minutes(minutes) : English.count(days, "day"));
    }

    /** The title: the shoot and its date. */
    public static String title(ShootState s) {
        return s.day()
                .shoot()
                .map((ShootInfo it) -> it.name() + ", " + it.date())
                .orElse("no shoot named");
    }

    /**
     * The sentences under the table: what is best done, whether the film is enough, the pace, must-haves on one roll.
     */
    public static List<CheckList.Item> remarks(ShootState s, OffsetDateTime now) {
        List<CheckList.Item> all = new ArrayList<>();
        NextMoment.of(s, now)
                .ifPresent(it -> all.add(new CheckList.Item(English.capitalised(MomentText.line(it)), it.isUrgent())));
        FilmBudget enough = FilmBudget.of(s, now);
        FilmBudgetText.words(enough)
                .ifPresent(it -> all.add(new CheckList.Item(English.capitalised(it), enough.isShort())));
        NextMoment.pace(s, now).ifPresent(it -> all.add(CheckList.Item.plain(MomentText.pace(it))));
        unsafe(s, now).forEach(it -> all.add(CheckList.Item.caution(MomentText.unsafe(it))));
        return all;
    }

    /** Must-have moments that are over and unsafe; nothing while a finished roll of today is not read. */
    private static List<MustHaves.Held> unsafe(ShootState s, OffsetDateTime now) {
        boolean isUnread = s.history()
                .events(DayEvent.RollClosed.class)
                .anyMatch(it -> !s.rolls().containsKey(it.roll()));
        return isUnread
                ? List.of()
                : unsafe(
                        s.day().plan(),
                        List.copyOf(s.rolls().values()),
                        now.minus(KeyMoment.LASTS).toLocalDateTime());
    }

    /** Must-have moments that lie on one roll only, or on none. */
    static List<MustHaves.Held> unsafe(Plan plan, List<Roll> rolls, LocalDateTime now) {
        return MustHaves.of(plan, rolls, now).stream()
                .filter(it -> it.rolls().size() < 2)
                .toList();
    }

    /** The sun's times on the day of the shoot, where its place is known. */
    static List<Sun.At> sun(ShootState s, OffsetDateTime now) {
        Optional<ShootInfo> shoot = s.day().shoot();
        LocalDate date = shoot.map(ShootInfo::date)
                .filter(it -> it.isAfter(now.toLocalDate()))
                .orElse(now.toLocalDate());
        return s.day().position().map(it -> Sun.of(it, date, now.getOffset())).orElse(List.of());
    }
}
