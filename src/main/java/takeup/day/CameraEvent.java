package takeup.day;

import java.util.List;
import java.util.Optional;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.kit.Warning;

/** What happened to a camera or a meter: it was selected, set, read or timed. */
public sealed interface CameraEvent extends DayEvent {
    /** A camera or back became the active one. */
    record CameraSelected(CameraPlace place) implements CameraEvent {
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
    record CameraSetupChanged(String camera, CameraSetup inHand) implements CameraEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(camera, inHand);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cameraSetupChanged(this);
        }
    }

    /** Another meter was selected, or it was preset to a time. */
    record MeterSelected(String meter, Optional<ExposureTime> preset) implements CameraEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.metering().with(meter, preset));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.meterSelected(this);
        }
    }

    /** A light reading was taken, with which meter, and the warnings that were shown with it and are not repeated. */
    record LightMetered(Light light, String meter, List<Warning.Code> warned) implements CameraEvent {
        public LightMetered {
            warned = List.copyOf(warned);
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
    record FlashMetered(FlashLight flash) implements CameraEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.metering().with(flash));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.flashMetered(this);
        }
    }

    /** The caution about old flash units was given for a camera; undoing the line does not take it back. */
    record FlashCautioned(String camera) implements CameraEvent {
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
    record TimerStarted(String camera, BulbTimer timer) implements CameraEvent {
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
    record TimerStopped(String camera) implements CameraEvent {
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
}
