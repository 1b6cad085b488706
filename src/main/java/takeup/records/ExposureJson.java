package takeup.records;

import java.time.DateTimeException;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.Extension;
import takeup.exposure.Light;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.kit.ProfileJson;
import takeup.roll.ClockShift;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** Exposures, settings and readings to JSON and back, to the last digit. */
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

    static Json.Obj of(ExposureTime time) {
        return Json.object().and("s", time.seconds()).and("exact", time.exactSeconds());
    }

    static ExposureTime time(Fields fields) {
        return new ExposureTime(fields.number("s", LEAST, MOST), fields.number("exact", LEAST, MOST));
    }

    static Json.Obj of(Light light) {
        Json.Obj json = Json.object()
                .and("ev100", light.ev100().stops())
                .and("method", light.method().word())
                .and("typed", light.typed());
        light.spanStops().ifPresent(it -> json.and("span", it));
        light.zone().ifPresent(it -> json.and("zone", it));
        light.index().ifPresent(it -> json.and("index", it));
        json.and("at", light.at());
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

    private static Json of(List<Filter> filters) {
        return Json.of(filters.stream()
                .map(it -> Json.object().and("name", it.name()).and("stops", it.stops()))
                .toList());
    }

    private static List<Filter> filters(List<Json> items) {
        return items.stream()
                .map(Fields::of)
                .map(it -> new Filter(it.text("name"), it.number("stops", -STOPS, STOPS)))
                .toList();
    }

    private static Json.Obj of(Extension extension) {
        return Json.object().and("kind", extension.kind().word()).and("value", extension.value());
    }

    private static Extension extension(Fields fields) {
        String word = fields.text("kind");
        for (Extension.Kind kind : Extension.Kind.values()) {
            if (kind.word().equals(word)) {
                return new Extension(kind, fields.number("value", 0, MOST));
            }
        }
        throw new Fields.Unreadable("extension " + word + " is not known");
    }

    /** A lens as it stood in a record, and was read. */
    private record Read(String text, Lens lens) {}

    /**
     * Frame after frame bears the same lens; to write its fields down costs less than to read them. Another thread's is
     * as good.
     */
    private static volatile Optional<Read> last = Optional.empty();

    private static Lens lens(Fields fields) {
        Optional<Read> before = last;
        String text = JsonText.line(fields.object());
        if (before.isPresent() && before.get().text.equals(text)) {
            return before.get().lens;
        }
        Lens lens = ProfileJson.lens("journal", fields.object())
                .profile()
                .orElseThrow(() -> new Fields.Unreadable("the lens cannot be read"));
        last = Optional.of(new Read(text, lens));
        return lens;
    }

    static Json.Obj of(Setting setting) {
        Json.Obj json = Json.object();
        setting.aperture().ifPresent(it -> json.and("aperture", of(it)));
        setting.time().ifPresent(it -> json.and("time", of(it)));
        setting.lens().ifPresent(it -> json.and("lens", ProfileJson.of(it)));
        setting.zoomMm().ifPresent(it -> json.and("zoomMm", it));
        setting.distanceM().ifPresent(it -> json.and("distanceM", it));
        if (!setting.filters().isEmpty()) {
            json.and("filters", of(setting.filters()));
        }
        if (!setting.extension().equals(Extension.NONE)) {
            json.and("extension", of(setting.extension()));
        }
        if (setting.biasStops() != 0) {
            json.and("bias", setting.biasStops());
        }
        if (setting.flash()) {
            json.and("flash", true);
        }
        if (setting.tripod()) {
            json.and("tripod", true);
        }
        return json;
    }

    static Setting setting(Fields fields) {
        return new Setting(
                fields.inside("aperture").map(ExposureJson::aperture),
                fields.inside("time").map(ExposureJson::time),
                new Setting.LensSetup(
                        fields.inside("lens").map(ExposureJson::lens),
                        fields.maybeNumber("zoomMm", LEAST, MOST),
                        fields.maybeNumber("distanceM", 0, MOST),
                        fields.maybeList("filters").map(ExposureJson::filters).orElse(List.of()),
                        fields.inside("extension").map(ExposureJson::extension).orElse(Extension.NONE)),
                fields.maybeNumber("bias", -STOPS, STOPS).orElse(0),
                fields.flag("flash"),
                fields.flag("tripod"));
    }

    static Json.Obj of(Exposure exposure) {
        Json.Obj json = Json.object();
        exposure.at().ifPresent(it -> json.and("at", it));
        json.and("setting", of(exposure.setting()));
        exposure.light().ifPresent(it -> json.and("light", of(it)));
        exposure.flashLight().ifPresent(it -> json.and("flashLight", FlashLightJson.of(it)));
        exposure.clock().ifPresent(it -> json.and("clock", of(it)));
        return json;
    }

    static Exposure exposure(Fields fields) {
        return new Exposure(
                fields.maybeTime("at"),
                setting(fields.inner("setting")),
                fields.inside("light").map(ExposureJson::light),
                fields.inside("flashLight").map(FlashLightJson::read),
                fields.inside("clock").map(ExposureJson::clock));
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
        Json.Obj json = Json.object().and("number", frame.number());
        frame.was().ifPresent(it -> json.and("was", it));
        json.and("kind", frame.kind()).and("exposure", of(frame.exposure()));
        if (!frame.further().isEmpty()) {
            json.and("further", frame.further().stream().map(ExposureJson::of).toList());
        }
        frame.note().ifPresent(it -> json.and("note", it));
        SceneJson.put(json, frame.scene());
        // Of a frame that was moved here; all others get theirs from the record that brings them.
        frame.id().ifPresent(it -> json.and("id", it));
        return json;
    }

    static Frame frame(Fields fields) {
        return new Frame(
                fields.count("number"),
                fields.maybeCount("was"),
                kind(fields.text("kind")),
                exposure(fields.inner("exposure")),
                fields.maybeList("further")
                        .map(it -> it.stream()
                                .map(Fields::of)
                                .map(ExposureJson::exposure)
                                .toList())
                        .orElse(List.of()),
                fields.maybeText("note"),
                SceneJson.scene(fields),
                fields.maybeText("id"));
    }

    private static Frame.Kind kind(String word) {
        return Frame.Kind.named(word).orElseThrow(() -> new Fields.Unreadable("frame kind " + word + " is not known"));
    }

    static Json.Obj of(SettingPatch change) {
        Json.Obj json = Json.object();
        put(change.aperture(), it -> json.and("aperture", of(it)));
        put(change.time(), it -> json.and("time", of(it)));
        put(change.lens(), it -> json.and("lens", ProfileJson.of(it)));
        change.zoomMm().ifPresent(it -> json.and("zoomMm", it));
        change.distanceM().ifPresent(it -> json.and("distanceM", it));
        put(change.filters(), it -> json.and("filters", of(it)));
        put(change.extension(), it -> json.and("extension", of(it)));
        change.biasStops().ifPresent(it -> json.and("bias", it));
        put(change.flash(), it -> json.and("flash", it));
        put(change.tripod(), it -> json.and("tripod", it));
        put(change.kind(), it -> json.and("kind", it));
        put(change.note(), it -> json.and("note", it));
        put(change.people(), it -> json.and("people", SceneJson.of(it)));
        put(change.place(), it -> json.and("place", SceneJson.of(it)));
        return json;
    }

    private static <T> void put(Optional<T> value, Consumer<T> into) {
        value.ifPresent(into);
    }

    static SettingPatch change(Fields fields) {
        return new SettingPatch(
                fields.inside("aperture").map(ExposureJson::aperture),
                fields.inside("time").map(ExposureJson::time),
                new SettingPatch.LensPatch(
                        fields.inside("lens").map(ExposureJson::lens),
                        fields.maybeNumber("zoomMm", LEAST, MOST),
                        fields.maybeNumber("distanceM", 0, MOST),
                        fields.maybeList("filters").map(ExposureJson::filters),
                        fields.inside("extension").map(ExposureJson::extension)),
                fields.maybeNumber("bias", -STOPS, STOPS),
                fields.maybeFlag("flash"),
                fields.maybeFlag("tripod"),
                new SettingPatch.FramePatch(
                        fields.maybeText("kind").map(ExposureJson::kind),
                        fields.maybeText("note"),
                        fields.maybeList("people").map(SceneJson::people),
                        fields.inside("place").map(SceneJson::place)));
    }
}
