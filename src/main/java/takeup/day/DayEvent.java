package takeup.day;

import java.util.Optional;
import takeup.kit.Warning;
import takeup.roll.ClockShift;
import takeup.roll.Film;
import takeup.roll.RollId;

/** What happened on a day and belongs to no roll. */
public sealed interface DayEvent
        permits CameraEvent,
                PlanEvent,
                PaperEvent,
                DayEvent.WarningSilenced,
                DayEvent.RollClosed,
                DayEvent.Carried,
                DayEvent.GuideDismissed,
                DayEvent.ClockShifted,
                DayEvent.RollNamed,
                DayEvent.RoutineSet,
                DayEvent.Undone,
                DayEvent.Redone,
                DayEvent.Unknown {
    /** The day as it stands once this has happened; as it was, for what changes nothing by itself. */
    default Day appliedTo(Day day) {
        return day;
    }

    /** Whether {@code undo} counts it: selecting another camera is not a step. */
    default boolean isStep() {
        return true;
    }

    /** One method for each kind, for rooms that must know which it is. */
    <R> R match(Cases<R> cases);

    /** A case for each kind. */
    interface Cases<R> {
        R cameraSelected(CameraEvent.CameraSelected event);

        R cameraSetupChanged(CameraEvent.CameraSetupChanged event);

        R meterSelected(CameraEvent.MeterSelected event);

        R lightMetered(CameraEvent.LightMetered event);

        R flashMetered(CameraEvent.FlashMetered event);

        R warningSilenced(WarningSilenced event);

        R rollClosed(RollClosed event);

        R carried(Carried event);

        R flashCautioned(CameraEvent.FlashCautioned event);

        R timerStarted(CameraEvent.TimerStarted event);

        R timerStopped(CameraEvent.TimerStopped event);

        R guideDismissed(GuideDismissed event);

        R clockShifted(ClockShifted event);

        R shootOpened(PlanEvent.ShootOpened event);

        R sceneSet(PlanEvent.SceneSet event);

        R momentPlanned(PlanEvent.MomentPlanned event);

        R momentDropped(PlanEvent.MomentDropped event);

        R bagChanged(PlanEvent.BagChanged event);

        R fridgeChanged(PlanEvent.FridgeChanged event);

        R rollNamed(RollNamed event);

        R routineSet(RoutineSet event);

        R paperStarted(PaperEvent.PaperStarted event);

        R paperLineRejected(PaperEvent.PaperLineRejected event);

        R paperFinished(PaperEvent.PaperFinished event);

        R undone(Undone event);

        R redone(Redone event);

        R unknown(Unknown event);
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
            return film.isEmpty()
                    ? day
                    : day.loaded(place, film.get())
                            .named(roll, film.get().label().name())
                            .with(day.bag().finished(roll));
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

    /** The guide to the first frame was dismissed, and does not come again. */
    record GuideDismissed() implements DayEvent {
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
        public boolean isStep() {
            return false;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.clockShifted(this);
        }
    }

    /** A finished roll got another name of the photographer's own. */
    record RollNamed(RollId roll, String name) implements DayEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.named(roll, Optional.of(name));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.rollNamed(this);
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

    /** A step was undone: what it did here counts no longer. */
    record Undone(long step) implements DayEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.undone(this);
        }
    }

    /** A step that was undone was done again. */
    record Redone(long step) implements DayEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.redone(this);
        }
    }

    /** A kind that a later version wrote: kept, and shown as such. */
    record Unknown(String kind, String text) implements DayEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unknown(this);
        }
    }
}
