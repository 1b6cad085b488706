package takeup.advice;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.Day;
import takeup.day.FilmLot;
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
        if (s.rollInHand().isPresent()) {
            ofRoll(s.rollInHand().get(), s.kit(), codes);
        }
        if (s.day().light().isPresent()) {
            ofLight(s.day().light().get(), s, now, codes);
        } else if (isLightMissing(s)) {
            codes.add(Warning.Code.NO_LIGHT);
        }
        if (ClockShiftDetector.isNoted(s.history())) {
            codes.add(Warning.Code.CLOCK);
        }
        ofPlan(s, now, codes);
        codes.removeAll(s.day().silenced());
        return codes;
    }

    private static boolean isLightMissing(ShootState s) {
        Optional<Camera> camera = s.cameraInHand();
        boolean isFlashRead = s.inHand().setting().flash() && s.day().flash().isPresent();
        return s.rollInHand().isPresent() && camera.isPresent() && !camera.get().isAutomatic() && !isFlashRead;
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
        Optional<Stock> stock = s.rollInHand().isPresent()
                ? Optional.of(s.rollInHand().get().film().stock())
                : Optional.empty();
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
        Optional<Roll> roll = s.rollInHand();
        FilmLot lot = roll.isPresent() ? day.bag().loaded().get(roll.get().id()) : null;
        if (lot != null && lot.isExpired(now.toLocalDate())) {
            codes.add(Warning.Code.EXPIRED);
        }
        if (day.plan().moments().isEmpty()) {
            return;
        }
        Optional<NextMoment> next = NextMoment.of(s, now);
        if (next.isPresent() && next.get().isUrgent()) {
            codes.add(Warning.Code.MOMENT);
        }
        if (FilmBudget.of(s, now).isShort()) {
            codes.add(Warning.Code.BAG_LOW);
        }
    }
}
