package takeup.records;

import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.ExposureValue;
import takeup.exposure.FilmSpeed;
import takeup.exposure.FlashLight;
import takeup.json.Json;

/**
 * A flash reading as a journal holds it. Version 1.0.0 wrote neither the time of a flash meter's reading nor where the
 * aperture came from: there the line that was typed tells a guide number from a reading.
 */
final class FlashLightJson {
    private static final String GUIDE_NUMBER = "guideNumber";

    private FlashLightJson() {}

    static Json.Obj of(FlashLight flash) {
        Json.Obj json = Json.object()
                .and("aperture", ExposureJson.of(flash.aperture()))
                .and("index", flash.index().arithmetic())
                .and("typed", flash.typed())
                .and("at", flash.at())
                .and(GUIDE_NUMBER, flash.measured().isEmpty());
        flash.measured().flatMap(FlashLight.Measured::time).ifPresent(it -> json.and("time", ExposureJson.of(it)));
        flash.fill().ifPresent(it -> json.and("fill", ExposureJson.of(it)));
        flash.room().ifPresent(it -> json.and("room", it.stops()));
        return json;
    }

    static Optional<FlashLight> maybe(Fields fields, String name) {
        return fields.has(name) ? Optional.of(read(fields.inner(name))) : Optional.empty();
    }

    static FlashLight read(Fields fields) {
        String typed = fields.text("typed");
        Optional<Boolean> told = fields.maybeFlag(GUIDE_NUMBER);
        boolean isGuideNumber = told.isPresent() ? told.get() : typed.strip().regionMatches(true, 0, "flash", 0, 5);
        OptionalDouble room = fields.maybeNumber("room", -ExposureJson.STOPS, ExposureJson.STOPS);
        return new FlashLight(
                ExposureJson.aperture(fields.inner("aperture")),
                new FilmSpeed(fields.number("index", ExposureJson.LEAST, ExposureJson.MOST)),
                isGuideNumber
                        ? Optional.empty()
                        : Optional.of(new FlashLight.Measured(
                                ExposureJson.maybeTime(fields, "time"),
                                ExposureJson.maybeAperture(fields, "fill"),
                                room.isPresent()
                                        ? Optional.of(new ExposureValue(room.getAsDouble()))
                                        : Optional.empty())),
                typed,
                fields.time("at"));
    }
}
