package takeup.console;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import takeup.disk.IoErrorText;
import takeup.grid.CharacterSet;
import takeup.json.DecimalFields;
import takeup.json.Json;
import takeup.json.JsonListText;
import takeup.json.JsonText;
import takeup.terminal.TerminalEnvironment;

/**
 * Where answers and errors go. In each line, characters that would steer a terminal are shown as escapes. A write that
 * fails makes the command fail.
 */
public final class Console {
    private final OutputStream answers;
    private final OutputStream errors;
    private final CharacterSet lettering;
    private boolean failed;

    public Console(OutputStream answers, OutputStream errors, Map<String, String> environment) {
        this.answers = answers;
        this.errors = errors;
        this.lettering = TerminalEnvironment.of(environment, false).characterSet() == CharacterSet.ASCII
                ? CharacterSet.ASCII
                : CharacterSet.UNICODE;
    }

    /** A line of an answer. */
    public void line(String text) {
        write(answers, lettering.of(text) + "\n");
    }

    /** Several lines of an answer. */
    public void lines(String text) {
        lines(text.lines().toList());
    }

    /** The same as a list: ten thousand lines go to the system in one write. */
    public void lines(List<String> lines) {
        StringBuilder all = new StringBuilder();
        lines.forEach(it -> all.append(lettering.of(it)).append('\n'));
        if (!lines.isEmpty()) {
            write(answers, all.toString());
        }
    }

    /** Text for other programs, as it is: UTF-8. */
    public void raw(String text) {
        write(answers, text);
    }

    /** A document for other programs as the whole answer, indented: what {@code takeup schema NAME} describes. */
    public void json(String name, Json.Obj fields) {
        raw(document(name, fields));
    }

    /** The same where it goes to a file. */
    public static String document(String name, Json.Obj fields) {
        return JsonText.pretty(DecimalFields.in(formatted(name, fields)));
    }

    /**
     * The same with a list in it that goes out item by item, however long it is.
     *
     * @param before the fields in front of the list
     */
    public JsonListText json(String name, Json.Obj before, String list) {
        return new JsonListText(formatted(name, before), list, this::raw);
    }

    private static Json.Obj formatted(String name, Json.Obj fields) {
        Json.Obj document = Json.object().and("format", "takeup-" + name).and("version", 1);
        fields.fields().forEach(document::and);
        return document;
    }

    /**
     * What went wrong, in one line: a line feed in it came with some name or word, and must not look like a second
     * message.
     */
    public void error(String text) {
        write(errors, "takeup: " + lettering.of(text) + "\n");
    }

    private void write(OutputStream to, String text) {
        try {
            to.write(text.getBytes(StandardCharsets.UTF_8));
            to.flush();
        } catch (IOException e) {
            if (!failed && to == answers && !isCut(e)) {
                failed = true;
                error("the answer could not be written: " + IoErrorText.words(e));
            }
            failed = true;
        }
    }

    /** Whether the reader closed the pipe, as head does: nothing to report. */
    private static boolean isCut(IOException e) {
        return String.valueOf(e.getMessage()).contains("Broken pipe");
    }

    /** Whether something could not be written. */
    public boolean failed() {
        return failed;
    }
}
