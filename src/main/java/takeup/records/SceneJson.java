package takeup.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.json.Json;
import takeup.roll.Assignment;
import takeup.roll.Coordinates;
import takeup.roll.Place;
import takeup.roll.Scene;

/** Who and where, and for which shoot, to JSON and back. Nothing is written where nothing was said. */
final class SceneJson {
    private SceneJson() {}

    static void put(Json.Obj json, Scene scene) {
        if (!scene.people().isEmpty()) {
            json.and("people", of(scene.people()));
        }
        if (!scene.place().equals(Place.UNKNOWN)) {
            json.and("place", of(scene.place()));
        }
        if (scene.shoot().isPresent()) {
            json.and("shoot", of(scene.shoot().get()));
        }
    }

    static Scene scene(Fields fields) {
        if (fields.object().field("people").isEmpty()
                && fields.object().field("place").isEmpty()
                && fields.object().field("shoot").isEmpty()) {
            return Scene.NONE;
        }
        // Read without lambdas, here and below: those of a day are read at the start, and the first takes 5 ms.
        Optional<List<Json>> people = fields.maybeList("people");
        Optional<Fields> shoot = fields.inside("shoot");
        return new Scene(
                people.isPresent() ? people(people.get()) : List.of(),
                placeOrUnknown(fields),
                shoot.isPresent() ? Optional.of(shoot(shoot.get())) : Optional.empty());
    }

    private static Place placeOrUnknown(Fields fields) {
        Optional<Fields> place = fields.inside("place");
        return place.isPresent() ? place(place.get()) : Place.UNKNOWN;
    }

    static Json of(List<String> people) {
        return Json.of(people.stream().map(Json::of).toList());
    }

    static List<String> people(List<Json> items) {
        List<String> names = new ArrayList<>();
        for (Json item : items) {
            names.add(name(item));
        }
        return List.copyOf(names);
    }

    private static String name(Json json) {
        if (json instanceof Json.Text text) {
            return text.value();
        }
        throw new Fields.Unreadable("a name is text");
    }

    static Json.Obj of(Place place) {
        Json.Obj json = Json.object();
        place.name().ifPresent(it -> json.and("name", it));
        put(json, place);
        return json;
    }

    /** Its coordinates, and whether they may leave the folder. */
    static void put(Json.Obj json, Place place) {
        place.coordinates().ifPresent(it -> json.and("latitude", it.latitude()).and("longitude", it.longitude()));
        if (place.isShared()) {
            json.and("share", true);
        }
    }

    static Place place(Fields fields) {
        return place(fields, fields.maybeText("name"));
    }

    static Place place(Fields fields, Optional<String> name) {
        Optional<Coordinates> coordinates = fields.object().field("latitude").isPresent()
                ? Optional.of(
                        new Coordinates(fields.number("latitude", -90, 90), fields.number("longitude", -180, 180)))
                : Optional.empty();
        return new Place(name, coordinates, fields.flag("share"));
    }

    /** The shoot of a roll, or of a frame. */
    static Json.Obj of(Assignment shoot) {
        return put(Json.object(), shoot);
    }

    static Json.Obj put(Json.Obj json, Assignment shoot) {
        json.and("shoot", shoot.name()).and("date", shoot.date().toString());
        shoot.client().ifPresent(it -> json.and("client", it));
        if (!shoot.place().equals(Place.UNKNOWN)) {
            json.and("place", of(shoot.place()));
        }
        return json;
    }

    static Assignment shoot(Fields fields) {
        Optional<LocalDate> date = FastIsoParser.date(fields.text("date"));
        if (date.isEmpty()) {
            throw new Fields.Unreadable("date is no date");
        }
        return new Assignment(fields.text("shoot"), date.get(), fields.maybeText("client"), placeOrUnknown(fields));
    }
}
