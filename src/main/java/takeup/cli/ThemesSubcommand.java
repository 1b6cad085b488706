package takeup.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import takeup.console.Console;
import takeup.console.InTerminal;
import takeup.dispatch.ThemeCommand;
import takeup.files.ProcessEnvironment;
import takeup.grid.Theme;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.terminal.ThemeSample;
import takeup.text.Plain;

/** {@code takeup themes}: some lines in each theme; its colours go to a terminal only. */
@Command(
        name = "themes",
        description = "Shows the looks of the screen, some lines in each.",
        footer = {"", "For example:", "  takeup themes", "  takeup --theme night"})
final class ThemesSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Option(names = "--json", description = "The answer is a JSON object, with colours and contrast.")
    boolean json;

    @Override
    public Integer call() {
        Console out = global.console();
        List<Theme> themes = ThemeCommand.THEMES.stream()
                .map(it -> Theme.named(it).orElseThrow())
                .toList();
        if (json) {
            out.json(
                    "themes",
                    Json.object()
                            .and(
                                    "themes",
                                    themes.stream().map(ThemesSubcommand::json).toList()));
            return 0;
        }
        boolean isTerminal = InTerminal.isSeen();
        for (Theme theme : themes) {
            out.line(theme.name() + ": " + theme.purpose());
            out.line("  " + contrast(theme));
            if (isTerminal) {
                ThemeSample.painted(theme, ProcessEnvironment.variables()).forEach(it -> out.raw(it + "\n"));
            }
        }
        if (!isTerminal) {
            out.line("In each of them, in its colours where the answer goes to a terminal:");
            ThemeSample.words().forEach(out::line);
        }
        out.line("takeup --theme NAME starts in one; F9, or theme NAME on the prompt, changes it.");
        return 0;
    }

    private static String contrast(Theme theme) {
        double far = 21;
        double near = 21;
        for (ThemeSample sample : ThemeSample.of(theme)) {
            if (sample.contrast().isEmpty()) {
                return "contrast is that of the terminal";
            }
            double contrast = sample.contrast().getAsDouble();
            far = sample.isReadFromAfar() ? Math.min(far, contrast) : far;
            near = Math.min(near, contrast);
        }
        return "contrast: read from afar " + Plain.decimals(far, 1) + " to 1 or more, all else "
                + Plain.decimals(near, 1) + " to 1 or more";
    }

    private static Json.Obj json(Theme theme) {
        List<Json> looks = new ArrayList<>();
        for (ThemeSample sample : ThemeSample.of(theme)) {
            looks.add(Json.object()
                    .and("look", sample.role())
                    .and("foreground", sample.foreground())
                    .and("background", sample.background())
                    .and(
                            "contrast",
                            sample.contrast().isEmpty()
                                    ? sample.contrast()
                                    : Plain.rounded(sample.contrast().getAsDouble(), 4))
                    .and("bold", sample.bold())
                    .and("underline", sample.underline())
                    .and("reverse", sample.reverse()));
        }
        return Json.object()
                .and("theme", theme.name())
                .and("purpose", theme.purpose())
                .and("looks", looks);
    }
}
