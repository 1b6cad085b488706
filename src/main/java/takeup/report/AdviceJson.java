package takeup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.AdviceRequest;
import takeup.exposure.Light;
import takeup.exposure.LightParts;
import takeup.exposure.LongExposure;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.Stock;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.roll.Setting;

/** An advice as other programs read it. */
public final class AdviceJson {
    private AdviceJson() {}

    /** The advice as other programs read it. */
    public static Json.Obj of(AdviceRequest request, Light light, Suggestions advice, List<Warning> warnings) {
        Setting setting = request.setting();
        List<Json> rows = new ArrayList<>();
        for (int i = 0; i < advice.suggestions().size(); i++) {
            rows.add(row(advice.suggestions().get(i), request).and("best", i == advice.best()));
        }
        return Json.object()
                .and("ev100", exact(light.ev100().stops()))
                .and("method", light.method().word())
                .and("spanStops", exact(light.spanStops()))
                .and("zone", light.zone())
                .and("exposureIndex", request.index().arithmetic())
                .and("camera", request.camera().map(Camera::key))
                .and("lens", setting.lens().map(it -> it.key()))
                .and("stock", request.stock().map(Stock::key))
                .and("meter", Optional.of(request.meter().key()).filter(it -> !it.isEmpty()))
                .and(
                        "lossStops",
                        Json.object()
                                .and("filters", exact(setting.filterStops()))
                                .and("extension", exact(setting.extensionStops())))
                .and("biasStops", exact(setting.biasStops()))
                .and("suggestions", rows)
                .and("warnings", warnings.stream().map(Warning::json).toList());
    }

    private static Json.Obj row(Suggestion row, AdviceRequest request) {
        Json.Obj json = Json.object()
                .and("aperture", row.aperture())
                .and("fNumber", row.aperture().fNumber())
                .and("exactFNumber", exact(row.aperture().exactFNumber()))
                .and("time", row.time().map(Object::toString))
                .and("seconds", row.time().map(it -> exact(it.seconds())))
                .and("exactSeconds", row.time().map(it -> exact(it.exactSeconds())))
                .and("meteredSeconds", exact(row.meteredSeconds()))
                .and("correctedSeconds", exact(row.correctedSeconds()))
                .and("openStops", exact(row.openStops()))
                .and("errorStops", exact(row.errorStops()))
                .and("overBoxStops", exact(row.overBoxStops()));
        LongExposure exposure =
                new LongExposure(row.meteredSeconds(), request.path().reciprocity());
        if (exposure.isGeneric()) {
            json.and("genericReciprocity", true);
        }
        if (exposure.leastSeconds().isPresent()) {
            json.and("leastCorrectedSeconds", exact(exposure.leastSeconds()));
        }
        if (row.light().flashStops().isPresent()) {
            json.and("lightParts", of(row.light()));
        }
        row.depth()
                .ifPresent(it -> json.and(
                        "depth",
                        Json.object()
                                .and("nearM", exact(it.nearM()))
                                .and("farM", exact(it.farM()))
                                .and("hyperfocalM", exact(it.hyperfocalM()))));
        return json.and("warnings", row.warnings().stream().map(Warning::json).toList());
    }

    /** The parts of the light that make an error. */
    public static Json.Obj of(LightParts light) {
        return Json.object()
                .and("ambientStops", exact(light.ambientStops()))
                .and("flashStops", exact(light.flashStops()));
    }

    /** A number to nine digits, so that the last bits of a sum do not show. */
    public static Json exact(double value) {
        return Json.digits(Math.abs(value) < 1e-9 ? 0 : value, 9);
    }

    /** The same; null where there is none. */
    public static Json exact(OptionalDouble value) {
        return value.isPresent() ? exact(value.getAsDouble()) : Json.of(value);
    }
}
