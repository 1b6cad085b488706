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
        R cameraSelected(CameraSelected event);

        R cameraSetupChanged(CameraSetupChanged event);

        R meterSelected(MeterSelected event);

        R lightMetered(LightMetered event);

        R flashMetered(FlashMetered event);

        R warningSilenced(WarningSilenced event);

        R rollClosed(RollClosed event);

        R carried(Carried event);

        R flashCautioned(FlashCautioned event);

        R timerStarted(TimerStarted event);

        R timerStopped(TimerStopped event);

        R guideDismissed(GuideDismissed event);

        R clockShifted(ClockShifted event);

        R shootOpened(ShootOpened event);

        R momentPlanned(MomentPlanned event);

        R momentDropped(MomentDropped event);

        R bagChanged(BagChanged event);

        R routineSet(RoutineSet event);

        R paperStarted(PaperStarted event);

        R paperLineRejected(PaperLineRejected event);

        R paperFinished(PaperFinished event);

        R undone(Undone event);

        R redone(Redone event);

        R unknown(Unknown event);
    }

    /** A camera or back became the active one. */
    record CameraSelected(CameraPlace place) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.cameras().taking(place));
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cameraSelected(this);
        }
    }

    /** A camera was set, got another lens, filter, hold or bias: the whole of it as it is now. */
    record CameraSetupChanged(String camera, CameraSetup inHand) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(camera, inHand);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cameraSetupChanged(this);
        }
    }

    /** Another meter was taken up, or it was preset to a time. */
    record MeterSelected(String meter, Optional<ExposureTime> preset) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.metering().with(meter, preset));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.meterSelected(this);
        }
    }

    /** A light reading was taken, with which meter, and what was said about it then and need not be said again. */
    record LightMetered(Light light, String meter, List<Warning.Code> said) implements DayEvent {
        public LightMetered {
            said = List.copyOf(said);
        }

        @Override
        public Day appliedTo(Day day) {
            return day.with(day.metering().with(light));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.lightMetered(this);
        }
    }

    /** A flash reading was taken. */
    record FlashMetered(FlashLight flash) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.metering().with(flash));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.flashMetered(this);
        }
    }

    /** A warning was silenced for the day. */
    record WarningSilenced(Warning.Code code) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.silencing(code);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.warningSilenced(this);
        }
    }

    /**
     * A roll was finished, or a finished one was changed: so that the last thing done is known without opening it. When
     * it is finished, what it was loaded with stays behind for the next {@code load} in its place.
     */
    record RollClosed(RollId roll, CameraPlace place, Optional<Film> film) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.closed(this);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.rollClosed(this);
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
            return day.with(day.cameras().cautioned(camera));
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
    record TimerStarted(String camera, BulbTimer timer) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.cameras().timed(camera, Optional.of(timer)));
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
            return day.with(day.cameras().timed(camera, Optional.empty()));
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
    record GuideDismissed() implements DayEvent {
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
            return cases.guideDismissed(this);
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
    record ShootOpened(ShootInfo info) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(info);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.shootOpened(this);
        }
    }

    /** A key moment came into the plan, or one of the same number was changed. */
    record MomentPlanned(KeyMoment moment) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.plan().with(moment));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.momentPlanned(this);
        }
    }

    /** A key moment was dropped from the plan. */
    record MomentDropped(int moment) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.plan().without(moment));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.momentDropped(this);
        }
    }

    /** Rolls came into the bag or, where negative, out of it; into a camera where a roll is named. */
    record BagChanged(FilmLot lot, int rolls, Optional<RollId> into) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            Bag bag = day.bag();
            return day.with(into.isPresent() ? bag.into(into.get(), lot) : bag.plus(lot, rolls));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.bagChanged(this);
        }
    }

    /** The load routine was turned on or off. */
    record RoutineSet(boolean on) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.withRoutine(on);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.routineSet(this);
        }
    }

    /** A paper form is being read back from here on. It changes no roll, so it is no step. */
    record PaperStarted(RollId roll) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(Optional.of(new PaperInput(roll, List.of())));
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperStarted(this);
        }
    }

    /** A line of the form did not fit: it is kept as it was typed. */
    record PaperLineRejected(String line) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.paper().map(it -> it.and(line)));
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperLineRejected(this);
        }
    }

    /** The form was read. */
    record PaperFinished() implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(Optional.empty());
        }

        @Override
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperFinished(this);
        }
    }

    /** A step was undone: what it did here counts no longer. */
    record Undone(long step) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.undone(this);
        }
    }

    /** A step that was undone was done again. */
    record Redone(long step) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.redone(this);
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
