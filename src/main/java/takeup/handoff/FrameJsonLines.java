package takeup.handoff;

import java.util.List;
import java.util.Optional;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.roll.Roll;

/**
 * The frames of a roll as JSON lines with one flat schema ({@code takeup schema frames}): every field is text, a
 * number, true or false, or null, so that a table of them needs no unpacking.
 */
public final class FrameJsonLines {
    private static final List<String> OF_FRAME = List.of("frame", "sequence", "id", "was", "kind", "at");

    private FrameJsonLines() {}

    /**
     * A line for each frame, each ending in a line feed.
     *
     * @param scans the scan of each frame, in the roll's order; empty where it has none
     * @param verdicts thin, good or dense, in the same order
     */
    public static String of(Roll roll, MadeBy madeBy, List<Optional<String>> scans, List<Optional<String>> verdicts) {
        Json.Obj whole = RollJson.of(roll, madeBy);
        List<Json> frames = ((Json.Arr) whole.fields().get("frames")).items();
        // The fields of the roll are the same for each frame, so they are made once.
        String ofRoll = JsonText.line(ofRoll(whole));
        String front = ofRoll.substring(0, ofRoll.length() - 1) + ",";
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < frames.size(); i++) {
            Json.Obj frame = (Json.Obj) frames.get(i);
            Json.Obj line = Json.object();
            copy(frame, OF_FRAME, line);
            copy(frame, ExposureFields.SET, line);
            Json.Obj light = inner(frame, "light");
            line.and("lightEv100", light.field("ev100"))
                    .and("lightMethod", light.field("method"))
                    .and("lightTyped", light.field("typed"))
                    .and("lightSpanStops", light.field("spanStops"))
                    .and("lightZone", light.field("zone"))
                    .and("lightAt", light.field("at"))
                    .and("flashFNumber", inner(frame, "flashLight").field("fNumber"))
                    .and("filters", names(frame, "filters", "name"));
            copy(frame, ExposureFields.WORKED_OUT, line);
            line.and(
                            "shoot",
                            frame.field("shoot").or(() -> inner(whole, "shoot").field("name")))
                    .and("people", texts(frame, "people"))
                    .and("place", frame.field("place"))
                    .and("latitude", frame.field("latitude"))
                    .and("longitude", frame.field("longitude"))
                    .and("body", frame.field("body"))
                    .and("note", frame.field("note"))
                    .and("warnings", names(frame, "warnings", "code"))
                    .and("exposures", 1 + items(frame, "furtherExposures").size())
                    .and("scan", scans.get(i))
                    .and("verdict", verdicts.get(i));
            lines.append(front).append(JsonText.line(line).substring(1)).append('\n');
        }
        return lines.toString();
    }

    private static Json.Obj ofRoll(Json.Obj whole) {
        Json.Obj camera = inner(whole, "camera");
        Json.Obj stock = inner(whole, "stock");
        Json.Obj development = inner(whole, "development");
        return Json.object()
                .and("folder", whole.field("folder"))
                .and("roll", whole.field("roll"))
                .and("state", whole.field("state"))
                .and("camera", camera.field("key"))
                .and("back", camera.field("back"))
                .and("frameSize", camera.field("frameSize"))
                .and("filmSize", whole.field("filmSize"))
                .and("stock", stock.field("key"))
                .and("stockKind", stock.field("kind"))
                .and("boxSpeed", stock.field("boxSpeed"))
                .and("exposureIndex", whole.field("exposureIndex"))
                .and("process", development.field("process"))
                .and("pushStops", development.field("pushStops"))
                .and("loadedAt", whole.field("loadedAt"))
                .and("finishedAt", whole.field("finishedAt"))
                .and("name", whole.field("name"))
                .and("batch", whole.field("batch"));
    }

    private static void copy(Json.Obj from, List<String> names, Json.Obj into) {
        names.forEach(it -> into.and(it, from.field(it)));
    }

    private static Json.Obj inner(Json.Obj object, String name) {
        return object.field(name).map(it -> (Json.Obj) it).orElseGet(Json::object);
    }

    private static List<Json> items(Json.Obj object, String name) {
        return object.field(name).map(it -> ((Json.Arr) it).items()).orElse(List.of());
    }

    /** Texts in one, with commas; nothing is null. */
    private static Optional<String> texts(Json.Obj object, String list) {
        List<String> texts =
                items(object, list).stream().map(it -> ((Json.Text) it).value()).toList();
        return texts.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", texts));
    }

    /** Names in one text, with commas; nothing is null. */
    private static Optional<String> names(Json.Obj object, String list, String name) {
        List<String> names = items(object, list).stream()
                .map(it -> ((Json.Text) ((Json.Obj) it).fields().get(name)).value())
                .toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", names));
    }
}
