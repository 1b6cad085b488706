package takeup.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.console.InTerminal;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.RatedProfile;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.review.ConfidenceInterval;
import takeup.review.Finding;
import takeup.review.Lesson;
import takeup.review.LessonHtml;
import takeup.review.LessonText;
import takeup.review.VerdictCounts;
import takeup.text.Plain;

/**
 * {@code takeup review}: what all verdicts teach; a new rating goes into the photographer's own profile after a yes.
 */
final class ReviewSubcommand {
    private final Subcommands commands;
    private final Console out;

    ReviewSubcommand(Subcommands commands) {
        this.commands = commands;
        this.out = commands.out();
    }

    int run(boolean json, Optional<String> page, Optional<String> rate) throws IOException {
        boolean[] isBad = {false};
        VerdictCounts tally = new VerdictCounts();
        FramesSubcommand.forEach(
                commands, false, FramesSubcommand.Reviewed::new, it -> tally.add(it.roll(), it.review()), isBad);
        Lesson lesson = Lesson.of(tally);
        if (json) {
            out.raw(JsonText.pretty(json(tally, lesson)));
        } else {
            LessonText.of(tally, lesson).forEach(out::line);
        }
        if (page.isPresent()) {
            RollsSubcommand.write(
                    Path.of(page.get()), LessonHtml.of(tally, lesson).getBytes(StandardCharsets.UTF_8));
        }
        if (rate.isPresent()) {
            rate(rate.get(), lesson);
        } else if (!json) {
            lesson.findings().stream()
                    .filter(it -> it.kind() == Finding.Kind.RATING)
                    .map(ReviewSubcommand::stock)
                    .distinct()
                    .forEach(it -> out.line(
                            "takeup review --rate " + it + " writes that into your own profile, after a yes."));
        }
        return isBad[0] ? 1 : 0;
    }

    private static String stock(Finding finding) {
        return finding.rating().orElseThrow().stock();
    }

    /** Writes the rating that the lesson proposes into the photographer's own profile of that stock. */
    private void rate(String key, Lesson lesson) throws IOException {
        Finding finding = lesson.findings().stream()
                .filter(it -> it.kind() == Finding.Kind.RATING && stock(it).equals(key))
                .findFirst()
                .orElseThrow(() -> new CommandFailed(1, "the verdicts propose no other rating for " + key));
        write(key, LessonText.newIndex(finding));
    }

    /** Writes a usual index into the photographer's own profile of a stock, after a yes. */
    void write(String key, String index) throws IOException {
        Kit kit = commands.kit();
        Stock stock = kit.stock(key).orElseThrow(() -> new CommandFailed(1, kit.whyNot(Kit.Sort.STOCKS, key)));
        Path own = commands.folder().resolve("profiles").resolve("stocks").resolve(key + ".json");
        if (Plain.number(stock.usualIndex().arithmetic()).equals(index)) {
            out.line(key + " is usually rated at " + index + " already.");
            return;
        }
        String text = ProfileFiles.of(commands.folder())
                .file(Kit.Sort.STOCKS, key)
                .map(Kit.File::text)
                .flatMap(it -> RatedProfile.of(it, index))
                .orElseThrow(() -> new CommandFailed(
                        1, own + ": usualEI could not be found in it: change it by hand to " + index));
        if (!InTerminal.answersYes(
                out::line,
                "Write " + index + " instead of " + stock.usualIndex() + " as the usual index of " + stock.name()
                        + " into " + own + "? Type yes.")) {
            throw new CommandFailed(1, "nothing was written");
        }
        try (JournalStore held = JournalStore.take(commands.archive())) {
            Folders.replace(
                    held.archive()
                            .folder()
                            .resolve("profiles")
                            .resolve("stocks")
                            .resolve(key + ".json"),
                    text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new CommandFailed(1, "NOT SAVED: " + IoErrorText.words(e));
        }
        out.line(own + " says " + index + " from now on; a roll that is loaded already keeps its own.");
    }

    private static Json.Obj json(VerdictCounts tally, Lesson lesson) {
        List<Json.Obj> findings = lesson.findings().stream()
                .map(it -> Json.object()
                        .and("kind", it.kind().name().toLowerCase(Locale.ROOT))
                        .and("factor", it.factor())
                        .and("name", it.name())
                        .and("frames", it.frames())
                        .and("stops", stops(it.stops()))
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
                .and("scatter", lesson.isEnough() ? Optional.of(stops(lesson.scatter())) : Optional.empty());
    }

    static Json.Obj stops(ConfidenceInterval interval) {
        return Json.object()
                .and("estimate", Json.digits(interval.estimate(), 4))
                .and("low", Json.digits(interval.low(), 4))
                .and("high", Json.digits(interval.high(), 4));
    }
}
