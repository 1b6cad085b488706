package takeup.metering;

import java.util.OptionalDouble;
import takeup.advice.AdviceRequest;
import takeup.exposure.ExposureValue;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.kit.ExposureWarnings;
import takeup.kit.Suggestion;
import takeup.prompt.Reading;

/** Several readings as zones: how far apart, what the shadows ask for, and what the highlights get then. */
final class Zones {
    private Zones() {}

    /** The zones in words, with a blank in front; "" for a single reading, or one that was placed on a zone. */
    static String words(Reading reading, Light light, AdviceRequest request) {
        if (reading.lowestEv().isEmpty()
                || request.stock().isEmpty()
                || light.zone().isPresent() && light.zone().getAsInt() != 5) {
            return "";
        }
        Light shadows = new Light(
                new ExposureValue(reading.lowestEv().getAsDouble()),
                light.method(),
                light.typed(),
                OptionalDouble.empty(),
                light.zone(),
                light.index(),
                light.at());
        return SettingChoice.withinAStop(request.advice(shadows), request.hold())
                .filter(it -> it.overBoxStops().isPresent())
                .map(it -> words(shadows, it, light.spanStops().orElse(0), request))
                .orElse("");
    }

    private static String words(Light shadows, Suggestion row, double span, AdviceRequest request) {
        double tolerated = ExposureWarnings.highlightStops(request.stock().orElseThrow());
        double highlights = row.overBoxStops().getAsDouble() + span + request.pushStops();
        double past = highlights - tolerated;
        return " Shadows at " + shadows.ev100() + " ask for " + SettingChoice.pair(row) + "; the highlights, "
                + Stops.words(span) + " up, then get " + Stops.words(highlights)
                + (highlights < 0 ? " under" : " over") + " box speed, and this film bears " + Stops.words(tolerated)
                + (Stops.above(past, 0) ? ": " + Stops.words(past) + " too much" : "") + ".";
    }
}
