package takeup.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.text.Hidden;
import takeup.text.Plain;

/**
 * JSON text to {@link Json} and back. Strict: duplicate names, a second document, deep nesting, endless strings and
 * numbers without an end (1e999) are refused.
 */
public final class JsonText {
    /** A text may have so many letters: more than any note that can be typed. */
    private static final int LONGEST = 20_000;
    /** The same in an order or an exported roll, where one text may be made of several notes. */
    private static final int LONGEST_EXPORTED = 100_000;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(32)
                    .maxDocumentLength(8_000_000)
                    .maxStringLength(LONGEST_EXPORTED)
                    .maxNumberLength(64)
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
        StringBuilder line = new StringBuilder();
        append(json, line);
        return line.toString();
    }

    /** Written without the generator, which costs more than what it writes where there are many short lines. */
    private static void append(Json json, StringBuilder line) {
        if (json instanceof Json.Obj object) {
            char before = '{';
            for (Map.Entry<String, Json> field : object.fields().entrySet()) {
                append(field.getKey(), line.append(before));
                append(field.getValue(), line.append(':'));
                before = ',';
            }
            line.append(object.fields().isEmpty() ? "{}" : "}");
        } else if (json instanceof Json.Arr array) {
            char before = '[';
            for (Json item : array.items()) {
                append(item, line.append(before));
                before = ',';
            }
            line.append(array.items().isEmpty() ? "[]" : "]");
        } else if (json instanceof Json.Text string) {
            append(string.value(), line);
        } else if (json instanceof Json.Decimal number) {
            line.append(Plain.decimal(number.value()));
        } else if (json instanceof Json.Num number) {
            line.append(Plain.number(number.value()));
        } else if (json instanceof Json.Bool bool) {
            line.append(bool.value());
        } else {
            line.append("null");
        }
    }

    private static void append(String text, StringBuilder line) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c >= 0x7f || c == '"' || c == '\\') {
                line.append(write(new Json.Text(text, 0), false));
                return;
            }
        }
        line.append('"').append(text).append('"');
    }

    /** On several lines, two blanks a level, ending in a line feed. */
    public static String pretty(Json json) {
        return write(json, true) + "\n";
    }

    private static String write(Json json, boolean pretty) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            if (pretty) {
                DefaultIndenter indent = new DefaultIndenter("  ", "\n");
                generator.setPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
            }
            write(json, generator);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return plain(text.toString());
    }

    /**
     * What a terminal might obey, and half a character that UTF-8 has no form for, as escapes of JSON: they stand in
     * strings alone, but for the line feeds between the fields.
     */
    private static String plain(String json) {
        StringBuilder out = null;
        for (int at = plainAscii(json); at < json.length(); at += Character.charCount(json.codePointAt(at))) {
            int point = json.codePointAt(at);
            boolean hidden = point != '\n' && Hidden.is(point);
            if (hidden && out == null) {
                out = new StringBuilder(json.length() + 32).append(json, 0, at);
            }
            if (hidden) {
                for (char c : Character.toChars(point)) {
                    String hex = Integer.toHexString(c);
                    out.append("\\u").append("0000".substring(hex.length())).append(hex);
                }
            } else if (out != null) {
                out.appendCodePoint(point);
            }
        }
        return out == null ? json : out.toString();
    }

    /** How much of it is plain ASCII to begin with, in which the generator leaves nothing hidden; most often all. */
    private static int plainAscii(String json) {
        int at = 0;
        while (at < json.length() && json.charAt(at) < 0x7f) {
            at++;
        }
        return at;
    }

    private static void write(Json json, JsonGenerator generator) throws IOException {
        if (json instanceof Json.Obj object) {
            generator.writeStartObject();
            for (Map.Entry<String, Json> field : object.fields().entrySet()) {
                generator.writeFieldName(field.getKey());
                write(field.getValue(), generator);
            }
            generator.writeEndObject();
        } else if (json instanceof Json.Arr array) {
            generator.writeStartArray();
            for (Json item : array.items()) {
                write(item, generator);
            }
            generator.writeEndArray();
        } else if (json instanceof Json.Text string) {
            generator.writeString(string.value());
        } else if (json instanceof Json.Decimal number) {
            generator.writeNumber(Plain.decimal(number.value()));
        } else if (json instanceof Json.Num number) {
            generator.writeNumber(Plain.number(number.value()));
        } else if (json instanceof Json.Bool bool) {
            generator.writeBoolean(bool.value());
        } else {
            generator.writeNull();
        }
    }
}
