package takeup.json;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.text.Plain;

/**
 * The fields of an object in a file that a person or another program may have written, read one by one. A field that is
 * missing or wrong is a {@link JsonProblem} with file, line, field and what is allowed there: {@code labs/own.json:1:
 * processes.C-41 is no text}.
 */
public final class JsonFields {
    private final String file;
    /** Where the object stands in the file, to be named in front of its fields; empty for the whole file. */
    private final String path;

    private final Json.Obj object;

    private JsonFields(String file, String path, Json.Obj object) {
        this.file = file;
        this.path = path;
        this.object = object;
    }

    /** Those of an object of a file, named in messages without where in the file it stands. */
    public static JsonFields of(String file, Json.Obj object) {
        return new JsonFields(file, "", object);
    }

    /** The one object that an order, a lab's or an exported roll's file holds. */
    public static JsonFields ofFile(String file, String text) {
        try {
            if (!text.isBlank() && JsonText.readExported(text) instanceof Json.Obj object) {
                return new JsonFields(file, "", object);
            }
        } catch (JsonText.NotJson e) {
            throw new JsonProblem(file, e.line(), e.getMessage());
        }
        throw new JsonProblem(file, 1, "this is no JSON object");
    }

    public Json.Obj object() {
        return object;
    }

    public Set<String> names() {
        return object.fields().keySet();
    }

    private String place(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** The line of a field; of the object where it has no such field. */
    public int line(String name) {
        Json value = object.fields().get(name);
        return value == null ? object.line() : value.line();
    }

    /** What is wrong with a field, as something to throw. */
    public JsonProblem wrong(String name, String why) {
        return wrong(line(name), name, why);
    }

    /** The same of something inside the field, on its own line. */
    public JsonProblem wrong(int line, String name, String why) {
        return new JsonProblem(file, line, place(name) + " " + why);
    }

    /** Refuses the object if one of these fields is missing; null is enough. */
    public void mustHave(String... names) {
        for (String name : names) {
            if (!object.fields().containsKey(name)) {
                throw wrong(name, "is missing");
            }
        }
    }

    /** Whether the field is there and not null. */
    public boolean has(String name) {
        return object.field(name).isPresent();
    }

    private Json need(String name) {
        mustHave(name);
        return object.field(name).orElseThrow(() -> wrong(name, "is null, and must not be"));
    }

    public String text(String name) {
        if (need(name) instanceof Json.Text text) {
            return text.value();
        }
        throw wrong(name, "is no text");
    }

    public Optional<String> maybeText(String name) {
        return has(name) ? Optional.of(text(name)) : Optional.empty();
    }

    public String oneOf(String name, List<String> allowed) {
        String text = text(name);
        if (!allowed.contains(text)) {
            throw wrong(name, "is one of " + String.join(", ", allowed));
        }
        return text;
    }

    public double number(String name, double least, double most) {
        if (need(name).isNumber(least, most)) {
            return ((Json.Num) need(name)).value();
        }
        throw wrong(name, "is a number from " + Plain.number(least) + " to " + Plain.number(most));
    }

    public Optional<Double> maybeNumber(String name, double least, double most) {
        return has(name) ? Optional.of(number(name, least, most)) : Optional.empty();
    }

    public int whole(String name, int least, int most) {
        double number = number(name, least, most);
        if (number != Math.rint(number)) {
            throw wrong(name, "is a whole number");
        }
        return (int) number;
    }

    public boolean flag(String name) {
        if (need(name) instanceof Json.Bool flag) {
            return flag.value();
        }
        throw wrong(name, "is true or false");
    }

    public OffsetDateTime time(String name) {
        try {
            return OffsetDateTime.parse(text(name));
        } catch (DateTimeException e) {
            throw wrong(name, "is no time with its offset, such as 2026-09-12T15:10:03+02:00");
        }
    }

    public Optional<OffsetDateTime> maybeTime(String name) {
        return has(name) ? Optional.of(time(name)) : Optional.empty();
    }

    public JsonFields object(String name) {
        if (need(name) instanceof Json.Obj inner) {
            return new JsonFields(file, place(name), inner);
        }
        throw wrong(name, "is no object");
    }

    public Optional<JsonFields> maybeObject(String name) {
        return has(name) ? Optional.of(object(name)) : Optional.empty();
    }

    private List<Json> items(String name) {
        if (need(name) instanceof Json.Arr list) {
            return list.items();
        }
        throw wrong(name, "is no list");
    }

    public List<JsonFields> objects(String name) {
        List<JsonFields> objects = new ArrayList<>();
        for (Json item : items(name)) {
            String where = name + "[" + objects.size() + "]";
            if (!(item instanceof Json.Obj inner)) {
                throw wrong(item.line(), where, "is no object");
            }
            objects.add(new JsonFields(file, place(where), inner));
        }
        return objects;
    }

    public List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        for (Json item : items(name)) {
            if (!(item instanceof Json.Text text)) {
                throw wrong(item.line(), name, "is a list of texts");
            }
            texts.add(text.value());
        }
        return texts;
    }
}
