package takeup.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.disk.IoErrorText;
import takeup.dispatch.ThemeCommand;
import takeup.journal.Archive;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.roll.RollId;
import takeup.text.Nearest;

/**
 * What the photographer wants every day, from {@code settings.json} in the data folder: {@code {"theme": "sun",
 * "ascii": false, "framesLeft": 4}}. All of it may be left out, the file too. A mistake costs its own line and is told.
 *
 * @param theme the theme to start in; empty where none is named
 * @param ascii true to draw with plain characters
 * @param framesLeft how many frames are few, 0 to 36; empty for a quarter of the roll and at most 5
 * @param writer the letters that this laptop's roll numbers begin with, one to three capitals
 * @param problems what is wrong in the file, with file, line and what was taken instead
 */
public record Settings(
        Optional<String> theme, boolean ascii, OptionalInt framesLeft, String writer, List<String> problems) {
    /** The file as it is named in messages. */
    public static final String NAME = "settings.json";

    static final Settings NONE =
            new Settings(Optional.empty(), false, OptionalInt.empty(), Archive.FIRST_WRITER, List.of());

    private static final List<String> KNOWN = List.of("theme", "ascii", "framesLeft", "writer");
    private static final long LARGEST = 1 << 16;
    private static final int MOST = 36;

    public Settings {
        problems = List.copyOf(problems);
    }

    /** Those of a data folder. Nothing but one look at the disk where there is no such file. */
    public static Settings of(Path folder) {
        Path file = folder.resolve(NAME);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return NONE;
        }
        try {
            return read(InputFile.own(file, LARGEST));
        } catch (InputFile.Unusable e) {
            boolean isTooLarge = e.fault() == InputFile.Fault.TOO_LARGE;
            return bad(
                    1,
                    "this "
                            + (isTooLarge
                                    ? "is larger than any settings can be"
                                    : e.fault().words()));
        } catch (IOException e) {
            return bad(1, "it cannot be read: " + IoErrorText.words(e));
        }
    }

    /** The theme to start in: without colour where NO_COLOR asks for none. */
    public String startTheme(Map<String, String> environment) {
        return environment.getOrDefault("NO_COLOR", "").isEmpty() ? theme.orElse("dark") : "mono";
    }

    /** From the text of the file. */
    static Settings read(String text) {
        try {
            return JsonText.read(text) instanceof Json.Obj object
                    ? read(object)
                    : bad(1, "settings are one object in braces, such as {\"theme\": \"sun\"}");
        } catch (JsonText.NotJson e) {
            return bad(e.line(), e.getMessage());
        }
    }

    private static Settings bad(int line, String why) {
        return new Settings(
                Optional.empty(),
                false,
                OptionalInt.empty(),
                Archive.FIRST_WRITER,
                List.of(NAME + ":" + line + ": " + why + "; takeup goes on without its settings"));
    }

    private static Settings read(Json.Obj object) {
        List<String> problems = new ArrayList<>();
        Optional<String> theme = Optional.empty();
        boolean ascii = false;
        OptionalInt framesLeft = OptionalInt.empty();
        String writer = Archive.FIRST_WRITER;
        for (Map.Entry<String, Json> field : object.fields().entrySet()) {
            Json value = field.getValue();
            String where = NAME + ":" + value.line() + ": ";
            switch (field.getKey()) {
                case "theme" -> {
                    theme = value instanceof Json.Text text && ThemeCommand.THEMES.contains(text.value())
                            ? Optional.of(text.value())
                            : Optional.empty();
                    if (theme.isEmpty()) {
                        problems.add(
                                where + "theme is one of " + String.join(", ", ThemeCommand.THEMES) + "; dark is used"
                                        + (value instanceof Json.Text text
                                                ? Nearest.question(text.value(), ThemeCommand.THEMES)
                                                : ""));
                    }
                }
                case "ascii" -> {
                    ascii = value instanceof Json.Bool bool && bool.value();
                    if (!(value instanceof Json.Bool)) {
                        problems.add(where + "ascii is true or false; false is used");
                    }
                }
                case "framesLeft" -> {
                    framesLeft = value instanceof Json.Num number
                                    && number.value() >= 0
                                    && number.value() <= MOST
                                    && number.value() == Math.rint(number.value())
                            ? OptionalInt.of((int) number.value())
                            : OptionalInt.empty();
                    if (framesLeft.isEmpty()) {
                        problems.add(where + "framesLeft is a whole number from 0 to " + MOST
                                + "; a quarter of the roll, at most 5, is used");
                    }
                }
                case "writer" -> {
                    boolean fits = value instanceof Json.Text text
                            && RollId.parse(text.value() + "1")
                                    .filter(it -> it.letters().equals(text.value()))
                                    .isPresent();
                    writer = fits ? ((Json.Text) value).value() : writer;
                    if (!fits) {
                        problems.add(where + "writer is one to three capital letters, such as AB; "
                                + Archive.FIRST_WRITER + " is used: put it right before a film is loaded");
                    }
                }
                default ->
                    problems.add(where + field.getKey() + " is no setting known here, and is left out"
                            + Nearest.to(field.getKey(), KNOWN)
                                    .map(it -> "; did you mean " + it + "?")
                                    .orElse("; known: " + String.join(", ", KNOWN)));
            }
        }
        return new Settings(theme, ascii, framesLeft, writer, problems);
    }
}
