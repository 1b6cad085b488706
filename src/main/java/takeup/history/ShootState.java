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
        for (Map.Entry<RollId, List<RollRecord>> one : records.entrySet()) {
            put(rolls, one.getKey(), one.getValue());
        }
        return new ShootState(
                kit,
                history,
                rolls,
                DayFold.of(history, rolls),
                lastJournalDate,
                RollNumbers.of(known).and(records.keySet()),
                unreadable);
    }

    private static void put(Map<RollId, Roll> rolls, RollId id, List<RollRecord> records) {
        Optional<Roll> roll = Roll.of(records);
        if (roll.isPresent()) {
            rolls.put(id, roll.get());
        }
    }

    /** The state after one more step. */
    public ShootState and(JournalStep step) {
        History all = history.and(step);
        Optional<LocalDate> date = step.isOnDay() ? Optional.of(step.at().toLocalDate()) : lastJournalDate;
        if (step.isUndoOrRedo()) {
            return of(kit, all, date, known, unreadable);
        }
        Map<RollId, Roll> now = new TreeMap<>(rolls);
        Map<RollId, List<RollRecord>> written = History.EMPTY.and(step).rollRecords();
        for (Map.Entry<RollId, List<RollRecord>> one : written.entrySet()) {
            RollId id = one.getKey();
            if (!rolls.containsKey(id)) {
                put(now, id, all.recordsOf(id));
                continue;
            }
            for (RollRecord record : one.getValue()) {
                now.put(id, now.get(id).and(record));
            }
        }
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
        return history.isEmpty() ? 1 : history.newest().get().step() + 1;
    }

    /** The place in hand. */
    public Optional<CameraPlace> placeInHand() {
        return day.active();
    }

    /** The roll in a place; of two that are in one by their records the one that was loaded last. */
    public Optional<Roll> rollIn(CameraPlace place) {
        Optional<Roll> last = Optional.empty();
        for (Roll roll : openRolls()) {
            if (CameraPlace.of(roll).equals(place)) {
                last = Optional.of(roll);
            }
        }
        return last;
    }

    /** A roll that cannot be read and may be in a place; empty where another one is in it. */
    public Optional<RollId> unreadableIn(CameraPlace place) {
        if (rollIn(place).isPresent()) {
            return Optional.empty();
        }
        for (RollId id : unreadable) {
            if (!rolls.containsKey(id)) {
                return Optional.of(id);
            }
        }
        return Optional.empty();
    }

    /** What is said of a place that no roll is known to be in: {@code no film}, {@code R0001 cannot be read}. */
    public String noFilm(Optional<CameraPlace> place) {
        Optional<RollId> unread = place.isPresent() ? unreadableIn(place.get()) : Optional.empty();
        return unread.isPresent() ? unread.get() + " cannot be read" : "no film";
    }

    /** The rolls that are in a camera. */
    public List<Roll> openRolls() {
        List<Roll> open = new ArrayList<>();
        for (Roll roll : rolls.values()) {
            if (roll.state() == Roll.State.OPEN) {
                open.add(roll);
            }
        }
        return open;
    }

    /** The roll in hand. */
    public Optional<Roll> rollInHand() {
        return placeInHand().isPresent() ? rollIn(placeInHand().get()) : Optional.empty();
    }

    /** The camera in hand: as its roll knows it, else by its profile. */
    public Optional<Camera> cameraInHand() {
        if (placeInHand().isEmpty()) {
            return Optional.empty();
        }
        CameraPlace place = placeInHand().get();
        Optional<Camera> body = camera(place.camera());
        return body.isPresent() ? Optional.of(body.get().withBack(place.back())) : body;
    }

    /** The dial in hand: that of the body, or of a lens with a shutter of its own. */
    public Optional<Shutter> shutterInHand() {
        Optional<Camera> camera = cameraInHand();
        return camera.isEmpty()
                ? Optional.empty()
                : camera.get().withLens(inHand(camera.get()).setting().lens()).shutter();
    }

    /** A camera by its profile; while that cannot be read, as one of its open rolls knows it. */
    public Optional<Camera> camera(String key) {
        Optional<Camera> read = kit.camera(key);
        if (read.isPresent()) {
            return read;
        }
        for (Roll roll : rolls.values()) {
            if (roll.camera().key().equals(key)) {
                return Optional.of(roll.camera());
            }
        }
        return Optional.empty();
    }

    /** What belongs to a camera; its first lens is on until another one is. */
    public CameraSetup inHand(Camera camera) {
        CameraSetup found = day.setup(camera.key());
        Optional<Lens> on = found.setting().lens();
        if (on.isEmpty()) {
            return camera.lenses().isEmpty()
                    ? found
                    : found.with(SettingPatch.lens(camera.lenses().get(0)));
        }
        Optional<Lens> fresh = camera.lens(on.get().key());
        return fresh.isPresent() && !fresh.equals(on) ? found.with(SettingPatch.lens(fresh.get())) : found;
    }

    /** What belongs to the camera in hand. */
    public CameraSetup inHand() {
        Optional<Camera> camera = cameraInHand();
        return camera.isPresent() ? inHand(camera.get()) : CameraSetup.NOTHING;
    }

    /** The meter in hand. */
    public Meter meterInHand() {
        return day.meter().isPresent() ? kit.meter(day.meter().get()).orElse(Meter.NONE) : Meter.NONE;
    }

    /** The number that the next roll gets. */
    public RollId nextRoll(String letters) {
        return new RollId(letters, known.highest(letters) + 1);
    }

    /** Places that were active today or hold a roll, each once, in the order of the day and then of the rolls. */
    public List<CameraPlace> placesInUse() {
        Set<CameraPlace> all = new LinkedHashSet<>(day.used());
        for (Roll roll : openRolls()) {
            all.add(CameraPlace.of(roll));
        }
        return List.copyOf(all);
    }

    /** The bulb timer of the camera in hand, if it runs. */
    public Optional<BulbTimer> timerInHand() {
        return placeInHand().isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(day.timers().get(placeInHand().get().camera()));
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
