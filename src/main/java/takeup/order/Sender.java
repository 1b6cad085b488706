package takeup.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.json.Json;
import takeup.json.JsonFields;
import takeup.json.JsonProblem;
import takeup.json.JsonText;

/**
 * Whose film it is: name, account at the lab, telephone, e-mail and return address, as a lab wants to know it on sheet
 * and label. Asked once, kept in {@code sender.json}; a line that is empty was not given.
 *
 * @param name who sends it
 * @param account the number or name of the account at the lab
 * @param telephone as it is dialled
 * @param email as it is written
 * @param address where the film goes back to, on one line
 */
public record Sender(String name, String account, String telephone, String email, String address) {
    private static final int LONGEST = 300;
    private static final List<String> FIELDS = List.of("name", "account", "telephone", "email", "address");
    /** What its JSON as an answer has too. */
    private static final List<String> OF_ANSWERS = List.of("format", "version");

    public Sender {
        for (String field : List.of(name, account, telephone, email, address)) {
            if (field.length() > LONGEST) {
                throw new IllegalArgumentException("a line of the sender has up to " + LONGEST + " characters");
            }
        }
    }

    /** Nobody is named. */
    public static final Sender NOBODY = new Sender("", "", "", "", "");

    /** The sender that a file holds; an unknown field is wrong, so that a misspelt one is not lost. */
    public static Sender read(String file, String text) {
        JsonFields json = JsonFields.ofFile(file, text);
        for (String field : json.names()) {
            if (!FIELDS.contains(field) && !OF_ANSWERS.contains(field)) {
                throw json.wrong(field, "is not a field of the sender; known: " + String.join(", ", FIELDS));
            }
        }
        return of(json);
    }

    /** The sender in an object of a file. */
    static Sender of(JsonFields json) {
        try {
            return new Sender(
                    line(json, "name"),
                    line(json, "account"),
                    line(json, "telephone"),
                    line(json, "email"),
                    line(json, "address"));
        } catch (IllegalArgumentException e) {
            throw json.wrong("name", e.getMessage());
        }
    }

    private static String line(JsonFields json, String field) throws JsonProblem {
        return json.has(field) ? json.maybeText(field).orElse("").strip() : "";
    }

    /** The file that holds it, ending in a line feed. */
    public String json() {
        return JsonText.pretty(object());
    }

    /** Each line by its name in the file; null is not known. */
    public Json.Obj object() {
        return Json.object()
                .and("name", known(name))
                .and("account", known(account))
                .and("telephone", known(telephone))
                .and("email", known(email))
                .and("address", known(address));
    }

    private static Optional<String> known(String line) {
        return Optional.of(line).filter(it -> !it.isEmpty());
    }

    /** Whether nothing is known of it. */
    public boolean isNobody() {
        return equals(NOBODY);
    }

    /** What was given, each with its name on paper. */
    public Map<String, String> lines() {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("from", name);
        lines.put("account", account);
        lines.put("telephone", telephone);
        lines.put("e-mail", email);
        lines.put("return to", address);
        lines.values().removeIf(String::isEmpty);
        return lines;
    }

    /** What fits on a label: the name, then the account, else the telephone, else the e-mail. */
    String brief() {
        List<String> parts = new ArrayList<>();
        parts.add(name);
        if (!account.isEmpty()) {
            parts.add("account " + account);
        } else {
            parts.add(telephone.isEmpty() ? email : telephone);
        }
        parts.removeIf(String::isEmpty);
        return PrintedText.of(String.join(" · ", parts));
    }
}
