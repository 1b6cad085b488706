package takeup.report;

import takeup.exposure.SharpRange;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.SharpSetting;
import takeup.text.Plain;

/** What is sharp at which aperture, and by which rule, in words and as JSON. */
public final class SharpText {
    private SharpText() {}

    /** {@code Sharp from 2 m to infinity: f/16, focused at 4 m (blur up to 0.0288 mm, the diagonal / 1500)}. */
    public static String of(SharpRange range, SharpSetting setting, Camera camera) {
        String wanted = Plain.digits(range.nearM(), 3) + " m to "
                + (range.farM().isEmpty()
                        ? "infinity"
                        : Plain.digits(range.farM().getAsDouble(), 3) + " m");
        String focused = setting.aperture() + " focused at " + Plain.digits(setting.focusM(), 3) + " m";
        return (setting.isEnough()
                        ? "Sharp from " + wanted + ": " + focused
                        : "No aperture of this lens makes " + wanted + " sharp; " + focused + " is sharp from "
                                + SetupText.depth(setting.depth()))
                + " (" + circle(camera) + ")";
    }

    /** What counts as sharp: {@code blur up to 0.0288 mm, the diagonal / 1500}. */
    public static String circle(Camera camera) {
        return "blur up to " + Plain.digits(camera.circleOfConfusionMm(), 3) + " mm, " + rule(camera);
    }

    private static String rule(Camera camera) {
        return camera.picture().ownCircleMm().isPresent() ? "as given" : "the diagonal / 1500";
    }

    /** The same for other programs. */
    public static Json.Obj json(SharpSetting setting) {
        return Json.object()
                .and("aperture", setting.aperture().toString())
                .and("focusM", AdviceJson.exact(setting.focusM()))
                .and("nearM", AdviceJson.exact(setting.depth().nearM()))
                .and("farM", AdviceJson.exact(setting.depth().farM()))
                .and("circleOfConfusionMm", AdviceJson.exact(setting.circleMm()))
                .and("isEnough", setting.isEnough());
    }
}
