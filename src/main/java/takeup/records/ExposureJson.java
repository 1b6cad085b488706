package takeup.records;

import java.time.DateTimeException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.Light;
import takeup.json.Json;
import takeup.roll.ClockShift;
import takeup.roll.Exposure;
import takeup.roll.Frame;

/** Exposures, frames and readings to JSON and back, to the last digit. */
final class ExposureJson {
    /** No f-number, time, speed or length is smaller or larger, in its unit, and no difference in stops is greater. */
    static final double LEAST = 1e-9;

    static final double MOST = 1e9;
    static final double STOPS = 200;

    private ExposureJson() {}

    static Json.Obj of(Aperture aperture) {
        Json.Obj json = Json.object().and("f", aperture.fNumber()).and("av", aperture.stops());
        return aperture.tenths() == 0 ? json : json.and("tenths", aperture.tenths());
    }

    static Aperture aperture(Fields fields) {
        return new Aperture(
                fields.number("f", LEAST, MOST),
                fields.maybeCount("tenths").orElse(0),
                fields.number("av", -STOPS, STOPS));
    }

    static Optional<Aperture> maybeAperture(Fields fields, String name) {
        return fields.has(name) ? Optional.of(aperture(fields.inner(name))) : Optional.empty();
    }

    static Json.Obj of(ExposureTime time) {
        return Json.object().and("s", time.seconds()).and("exact", time.exactSeconds());
    }

    static ExposureTime time(Fields fields) {
        return new ExposureTime(fields.number("s", LEAST, MOST), fields.number("exact", LEAST, MOST));
    }

    static Optional<ExposureTime> maybeTime(Fields fields, String name) {
        return fields.has(name) ? Optional.of(time(fields.inner(name))) : Optional.empty();
    }

    static Json.Obj of(Light light) {
        Json.Obj json = Json.object()
                .and("ev100", light.ev100().stops())
                .and("method", light.method().word())
                .and("typed", light.typed())
                .andIfKnown("span", light.spanStops())
                .andIfKnown("zone", light.zone())
                .andIfKnown("index", light.index())
                .and("at", light.at());
        if (light.freshMinutes() != Light.FRESH) {
            json.and("fresh", light.freshMinutes());
        }
        return json;
    }

    static Light light(Fields fields) {
        String word = fields.text("method");
        for (Light.Method method : Light.Method.values()) {
            if (method.word().equals(word)) {
                return new Light(
                        new ExposureValue(fields.number("ev100", -STOPS, STOPS)),
                        method,
                        fields.text("typed"),
                        fields.maybeNumber("span", 0, STOPS),
                        fields.maybeCount("zone"),
                        fields.maybeNumber("index", LEAST, MOST),
                        fields.time("at"),
                        (int) fields.maybeNumber("fresh", 1, Light.FRESH).orElse(Light.FRESH));
            }
        }
        throw new Fields.Unreadable("method " + word + " is not known");
    }

    static Optional<Light> maybeLight(Fields fields) {
        return fields.has("light") ? Optional.of(light(fields.inner("light"))) : Optional.empty();
    }

    static Json.Obj of(Exposure exposure) {
        Json.Obj json = Json.object();
        json.andIfKnown("at", exposure.at()).and("setting", SettingJson.of(exposure.setting()));
        if (exposure.light().isPresent()) {
            json.and("light", of(exposure.light().get()));
        }
        if (exposure.flashLight().isPresent()) {
            json.and("flashLight", FlashLightJson.of(exposure.flashLight().get()));
        }
        if (exposure.clock().isPresent()) {
            json.and("clock", of(exposure.clock().get()));
        }
        return json;
    }

    static Exposure exposure(Fields fields) {
        return new Exposure(
                fields.maybeTime("at"),
                SettingJson.setting(fields.inner("setting")),
                maybeLight(fields),
                FlashLightJson.maybe(fields, "flashLight"),
                fields.has("clock") ? Optional.of(clock(fields.inner("clock"))) : Optional.empty());
    }

    static Json.Obj of(ClockShift shift) {
        return Json.object()
                .and("seconds", shift.seconds())
                .and("from", shift.from().getId())
                .and("to", shift.to().getId());
    }

    static ClockShift clock(Fields fields) {
        try {
            return new ClockShift(
                    fields.whole("seconds"), ZoneOffset.of(fields.text("from")), ZoneOffset.of(fields.text("to")));
        } catch (DateTimeException e) {
            throw new Fields.Unreadable("a zone is an offset such as +02:00");
        }
    }

    static Json.Obj of(Frame frame) {
        Json.Obj json = Json.object()
                .and("number", frame.number())
                .andIfKnown("was", frame.was())
                .and("kind", frame.kind())
                .and("exposure", of(frame.exposure()));
        if (!frame.further().isEmpty()) {
            json.and("further", frame.further().stream().map(ExposureJson::of).toList());
        }
        json.andIfKnown("note", frame.note());
        SceneJson.put(json, frame.scene());
        // Of a frame that was moved here; all others get theirs from the record that brings them.
        return json.andIfKnown("id", frame.id());
    }

    static Frame frame(Fields fields) {
        return new Frame(
                fields.count("number"),
                fields.maybeCount("was"),
                kind(fields.text("kind")),
                exposure(fields.inner("exposure")),
                further(fields),
                fields.maybeText("note"),
                SceneJson.scene(fields),
                fields.maybeText("id"));
    }

    private static List<Exposure> further(Fields fields) {
        List<Exposure> all = new ArrayList<>();
        for (Json item : fields.maybeList("further").orElse(List.of())) {
            all.add(exposure(Fields.of(item)));
        }
        return all;
    }

    static Frame.Kind kind(String word) {
        return Fields.known(Frame.Kind.named(word), "frame kind " + word + " is not known");
    }
}
