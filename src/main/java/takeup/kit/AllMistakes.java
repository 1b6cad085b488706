package takeup.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.json.Json;
import takeup.json.JsonProblem;
import takeup.json.JsonText;

/**
 * Reads a profile to its end although something in it is wrong: each wrong value is told, and the one of a sample takes
 * its place, so that who wrote the file hears of all mistakes at once.
 */
final class AllMistakes {
    /** The values fit to whatever else may stand in a file. */
    private static final Map<Kit.Sort, String> SAMPLES =
            Map.of(Kit.Sort.STOCKS, """
            {"name": "a", "kind": "colour-negative", "process": "C-41", "boxSpeed": 400, "filmSizes": ["135"],
             "latitude": {"underStops": 1, "overStops": 2}, "reciprocity": null}
            """, Kit.Sort.CAMERAS, """
            {"name": "a", "frameSize": "24x36", "frames": {"135": 36},
             "times": {"step": "full", "longest": "60s", "fastest": "1/8000"},
             "lenses": [{"key": "a", "name": "a", "focalMm": 50, "widest": 0.7, "narrowest": 90, "step": "full"}]}
            """, Kit.Sort.METERS, """
            {"name": "a", "shows": "pair"}
            """);

    /** Far more mistakes than anybody reads. */
    private static final int MOST = 30;

    private final Kit.Sort sort;
    private final String file;

    AllMistakes(Kit.Sort sort, String file) {
        this.sort = sort;
        this.file = file;
    }

    <T> ProfileReader.Read<T> read(String key, Json.Obj object, FieldsReader<T> reader) {
        Set<String> problems = new LinkedHashSet<>();
        Json.Obj mended = object;
        while (true) {
            ProfileNotes notes = new ProfileNotes();
            try {
                T profile = reader.read(key, new ProfileFields(file, mended, notes));
                if (problems.isEmpty()) {
                    return new ProfileReader.Read<>(Optional.of(profile), notes.remarks());
                }
                problems.addAll(notes.remarks());
                return new ProfileReader.Read<>(Optional.empty(), byLine(problems));
            } catch (JsonProblem e) {
                boolean isNew = problems.add(e.getMessage());
                Optional<Json.Obj> next =
                        isNew && problems.size() < MOST ? mended(mended, sample(), notes) : Optional.empty();
                if (next.isEmpty()) {
                    problems.addAll(notes.remarks());
                    return new ProfileReader.Read<>(Optional.empty(), byLine(problems));
                }
                mended = next.get();
            }
        }
    }

    private Json.Obj sample() {
        try {
            return (Json.Obj) JsonText.read(SAMPLES.get(sort));
        } catch (JsonText.NotJson e) {
            throw new IllegalStateException(e);
        }
    }

    /** With the sample's value, or without the wrong one where the sample has none. */
    private static Optional<Json.Obj> mended(Json.Obj object, Json.Obj sample, ProfileNotes notes) {
        String field = notes.field();
        if (notes.isAt(object)) {
            boolean isKnown =
                    sample.fields().containsKey(field) || object.fields().containsKey(field);
            return isKnown ? Optional.of(with(object, field, sample.fields().get(field))) : Optional.empty();
        }
        return inside(object, sample, notes);
    }

    /** The same of an object in an object; where the sample's has no such field, all of it is the sample's. */
    private static Optional<Json.Obj> inner(Json.Obj object, Json.Obj sample, ProfileNotes notes) {
        if (!notes.isAt(object)) {
            return inside(object, sample, notes);
        }
        return Optional.ofNullable(sample.fields().get(notes.field())).map(it -> with(object, notes.field(), it));
    }

    private static Optional<Json.Obj> inside(Json.Obj object, Json.Obj sample, ProfileNotes notes) {
        for (Map.Entry<String, Json> field : object.fields().entrySet()) {
            Json right = sample.fields().get(field.getKey());
            if (!holds(field.getValue(), notes)) {
                continue;
            }
            Optional<Json> inside = field.getValue() instanceof Json.Obj inner && right instanceof Json.Obj other
                    ? inner(inner, other, notes).map(it -> it)
                    : field.getValue() instanceof Json.Arr list && right instanceof Json.Arr others
                            ? item(list, others, notes)
                            : Optional.empty();
            return Optional.of(with(object, field.getKey(), inside.orElse(right)));
        }
        return Optional.empty();
    }

    private static Optional<Json> item(Json.Arr list, Json.Arr samples, ProfileNotes notes) {
        List<Json> items = new ArrayList<>();
        for (Json item : list.items()) {
            if (holds(item, notes)
                    && item instanceof Json.Obj inner
                    && samples.items().get(0) instanceof Json.Obj sample) {
                inner(inner, sample, notes).ifPresent(items::add);
            } else {
                items.add(item);
            }
        }
        return items.isEmpty() ? Optional.empty() : Optional.of(new Json.Arr(items, list.line()));
    }

    private static boolean holds(Json json, ProfileNotes notes) {
        return notes.isAt(json)
                || json instanceof Json.Obj object
                        && object.fields().values().stream().anyMatch(it -> holds(it, notes))
                || json instanceof Json.Arr list && list.items().stream().anyMatch(it -> holds(it, notes));
    }

    private static Json.Obj with(Json.Obj object, String field, Json value) {
        Map<String, Json> fields = new LinkedHashMap<>(object.fields());
        if (value == null) {
            fields.remove(field);
        } else {
            fields.put(field, value);
        }
        return new Json.Obj(fields, object.line());
    }

    /** In the order of the file. */
    private List<String> byLine(Set<String> problems) {
        List<String> sorted = new ArrayList<>(problems);
        sorted.sort((a, b) -> Integer.compare(line(a), line(b)));
        return sorted;
    }

    private int line(String problem) {
        int start = file.length() + 1;
        int end = problem.indexOf(':', start);
        return Integer.parseInt(problem.substring(start, end));
    }
}
