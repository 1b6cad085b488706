package takeup.order;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An object of a JSON file, to take fields from; what is missing or wrong is told with file, line and field. Strict:
 * duplicate names, a second document, deep nesting and endless strings are refused.
 */
final class JsonFields {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(32)
                    .maxDocumentLength(8_000_000)
                    .maxStringLength(100_000)
                    .maxNumberLength(64)
                    .maxNameLength(200)
                    .build())
            .build();

    private final String file;
    private final String path;
    private final int line;
    private final Map<String, Value> fields;

    private JsonFields(String file, String path, int line, Map<String, Value> fields) {
        this.file = file;
        this.path = path;
        this.line = line;
        this.fields = fields;
    }

    /** A value and the line that it stands on; of an object a map, of an array a list, of null nothing. */
    private record Value(Optional<Object> is, int line) {}

    /** The one object that a file holds. */
    static JsonFields of(String file, String text) throws Unreadable {
        try (JsonParser parser = FACTORY.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new Unreadable(file, 1, "this is no JSON object");
            }
            Value value = value(parser, file);
            if (parser.nextToken() != null) {
                throw new Unreadable(
                        file, parser.currentTokenLocation().getLineNr(), "something follows after the end");
            }
            return new JsonFields(file, "", 1, object(value.is.orElseThrow()));
        } catch (JsonProcessingException e) {
            int at = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
            throw new Unreadable(file, at, "this is not JSON: " + first(e.getOriginalMessage()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String first(String message) {
        int end = message.indexOf('\n');
        String sentence = end < 0 ? message : message.substring(0, end);
        int aside = sentence.indexOf(" (");
        return aside > 0 ? sentence.substring(0, aside) : sentence;
    }

    private static Value value(JsonParser parser, String file) throws IOException, Unreadable {
        int line = parser.currentTokenLocation().getLineNr();
        switch (parser.currentToken()) {
            case START_OBJECT: {
                Map<String, Value> fields = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    fields.put(name, value(parser, file));
                }
                return new Value(Optional.of(fields), line);
            }
            case START_ARRAY: {
                List<Value> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value(parser, file));
                }
                return new Value(Optional.of(items), line);
            }
            case VALUE_STRING:
                return new Value(Optional.of(parser.getText()), line);
            case VALUE_TRUE, VALUE_FALSE:
                return new Value(Optional.of(parser.currentToken() == JsonToken.VALUE_TRUE), line);
            case VALUE_NULL:
                return new Value(Optional.empty(), line);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT: {
                double number = parser.getDoubleValue();
                if (!Double.isFinite(number)) {
                    throw new Unreadable(file, line, "a number is too large");
                }
                return new Value(Optional.of(number), line);
            }
            default:
                throw new Unreadable(file, line, "this is not JSON");
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Value> object(Object value) {
        return (Map<String, Value>) value;
    }

    private String place(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** What is wrong with a field, as something to throw. */
    Unreadable wrong(String name, String why) {
        Value value = fields.get(name);
        return new Unreadable(file, value == null ? line : value.line, place(name) + " " + why);
    }

    /** Says which of these fields is missing. */
    void mustHave(String... names) throws Unreadable {
        for (String name : names) {
            if (!fields.containsKey(name)) {
                throw wrong(name, "is missing");
            }
        }
    }

    Set<String> names() {
        return fields.keySet();
    }

    boolean has(String name) {
        Value value = fields.get(name);
        return value != null && value.is.isPresent();
    }

    private Object given(String name) throws Unreadable {
        Value value = fields.get(name);
        if (value == null) {
            throw wrong(name, "is missing");
        }
        return value.is.orElseThrow(() -> wrong(name, "is null, and must not be"));
    }

    String text(String name) throws Unreadable {
        if (given(name) instanceof String text) {
            return text;
        }
        throw wrong(name, "is no text");
    }

    Optional<String> maybeText(String name) throws Unreadable {
        return has(name) ? Optional.of(text(name)) : Optional.empty();
    }

    String oneOf(String name, List<String> allowed) throws Unreadable {
        String text = text(name);
        if (!allowed.contains(text)) {
            throw wrong(name, "is one of " + String.join(", ", allowed));
        }
        return text;
    }

    double number(String name, double least, double most) throws Unreadable {
        if (given(name) instanceof Double number && number >= least && number <= most) {
            return number;
        }
        throw wrong(name, "is a number from " + PrintedText.number(least) + " to " + PrintedText.number(most));
    }

    Optional<Double> maybeNumber(String name, double least, double most) throws Unreadable {
        return has(name) ? Optional.of(number(name, least, most)) : Optional.empty();
    }

    int whole(String name, int least, int most) throws Unreadable {
        double number = number(name, least, most);
        if (number != Math.rint(number)) {
            throw wrong(name, "is a whole number");
        }
        return (int) number;
    }

    boolean flag(String name) throws Unreadable {
        if (given(name) instanceof Boolean flag) {
            return flag;
        }
        throw wrong(name, "is true or false");
    }

    OffsetDateTime time(String name) throws Unreadable {
        try {
            return OffsetDateTime.parse(text(name));
        } catch (DateTimeException e) {
            throw wrong(name, "is no time with its offset, such as 2026-09-12T15:10:03+02:00");
        }
    }

    Optional<OffsetDateTime> maybeTime(String name) throws Unreadable {
        return has(name) ? Optional.of(time(name)) : Optional.empty();
    }

    JsonFields object(String name) throws Unreadable {
        if (given(name) instanceof Map<?, ?> map) {
            return new JsonFields(file, place(name), fields.get(name).line, object(map));
        }
        throw wrong(name, "is no object");
    }

    Optional<JsonFields> maybeObject(String name) throws Unreadable {
        return has(name) ? Optional.of(object(name)) : Optional.empty();
    }

    private List<Value> items(String name) throws Unreadable {
        if (given(name) instanceof List<?> list) {
            return list.stream().map(Value.class::cast).toList();
        }
        throw wrong(name, "is no list");
    }

    List<JsonFields> objects(String name) throws Unreadable {
        List<JsonFields> objects = new ArrayList<>();
        for (Value item : items(name)) {
            String where = place(name) + "[" + objects.size() + "]";
            if (!(item.is.orElse("") instanceof Map<?, ?> map)) {
                throw new Unreadable(file, item.line, where + " is no object");
            }
            objects.add(new JsonFields(file, where, item.line, object(map)));
        }
        return objects;
    }

    List<String> texts(String name) throws Unreadable {
        List<String> texts = new ArrayList<>();
        for (Value item : items(name)) {
            if (!(item.is.orElse(0) instanceof String text)) {
                throw new Unreadable(file, item.line, place(name) + " is a list of texts");
            }
            texts.add(text);
        }
        return texts;
    }
}
