package takeup.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.json.Json;
import takeup.report.RollSummary;
import takeup.text.Padding;

/** A frame that was found, as it is shown. */
public final class FoundFrame {
    private FoundFrame() {}

    /** For other programs, its fields named as in {@code takeup frames --json}. */
    public static Json.Obj json(FrameRow row) {
        RollSummary roll = row.roll().summary();
        Json.Obj json = Json.object()
                .and("roll", roll.id())
                .and("camera", roll.place().camera())
                .and("back", roll.place().back())
                .and("stock", roll.film().stock());
        for (FrameColumn column : FrameColumn.values()) {
            if (column.sort() == FrameColumn.Sort.PRIVATE) {
                continue;
            }
            String text = row.text(column);
            json.and(
                    column.jsonName(),
                    switch (column.sort()) {
                        case FLAG -> !text.isEmpty();
                        case TEXT, PRIVATE -> text.isEmpty() ? Optional.empty() : text;
                        case NUMBER -> Integer.parseInt(text);
                        case DECIMAL ->
                            text.isEmpty() ? Optional.empty() : new Json.Decimal(Double.parseDouble(text), 0);
                    });
        }
        return json;
    }

    /** In columns: roll, place in the roll, day, film, setting, scan, and what is noted. */
    public static String line(FrameRow row) {
        return (start(row) + rest(row)).stripTrailing();
    }

    /** What every frame has, in columns. */
    public static String start(FrameRow row) {
        RollSummary roll = row.roll().summary();
        return Padding.cell(roll.id().toString(), 7)
                + Padding.cell("frame " + row.text(FrameColumn.FRAME), 10)
                + Padding.cell(row.text(FrameColumn.SEQUENCE) + " of " + roll.framesUsed(), 10)
                + Padding.cell(day(row), 12)
                + Padding.cell(roll.film().stock(), 9)
                + Padding.cell(pair(row), 14);
    }

    /** What else is known of it. */
    public static String rest(FrameRow row) {
        return String.join("  ", further(row));
    }

    /** {@code R0007 frame 4}. */
    public static String name(FrameRow row) {
        return row.roll().summary().id() + " frame " + row.text(FrameColumn.FRAME);
    }

    private static String day(FrameRow row) {
        String at = row.text(FrameColumn.AT);
        return at.isEmpty() ? row.roll().summary().loadedAt().toLocalDate().toString() : at.substring(0, 10);
    }

    private static String pair(FrameRow row) {
        String pair = (row.text(FrameColumn.APERTURE) + " " + row.text(FrameColumn.TIME)).strip();
        return pair.isEmpty() ? row.text(FrameColumn.KIND) : pair;
    }

    private static List<String> further(FrameRow row) {
        List<String> further = new ArrayList<>();
        for (FrameColumn column : List.of(
                FrameColumn.LENS,
                FrameColumn.FILTERS,
                FrameColumn.SCAN,
                FrameColumn.VERDICT,
                FrameColumn.PEOPLE,
                FrameColumn.NOTE)) {
            String text = row.text(column);
            if (!text.isEmpty()) {
                further.add(text);
            }
        }
        return further;
    }
}
