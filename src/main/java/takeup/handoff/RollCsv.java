package takeup.handoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import takeup.json.Json;
import takeup.roll.Roll;
import takeup.text.Plain;
import takeup.text.TableFormat;

/**
 * A roll as a table for a spreadsheet, one row a frame: CSV after RFC 4180 (Common Format and MIME Type for
 * Comma-Separated Values Files), a header row, lines end in CR LF; or whatever the format makes of the same cells.
 *
 * <p>The values are those of the roll's JSON; not known is an empty cell. Stops carry a decimal in any case (-1.0),
 * filters are joined by {@code and}, warnings are their codes, further exposures their count.
 */
public final class RollCsv {
    private static final List<String> OF_ROLL =
            List.of("roll", "camera.name", "camera.back", "stock.name", "exposureIndex", "development.words");
    private static final List<String> ROLL_HEADS =
            List.of("roll", "camera", "back", "stock", "exposureIndex", "development");
    private static final List<String> OF_FRAME = Stream.of(
                    List.of("frame", "sequence", "was", "kind", "at", "atKnown"),
                    ExposureFields.SET,
                    fields("light", "ev100 method typed spanStops zone index at"),
                    fields("flashLight", "fNumber exactFNumber index typed at"),
                    List.of("filters"),
                    ExposureFields.WORKED_OUT,
                    List.of("warnings", "note", "furtherExposures"),
                    SceneFields.OF_FRAME,
                    List.of("id"))
            .flatMap(List::stream)
            .toList();

    private static final List<String> LABEL = List.of("name", "batch");

    private RollCsv() {}

    /** The table; its first row names the columns. */
    public static String of(Roll roll, MadeBy madeBy, TableFormat format) {
        Json.Obj json = RollJson.of(roll, madeBy);
        StringBuilder table = new StringBuilder(format.start());
        List<String> heads = new ArrayList<>(ROLL_HEADS);
        OF_FRAME.forEach(it -> heads.add(head(it)));
        heads.addAll(LABEL);
        heads.add("folder");
        table.append(format.row(heads.stream().map(format::text).toList()));
        List<String> ofRoll = cells(json, OF_ROLL, format);
        for (Json frame : items(json, "frames")) {
            List<String> row = new ArrayList<>(ofRoll);
            row.addAll(cells(withShoot((Json.Obj) frame, json), OF_FRAME, format));
            row.addAll(cells(json, LABEL, format));
            row.add(format.text(madeBy.folder().orElse("")));
            table.append(format.row(row));
        }
        return table.append(format.end()).toString();
    }

    /** A frame says its shoot only where it is not the roll's; a cell says it in any case. */
    private static Json.Obj withShoot(Json.Obj frame, Json.Obj roll) {
        Optional<Json> name = roll.field("shoot").flatMap(it -> ((Json.Obj) it).field("name"));
        return frame.field("shoot").isPresent() ? frame : frame.and("shoot", name);
    }

    private static List<String> fields(String object, String names) {
        return Stream.of(names.split(" ")).map(it -> object + "." + it).toList();
    }

    /** {@code lightEv100} for {@code light.ev100}. */
    private static String head(String path) {
        int dot = path.indexOf('.');
        return dot < 0
                ? path
                : path.substring(0, dot)
                        + path.substring(dot + 1, dot + 2).toUpperCase(Locale.ROOT)
                        + path.substring(dot + 2);
    }

    private static List<String> cells(Json.Obj json, List<String> paths, TableFormat format) {
        return paths.stream().map(it -> cell(json, it, format)).toList();
    }

    private static String cell(Json.Obj json, String path, TableFormat format) {
        int dot = path.indexOf('.');
        if (dot >= 0) {
            Optional<Json> inner = json.field(path.substring(0, dot));
            return inner.isPresent() ? cell((Json.Obj) inner.get(), path.substring(dot + 1), format) : format.text("");
        }
        return switch (path) {
            case "people" -> format.text(String.join(", ", texts(json)));
            case "filters" -> format.text(joined(items(json, path), "name", " and "));
            case "warnings" -> format.text(joined(items(json, path), "code", " "));
            case "furtherExposures" ->
                format.number(Integer.toString(items(json, path).size()));
            default -> json.field(path).map(it -> value(it, path, format)).orElseGet(() -> format.text(""));
        };
    }

    private static List<String> texts(Json.Obj frame) {
        return frame.field("people")
                .map(it -> ((Json.Arr) it)
                        .items().stream()
                                .map(name -> ((Json.Text) name).value())
                                .toList())
                .orElse(List.of());
    }

    private static String value(Json value, String name, TableFormat format) {
        if (value instanceof Json.Num || value instanceof Json.Decimal) {
            double number = value instanceof Json.Decimal decimal ? decimal.value() : ((Json.Num) value).value();
            String plain = Plain.number(number);
            boolean needsPoint = (name.endsWith("Stops") || name.equals("ev100")) && plain.indexOf('.') < 0;
            return format.number(needsPoint ? plain + ".0" : plain);
        }
        if (value instanceof Json.Bool bool) {
            return format.flag(bool.value());
        }
        return format.text(((Json.Text) value).value());
    }

    private static List<Json> items(Json.Obj json, String name) {
        return ((Json.Arr) json.field(name).orElseThrow()).items();
    }

    private static String joined(List<Json> items, String field, String between) {
        return String.join(
                between,
                items.stream()
                        .map(it -> ((Json.Text) ((Json.Obj) it).field(field).orElseThrow()).value())
                        .toList());
    }
}
