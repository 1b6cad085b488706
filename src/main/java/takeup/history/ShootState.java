package takeup.history;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import takeup.day.BulbTimer;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.day.Day;
import takeup.day.DayEvent;
import takeup.kit.Camera;
import takeup.kit.Kit;
import takeup.kit.Lens;
import takeup.kit.Meter;
import takeup.kit.Shutter;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;
import takeup.roll.RollRecord;
import takeup.roll.SettingPatch;

/**
 * Everything that is true now, as all that happened adds up: the rolls, the day, what is in hand.
 *
 * @param kit cameras, stocks and meters
 * @param history every step that is known
 * @param rolls the rolls that were read, in the order of their numbers
 * @param day what is in hand beside them
 * @param lastJournalDate the date of the day's journal that was last written; empty before the first
 * @param known the numbers of all rolls there ever were, also of those not read
 * @param unreadable rolls that are not finished and cannot be read, so that nobody knows which camera they are in
 */
public record ShootState(
        Kit kit,
        History history,
        Map<RollId, Roll> rolls,
        Day day,
        Optional<LocalDate> lastJournalDate,
        RollNumbers known,
        Set<RollId> unreadable) {
    /** The state that the steps add up to. They may be in any order; it is their number that counts. */
    public static ShootState of(
            Kit kit, Collection<JournalStep> steps, Optional<LocalDate> lastJournalDate, Set<RollId> known) {
        return of(kit, History.of(steps), lastJournalDate, known, Set.of());
    }

    private static ShootState of(
            Kit kit, History history, Optional<LocalDate> lastJournalDate, Set<RollId> known, Set<RollId> unreadable) {
        Map<RollId, List<RollRecord>> records = history.rollRecords();
        Map<RollId, Roll> rolls = new TreeMap<>();
        records.forEach((id, list) -> Roll.of(list).ifPresent(it -> rolls.put(id, it)));
        return new ShootState(
                kit,
                history,
                rolls,
                DayFold.of(history, rolls),
                lastJournalDate,
                RollNumbers.of(known).and(records.keySet()),
                unreadable);
    }

    /** The state after one more step. */
    public ShootState and(JournalStep step) {
        History all = history.and(step);
        Optional<LocalDate> date = step.entries().stream().anyMatch(it -> it instanceof JournalEntry.OnDay)
                ? Optional.of(step.at().toLocalDate())
                : lastJournalDate;
        if (step.entries().stream().anyMatch(JournalEntry::isUndoOrRedo)) {
            return of(kit, all, date, known, unreadable);
        }
        Map<RollId, Roll> now = new TreeMap<>(rolls);
        Map<RollId, List<RollRecord>> written = History.EMPTY.and(step).rollRecords();
        written.forEach((id, records) -> {
            if (rolls.containsKey(id)) {
                records.forEach(it -> now.put(id, now.get(id).and(it)));
            } else {
                Roll.of(all.rollRecords().get(id)).ifPresent(it -> now.put(id, it));
            }
        });
        return new ShootState(
                kit, all, now, DayFold.after(day, step, now), date, known.and(written.keySet()), unreadable);
    }

    /** The state with a finished roll's own steps read in. */
    public ShootState with(List<JournalStep> read) {
        List<JournalStep> steps = new ArrayList<>(history.steps());
        steps.addAll(read);
        return of(kit, History.of(steps), lastJournalDate, known, unreadable);
    }

    /** The state with rolls in some camera that cannot be read. */
    public ShootState withUnreadable(Set<RollId> ids) {
        return new ShootState(kit, history, rolls, day, lastJournalDate, known, ids);
    }

    /** The next step's number. */
    public long nextStep() {
        return history.newest().map(it -> it.step() + 1).orElse(1L);
    }

    /** The place in hand. */
    public Optional<CameraPlace> placeInHand() {
        return day.active();
    }

    /** The roll in a place; of two that are in one by their records the one that was loaded last. */
    public Optional<Roll> rollIn(CameraPlace place) {
        return openRolls().filter(it -> CameraPlace.of(it).equals(place)).reduce((before, last) -> last);
    }

    /** A roll that cannot be read and may be in a place; empty where another one is in it. */
    public Optional<RollId> unreadableIn(CameraPlace place) {
        return rollIn(place).isPresent()
                ? Optional.empty()
                : unreadable.stream().filter(it -> !rolls.containsKey(it)).findFirst();
    }

    /** What is said of a place that no roll is known to be in: {@code no film}, {@code R0001 cannot be read}. */
    public String noFilm(Optional<CameraPlace> place) {
        return place.flatMap(this::unreadableIn)
                .map(it -> it + " cannot be read")
                .orElse("no film");
    }

    /** The rolls that are in a camera. */
    public Stream<Roll> openRolls() {
        return rolls.values().stream().filter(it -> it.state() == Roll.State.OPEN);
    }

    /** The roll in hand. */
    public Optional<Roll> rollInHand() {
        return placeInHand().flatMap(this::rollIn);
    }

    /** The camera in hand: as its roll knows it, else by its profile. */
    public Optional<Camera> cameraInHand() {
        return placeInHand().flatMap(it -> camera(it.camera()).map(body -> body.withBack(it.back())));
    }

    /** The dial in hand: that of the body, or of a lens with a shutter of its own. */
    public Optional<Shutter> shutterInHand() {
        return cameraInHand()
                .flatMap(it -> it.withLens(inHand(it).setting().lens()).shutter());
    }

    /** A camera by its profile; while that cannot be read, as one of its open rolls knows it. */
    public Optional<Camera> camera(String key) {
        return kit.camera(key)
                .or(() -> rolls.values().stream()
                        .filter(it -> it.camera().key().equals(key))
                        .map(Roll::camera)
                        .findFirst());
    }

    /** What belongs to a camera; its first lens is on until another one is. */
    public CameraSetup inHand(Camera camera) {
        CameraSetup found = day.setup(camera.key());
        if (found.setting().lens().isEmpty() && !camera.lenses().isEmpty()) {
            return found.with(SettingPatch.lens(camera.lenses().get(0)));
        }
        Optional<Lens> fresh = found.setting().lens().flatMap(it -> camera.lens(it.key()));
        return fresh.isPresent() && !fresh.equals(found.setting().lens())
                ? found.with(SettingPatch.lens(fresh.get()))
                : found;
    }

    /** What belongs to the camera in hand. */
    public CameraSetup inHand() {
        return cameraInHand().map(this::inHand).orElse(CameraSetup.NOTHING);
    }

    /** The meter in hand. */
    public Meter meterInHand() {
        return day.meter().flatMap(kit::meter).orElse(Meter.NONE);
    }

    /** The number that the next roll gets. */
    public RollId nextRoll(String letters) {
        return new RollId(letters, known.highest(letters) + 1);
    }

    /** Places that were active today or hold a roll, each once, in the order of the day and then of the rolls. */
    public List<CameraPlace> placesInUse() {
        Set<CameraPlace> all = new LinkedHashSet<>(day.used());
        openRolls().map(CameraPlace::of).forEach(all::add);
        return List.copyOf(all);
    }

    /** The bulb timer of the camera in hand, if it runs. */
    public Optional<BulbTimer> timerInHand() {
        return placeInHand().map(it -> day.timers().get(it.camera()));
    }

    /** The same on that day: on a new one, with what is carried over from the day before. */
    public ShootState asOf(OffsetDateTime now) {
        return lastJournalDate.isPresent() && isNewDay(now)
                ? new ShootState(kit, history, rolls, day.carried(now), lastJournalDate, known, unreadable)
                : this;
    }

    /** The entries that go before a step on a new day: what is carried over from the day before. */
    public List<JournalEntry> carryOverEntries(OffsetDateTime now) {
        return isNewDay(now) && !day.equals(Day.FIRST)
                ? List.of(new JournalEntry.OnDay(new DayEvent.Carried(day.carried(now))))
                : List.of();
    }

    private boolean isNewDay(OffsetDateTime now) {
        return !lastJournalDate.equals(Optional.of(now.toLocalDate()));
    }
}
