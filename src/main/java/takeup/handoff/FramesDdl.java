package takeup.handoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import takeup.json.Json;
import takeup.json.JsonText;

/**
 * The columns of the frames as a table of a query engine, made of their JSON Schema: {@code roll STRING, …}. The last
 * two are those of the partitions.
 */
public final class FramesDdl {
    private FramesDdl() {}

    /** A line for each column, with a comma behind all but the last. */
    public static String text() {
        List<String> columns = new ArrayList<>();
        properties().forEach((name, value) -> columns.add(name + " " + type((Json.Obj) value)));
        columns.add("year INT");
        columns.add("writer STRING");
        return String.join(",\n", columns) + "\n";
    }

    private static Map<String, Json> properties() {
        try {
            Json.Obj schema = (Json.Obj) JsonText.read(Schemas.named("frames").orElseThrow());
            return ((Json.Obj) schema.fields().get("properties")).fields();
        } catch (JsonText.NotJson e) {
            throw new IllegalStateException("the schema of the frames is no JSON", e);
        }
    }

    private static String type(Json.Obj column) {
        String text = JsonText.line(column);
        if (text.contains("/time\"") || text.contains("date-time")) {
            return "TIMESTAMP";
        }
        if (text.contains("\"boolean\"")) {
            return "BOOLEAN";
        }
        if (text.contains("\"integer\"")) {
            return "INT";
        }
        return text.contains("\"number\"") ? "DOUBLE" : "STRING";
    }
}
