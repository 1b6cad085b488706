package takeup.day;

import java.util.List;
import java.util.Optional;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.kit.Warning;
import takeup.roll.ClockShift;
import takeup.roll.Film;
import takeup.roll.RollId;

/** What happened on a day and belongs to no roll. */
public sealed interface DayEvent {
    /** The day as it stands once this has happened. */
    Day appliedTo(Day day);

    /** Whether {@code undo} counts it: taking up another camera is no step. */
    default boolean isStep() {
        return true;
    }

    /** One method for each kind, for rooms that must know which it is. */
    <R> R match(Cases<R> cases);

    /** A case for each kind. */
    interface Cases<R> {
        R took(CameraSelected event);

        R changed(Changed event);

        R metered(MeterSelected event);

        R lit(LightMetered event);

        R flashLit(FlashMetered event);

        R quieted(Quieted event);

        R touched(RollClosed event);

        R carried(Carried event);

        R flashCautioned(FlashCautioned event);

        R timerStarted(TimerStarted event);

        R timerStopped(TimerStopped event);

        R guideLeft(GuideLeft event);

        R clockShifted(ClockShifted event);

        R opened(Opened event);

        R planned(Planned event);

        R unplanned(Unplanned event);

        R bagged(Bagged event);

        R routineSet(RoutineSet event);

        R paperBegun(PaperBegun event);

        R paperAside(PaperAside event);

        R paperDone(PaperDone event);

        R takenBack(TakenBack event);

        R putBack(PutBack event);

        R unknown(Unknown event);
    }

    /** A camera or back became the active one. */
    record CameraSelected(Place place) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.took(place);
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.took(this);
        }
    }

    /** A camera was set, got another lens, filter, hold or bias: the whole of it as it is now. */
    record Changed(String camera, InHand inHand) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(camera, inHand);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.changed(this);
        }
    }

    /** Another meter was taken up, or it was preset to a time. */
    record MeterSelected(String meter, Optional<ExposureTime> preset) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.metered(meter, preset);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.metered(this);
        }
    }

    /** A light reading was taken, with which meter, and what was said about it then and need not be said again. */
    record LightMetered(Light light, String meter, List<Warning.Code> said) implements DayEvent {
        public LightMetered {
            said = List.copyOf(said);
        }

        @Override
        public Day appliedTo(Day day) {
            return day.lit(light);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.lit(this);
        }
    }

    /** A flash reading was taken. */
    record FlashMetered(FlashLight flash) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.flashLit(flash);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.flashLit(this);
        }
    }

    /** A warning was silenced for the day. */
    record Quieted(Warning.Code code) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.quieted(code);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.quieted(this);
        }
    }

    /**
     * A roll was finished, or a finished one was changed: so that the last thing done is known without opening it. When
     * it is finished, what it was loaded with stays behind for the next {@code load} in its place.
     */
    record RollClosed(RollId roll, Place place, Optional<Film> film) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.touched(this);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.touched(this);
        }
    }

    /** What an earlier day left in hand, at the head of a new day. Light is not carried over. */
    record Carried(Day day) implements DayEvent {
        @Override
        public Day appliedTo(Day before) {
            return day;
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.carried(this);
        }
    }

    /** The caution about old flash units was given for a camera; undoing the line does not unsay it. */
    record FlashCautioned(String camera) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.cautioned(camera);
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.flashCautioned(this);
        }
    }

    /** A bulb exposure began on a camera. Time cannot be taken back, so it is no step. */
    record TimerStarted(String camera, Timer timer) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.timed(camera, Optional.of(timer));
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.timerStarted(this);
        }
    }

    /** A bulb exposure ended; how long it was stands in the change beside it, and that can be taken back. */
    record TimerStopped(String camera) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.timed(camera, Optional.empty());
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.timerStopped(this);
        }
    }

    /** The guide to the first frame was sent away, and does not come again. */
    record GuideLeft() implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day;
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.guideLeft(this);
        }
    }

    /**
     * The computer's clock was moved before the frame or reading beside which this stands. No line did it, so it is no
     * step.
     */
    record ClockShifted(ClockShift shift) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day;
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.clockShifted(this);
        }
    }

    /** A shoot was opened; one that was open is closed. */
    record Opened(ShootInfo occasion) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.job().with(occasion));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.opened(this);
        }
    }

    /** A key moment came into the plan, or one of the same number was changed. */
    record Planned(Moment moment) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.job().with(day.job().plan().with(moment)));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.planned(this);
        }
    }

    /** A key moment was dropped from the plan. */
    record Unplanned(int moment) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.job().with(day.job().plan().without(moment)));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unplanned(this);
        }
    }

    /** Rolls came into the bag or, where negative, out of it; into a camera where a roll is named. */
    record Bagged(Lot lot, int rolls, Optional<RollId> into) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            Bag bag = day.job().bag();
            return day.with(day.job().with(into.isPresent() ? bag.into(into.get(), lot) : bag.plus(lot, rolls)));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.bagged(this);
        }
    }

    /** The load routine was turned on or off. */
    record RoutineSet(boolean on) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.asking(on);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.routineSet(this);
        }
    }

    /** A paper form is being read back from here on. It changes no roll, so it is no step. */
    record PaperBegun(RollId roll) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.reading(Optional.of(new Paper(roll, List.of())));
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperBegun(this);
        }
    }

    /** A line of the form did not fit: it is kept as it was typed. */
    record PaperAside(String line) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.reading(day.paper().map(it -> it.and(line)));
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperAside(this);
        }
    }

    /** The form was read. */
    record PaperDone() implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.reading(Optional.empty());
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperDone(this);
        }
    }

    /** A step was undone: what it did here counts no longer. */
    record TakenBack(long step) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.takenBack(this);
        }
    }

    /** A step that was undone was done again. */
    record PutBack(long step) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.putBack(this);
        }
    }

    /** A kind that a later version wrote: kept, and shown as such. */
    record Unknown(String kind, String text) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unknown(this);
        }
    }
}
