package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.exposure.Scale;
import takeup.json.Json;
import takeup.json.JsonFields;
import takeup.json.JsonProblem;
import takeup.text.Nearest;
import takeup.text.Plain;

/**
 * The fields of one object of a profile, read one by one. What is asked for is known; what is left over at the end is
 * told with the nearest known name. A wrong value stops the reading.
 */
final class ProfileFields {
    private final String file;
    private final Json.Obj object;
    private final ProfileNotes notes;
    private final List<String> asked = new ArrayList<>(List.of("source", "note"));

    ProfileFields(String file, Json.Obj object, ProfileNotes notes) {
        this.file = file;
        this.object = object;
        this.notes = notes;
    }

    JsonProblem wrong(String field, String allowed) {
        notes.stoppedAt(object, field);
        return JsonFields.of(file, object).wrong(field, allowed);
    }

    JsonProblem wrong(Json at, String field, String allowed) {
        notes.stoppedAt(object, field);
        return JsonFields.of(file, object).wrong(at.line(), field, allowed);
    }

    /** Tells of fields that nobody asked for. */
    void done() {
        for (String field : object.fields().keySet()) {
            if (!asked.contains(field)) {
                notes.remark(JsonFields.of(file, object)
                        .wrong(field, "is no field known here, and is left out" + Nearest.question(field, asked))
                        .getMessage());
            }
        }
    }

    boolean has(String field) {
        asked.add(field);
        return object.field(field).isPresent();
    }

    private Json need(String field) {
        asked.add(field);
        Optional<Json> found = object.field(field);
        if (found.isEmpty()) {
            throw wrong(object, field, "is missing");
        }
        return found.get();
    }

    String text(String field) {
        if (need(field) instanceof Json.Text text
                && !text.value().isBlank()
                && text.value().length() <= 80) {
            return text.value();
        }
        throw wrong(field, "is text of 1 to 80 letters in quotes");
    }

    double number(String field, double least, double most) {
        if (need(field).isNumber(least, most)) {
            return ((Json.Num) need(field)).value();
        }
        throw wrong(field, "is a number from " + Plain.number(least) + " to " + Plain.number(most));
    }

    double number(String field, double least, double most, double otherwise) {
        return has(field) ? number(field, least, most) : otherwise;
    }

    /** A count: a part of a frame is refused, not cut off. */
    int whole(String field, int least, int most) {
        if (need(field).isWhole(least, most)) {
            return (int) ((Json.Num) need(field)).value();
        }
        throw wrong(field, "is a whole number from " + least + " to " + most);
    }

    boolean flag(String field) {
        if (!has(field)) {
            return false;
        }
        if (need(field) instanceof Json.Bool bool) {
            return bool.value();
        }
        throw wrong(field, "is true or false");
    }

    /** One of some words; "" for what is no text. */
    String word(String field) {
        return need(field) instanceof Json.Text text ? text.value() : "";
    }

    /** The word is none of those. */
    JsonProblem noneOf(String field, String allowed) {
        return wrong(need(field), field, "is one of " + allowed);
    }

    Optional<Scale> step() {
        if (!has("step")) {
            return Optional.empty();
        }
        String word = word("step");
        for (Scale scale : Scale.values()) {
            if (scale.name().toLowerCase(Locale.ROOT).equals(word)) {
                return Optional.of(scale);
            }
        }
        throw noneOf("step", "full, half, third");
    }

    ProfileFields inside(String field) {
        if (need(field) instanceof Json.Obj inner) {
            return new ProfileFields(file, inner, notes);
        }
        throw wrong(field, "is an object in braces");
    }

    List<Json> list(String field, int most) {
        if (need(field) instanceof Json.Arr array
                && !array.items().isEmpty()
                && array.items().size() <= most) {
            return array.items();
        }
        throw wrong(field, "is a list in brackets of 1 to " + most + " items");
    }

    ProfileFields inside(Json item, String field) {
        if (item instanceof Json.Obj inner) {
            return new ProfileFields(file, inner, notes);
        }
        throw wrong(item, field, "holds objects in braces");
    }

    /** An exposure time as text, in seconds as printed. */
    double seconds(String field) {
        return seconds(need(field), field);
    }

    double seconds(Json json, String field) {
        if (json instanceof Json.Text text) {
            double seconds = secondsOf(text.value());
            if (seconds > 0 && seconds <= 86_400) {
                return seconds;
            }
        }
        throw wrong(json, field, "is a time such as \"1/125\" or \"2s\"");
    }

    private static double secondsOf(String word) {
        if (word.startsWith("1/")) {
            return 1 / plain(word.substring(2));
        }
        return word.endsWith("s") ? plain(word.substring(0, word.length() - 1)) : -1;
    }

    /**
     * Digits with at most one point; -1 for anything else, also for what Java alone calls a number: {@code 125d},
     * {@code 0x10}.
     */
    private static double plain(String word) {
        int points = 0;
        for (int at = 0; at < word.length(); at++) {
            char c = word.charAt(at);
            points += c == '.' ? 1 : 0;
            if (c != '.' && !(c >= '0' && c <= '9')) {
                return -1;
            }
        }
        return points > 1 || word.length() == points ? -1 : Double.parseDouble(word);
    }

    Json.Obj object() {
        return object;
    }

    void ask(String field) {
        asked.add(field);
    }
}
