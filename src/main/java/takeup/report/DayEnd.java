package takeup.report;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.day.MustHaves;
import takeup.history.RollsOfDay;
import takeup.history.ShootState;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * The end of a day: every roll of it is closed, in a camera, or missing by name; what is odd and should be asked about.
 *
 * @param date the day
 * @param rolls each roll and where it is
 * @param oddities what to ask about
 * @param unsafeMoments must-have moments that lie on one roll only, or on none
 * @param elsewhere rolls of other writers in the same folder, where they are known by their line alone
 */
public record DayEnd(
        LocalDate date,
        List<RollEntry> rolls,
        List<Oddity> oddities,
        List<MustHaves.Held> unsafeMoments,
        List<RollSummary> elsewhere) {
    /** A roll and where it is; empty where its number was given and its file is gone. */
    public record RollEntry(RollId id, Whereabouts where, Optional<Roll> roll) {}

    public DayEnd {
        rolls = List.copyOf(rolls);
        oddities = List.copyOf(oddities);
        unsafeMoments = List.copyOf(unsafeMoments);
        elsewhere = List.copyOf(elsewhere);
    }

    /**
     * The day as it stands.
     *
     * @param s with all rolls of the day read in
     * @param letters the writer's letters, to find numbers that were given and are gone
     * @param held the rolls that the photographer holds; empty where they were not named
     */
    public static DayEnd of(ShootState s, OffsetDateTime now, String letters, Optional<Set<RollId>> held) {
        return of(s, List.of(), List.of(), now, letters, held);
    }

    /** The same with the rolls of other writers, whose laptops log on their own. */
    public static DayEnd of(
            ShootState s, List<Roll> others, OffsetDateTime now, String letters, Optional<Set<RollId>> held) {
        return of(s, others, List.of(), now, letters, held);
    }

    /** The same, naming the rolls of other writers that are of this day; {@code listed} are all there are. */
    public static DayEnd withListed(
            ShootState s, List<RollSummary> listed, OffsetDateTime now, String letters, Optional<Set<RollId>> held) {
        List<RollSummary> elsewhere = listed.stream()
                .filter(it -> !it.id().letters().equals(letters) && isOfDay(it, now))
                .toList();
        return of(s, List.of(), elsewhere, now, letters, held);
    }

    private static DayEnd of(
            ShootState s,
            List<Roll> others,
            List<RollSummary> elsewhere,
            OffsetDateTime now,
            String letters,
            Optional<Set<RollId>> held) {
        List<Roll> known = new ArrayList<>(s.rolls().values());
        known.addAll(others);
        List<Roll> day = RollsOfDay.of(known, now);
        List<RollEntry> rolls = new ArrayList<>();
        day.forEach(it -> rolls.add(new RollEntry(it.id(), where(it, held), Optional.of(it))));
        RollsOfDay.missing(s, now, letters)
                .forEach(it -> rolls.add(new RollEntry(it, Whereabouts.MISSING, Optional.empty())));
        rolls.sort((a, b) -> a.id().compareTo(b.id()));
        List<Oddity> oddities = new ArrayList<>();
        day.forEach(it -> oddities.addAll(Oddity.of(it)));
        held.orElse(Set.of()).stream()
                .filter(it -> elsewhere.stream().noneMatch(other -> other.id().equals(it)))
                .flatMap(it -> Oddity.ofHeld(it, day, s).stream())
                .forEach(oddities::add);
        return new DayEnd(
                RollsOfDay.date(now),
                rolls,
                oddities,
                PlanTable.unsafe(s.day().plan(), known, now.toLocalDateTime()),
                elsewhere);
    }

    private static boolean isOfDay(RollSummary roll, OffsetDateTime now) {
        return switch (roll.state()) {
            case OPEN, REWOUND -> true;
            case FINISHED ->
                !roll.finishedAt().orElse(roll.loadedAt()).toLocalDate().isBefore(RollsOfDay.date(now));
            case WITHDRAWN -> false;
        };
    }

    private static Whereabouts where(Roll roll, Optional<Set<RollId>> held) {
        boolean isGone = held.isPresent() && !held.get().contains(roll.id());
        return switch (roll.state()) {
            case OPEN -> Whereabouts.IN_CAMERA;
            case WITHDRAWN -> Whereabouts.WITHDRAWN;
            case REWOUND -> isGone ? Whereabouts.MISSING : Whereabouts.REWOUND;
            case FINISHED -> isGone ? Whereabouts.MISSING : Whereabouts.CLOSED;
        };
    }

    /** Whether a roll is missing. */
    public boolean isRollMissing() {
        return rolls.stream().anyMatch(it -> it.where() == Whereabouts.MISSING);
    }

    /** The rolls in the order in which they are listed: by where they are. */
    public List<RollEntry> inOrder() {
        List<RollEntry> all = new ArrayList<>();
        byWhereabouts().values().forEach(all::addAll);
        return all;
    }

    /** The rolls by where they are. */
    Map<Whereabouts, List<RollEntry>> byWhereabouts() {
        Map<Whereabouts, List<RollEntry>> all = new EnumMap<>(Whereabouts.class);
        rolls.forEach(
                it -> all.computeIfAbsent(it.where(), kind -> new ArrayList<>()).add(it));
        return all;
    }
}
