package takeup.history;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.day.CameraPlace;
import takeup.day.Day;
import takeup.day.DayEvent;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** What the steps leave on the day and in hand, beside the rolls themselves. */
final class DayFold {
    private DayFold() {}

    /** The day that all steps add up to. */
    static Day of(History history, Map<RollId, Roll> rolls) {
        Set<Long> undone = history.undone();
        Day day = Day.FIRST;
        for (JournalStep step : history.steps()) {
            JournalStep standing = undone.contains(step.step()) ? whatStays(step) : step;
            day = after(day, carriedAnew(standing, history, undone, day, rolls), rolls);
        }
        return day;
    }

    /** The day after one more step that is no undo and no redo. */
    static Day after(Day before, JournalStep step, Map<RollId, Roll> rolls) {
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

    /**
     * What of a step that was taken back counts all the same: the camera taken up, and what an earlier day left in
     * hand.
     */
    private static JournalStep whatStays(JournalStep step) {
        return step.only(it -> it instanceof JournalEntry.OnDay && !it.isChange());
    }

    /**
     * A step that carries a day over, with what is undone by now left out of it: a line of before midnight can be taken
     * back after it. Where the day before is not known in full, what was written down is right.
     */
    private static JournalStep carriedAnew(
            JournalStep step, History history, Set<Long> undone, Day day, Map<RollId, Roll> rolls) {
        if (!step.has(DayEvent.Carried.class)) {
            return step;
        }
        History before = history.before(step);
        boolean isAnyUndone = false;
        for (JournalStep one : before.steps()) {
            isAnyUndone |= undone.contains(one.step());
        }
        if (!isAnyUndone) {
            return step;
        }
        Set<Long> undoneThen = before.undone();
        Day dayThen = Day.FIRST;
        for (JournalStep one : before.steps()) {
            dayThen = after(dayThen, undoneThen.contains(one.step()) ? whatStays(one) : one, rolls);
        }
        JournalEntry written = new JournalEntry.OnDay(new DayEvent.Carried(dayThen.carried(step.at())));
        JournalEntry right = new JournalEntry.OnDay(new DayEvent.Carried(day.carried(step.at())));
        return new JournalStep(
                step.step(),
                step.at(),
                step.entries().stream()
                        .map(it -> it.equals(written) ? right : it)
                        .toList());
    }

    /** What a roll's event leaves in hand: the setting of a logged frame, the film of a loading. */
    private static Day after(Day day, RollEvent event, Roll roll) {
        if (event instanceof RollEvent.Loaded loaded) {
            return day.loaded(new CameraPlace(loaded.camera().key(), loaded.back()), loaded.film())
                    .named(roll.id(), loaded.film().label().name());
        }
        if (event instanceof RollEvent.Reloaded again) {
            return day.loaded(new CameraPlace(again.camera().key(), again.back()), roll.film());
        }
        if (event instanceof RollEvent.BackMoved moved) {
            return day.loaded(new CameraPlace(moved.camera().key(), Optional.of(moved.back())), roll.film());
        }
        if (event instanceof RollEvent.RollCorrected) {
            Day named = day.named(roll.id(), roll.film().label().name());
            return roll.state() == Roll.State.OPEN ? named.loaded(CameraPlace.of(roll), roll.film()) : named;
        }
        if (event instanceof RollEvent.Added added
                && added.origin() == RollEvent.Origin.LOGGED
                && added.frame().kind() == Frame.Kind.EXPOSED) {
            return after(day, added.frame().exposure().setting(), roll);
        }
        return event instanceof RollEvent.ExposedAgain again
                ? after(day, again.exposure().setting(), roll)
                : day;
    }

    private static Day after(Day day, Setting exposed, Roll roll) {
        SettingPatch change = exposed.aperture().isPresent()
                ? SettingPatch.aperture(exposed.aperture().get())
                : SettingPatch.NOTHING;
        if (exposed.time().isPresent()) {
            change = change.and(SettingPatch.time(exposed.time().get()));
        }
        if (exposed.zoomMm().isPresent()) {
            change = change.and(SettingPatch.zoom(exposed.zoomMm().getAsDouble()));
        }
        if (exposed.distanceM().isPresent()) {
            change = change.and(SettingPatch.distance(exposed.distanceM().getAsDouble()));
        }
        String camera = roll.camera().key();
        return change.isNothing() ? day : day.with(camera, day.setup(camera).with(change));
    }
}
