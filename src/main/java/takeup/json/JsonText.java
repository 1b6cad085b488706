package takeup.json;

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

/**
 * JSON text to {@link Json} and back. Strict: duplicate names, a second document, deep nesting, endless strings and
 * numbers without an end (1e999) are refused.
 */
public final class JsonText {
    /** A text may have so many letters: more than any note that can be typed. */
    private static final int LONGEST = 20_000;
    /** The same in an order or an exported roll, where one text may be made of several notes. */
    private static final int LONGEST_EXPORTED = 100_000;

    /** Brackets in brackets. */
    private static final int DEPTH = 32;
    /** The digits of a number. */
    private static final int DIGITS = 64;

    static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEPTH)
                    .maxDocumentLength(8_000_000)
                    .maxStringLength(LONGEST_EXPORTED)
                    .maxNumberLength(DIGITS)
                    .maxNameLength(200)
                    .build())
            .build();

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

    private final JsonParser parser;
    private final int longest;
    /** To ask where a value stands costs more than to read it, so a text of one line is not asked. */
    private final boolean isOfManyLines;

    private JsonText(JsonParser parser, int longest, boolean isOfManyLines) {
        this.parser = parser;
        this.longest = longest;
        this.isOfManyLines = isOfManyLines;
    }

    /** The one document that the text holds. */
    public static Json read(String text) throws NotJson {
        return read(text, LONGEST, hasManyLines(text));
    }

    /** The same for a line of some file, whose values are not asked where they stand: all of them are on line 1. */
    public static Json readLine(String line) throws NotJson {
        return read(line, LONGEST, false);
    }

    /**
     * Whether a line that {@link #line} made is one that {@link #readLine} takes, as a look at its characters tells
     * without reading it; no answer is false too. In such a line only words too long, a number that is none, too large
     * or has too many digits, and brackets too deep are refused.
     */
    public static boolean isSurelyReadable(String line) {
        if (line.length() > LONGEST) {
            return false;
        }
        boolean isText = false;
        int digits = 0;
        int opened = 0;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c < ' ' || c >= 0x7f) {
                return false;
            }
            if (isText) {
                isText = c != '"';
                i += c == '\\' ? 1 : 0;
            } else {
                isText = c == '"';
                boolean isExponent = digits > 0 && (c == 'e' || c == 'E');
                digits = c >= '0' && c <= '9' ? digits + 1 : 0;
                opened += c == '{' || c == '[' ? 1 : 0;
                if (isExponent || c == 'N' || c == 'I' || digits > DIGITS || opened > DEPTH) {
                    return false;
                }
            }
        }
        return !isText;
    }

    /** The same for an order or an exported roll. */
    public static Json readExported(String text) throws NotJson {
        return read(text, LONGEST_EXPORTED, hasManyLines(text));
    }

    private static boolean hasManyLines(String text) {
        return text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0;
    }

    private static Json read(String text, int longest, boolean isOfManyLines) throws NotJson {
        try (JsonParser parser = FACTORY.createParser(text)) {
            try {
                return new JsonText(parser, longest, isOfManyLines).document();
            } catch (StreamConstraintsException e) {
                throw new NotJson(
                        Math.max(1, parser.currentLocation().getLineNr()),
                        JsonMistake.beyond(e.getOriginalMessage(), longest));
            } catch (JsonProcessingException e) {
                int comma = JsonMistake.commaBeforeBracket(text, e);
                if (comma >= 0) {
                    throw new NotJson(
                            1
                                    + (int) text.substring(0, comma)
                                            .chars()
                                            .filter(it -> it == '\n')
                                            .count(),
                            "a comma stands before a closing bracket, and nothing follows it: take the comma out");
                }
                throw new NotJson(
                        e.getLocation() == null
                                ? 1
                                : Math.max(1, e.getLocation().getLineNr()),
                        JsonMistake.plainly(e.getOriginalMessage()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Json document() throws IOException, NotJson {
        if (parser.nextToken() == null) {
            throw new NotJson(1, "the file is empty");
        }
        Json json = value();
        if (parser.nextToken() != null) {
            throw new NotJson(parser.currentTokenLocation().getLineNr(), "something follows after the end");
        }
        return json;
    }

    private Json value() throws IOException, NotJson {
        int line = isOfManyLines ? parser.currentTokenLocation().getLineNr() : 1;
        JsonToken token = parser.currentToken();
        switch (token) {
            case START_OBJECT: {
                Map<String, Json> fields = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    Json value = value();
                    // The parser can tell too, with a set of names of its own for each object.
                    if (fields.put(name, value) != null) {
                        throw new NotJson(value.line(), JsonMistake.plainly("Duplicate field '" + name + "'"));
                    }
                }
                return new Json.Obj(fields, line);
            }
            case START_ARRAY: {
                List<Json> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value());
                }
                return new Json.Arr(items, line);
            }
            case VALUE_STRING:
                if (parser.getTextLength() > longest) {
                    throw new NotJson(line, JsonMistake.tooLong(longest));
                }
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
        return JsonWriter.line(json);
    }

    /** On several lines, two blanks a level, ending in a line feed. */
    public static String pretty(Json json) {
        return JsonWriter.pretty(json);
    }
}
