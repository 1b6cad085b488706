package takeup.kit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.exposure.Plain;

/**
 * JSON text to {@link Json} and back. Strict: duplicate names, a second document, deep nesting, endless strings and
 * numbers without an end (1e999) are refused.
 */
public final class JsonText {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(32).maxDocumentLength(8_000_000)
                    .maxStringLength(20_000).maxNumberLength(64).maxNameLength(200).build())
            .build();
    /** The level of what is not indented. */
    private static final int ONE_LINE = -1;

    private JsonText() {
    }

    /** Why a text is no acceptable JSON, and on which line. */
    public static final class NotJson extends Exception {
        private static final long serialVersionUID = 1;
        private final int line;

        NotJson(int line, String why) {
            super(why);
            this.line = line;
        }

        /** The line, from 1. */
        public int line() {
            return line;
        }
    }

    /** The one document that the text holds. */
    public static Json read(String text) throws NotJson {
        return read(text, text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0);
    }

    /** The same for a line of some file, whose values are not asked where they stand: all of them are on line 1. */
    public static Json readLine(String line) throws NotJson {
        return read(line, false);
    }

    private static Json read(String text, boolean manyLines) throws NotJson {
        try (JsonParser parser = FACTORY.createParser(text)) {
            try {
                return document(parser, manyLines);
            } catch (StreamConstraintsException e) {
                throw new NotJson(Math.max(1, parser.currentLocation().getLineNr()), beyond(e.getOriginalMessage()));
            } catch (JsonProcessingException e) {
                throw new NotJson(e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr()), plainly(e.getOriginalMessage()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Json document(JsonParser parser, boolean manyLines) throws IOException, NotJson {
        if (parser.nextToken() == null) {
            throw new NotJson(1, "the file is empty");
        }
        Json json = value(parser, manyLines);
        if (parser.nextToken() != null) {
            throw new NotJson(parser.currentTokenLocation().getLineNr(), "something follows after the end");
        }
        return json;
    }

    private static String beyond(String message) {
        return message.contains("nesting") ? "brackets stand in brackets, more than 32 deep"
                : message.startsWith("Number") ? "a number has more than 64 digits"
                : message.startsWith("Name") ? "a field's name has more than 200 letters"
                : message.startsWith("String") ? "a text has more than 20000 letters" : "it is longer than anything that is read here";
    }

    /** The first line of a parser's message, without what only a programmer could do about it. */
    private static String plainly(String message) {
        int end = message.indexOf('\n');
        String first = end < 0 ? message : message.substring(0, end);
        int advice = first.indexOf(": enable ");
        first = advice < 0 ? first : first.substring(0, advice);
        int aside = first.indexOf(" (");
        return "this is not JSON: " + (aside > 0 ? first.substring(0, aside) : first);
    }

    /** To ask where a value stands costs more than to read it, so a text of one line is not asked. */
    private static Json value(JsonParser parser, boolean manyLines) throws IOException, NotJson {
        int line = manyLines ? parser.currentTokenLocation().getLineNr() : 1;
        JsonToken token = parser.currentToken();
        switch (token) {
            case START_OBJECT: {
                Map<String, Json> fields = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    Json value = value(parser, manyLines);
                    // The parser can tell too, with a set of names of its own for each object.
                    if (fields.put(name, value) != null) {
                        throw new NotJson(value.line(), plainly("Duplicate field '" + name + "'"));
                    }
                }
                return new Json.Obj(fields, line);
            }
            case START_ARRAY: {
                List<Json> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value(parser, manyLines));
                }
                return new Json.Arr(items, line);
            }
            case VALUE_STRING:
                return new Json.Text(parser.getText(), line);
            case VALUE_NUMBER_INT:
            case VALUE_NUMBER_FLOAT: {
                double number = parser.getDoubleValue();
                if (!Double.isFinite(number)) {
                    throw new NotJson(line, "a number is too large");
                }
                return new Json.Num(number, line);
            }
            case VALUE_TRUE:
            case VALUE_FALSE:
                return new Json.Bool(token == JsonToken.VALUE_TRUE, line);
            case VALUE_NULL:
                return new Json.Nil(line);
            default:
                throw new NotJson(line, "this is not JSON");
        }
    }

    /** On one line, without blanks that mean nothing. */
    public static String line(Json json) {
        StringBuilder text = new StringBuilder(256);
        write(json, ONE_LINE, text);
        return text.toString();
    }

    /** On several lines, two blanks a level, ending in a line feed. */
    public static String pretty(Json json) {
        StringBuilder text = new StringBuilder(1024);
        write(json, 0, text);
        return text.append('\n').toString();
    }

    /** The form that Jackson gives it. Its generator, and a second look for what a terminal might obey, took a third of an archive's frames. */
    private static void write(Json json, int level, StringBuilder text) {
        if (json instanceof Json.Obj object) {
            char before = '{';
            for (Map.Entry<String, Json> field : object.fields().entrySet()) {
                text.append(before);
                turn(inside(level), text);
                quote(field.getKey(), text);
                text.append(level == ONE_LINE ? ":" : " : ");
                write(field.getValue(), inside(level), text);
                before = ',';
            }
            close(before, '{', level, text).append('}');
        } else if (json instanceof Json.Arr array) {
            char before = '[';
            for (Json item : array.items()) {
                text.append(before);
                turn(inside(level), text);
                write(item, inside(level), text);
                before = ',';
            }
            close(before, '[', level, text).append(']');
        } else if (json instanceof Json.Text string) {
            quote(string.value(), text);
        } else if (json instanceof Json.Num number) {
            text.append(Plain.number(number.value()));
        } else {
            text.append(json instanceof Json.Bool bool ? String.valueOf(bool.value()) : "null");
        }
    }

    private static int inside(int level) {
        return level == ONE_LINE ? ONE_LINE : level + 1;
    }

    private static void turn(int level, StringBuilder text) {
        if (level != ONE_LINE) {
            text.append('\n').append("  ".repeat(level));
        }
    }

    /** What stands in front of the closing bracket: a new line, or the opening one and a blank where nothing is between them. */
    private static StringBuilder close(char before, char opening, int level, StringBuilder text) {
        if (before == opening) {
            return text.append(opening).append(level == ONE_LINE ? "" : " ");
        }
        turn(level, text);
        return text;
    }

    /** In quotes; what a terminal might obey, and half a character that UTF-8 has no form for, as escapes. */
    private static void quote(String value, StringBuilder text) {
        text.append('"');
        int plain = 0;
        for (int at = 0; at < value.length(); at++) {
            char c = value.charAt(at);
            if (c >= ' ' && c < 0x7f && c != '"' && c != '\\') {
                continue;
            }
            int point = value.codePointAt(at);
            int length = Character.charCount(point);
            if (c == '"' || c == '\\' || Hidden.is(point)) {
                text.append(value, plain, at);
                escape(value, at, at + length, text);
                plain = at + length;
            }
            at += length - 1;
        }
        text.append(value, plain, value.length()).append('"');
    }

    private static void escape(String value, int from, int to, StringBuilder text) {
        for (int at = from; at < to; at++) {
            char c = value.charAt(at);
            int known = "\"\\\b\t\n\f\r".indexOf(c);
            if (known >= 0) {
                text.append('\\').append("\"\\btnfr".charAt(known));
            } else {
                text.append("\\u").append(Integer.toHexString(0x10000 | c), 1, 5);
            }
        }
    }
}
