package takeup.records;

import takeup.exposure.FilmSpeed;
import takeup.json.Json;
import takeup.json.JsonProblem;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.ProfileJson;
import takeup.kit.Stock;
import takeup.roll.Development;
import takeup.roll.Film;
import takeup.roll.RollLabel;

/** A film, and the camera that it is in, to JSON and back: both as they were when it was loaded. */
final class FilmJson {
    private FilmJson() {}

    static Json.Obj of(Film film) {
        return put(
                Json.object()
                        .and("stock", of(film.stock()))
                        .and("size", film.size())
                        .and("index", film.index().arithmetic())
                        .and("process", film.development().process())
                        .and("push", film.development().pushStops())
                        .and("frames", film.framesNominal()),
                film.label());
    }

    static Json.Obj put(Json.Obj json, RollLabel label) {
        return json.andIfKnown("name", label.name()).andIfKnown("batch", label.batch());
    }

    static RollLabel label(Fields fields) {
        return new RollLabel(fields.maybeText("name"), fields.maybeText("batch"));
    }

    static Json.Obj of(Camera camera) {
        return Json.object().and("key", camera.key()).and("profile", ProfileJson.of(camera));
    }

    static Json.Obj of(Stock stock) {
        return Json.object().and("key", stock.key()).and("profile", ProfileJson.of(stock));
    }

    static Film film(Fields fields) {
        return new Film(
                stock(fields.inner("stock")),
                size(fields.text("size")),
                new FilmSpeed(fields.number("index", ExposureJson.LEAST, ExposureJson.MOST)),
                new Development(fields.text("process"), fields.number("push", -ExposureJson.STOPS, ExposureJson.STOPS)),
                fields.count("frames"),
                label(fields));
    }

    static Stock stock(Fields fields) {
        try {
            return ProfileJson.stock(
                    fields.text("key"), "journal", fields.inner("profile").object());
        } catch (JsonProblem e) {
            throw new Fields.Unreadable("the stock cannot be read");
        }
    }

    static Camera camera(Fields fields) {
        try {
            return ProfileJson.camera(
                    fields.text("key"), "journal", fields.inner("profile").object());
        } catch (JsonProblem e) {
            throw new Fields.Unreadable("the camera cannot be read");
        }
    }

    static FilmSize size(String word) {
        return Fields.known(FilmSize.named(word), "film size " + word + " is not known");
    }
}
