package takeup.handoff;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * The frames of a roll as JSON lines with one flat schema ({@code takeup schema frames}): every field is text, a
 * number, true or false, or null, so that a table of them needs no unpacking.
 */
public final class FrameJsonLines {
    private static final List<String> OF_FRAME = List.of("frame", "sequence", "id", "was", "kind", "at");
    private static final List<String> OF_LIGHT = List.of(
            ("lightEv100 lightMethod lightTyped lightSpanStops lightZone lightAt flashFNumber filters").split(" "));
    private static final List<String> OF_SCENE =
            List.of("shoot people place latitude longitude body note warnings exposures scan verdict".split(" "));

    /** The fields of a frame, in the order of a line; those of its roll stand in front. */
    private static final List<String> NAMES = Stream.of(
                    OF_FRAME, ExposureFields.SET, OF_LIGHT, ExposureFields.WORKED_OUT, OF_SCENE)
            .flatMap(List::stream)
            .toList();

    /** What stands in front of each value. */
    private static final List<String> BEFORE = NAMES.stream()
            .map(it -> (it.equals(NAMES.get(0)) ? "" : ",") + '"' + it + "\":")
            .toList();

    private FrameJsonLines() {}

    /**
     * A line for each frame, each ending in a line feed.
     *
     * @param scans the scan of each frame, in the roll's order; empty where it has none
     * @param verdicts thin, good or dense, in the same order
     */
    public static String of(Roll roll, MadeBy madeBy, List<Optional<String>> scans, List<Optional<String>> verdicts) {
        return ofValues(values(roll, madeBy, scans, verdicts));
    }

    /**
     * The same with each name left out, a third as long: to be kept, and to be made into lines by {@link #ofValues}.
     * First what all lines begin with, then for each frame its values as JSON, a tab between two; null is empty.
     */
    public static String values(
            Roll roll, MadeBy madeBy, List<Optional<String>> scans, List<Optional<String>> verdicts) {
        Json.Obj whole = RollJson.of(roll, madeBy);
        List<Json> frames = ((Json.Arr) whole.fields().get("frames")).items();
        // The fields of the roll are the same for each frame, so they are made once.
        String ofRoll = JsonText.line(ofRoll(whole));
        StringBuilder values = new StringBuilder();
        values.append(ofRoll, 0, ofRoll.length() - 1).append(",\n");
        for (int i = 0; i < frames.size(); i++) {
            Json.Obj frame = ofFrame((Json.Obj) frames.get(i), whole)
                    .and("scan", scans.get(i))
                    .and("verdict", verdicts.get(i));
            for (int name = 0; name < NAMES.size(); name++) {
                frame.field(NAMES.get(name)).ifPresent(it -> values.append(JsonText.line(it)));
                values.append(name + 1 < NAMES.size() ? '\t' : '\n');
            }
        }
        return values.toString();
    }

    /** The lines of frames whose values were kept; an IllegalArgumentException where these are none. */
    public static String ofValues(String values) {
        if (values.isEmpty()) {
            return "";
        }
        int at = values.indexOf('\n') + 1;
        String front = values.substring(0, at - 1);
        StringBuilder lines = new StringBuilder(4 * values.length());
        while (at < values.length()) {
            lines.append(front);
            for (int name = 0; name < NAMES.size(); name++) {
                boolean isLast = name + 1 == NAMES.size();
                int end = values.indexOf(isLast ? '\n' : '\t', at);
                if (end < 0) {
                    throw new IllegalArgumentException("a frame has fewer values than there are names");
                }
                lines.append(BEFORE.get(name)).append(end == at ? "null" : values.substring(at, end));
                at = end + 1;
            }
            lines.append("}\n");
        }
        return lines.toString();
    }

    private static Json.Obj ofFrame(Json.Obj frame, Json.Obj whole) {
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
        return line.and(
                        "shoot",
                        frame.field("shoot").or(() -> inner(whole, "shoot").field("name")))
                .and("people", texts(frame, "people"))
                .and("place", frame.field("place"))
                .and("latitude", frame.field("latitude"))
                .and("longitude", frame.field("longitude"))
                .and("body", frame.field("body"))
                .and("note", frame.field("note"))
                .and("warnings", names(frame, "warnings", "code"))
                .and("exposures", 1 + items(frame, "furtherExposures").size());
    }

    /**
     * The line that takes the place of a roll's lines in a partition once no frame of it is left: its frames were
     * dropped, or its loading was taken back.
     */
    public static String withdrawn(RollId roll, MadeBy madeBy) {
        return JsonText.line(Json.object()
                        .and("folder", madeBy.folder())
                        .and("roll", roll)
                        .and("state", "withdrawn"))
                + "\n";
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
