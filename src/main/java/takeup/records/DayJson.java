package takeup.records;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.day.Bag;
import takeup.day.BulbTimer;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.day.CamerasInUse;
import takeup.day.Day;
import takeup.day.Fridge;
import takeup.day.Metering;
import takeup.day.Plan;
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
        Json.Obj json = Json.object().and("setting", ExposureJson.of(inHand.setting()));
        inHand.hold()
                .ifPresent(it -> json.and(
                        "hold",
                        it.aperture()
                                .map(a -> Json.object().and("aperture", ExposureJson.of(a)))
                                .orElseGet(() -> Json.object()
                                        .and("time", ExposureJson.of(it.time().orElseThrow())))));
        return json;
    }

    static CameraSetup inHand(Fields fields) {
        return new CameraSetup(
                ExposureJson.setting(fields.inner("setting")),
                fields.inside("hold")
                        .map(it -> new Hold(
                                it.inside("aperture").map(ExposureJson::aperture),
                                it.inside("time").map(ExposureJson::time))));
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
        fields.inside("names")
                .ifPresent(all ->
                        all.object().fields().keySet().forEach(it -> names.put(it, RollEventJson.id(all.text(it)))));
        return names;
    }

    static Day day(Fields fields) {
        Map<String, CameraSetup> inHand = new LinkedHashMap<>();
        Fields hands = fields.inner("inHand");
        hands.object().fields().keySet().forEach(it -> inHand.put(it, inHand(hands.inner(it))));
        Map<String, String> backs = new LinkedHashMap<>();
        Fields last = fields.inner("backs");
        last.object().fields().keySet().forEach(it -> backs.put(it, last.text(it)));
        Set<CameraPlace> used = new LinkedHashSet<>();
        fields.list("used").forEach(it -> used.add(place(Fields.of(it))));
        Map<CameraPlace, Film> films = new LinkedHashMap<>();
        fields.list("films")
                .forEach(it -> films.put(
                        place(Fields.of(it).inner("place")),
                        FilmJson.film(Fields.of(it).inner("film"))));
        Set<String> flashed = new LinkedHashSet<>();
        fields.maybeList("flashed")
                .ifPresent(it -> it.forEach(item -> {
                    if (item instanceof Json.Text text) {
                        flashed.add(text.value());
                    }
                }));
        Map<String, BulbTimer> timers = new LinkedHashMap<>();
        fields.inside("timers")
                .ifPresent(all -> all.object().fields().keySet().forEach(it -> timers.put(it, timer(all.inner(it)))));
        Optional<Fields> plan = fields.inside("job");
        return new Day(
                new CamerasInUse(
                        fields.inside("active").map(DayJson::place),
                        used,
                        backs,
                        inHand,
                        films,
                        flashed,
                        timers,
                        names(fields)),
                new Metering(
                        fields.maybeText("meter"),
                        fields.inside("preset").map(ExposureJson::time),
                        fields.inside("light").map(ExposureJson::light),
                        fields.inside("flash").map(FlashLightJson::read)),
                new Day.Showing(
                        plan.flatMap(ShootPlanJson::openShoot),
                        fields.inside("scene").map(SceneJson::scene)),
                plan.map(ShootPlanJson::plan).orElse(Plan.NONE),
                new Day.Supply(
                        plan.map(ShootPlanJson::bag).orElse(Bag.NONE),
                        plan.map(ShootPlanJson::fridge).orElse(Fridge.NONE)),
                Set.of(),
                fields.object().field("routine").isEmpty() || fields.flag("routine"),
                Optional.empty());
    }
}
