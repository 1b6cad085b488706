package takeup.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import takeup.exposure.Extension;
import takeup.json.Json;
import takeup.json.JsonProblem;
import takeup.json.JsonText;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.kit.ProfileJson;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** A setting, and a change of one, to JSON and back. */
final class SettingJson {
    private SettingJson() {}

    private static Json of(List<Filter> filters) {
        return Json.of(filters.stream()
                .map(it -> Json.object().and("name", it.name()).and("stops", it.stops()))
                .toList());
    }

    private static List<Filter> filters(List<Json> items) {
        List<Filter> filters = new ArrayList<>();
        for (Json item : items) {
            Fields fields = Fields.of(item);
            filters.add(
                    new Filter(fields.text("name"), fields.number("stops", -ExposureJson.STOPS, ExposureJson.STOPS)));
        }
        return filters;
    }

    private static Optional<List<Filter>> maybeFilters(Fields fields) {
        Optional<List<Json>> items = fields.maybeList("filters");
        return items.isPresent() ? Optional.of(filters(items.get())) : Optional.empty();
    }

    private static Json.Obj of(Extension extension) {
        return Json.object().and("kind", extension.kind().word()).and("value", extension.value());
    }

    private static Optional<Extension> extension(Fields around) {
        Optional<Fields> inside = around.inside("extension");
        if (inside.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = inside.get();
        String word = fields.text("kind");
        for (Extension.Kind kind : Extension.Kind.values()) {
            if (kind.word().equals(word)) {
                return Optional.of(new Extension(kind, fields.number("value", 0, ExposureJson.MOST)));
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

    private static Optional<Lens> lens(Fields around) {
        Optional<Fields> fields = around.inside("lens");
        if (fields.isEmpty()) {
            return Optional.empty();
        }
        Optional<Read> before = last;
        String text = JsonText.line(fields.get().object());
        if (before.isPresent() && before.get().text.equals(text)) {
            return Optional.of(before.get().lens);
        }
        try {
            Lens lens = ProfileJson.lens("journal", fields.get().object());
            last = Optional.of(new Read(text, lens));
            return Optional.of(lens);
        } catch (JsonProblem e) {
            throw new Fields.Unreadable("the lens cannot be read");
        }
    }

    static Json.Obj of(Setting setting) {
        Json.Obj json = Json.object();
        if (setting.aperture().isPresent()) {
            json.and("aperture", ExposureJson.of(setting.aperture().get()));
        }
        if (setting.time().isPresent()) {
            json.and("time", ExposureJson.of(setting.time().get()));
        }
        if (setting.lens().isPresent()) {
            json.and("lens", ProfileJson.of(setting.lens().get()));
        }
        json.andIfKnown("zoomMm", setting.zoomMm()).andIfKnown("distanceM", setting.distanceM());
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
                ExposureJson.maybeAperture(fields, "aperture"),
                ExposureJson.maybeTime(fields, "time"),
                new Setting.LensSetup(
                        lens(fields),
                        fields.maybeNumber("zoomMm", ExposureJson.LEAST, ExposureJson.MOST),
                        fields.maybeNumber("distanceM", 0, ExposureJson.MOST),
                        maybeFilters(fields).orElse(List.of()),
                        extension(fields).orElse(Extension.NONE)),
                fields.maybeNumber("bias", -ExposureJson.STOPS, ExposureJson.STOPS)
                        .orElse(0),
                fields.flag("flash"),
                fields.flag("tripod"));
    }

    static Json.Obj of(SettingPatch change) {
        Json.Obj json = Json.object();
        put(change.aperture(), it -> json.and("aperture", ExposureJson.of(it)));
        put(change.time(), it -> json.and("time", ExposureJson.of(it)));
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
                ExposureJson.maybeAperture(fields, "aperture"),
                ExposureJson.maybeTime(fields, "time"),
                new SettingPatch.LensPatch(
                        lens(fields),
                        fields.maybeNumber("zoomMm", ExposureJson.LEAST, ExposureJson.MOST),
                        fields.maybeNumber("distanceM", 0, ExposureJson.MOST),
                        maybeFilters(fields),
                        extension(fields)),
                fields.maybeNumber("bias", -ExposureJson.STOPS, ExposureJson.STOPS),
                fields.maybeFlag("flash"),
                fields.maybeFlag("tripod"),
                new SettingPatch.FramePatch(
                        fields.has("kind") ? Optional.of(ExposureJson.kind(fields.text("kind"))) : Optional.empty(),
                        fields.maybeText("note"),
                        fields.has("people") ? Optional.of(SceneJson.people(fields.list("people"))) : Optional.empty(),
                        fields.has("place") ? Optional.of(SceneJson.place(fields.inner("place"))) : Optional.empty()));
    }
}
