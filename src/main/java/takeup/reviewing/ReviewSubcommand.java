package takeup.reviewing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.options.OutputOption;
import takeup.review.Finding;
import takeup.review.Lesson;
import takeup.review.LessonHtml;
import takeup.review.LessonText;
import takeup.review.VerdictCounts;

/**
 * {@code takeup review}: what all verdicts teach; a new rating goes into the photographer's own profile after a yes.
 */
@Command(
        name = "review",
        description = {
            "Says what the verdicts on all frames teach: consistent, change the rating; scattered, "
                    + "technique or equipment;",
            "one body only, that shutter. With too few frames it says so."
        })
public final class ReviewSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Option(names = "--html", paramLabel = "FILE", description = "Also writes a page with its plots.")
    String page;

    @Option(
            names = "--rate",
            paramLabel = "STOCK",
            description = "Writes the proposed rating into your own profile of that stock, after a yes.")
    String rate;

    @Override
    public Integer call() throws IOException {
        Console console = global.console();
        VerdictCounts tally = new VerdictCounts();
        boolean isWhole = ArchivedRolls.reviewed(global)
                .forEach(ArchivedRolls.Reviewed::new, it -> tally.add(it.roll(), it.review()));
        Lesson lesson = Lesson.of(tally);
        if (json.isAsked()) {
            console.json("review", json(tally, lesson));
        } else {
            LessonText.of(tally, lesson).forEach(console::line);
        }
        if (page != null) {
            OutputOption.write(Path.of(page), LessonHtml.of(tally, lesson));
        }
        if (rate != null) {
            rate(lesson);
        } else if (!json.isAsked()) {
            lesson.findings().stream()
                    .filter(it -> it.kind() == Finding.Kind.RATING)
                    .map(ReviewSubcommand::stock)
                    .distinct()
                    .forEach(it -> console.line(
                            "takeup review --rate " + it + " writes that into your own profile, after a yes."));
        }
        return isWhole ? 0 : 1;
    }

    private static String stock(Finding finding) {
        return finding.rating().orElseThrow().stock();
    }

    /** Writes the rating that the lesson proposes into the photographer's own profile of that stock. */
    private void rate(Lesson lesson) {
        Finding finding = lesson.findings().stream()
                .filter(it -> it.kind() == Finding.Kind.RATING && stock(it).equals(rate))
                .findFirst()
                .orElseThrow(() -> new CommandFailed(1, "the verdicts propose no other rating for " + rate));
        new RatedStock(global, rate).write(LessonText.newIndex(finding));
    }

    private static Json.Obj json(VerdictCounts tally, Lesson lesson) {
        List<Json.Obj> findings = lesson.findings().stream()
                .map(it -> Json.object()
                        .and("kind", it.kind().name().toLowerCase(Locale.ROOT))
                        .and("factor", it.factor())
                        .and("name", it.name())
                        .and("frames", it.frames())
                        .and("stops", IntervalJson.of(it.stops()))
                        .and("alike", it.otherCauses())
                        .and("proposedIndex", it.newIndex())
                        .and("text", LessonText.words(it)))
                .toList();
        return Json.object()
                .and("rolls", tally.rolls())
                .and("judged", tally.judged())
                .and("usable", tally.usable())
                .and("enough", lesson.isEnough())
                .and("findings", findings)
                .and("scatter", lesson.isEnough() ? Optional.of(IntervalJson.of(lesson.scatter())) : Optional.empty());
    }
}
