package takeup.report;

import java.util.Optional;
import takeup.day.CameraSetup;
import takeup.exposure.Extension;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.roll.Roll;
import takeup.roll.Setting;

/** All that is in hand, as other programs read it. */
public final class StatusJson {
    private StatusJson() {}

    /** All that is in hand, as other programs read it. */
    public static Json.Obj of(ShootState s) {
        CameraSetup inHand = s.inHand();
        Setting setting = inHand.setting();
        Optional<Roll> roll = s.rollInHand();
        return Json.object()
                .and("camera", s.placeInHand().map(it -> it.camera()))
                .and("back", s.placeInHand().flatMap(it -> it.back()))
                .and("roll", roll.map(Roll::id))
                .and("stock", roll.map(it -> it.film().stock().key()))
                .and("exposureIndex", roll.map(it -> it.film().index().arithmetic()))
                .and("frame", roll.map(Roll::next))
                .and("framesLeft", roll.map(Roll::framesLeft))
                .and("lens", setting.lens().map(it -> it.key()))
                .and("aperture", setting.aperture().map(Object::toString))
                .and("time", setting.time().map(Object::toString))
                .and("focalLengthMm", setting.focalMm())
                .and("distanceM", AdviceJson.exact(setting.distanceM()))
                .and(
                        "filters",
                        setting.filters().stream()
                                .map(it ->
                                        Json.object().and("name", it.name()).and("stops", AdviceJson.exact(it.stops())))
                                .toList())
                .and("filterStops", AdviceJson.exact(setting.filterStops()))
                .and(
                        "extension",
                        setting.extension().kind() == Extension.Kind.NONE
                                ? Optional.empty()
                                : Optional.of(setting.extension().toString()))
                .and("extensionStops", AdviceJson.exact(setting.extensionStops()))
                .and("biasStops", AdviceJson.exact(setting.biasStops()))
                .and("hold", inHand.hold().map(Object::toString))
                .and("flash", setting.flash())
                .and("tripod", setting.tripod())
                .and("meter", s.day().meter())
                .and("meterTime", s.day().preset().map(Object::toString))
                .and(
                        "ev100",
                        s.day().light().map(it -> AdviceJson.exact(it.ev100().stops())));
    }
}
