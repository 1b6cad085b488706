package takeup.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A document with one list of any length in it, as {@link JsonText#pretty} writes it: the items go out as they come, so
 * that nobody holds them all.
 */
public final class JsonListText {
    /** So many characters go out in one write. */
    private static final int AT_A_TIME = 32_768;

    private final StringWriter text = new StringWriter();
    private final JsonGenerator generator;
    private final Consumer<String> out;

    /**
     * Begins a document.
     *
     * @param before the fields in front of the list
     * @param out takes the text piece by piece
     */
    public JsonListText(Json.Obj before, String list, Consumer<String> out) {
        this.out = out;
        try {
            this.generator = JsonWriter.indented(text);
            generator.writeStartObject();
            fields(before);
            generator.writeArrayFieldStart(list);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The next item of the list. */
    public void item(Object value) {
        try {
            JsonWriter.write(DecimalFields.in(Json.of(value)), generator);
            generator.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (text.getBuffer().length() > AT_A_TIME) {
            send();
        }
    }

    /**
     * Ends the list and the document.
     *
     * @param after the fields behind the list
     */
    public void end(Json.Obj after) {
        try {
            generator.writeEndArray();
            fields(after);
            generator.writeEndObject();
            generator.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        text.append('\n');
        send();
    }

    private void fields(Json.Obj object) throws IOException {
        Json.Obj decimals = (Json.Obj) DecimalFields.in(object);
        for (Map.Entry<String, Json> field : decimals.fields().entrySet()) {
            generator.writeFieldName(field.getKey());
            JsonWriter.write(field.getValue(), generator);
        }
    }

    private void send() {
        out.accept(JsonWriter.plain(text.toString()));
        text.getBuffer().setLength(0);
    }
}
