package takeup.handoff;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.json.Json;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.roll.Exposure;
import takeup.roll.ExposureResult;
import takeup.roll.Setting;
import takeup.text.IsoTime;

/** The fields that a frame and each further exposure on it have in common, from {@code at} to {@code tripod}. */
final class ExposureFields {
    /** The fields of what was set, in the order that files hold them. */
    static final List<String> SET =
            List.of("aperture fNumber exactFNumber time seconds exactSeconds lens focalLengthMm distanceM".split(" "));

    /** The fields of what is worked out from it, in the same order. */
    static final List<String> WORKED_OUT = List.of(("filterStops extensionStops biasStops meteredSeconds "
                    + "correctedSeconds errorStops overBoxStops flash tripod")
            .split(" "));

    private ExposureFields() {}

    /** Adds the fields of an exposure, in the order that files hold them. */
    static void into(Json.Obj json, Exposure exposure, ExposureResult verdict) {
        Setting setting = exposure.setting();
        json.and("at", exposure.at().map(IsoTime::of))
                .and("atKnown", exposure.at().isPresent());
        json.and("aperture", setting.aperture());
        json.and("fNumber", setting.aperture().map(it -> RoundedJson.number(it.fNumber())));
        json.and("exactFNumber", setting.aperture().map(it -> RoundedJson.number(it.exactFNumber())));
        json.and("time", setting.time());
        json.and("seconds", setting.time().map(it -> RoundedJson.exact(it.seconds())));
        json.and("exactSeconds", setting.time().map(it -> RoundedJson.number(it.exactSeconds())));
        json.and("lens", setting.lens().map(Lens::name));
        json.and("focalLengthMm", RoundedJson.number(setting.focalMm()));
        json.and("distanceM", RoundedJson.number(setting.distanceM()));
        json.and("light", exposure.light().map(ExposureFields::of));
        json.and("flashLight", exposure.flashLight().map(ExposureFields::of));
        json.and(
                "filters",
                setting.filters().stream()
                        .map(it -> Json.object().and("name", name(it)).and("stops", RoundedJson.stops(it.stops())))
                        .toList());
        json.and("filterStops", RoundedJson.stops(setting.filterStops()));
        json.and("extensionStops", RoundedJson.stops(setting.extension().stops(setting.focalMm())));
        json.and("biasStops", RoundedJson.stops(setting.biasStops()));
        json.and("meteredSeconds", RoundedJson.number(verdict.meteredSeconds()));
        json.and("correctedSeconds", RoundedJson.number(verdict.correctedSeconds()));
        json.and("errorStops", RoundedJson.stops(verdict.errorStops()));
        json.and("overBoxStops", RoundedJson.stops(verdict.overBoxStops()));
        if (setting.flash()) {
            json.and(
                    "lightParts",
                    Json.object()
                            .and(
                                    "ambientStops",
                                    RoundedJson.stops(verdict.light().ambientStops()))
                            .and("flashStops", RoundedJson.stops(verdict.light().flashStops())));
        }
        json.and("flash", setting.flash()).and("tripod", setting.tripod());
    }

    private static Json of(Light light) {
        return Json.object()
                .and("ev100", RoundedJson.stops(light.ev100().stops()))
                .and("method", light.method().word())
                .and("typed", light.typed())
                .and("spanStops", RoundedJson.stops(light.spanStops()))
                .and("zone", light.zone())
                .and("index", RoundedJson.number(light.index()))
                .and("at", IsoTime.of(light.at()));
    }

    private static Json of(FlashLight flash) {
        Optional<ExposureTime> time = flash.measured().flatMap(FlashLight.Measured::time);
        Json.Obj json = Json.object()
                .and("method", flash.measured().isPresent() ? "meter" : "guide-number")
                .and("fNumber", RoundedJson.number(flash.aperture().fNumber()))
                .and("exactFNumber", RoundedJson.number(flash.aperture().exactFNumber()))
                .and("index", RoundedJson.number(flash.index().arithmetic()))
                .and("time", time)
                .and(
                        "exactSeconds",
                        RoundedJson.number(time.map(ExposureTime::exactSeconds)
                                .map(OptionalDouble::of)
                                .orElseGet(OptionalDouble::empty)))
                .and("typed", flash.typed())
                .and("at", IsoTime.of(flash.at()));
        flash.fill()
                .ifPresent(it -> json.and("fillFNumber", RoundedJson.number(it.fNumber()))
                        .and("exactFillFNumber", RoundedJson.number(it.exactFNumber())));
        return json;
    }

    /** A filter's name. A filter typed as a bare loss (+1) is named in words, since a lab reads +1 as a push. */
    static String name(Filter filter) {
        return filter.name().startsWith("+") ? Stops.words(filter.stops()) : filter.name();
    }
}
