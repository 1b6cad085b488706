package takeup.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import takeup.ordering.OrderSubcommand;
import takeup.profiles.CameraSubcommand;
import takeup.profiles.StockSubcommand;
import takeup.reviewing.CostsSubcommand;
import takeup.reviewing.DigitalSubcommand;
import takeup.reviewing.FindSubcommand;
import takeup.reviewing.FramesSubcommand;
import takeup.reviewing.RatingSubcommand;
import takeup.reviewing.ReviewSubcommand;
import takeup.reviewing.ScansSubcommand;
import takeup.reviewing.SlateSubcommand;

/** All commands by the part of the day that they belong to, in the order of the help; the screen itself comes first. */
enum PartOfDay {
    SCREEN("The screen", DemoSubcommand.class, KeysSubcommand.class, ThemesSubcommand.class),
    PREPARE(
            "The evening before",
            PrepareSubcommand.class,
            PlanSubcommand.class,
            StockSubcommand.class,
            CameraSubcommand.class,
            PaperSubcommand.class),
    SHOOT(
            "On the set, without the screen",
            LineSubcommand.class,
            MeterSubcommand.class,
            RollsSubcommand.class,
            RollSubcommand.class,
            SlateSubcommand.class),
    CLOSE("The end of the day", DayEndSubcommand.class),
    HAND_OVER("The lab", OrderSubcommand.class),
    LEARN(
            "The scans are back",
            ScansSubcommand.class,
            DigitalSubcommand.class,
            ReviewSubcommand.class,
            RatingSubcommand.class,
            FramesSubcommand.class,
            FindSubcommand.class,
            DevelopedSubcommand.class,
            CostsSubcommand.class),
    PROGRAM(
            "takeup itself",
            HelpSubcommand.class,
            ManSubcommand.class,
            PathsSubcommand.class,
            CheckSubcommand.class,
            SchemaSubcommand.class,
            CompletionSubcommand.class,
            VersionSubcommand.class);

    private final String title;
    private final List<Class<?>> commands;

    PartOfDay(String title, Class<?>... commands) {
        this.title = title;
        this.commands = List.of(commands);
    }

    String title() {
        return title;
    }

    List<String> names() {
        return commands.stream().map(PartOfDay::name).toList();
    }

    /** Every command by its name, in the order of the help. */
    static Map<String, Class<?>> commands() {
        Map<String, Class<?>> all = new LinkedHashMap<>();
        Arrays.stream(values()).flatMap(it -> it.commands.stream()).forEach(it -> all.put(name(it), it));
        return all;
    }

    /** {@code day-end} of {@code DayEndSubcommand}: to read all annotations takes longer than most commands. */
    private static String name(Class<?> command) {
        String name = command.getSimpleName().replace("Subcommand", "");
        StringBuilder words = new StringBuilder();
        for (char letter : name.toCharArray()) {
            if (Character.isUpperCase(letter)) {
                words.append(words.isEmpty() ? "" : "-").append(Character.toLowerCase(letter));
            } else {
                words.append(letter);
            }
        }
        return words.toString();
    }
}
