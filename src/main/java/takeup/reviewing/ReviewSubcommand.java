package takeup.reviewing;

import java.io.IOException;
import java.util.ArrayList;
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
import takeup.index.ListedRoll;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.options.OutputOption;
import takeup.review.Finding;
import takeup.review.Lesson;
import takeup.review.LessonHtml;
import takeup.review.LessonText;
import takeup.review.VerdictCounts;
import takeup.roll.Roll;

/**
 * {@code takeup review}: what all verdicts teach; a new rating goes into the photographer's own profile after a yes.
 */
@Command(
        name = "review",
        description = {
            "Says what the verdicts on all frames teach: consistent, change the rating; scattered, "
                    + "technique or equipment; one body only, that shutter.",
            "With too few frames it says so."
        },
        footer = {"", "For example:", "  takeup review", "  takeup review --html -o lesson.html"})
public final class ReviewSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Option(names = "--html", description = "As a page with plots; a FILE that ends in .html is one too.")
    boolean html;

    @Mixin
    OutputOption output;

    @Option(names = "--rate", description = "Writes the rating into your own profile of the stock, after a yes.")
    boolean rate;

    @Option(
            names = "--stock",
            paramLabel = "KEY",
            description = "With --rate: the stock's key, where several ratings are proposed.")
    String stock;

    /** The command with nothing but this. */
    public static ReviewSubcommand of(GlobalOptions global, boolean isJson) {
        ReviewSubcommand review = new ReviewSubcommand();
        review.global = global;
        review.json = JsonOption.asked(isJson);
        review.output = new OutputOption();
        return review;
    }

    @Override
    public Integer call() throws IOException {
        refuseWhatDoesNotGoTogether();
        Console console = global.console();
        VerdictCounts tally = new VerdictCounts();
        boolean isWhole = ArchivedRolls.reviewed(global).forEach(ListedRoll.KIND, it -> {
            if (it.head().summary().state() != Roll.State.WITHDRAWN) {
                tally.add(it.verdicts());
            }
        });
        Lesson lesson = Lesson.of(tally);
        if (json.isAsked()) {
            output.exact(console, Console.document("review", json(tally, lesson)));
        } else if (html || output.endsWith(".html", ".htm")) {
            output.exact(console, LessonHtml.of(tally, lesson));
        } else {
            List<String> lines = new ArrayList<>(LessonText.of(tally, lesson));
            if (!rate) {
                stocks(lesson)
                        .forEach(it -> lines.add("takeup review --rate --stock " + it
                                + " writes that into your own profile, after a yes."));
            }
            output.text(console, String.join("\n", lines) + "\n");
        }
        if (rate) {
            rate(lesson);
        }
        return isWhole ? 0 : 1;
    }

    private void refuseWhatDoesNotGoTogether() {
        if (json.isAsked() && html) {
            throw new CommandFailed(2, "--json or --html, one of them");
        }
        if (stock != null && !rate) {
            throw new CommandFailed(2, "--stock goes with --rate");
        }
    }

    /** The stocks that another rating is proposed for. */
    private static List<String> stocks(Lesson lesson) {
        return lesson.findings().stream()
                .filter(it -> it.kind() == Finding.Kind.RATING)
                .map(ReviewSubcommand::stock)
                .distinct()
                .toList();
    }

    private static String stock(Finding finding) {
        return finding.rating().orElseThrow().stock();
    }

    /** Writes the rating that the lesson proposes into the photographer's own profile of that stock. */
    private void rate(Lesson lesson) {
        List<String> proposed = stocks(lesson);
        if (stock == null && proposed.size() > 1) {
            throw new CommandFailed(
                    2, "other ratings are proposed for " + String.join(", ", proposed) + ": name one with --stock");
        }
        String key = stock != null ? stock : proposed.stream().findFirst().orElse("any stock");
        Finding finding = lesson.findings().stream()
                .filter(it -> it.kind() == Finding.Kind.RATING && stock(it).equals(key))
                .findFirst()
                .orElseThrow(() -> new CommandFailed(1, "the verdicts propose no other rating for " + key));
        new RatedStock(global, key).write(LessonText.newIndex(finding));
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
