package takeup.handoff;

import java.util.List;
import java.util.Optional;
import takeup.json.Json;
import takeup.roll.Assignment;
import takeup.roll.Coordinates;
import takeup.roll.Frame;
import takeup.roll.Place;
import takeup.roll.Roll;

/**
 * Who and where, and for which shoot, as others see it. Coordinates are there only where they are shared, and no client
 * is. What nobody said is left out.
 */
final class SceneFields {
    /** The fields of a frame, in the order that files hold them. */
    static final List<String> OF_FRAME = List.of("people", "place", "latitude", "longitude", "shoot", "body");

    private SceneFields() {}

    /** Adds where something is. */
    static Json.Obj into(Json.Obj json, Place place) {
        place.name().ifPresent(it -> json.and("place", it));
        Optional<Coordinates> coordinates = place.shared();
        coordinates.ifPresent(it -> json.and("latitude", RoundedJson.number(it.latitude()))
                .and("longitude", RoundedJson.number(it.longitude())));
        return json;
    }

    /** Adds who is on a frame, where it was, and its shoot and camera where they are not the roll's. */
    static void into(Json.Obj json, Roll roll, Frame frame) {
        List<String> people = frame.scene().people();
        if (!people.isEmpty()) {
            json.and("people", people);
        }
        into(json, place(roll, frame));
        roll.otherShoot(frame).ifPresent(it -> json.and("shoot", it.name()));
        frame.scene()
                .body()
                .filter(it -> !it.key().equals(roll.camera().key()))
                .ifPresent(it -> json.and("body", it.name()));
    }

    /** Where a frame was: as was said of it, else where its shoot is. */
    static Place place(Roll roll, Frame frame) {
        return frame.scene().place().isUnknown()
                ? frame.scene()
                        .shoot()
                        .or(roll::assignment)
                        .map(Assignment::place)
                        .orElse(Place.UNKNOWN)
                : frame.scene().place();
    }
}
