package takeup.advice;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.Day;
import takeup.exposure.Light;
import takeup.history.ClockShiftDetector;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.ExposureWarnings;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.kit.Warning;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;

/** The warnings that stand as a word on the screen as long as they are true. */
public final class StandingWarnings {
    private StandingWarnings() {}

    /** Their codes, most urgent first; silenced ones left out. */
    public static List<Warning.Code> of(ShootState s, OffsetDateTime now) {
        List<Warning.Code> codes = new ArrayList<>();
        if (s.placeInHand().isPresent() && s.rollInHand().isEmpty()) {
            codes.add(Warning.Code.NO_FILM);
        }
        s.rollInHand().ifPresent(it -> ofRoll(it, s.kit(), codes));
        s.day().light().ifPresentOrElse(it -> ofLight(it, s, now, codes), () -> {
            boolean isAutomatic = s.cameraInHand().map(Camera::isAutomatic).orElse(true);
            boolean isFlashRead =
                    s.inHand().setting().flash() && s.day().flash().isPresent();
            if (s.rollInHand().isPresent() && !isAutomatic && !isFlashRead) {
                codes.add(Warning.Code.NO_LIGHT);
            }
        });
        if (ClockShiftDetector.isNoted(s.history())) {
            codes.add(Warning.Code.CLOCK);
        }
        ofPlan(s, now, codes);
        codes.removeAll(s.day().silenced());
        return codes;
    }

    private static void ofRoll(Roll roll, Kit kit, List<Warning.Code> codes) {
        if (roll.framesLeft() < 0) {
            codes.add(Warning.Code.PAST_END);
        } else if (roll.framesLeft() <= Math.max(2, kit.fewLeft(roll.film().framesNominal()))) {
            codes.add(Warning.Code.FRAMES_LEFT);
        }
        if (roll.film().pushMismatch().isPresent()) {
            codes.add(Warning.Code.PUSH_MISMATCH);
        }
    }

    private static void ofLight(Light light, ShootState s, OffsetDateTime now, List<Warning.Code> codes) {
        if (EntryWarnings.meterSpeed(s).isPresent()) {
            codes.add(Warning.Code.METER_SPEED);
        }
        Optional<Stock> stock = s.rollInHand().map(it -> it.film().stock());
        if (ExposureWarnings.span(light.spanStops(), stock).isPresent()) {
            codes.add(Warning.Code.SPAN);
        }
        if (FrameWarnings.isStale(Optional.of(light), now)) {
            codes.add(Warning.Code.STALE_LIGHT);
        }
        if (light.method() == Light.Method.CAMERA) {
            codes.add(Warning.Code.CAMERA_METER);
        }
        if (ExposureWarnings.sun(light.ev100()).isPresent()) {
            codes.add(Warning.Code.SUN);
        }
    }

    private static void ofPlan(ShootState s, OffsetDateTime now, List<Warning.Code> codes) {
        Day day = s.day();
        if (s.rollInHand()
                .map(it -> day.bag().loaded().get(it.id()))
                .filter(it -> it.isExpired(now.toLocalDate()))
                .isPresent()) {
            codes.add(Warning.Code.EXPIRED);
        }
        if (day.plan().moments().isEmpty()) {
            return;
        }
        if (NextMoment.of(s, now).filter(NextMoment::isUrgent).isPresent()) {
            codes.add(Warning.Code.MOMENT);
        }
        if (FilmBudget.of(s, now).isShort()) {
            codes.add(Warning.Code.BAG_LOW);
        }
    }
}
