package takeup.kit;

import java.util.List;
import java.util.Optional;
import takeup.json.Json;
import takeup.json.JsonText;

/** Profiles of cameras, stocks and meters from the text of their files. */
public final class ProfileReader {
    private ProfileReader() {}

    /**
     * What came of one file.
     *
     * @param profile the profile, unless something in the file was wrong
     * @param problems each with file, line, field and what is allowed; with a profile they are remarks only
     */
    public record Read<T>(Optional<T> profile, List<String> problems) {}

    /** A camera from the text of {@code cameras/KEY.json}. */
    public static Read<Camera> camera(String key, String file, String text) {
        return read(Kit.Sort.CAMERAS, key, file, text, new CameraReader());
    }

    /** A stock from the text of {@code stocks/KEY.json}. */
    public static Read<Stock> stock(String key, String file, String text) {
        return read(Kit.Sort.STOCKS, key, file, text, new StockReader());
    }

    /** A meter from the text of {@code meters/KEY.json}. */
    public static Read<Meter> meter(String key, String file, String text) {
        return read(Kit.Sort.METERS, key, file, text, new MeterReader());
    }

    private static <T> Read<T> read(Kit.Sort sort, String key, String file, String text, FieldsReader<T> reader) {
        try {
            if (!(JsonText.read(text) instanceof Json.Obj object)) {
                return new Read<>(Optional.empty(), List.of(file + ":1: a profile is one object in braces"));
            }
            return new AllMistakes(sort, file).read(key, object, reader);
        } catch (JsonText.NotJson e) {
            return new Read<>(Optional.empty(), List.of(file + ":" + e.line() + ": " + e.getMessage()));
        }
    }

    /** Whether a word can be a key: letters, digits, - and _. */
    public static boolean isKey(String word) {
        for (int at = 0; at < word.length(); at++) {
            char c = word.charAt(at);
            if (!(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-' || c == '_')) {
                return false;
            }
        }
        // What begins with a stroke would be an option to every command that it is handed to.
        return !word.isEmpty() && word.length() <= 40 && word.charAt(0) != '-';
    }
}
