package takeup.history;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.day.Day;
import takeup.day.DayEvent;
import takeup.kit.Camera;
import takeup.kit.Kit;
import takeup.kit.Lens;
import takeup.kit.Meter;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;
import takeup.roll.RollRecord;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/**
 * Everything that is true now, as all that happened adds up: the rolls, the day, what is in hand.
 *
 * @param kit cameras, stocks and meters
 * @param history every step that is known, in order
 * @param rolls the rolls that were read, in the order of their numbers
 * @param day what is in hand beside them
 * @param lastJournalDate the date of the day's journal that was last written; empty before the first
 * @param known the numbers of all rolls there ever were, also of those not read
 */
public record ShootState(
        Kit kit,
        List<JournalStep> history,
        Map<RollId, Roll> rolls,
        Day day,
        Optional<LocalDate> lastJournalDate,
        RollNumbers known) {
    /** The situation that the steps add up to. They may be in any order; it is the step that counts. */
    public static ShootState of(Kit kit, List<JournalStep> steps, Optional<LocalDate> dayOf, Set<RollId> known) {
        TreeMap<Long, JournalStep> inOrder = new TreeMap<>();
        for (JournalStep step : steps) {
            inOrder.merge(step.step(), step, (a, b) -> {
                List<JournalEntry> both = new ArrayList<>(a.entries());
                both.addAll(b.entries());
                return new JournalStep(a.step(), a.at(), both);
            });
        }
        return fold(kit, List.copyOf(inOrder.values()), dayOf, known);
    }

    private static ShootState fold(Kit kit, List<JournalStep> steps, Optional<LocalDate> dayOf, Set<RollId> known) {
        Set<Long> undone = undone(steps);
        Day day = Day.FIRST;
        Map<RollId, List<RollRecord>> records = new TreeMap<>();
        for (JournalStep step : steps) {
            for (JournalEntry entry : step.entries()) {
                if (entry instanceof JournalEntry.OnRoll onRoll) {
                    records.computeIfAbsent(onRoll.roll(), it -> new ArrayList<>())
                            .add(new RollRecord(step.step(), step.at(), onRoll.event()));
                }
            }
        }
        Map<RollId, Roll> rolls = new TreeMap<>();
        records.forEach((id, list) -> Roll.of(list).ifPresent(it -> rolls.put(id, it)));
        for (int i = 0; i < steps.size(); i++) {
            JournalStep step = undone.contains(steps.get(i).step()) ? whatStays(steps.get(i)) : steps.get(i);
            day = after(day, carriedAnew(step, steps.subList(0, i), undone, day, rolls), rolls);
        }
        return new ShootState(
                kit, steps, rolls, day, dayOf, RollNumbers.of(known).and(records.keySet()));
    }

    public static Set<Long> undone(List<JournalStep> steps) {
        Set<Long> undone = new HashSet<>();
        for (JournalStep step : steps) {
            for (JournalEntry entry : step.entries()) {
                undone.add(UndoHistory.takenBack(entry));
                undone.remove(UndoHistory.putBack(entry));
            }
        }
        return undone;
    }

    /**
     * A step that carries a day over, with what is undone by now left out of it: a line of before midnight can be taken
     * back after it. Where the day before is not known in full, what was written down is right.
     */
    private static JournalStep carriedAnew(
            JournalStep step, List<JournalStep> before, Set<Long> undone, Day day, Map<RollId, Roll> rolls) {
        if (step.entries().stream()
                        .noneMatch(it ->
                                it instanceof JournalEntry.OnDay onDay && onDay.event() instanceof DayEvent.Carried)
                || before.stream().noneMatch(it -> undone.contains(it.step()))) {
            return step;
        }
        Set<Long> then = undone(before);
        Day was = Day.FIRST;
        for (JournalStep one : before) {
            was = after(was, then.contains(one.step()) ? whatStays(one) : one, rolls);
        }
        JournalEntry written = new JournalEntry.OnDay(new DayEvent.Carried(was.carried(step.at())));
        JournalEntry right = new JournalEntry.OnDay(new DayEvent.Carried(day.carried(step.at())));
        return new JournalStep(
                step.step(),
                step.at(),
                step.entries().stream()
                        .map(it -> it.equals(written) ? right : it)
                        .toList());
    }

    /** The situation after one more step. */
    public ShootState and(JournalStep step) {
        List<JournalStep> steps = new ArrayList<>(history);
        steps.add(step);
        LocalDate date = step.at().toLocalDate();
        boolean onDay = step.entries().stream().anyMatch(it -> it instanceof JournalEntry.OnDay);
        Optional<LocalDate> dated = onDay ? Optional.of(date) : lastJournalDate;
        if (step.entries().stream().anyMatch(it -> UndoHistory.takenBack(it) > 0 || UndoHistory.putBack(it) > 0)) {
            return fold(kit, steps, dated, known);
        }
        Map<RollId, Roll> now = new TreeMap<>(rolls);
        Set<RollId> begun = new HashSet<>();
        Set<RollId> named = new HashSet<>();
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll) {
                RollId id = onRoll.roll();
                if (!rolls.containsKey(id)) {
                    begun.add(id);
                } else {
                    now.put(id, now.get(id).and(new RollRecord(step.step(), step.at(), onRoll.event())));
                }
                named.add(id);
            }
        }
        for (RollId id : begun) {
            Roll.of(recordsOf(id, steps)).ifPresent(it -> now.put(id, it));
        }
        return new ShootState(kit, steps, now, after(day, step, now), dated, known.and(named));
    }

    /** The situation with a finished roll's own steps read in. */
    public ShootState with(List<JournalStep> read) {
        List<JournalStep> steps = new ArrayList<>(history);
        steps.addAll(read);
        return of(kit, steps, lastJournalDate, known);
    }

    /**
     * What of a step that was taken back counts all the same: the camera taken up, and what an earlier day left in
     * hand.
     */
    private static JournalStep whatStays(JournalStep step) {
        return new JournalStep(
                step.step(),
                step.at(),
                step.entries().stream()
                        .filter(it -> it instanceof JournalEntry.OnDay onDay
                                && !onDay.event().isStep())
                        .toList());
    }

    private static List<RollRecord> recordsOf(RollId id, List<JournalStep> steps) {
        List<RollRecord> records = new ArrayList<>();
        for (JournalStep step : steps) {
            for (JournalEntry entry : step.entries()) {
                if (entry instanceof JournalEntry.OnRoll onRoll && onRoll.roll().equals(id)) {
                    records.add(new RollRecord(step.step(), step.at(), onRoll.event()));
                }
            }
        }
        return records;
    }

    private static Day after(Day before, JournalStep step, Map<RollId, Roll> rolls) {
        Day day = before;
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnDay onDay) {
                day = onDay.event().appliedTo(day);
            } else if (entry instanceof JournalEntry.OnRoll onRoll && rolls.containsKey(onRoll.roll())) {
                day = after(day, onRoll.event(), rolls.get(onRoll.roll()));
            }
        }
        return day;
    }

    /** What a roll's event leaves in hand: the setting of a logged frame, the film of a loading. */
    private static Day after(Day day, RollEvent event, Roll roll) {
        if (event instanceof RollEvent.Loaded loaded) {
            return day.loaded(new CameraPlace(loaded.camera().key(), loaded.back()), loaded.film());
        }
        if (event instanceof RollEvent.Reloaded again) {
            return day.loaded(new CameraPlace(again.camera().key(), again.back()), roll.film());
        }
        Setting set = null;
        if (event instanceof RollEvent.Added added
                && added.origin() == RollEvent.Origin.LOGGED
                && added.frame().kind() == Frame.Kind.EXPOSED) {
            set = added.frame().exposure().setting();
        } else if (event instanceof RollEvent.ExposedAgain again) {
            set = again.exposure().setting();
        }
        if (set == null) {
            return event instanceof RollEvent.RollCorrected && roll.state() == Roll.State.OPEN
                    ? day.loaded(CameraPlace.of(roll), roll.film())
                    : day;
        }
        String camera = roll.camera().key();
        CameraSetup before = day.inHand(camera);
        SettingPatch change = SettingPatch.NOTHING;
        if (set.aperture().isPresent()) {
            change = change.and(SettingPatch.aperture(set.aperture().get()));
        }
        if (set.time().isPresent()) {
            change = change.and(SettingPatch.time(set.time().get()));
        }
        if (set.zoomMm().isPresent()) {
            change = change.and(SettingPatch.zoom(set.zoomMm().getAsDouble()));
        }
        if (set.distanceM().isPresent()) {
            change = change.and(SettingPatch.distance(set.distanceM().getAsDouble()));
        }
        return change.isNothing() ? day : day.with(camera, before.with(change));
    }

    /** The next step's number. */
    public long nextStep() {
        return history.isEmpty() ? 1 : history.get(history.size() - 1).step() + 1;
    }

    /** The place in hand. */
    public Optional<CameraPlace> placeInHand() {
        return day.active();
    }

    /** The roll in a place. */
    public Optional<Roll> rollIn(CameraPlace place) {
        return rolls.values().stream()
                .filter(it ->
                        it.state() == Roll.State.OPEN && CameraPlace.of(it).equals(place))
                .findFirst();
    }

    /** The roll in hand. */
    public Optional<Roll> rollInHand() {
        return placeInHand().flatMap(this::rollIn);
    }

    /** The camera in hand: as its roll knows it, else by its profile. */
    public Optional<Camera> cameraInHand() {
        return placeInHand().flatMap(it -> camera(it.camera()));
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
        CameraSetup found = day.inHand(camera.key());
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
        Map<CameraPlace, Boolean> all = new LinkedHashMap<>();
        day.used().forEach(it -> all.put(it, true));
        rolls.values().stream()
                .filter(it -> it.state() == Roll.State.OPEN)
                .forEach(it -> all.put(CameraPlace.of(it), true));
        return List.copyOf(all.keySet());
    }

    /** The same on that day: on a new one, with what is carried over from the day before. */
    public ShootState asOf(OffsetDateTime now) {
        boolean newDay = lastJournalDate.isPresent() && !lastJournalDate.get().equals(now.toLocalDate());
        return newDay ? new ShootState(kit, history, rolls, day.carried(now), lastJournalDate, known) : this;
    }

    /** The entries that go before a step on a new day: what is carried over from the day before. */
    public List<JournalEntry> carryOverEntries(OffsetDateTime now) {
        boolean newDay = lastJournalDate.isEmpty() || !lastJournalDate.get().equals(now.toLocalDate());
        return newDay && !day.equals(Day.FIRST)
                ? List.of(new JournalEntry.OnDay(new DayEvent.Carried(day.carried(now))))
                : List.of();
    }
}
