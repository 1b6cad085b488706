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

/** Reads any JSON with the parser of Jackson, and says where a text is none. */
final class ParsedJson {
    /** Brackets in brackets. */
    static final int DEPTH = 32;
    /** The digits of a number. */
    static final int DIGITS = 64;

    /** The letters of a whole text, and of a field's name. */
    static final int DOCUMENT = 8_000_000;

    static final int NAME = 200;

    static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEPTH)
                    .maxDocumentLength(DOCUMENT)
                    .maxStringLength(JsonText.LONGEST_EXPORTED)
                    .maxNumberLength(DIGITS)
                    .maxNameLength(NAME)
                    .build())
            .build();

    private final JsonParser parser;
    private final int longest;
    /** To ask where a value stands costs more than to read it, so a text of one line is not asked. */
    private final boolean isOfManyLines;

    private ParsedJson(JsonParser parser, int longest, boolean isOfManyLines) {
        this.parser = parser;
        this.longest = longest;
        this.isOfManyLines = isOfManyLines;
    }

    /** The one document of a text, in which a string has so many letters at most. */
    static Json read(String text, int longest, boolean isOfManyLines) throws JsonText.NotJson {
        try (JsonParser parser = FACTORY.createParser(text)) {
            try {
                return new ParsedJson(parser, longest, isOfManyLines).document();
            } catch (StreamConstraintsException e) {
                throw new JsonText.NotJson(
                        Math.max(1, parser.currentLocation().getLineNr()),
                        JsonMistake.beyond(e.getOriginalMessage(), longest));
            } catch (JsonProcessingException e) {
                int comma = JsonMistake.commaBeforeBracket(text, e);
                if (comma >= 0) {
                    throw new JsonText.NotJson(
                            1
                                    + (int) text.substring(0, comma)
                                            .chars()
                                            .filter(it -> it == '\n')
                                            .count(),
                            "a comma stands before a closing bracket, and nothing follows it: take the comma out");
                }
                throw new JsonText.NotJson(
                        e.getLocation() == null
                                ? 1
                                : Math.max(1, e.getLocation().getLineNr()),
                        JsonMistake.plainly(e.getOriginalMessage()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Json document() throws IOException, JsonText.NotJson {
        if (parser.nextToken() == null) {
            throw new JsonText.NotJson(1, "the file is empty");
        }
        Json json = value();
        if (parser.nextToken() != null) {
            throw new JsonText.NotJson(parser.currentTokenLocation().getLineNr(), "something follows after the end");
        }
        return json;
    }

    private Json value() throws IOException, JsonText.NotJson {
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
                        throw new JsonText.NotJson(value.line(), JsonMistake.plainly("Duplicate field '" + name + "'"));
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
                    throw new JsonText.NotJson(line, JsonMistake.tooLong(longest));
                }
                return new Json.Text(parser.getText(), line);
            case VALUE_NUMBER_INT:
            case VALUE_NUMBER_FLOAT: {
                double number = parser.getDoubleValue();
                if (!Double.isFinite(number)) {
                    throw new JsonText.NotJson(line, "a number is too large");
                }
                return new Json.Num(number, line);
            }
            case VALUE_TRUE:
            case VALUE_FALSE:
                return new Json.Bool(token == JsonToken.VALUE_TRUE, line);
            case VALUE_NULL:
                return new Json.Nil(line);
            default:
                throw new JsonText.NotJson(line, "this is not JSON");
        }
    }
}
