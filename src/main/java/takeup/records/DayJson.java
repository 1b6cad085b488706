package takeup.records;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.day.BulbTimer;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.day.CamerasInUse;
import takeup.day.Day;
import takeup.day.Metering;
import takeup.json.Json;
import takeup.kit.Hold;
import takeup.roll.Film;
import takeup.roll.RollId;

/** A day as the next one takes it over, and what is in hand, to JSON and back. */
final class DayJson {
    private DayJson() {}

    static Json.Obj of(CameraPlace place) {
        return Json.object().and("camera", place.camera()).and("back", place.back());
    }

    static CameraPlace place(Fields fields) {
        return new CameraPlace(fields.text("camera"), fields.maybeText("back"));
    }

    static Json.Obj of(CameraSetup inHand) {
        Json.Obj json = Json.object().and("setting", SettingJson.of(inHand.setting()));
        return inHand.hold().isPresent() ? json.and("hold", of(inHand.hold().get())) : json;
    }

    private static Json.Obj of(Hold hold) {
        return hold.aperture().isPresent()
                ? Json.object().and("aperture", ExposureJson.of(hold.aperture().get()))
                : Json.object().and("time", ExposureJson.of(hold.time().orElseThrow()));
    }

    static CameraSetup inHand(Fields fields) {
        return new CameraSetup(
                SettingJson.setting(fields.inner("setting")),
                fields.has("hold") ? Optional.of(hold(fields.inner("hold"))) : Optional.empty());
    }

    private static Hold hold(Fields fields) {
        return new Hold(ExposureJson.maybeAperture(fields, "aperture"), ExposureJson.maybeTime(fields, "time"));
    }

    static Json.Obj of(BulbTimer timer) {
        Json.Obj json = Json.object().and("since", timer.since());
        timer.targetSeconds().ifPresent(it -> json.and("target", it));
        return json;
    }

    static BulbTimer timer(Fields fields) {
        return new BulbTimer(fields.time("since"), fields.maybeNumber("target", ExposureJson.LEAST, ExposureJson.MOST));
    }

    static Json.Obj of(Day day) {
        Json.Obj inHand = Json.object();
        day.cameras().setups().forEach((camera, state) -> inHand.and(camera, of(state)));
        Json.Obj backs = Json.object();
        day.lastBack().forEach(backs::and);
        List<Json> films = new ArrayList<>();
        day.films()
                .forEach((place, film) ->
                        films.add(Json.object().and("place", of(place)).and("film", FilmJson.of(film))));
        Json.Obj json = Json.object()
                .and("active", day.active().map(DayJson::of))
                .and("inHand", inHand)
                .and("backs", backs)
                .and("used", day.used().stream().map(DayJson::of).toList())
                .and("meter", day.meter())
                .and("preset", day.preset().map(ExposureJson::of))
                .and("films", films);
        day.light().ifPresent(it -> json.and("light", ExposureJson.of(it)));
        day.flash().ifPresent(it -> json.and("flash", FlashLightJson.of(it)));
        if (!day.cameras().cautioned().isEmpty()) {
            json.and("flashed", List.copyOf(day.cameras().cautioned()));
        }
        if (!day.cameras().names().isEmpty()) {
            Json.Obj names = Json.object();
            day.cameras().names().forEach(names::and);
            json.and("names", names);
        }
        if (!day.timers().isEmpty()) {
            Json.Obj timers = Json.object();
            day.timers().forEach((camera, timer) -> timers.and(camera, of(timer)));
            json.and("timers", timers);
        }
        if (!day.routine()) {
            json.and("routine", false);
        }
        day.showing().scene().ifPresent(it -> {
            Json.Obj scene = Json.object();
            SceneJson.put(scene, it);
            json.and("scene", scene);
        });
        Json.Obj plan = ShootPlanJson.of(day);
        if (!plan.fields().isEmpty()) {
            json.and("job", plan);
        }
        return json;
    }

    private static Map<String, RollId> names(Fields fields) {
        Map<String, RollId> names = new LinkedHashMap<>();
        if (fields.has("names")) {
            Fields all = fields.inner("names");
            for (String name : all.names()) {
                names.put(name, RollEventJson.id(all.text(name)));
            }
        }
        return names;
    }

    static Day day(Fields fields) {
        Map<String, CameraSetup> inHand = new LinkedHashMap<>();
        Fields hands = fields.inner("inHand");
        for (String camera : hands.names()) {
            inHand.put(camera, inHand(hands.inner(camera)));
        }
        Map<String, String> backs = new LinkedHashMap<>();
        Fields last = fields.inner("backs");
        for (String camera : last.names()) {
            backs.put(camera, last.text(camera));
        }
        Set<CameraPlace> used = new LinkedHashSet<>();
        for (Json item : fields.list("used")) {
            used.add(place(Fields.of(item)));
        }
        Map<CameraPlace, Film> films = new LinkedHashMap<>();
        for (Json item : fields.list("films")) {
            Fields loaded = Fields.of(item);
            films.put(place(loaded.inner("place")), FilmJson.film(loaded.inner("film")));
        }
        Set<String> flashed = new LinkedHashSet<>();
        for (Json item : fields.maybeList("flashed").orElse(List.of())) {
            if (item instanceof Json.Text text) {
                flashed.add(text.value());
            }
        }
        Map<String, BulbTimer> timers = new LinkedHashMap<>();
        if (fields.has("timers")) {
            Fields all = fields.inner("timers");
            for (String camera : all.names()) {
                timers.put(camera, timer(all.inner(camera)));
            }
        }
        // A day without a plan reads as one with an empty plan does.
        Fields plan = fields.inside("job").orElse(new Fields(Json.object()));
        return new Day(
                new CamerasInUse(
                        fields.has("active") ? Optional.of(place(fields.inner("active"))) : Optional.empty(),
                        used,
                        backs,
                        inHand,
                        films,
                        flashed,
                        timers,
                        names(fields)),
                new Metering(
                        fields.maybeText("meter"),
                        ExposureJson.maybeTime(fields, "preset"),
                        ExposureJson.maybeLight(fields),
                        FlashLightJson.maybe(fields, "flash")),
                new Day.Showing(
                        ShootPlanJson.openShoot(plan),
                        fields.has("scene") ? Optional.of(SceneJson.scene(fields.inner("scene"))) : Optional.empty()),
                ShootPlanJson.plan(plan),
                new Day.Supply(ShootPlanJson.bag(plan), ShootPlanJson.fridge(plan)),
                Set.of(),
                fields.object().field("routine").isEmpty() || fields.flag("routine"),
                Optional.empty());
    }
}
