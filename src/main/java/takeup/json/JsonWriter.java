package takeup.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import takeup.text.Hidden;
import takeup.text.Plain;

/** {@link Json} as text: numbers as they are typed, and nothing in it that a terminal would obey. */
final class JsonWriter {
    private JsonWriter() {}

    /** On one line, without blanks that mean nothing. */
    static String line(Json json) {
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
    static String pretty(Json json) {
        return write(json, true) + "\n";
    }

    private static String write(Json json, boolean pretty) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = pretty ? indented(text) : JsonText.FACTORY.createGenerator(text)) {
            write(json, generator);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return plain(text.toString());
    }

    /** Two blanks a level. */
    static JsonGenerator indented(StringWriter text) throws IOException {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        return JsonText.FACTORY
                .createGenerator(text)
                .setPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
    }

    /**
     * What a terminal might obey, and half a character that UTF-8 has no form for, as escapes of JSON: they stand in
     * strings alone, but for the line feeds between the fields.
     */
    static String plain(String json) {
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

    static void write(Json json, JsonGenerator generator) throws IOException {
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
