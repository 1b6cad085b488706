package takeup.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.json.JsonFields;
import takeup.json.JsonProblem;

/**
 * A file {@code labs/KEY.json} to a lab. An unknown field is reported and ignored; with a wrong value the lab is not
 * used.
 */
final class JsonLab {
    private static final List<String> FIELDS = List.of(
            "note",
            "name",
            "processes",
            "scanSizes",
            "fileTypes",
            "asks",
            "needs",
            "usual",
            "paper",
            "sendWithinDays",
            "scansKeptDays",
            "negativesKeptDays",
            "source");

    private JsonLab() {}

    static Lab.Read read(String key, String file, String text) {
        List<String> problems = new ArrayList<>();
        try {
            JsonFields json = JsonFields.ofFile(file, text);
            unknown(json, FIELDS, problems);
            Wishes usual = Wishes.NONE;
            if (json.has("usual")) {
                JsonFields wishes = json.object("usual");
                unknown(wishes, Wish.fields(), problems);
                usual = wishes(wishes);
            }
            Lab lab = new Lab(
                    key,
                    named(json),
                    processes(json),
                    Map.of(Wish.SCAN_SIZE, texts(json, "scanSizes"), Wish.FILE_TYPE, texts(json, "fileTypes")),
                    new Lab.Form(
                            json.has("asks") ? among(json, "asks", FormColumn.fields()) : FormColumn.fields(),
                            among(json, "needs", needed()),
                            json.has("paper") ? json.oneOf("paper", List.of("A4", "Letter")) : "A4"),
                    usual,
                    new Deadlines(
                            days(json, "sendWithinDays").orElse(Lab.WAIT),
                            days(json, "scansKeptDays"),
                            days(json, "negativesKeptDays")));
            for (Wish wish : Wish.values()) {
                Optional<String> why = usual.of(wish).flatMap(it -> lab.whyNot(wish, it));
                if (why.isPresent()) {
                    throw json.wrong("usual", "asks for what the lab does not offer: " + why.get());
                }
            }
            return new Lab.Read(Optional.of(lab), problems);
        } catch (JsonProblem e) {
            problems.add(e.getMessage());
            return new Lab.Read(Optional.empty(), problems);
        }
    }

    private static void unknown(JsonFields json, List<String> known, List<String> problems) {
        for (String name : json.names()) {
            if (!known.contains(name)) {
                problems.add(
                        json.wrong(name, "is no field known here, and is left out; known: " + String.join(", ", known))
                                .getMessage());
            }
        }
    }

    private static String named(JsonFields json) {
        String name = json.text("name");
        if (name.isBlank() || name.length() > 100) {
            throw json.wrong("name", "is a name of 1 to 100 characters");
        }
        return name.strip();
    }

    static Wishes wishes(JsonFields json) {
        Wishes wishes = Wishes.NONE;
        for (Wish wish : Wish.values()) {
            if (json.has(wish.field())) {
                try {
                    wishes = wishes.with(wish, json.text(wish.field()));
                } catch (IllegalArgumentException e) {
                    throw json.wrong(wish.field(), "is too long");
                }
            }
        }
        return wishes;
    }

    private static Map<String, String> processes(JsonFields json) {
        Map<String, String> processes = new LinkedHashMap<>();
        Optional<JsonFields> all = json.maybeObject("processes");
        if (all.isPresent()) {
            for (String ours : all.get().names()) {
                processes.put(ours, all.get().text(ours));
            }
        }
        return processes;
    }

    private static List<String> needed() {
        List<String> needed = new ArrayList<>(Wish.fields());
        needed.add("reference");
        return needed;
    }

    private static List<String> texts(JsonFields json, String name) {
        return json.has(name) ? json.texts(name) : List.of();
    }

    private static List<String> among(JsonFields json, String name, List<String> known) {
        List<String> texts = texts(json, name);
        for (String text : texts) {
            if (!known.contains(text)) {
                throw json.wrong(name, "does not know " + text + "; known: " + String.join(", ", known));
            }
        }
        return texts;
    }

    static OptionalInt days(JsonFields json, String name) {
        return json.has(name) ? OptionalInt.of(json.whole(name, 1, 3650)) : OptionalInt.empty();
    }
}
