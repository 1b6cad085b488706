package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import takeup.exposure.Aperture;
import takeup.exposure.DevelopmentChange;
import takeup.exposure.ExposureTime;
import takeup.exposure.Reciprocity;
import takeup.json.Json;
import takeup.text.Plain;

/**
 * Profiles as JSON that {@link ProfileReader} reads back as equal, so that a roll keeps the camera and stock as they
 * were.
 */
public final class ProfileJson {
    private ProfileJson() {}

    /** A camera, its key inside. */
    public static Json.Obj of(Camera camera) {
        Json.Obj json = Json.object().and("name", camera.name());
        size(json, camera.frameSize());
        json.and("frames", frames(camera.frames()));
        if (!camera.backs().isEmpty()) {
            json.and(
                    "backs",
                    Json.of(camera.backs().stream().map(ProfileJson::of).toList()));
        }
        camera.shutter().ifPresent(it -> json.and("times", of(it)));
        camera.syncTime().ifPresent(it -> json.and("syncTime", time(it)));
        camera.picture().ownCircleMm().ifPresent(it -> json.and("circleOfConfusionMm", it));
        if (camera.picture().handHeld() == Camera.HandHeldRule.UNSCALED) {
            json.and("handHeld", "unscaled");
        }
        if (!camera.lenses().isEmpty()) {
            json.and("lenses", camera.lenses().stream().map(ProfileJson::of).toList());
        }
        return json;
    }

    private static void size(Json.Obj json, FrameSize size) {
        if (size.isOwn()) {
            json.and("frameSizeMm", size.sidesMm());
        } else {
            json.and("frameSize", size);
        }
    }

    private static Json.Obj frames(Map<FilmSize, Integer> counts) {
        Json.Obj frames = Json.object();
        counts.forEach((size, count) -> frames.and(size.toString(), count));
        return frames;
    }

    private static Json of(Camera.Back back) {
        if (back.size().isEmpty() && back.frames().isEmpty()) {
            return Json.of(back.name());
        }
        Json.Obj json = Json.object().and("name", back.name());
        back.size().ifPresent(it -> size(json, it));
        return back.frames().isEmpty() ? json : json.and("frames", frames(back.frames()));
    }

    private static Json.Obj of(Shutter shutter) {
        Json.Obj json = Json.object();
        if (shutter.scale().isPresent()) {
            json.and("step", step(shutter.scale().get().name()))
                    .and("longest", time(shutter.longest()))
                    .and("fastest", time(shutter.fastest()));
        } else {
            json.and("marks", shutter.marks().stream().map(ProfileJson::time).toList());
        }
        Map<ExposureTime, ExposureTime> measured = shutter.measuredMarks();
        if (!measured.isEmpty()) {
            Json.Obj times = Json.object();
            measured.forEach((print, seconds) -> times.and(time(print), seconds.exactSeconds()));
            json.and("measured", times);
        }
        return json.and("bulb", shutter.bulb());
    }

    /** A lens. */
    public static Json.Obj of(Lens lens) {
        Json.Obj json = Json.object()
                .and("key", lens.key())
                .and("name", lens.name())
                .and("focalMm", lens.isZoom() ? List.of(lens.shortestMm(), lens.longestMm()) : lens.shortestMm());
        if (lens.ring().scale().isPresent()) {
            json.and("widest", lens.ring().widest().fNumber())
                    .and("narrowest", lens.ring().narrowest().fNumber())
                    .and("step", step(lens.ring().scale().get().name()));
        } else {
            json.and(
                    "marks", lens.ring().marks().stream().map(Aperture::fNumber).toList());
        }
        if (lens.shutter().isPresent()) {
            json.and("times", of(lens.shutter().get()));
        }
        if (lens.syncTime().isPresent()) {
            json.and("syncTime", time(lens.syncTime().get()));
        }
        return json;
    }

    /** A stock. */
    public static Json.Obj of(Stock stock) {
        Json.Obj json = Json.object()
                .and("name", stock.name())
                .and("kind", stock.kind())
                .and("process", stock.process())
                .and("boxSpeed", stock.boxSpeed().arithmetic())
                .and("usualEI", stock.usualIndex().arithmetic())
                .and(
                        "filmSizes",
                        stock.filmSizes().stream().map(Object::toString).toList())
                .and(
                        "latitude",
                        Json.object().and("underStops", stock.underStops()).and("overStops", stock.overStops()))
                .and("reciprocity", of(stock.reciprocity()));
        stock.mostPushStops().ifPresent(it -> json.and("mostPushStops", it));
        stock.response()
                .filter()
                .ifPresent(it ->
                        json.and("filter", Json.object().and("name", it.name()).and("stops", it.stops())));
        return json;
    }

    private static Json.Obj of(Reciprocity reciprocity) {
        if (reciprocity instanceof DevelopmentChange change) {
            return of(change.times())
                    .and(
                            "developmentPercent",
                            change.points().stream()
                                    .map(it -> List.of(it.seconds(), it.percent()))
                                    .toList());
        }
        if (reciprocity instanceof Reciprocity.Power power) {
            return Json.object()
                    .and("model", "power")
                    .and("exponent", power.exponent())
                    .and("fromSeconds", power.fromSeconds());
        }
        if (reciprocity instanceof Reciprocity.Table table) {
            return Json.object().and("model", "table").and("points", points(table.points()));
        }
        if (reciprocity instanceof Reciprocity.Opening opening) {
            return Json.object().and("model", "stops").and("points", points(opening.points()));
        }
        Json.Obj none = Json.object().and("model", "none");
        ((Reciprocity.None) reciprocity).upToSeconds().ifPresent(it -> none.and("upToSeconds", it));
        return none;
    }

    private static List<List<Double>> points(List<Reciprocity.Point> points) {
        List<List<Double>> pairs = new ArrayList<>();
        points.forEach(it -> pairs.add(List.of(it.seconds(), it.value())));
        return pairs;
    }

    /** A time as a profile writes it: {@code 1/125} or {@code 2s}, never minutes or hours. */
    private static String time(ExposureTime time) {
        String print = time.toString();
        return print.indexOf('m') < 0 && print.indexOf('h') < 0 ? print : Plain.number(time.seconds()) + "s";
    }

    private static String step(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** A camera written by {@link #of(Camera)}; with a {@link takeup.json.JsonProblem} where it is none. */
    public static Camera camera(String key, String file, Json.Obj json) {
        return new CameraReader().read(key, new ProfileFields(file, json, new ProfileNotes()));
    }

    /** A stock written by {@link #of(Stock)}; with a {@link takeup.json.JsonProblem} where it is none. */
    public static Stock stock(String key, String file, Json.Obj json) {
        return new StockReader().read(key, new ProfileFields(file, json, new ProfileNotes()));
    }

    /** A lens written by {@link #of(Lens)}; with a {@link takeup.json.JsonProblem} where it is none. */
    public static Lens lens(String file, Json.Obj json) {
        return CameraReader.lens(new ProfileFields(file, json, new ProfileNotes()));
    }
}
