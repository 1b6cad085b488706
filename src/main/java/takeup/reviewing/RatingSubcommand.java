package takeup.reviewing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.exposure.Stops;
import takeup.json.Json;
import takeup.kit.Stock;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.options.RollArgument;
import takeup.review.Density;
import takeup.review.Finding;
import takeup.review.FrameKey;
import takeup.review.RatingTest;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.text.English;
import takeup.text.Plain;
import takeup.text.Width;

/** {@code takeup rating}: which frame of a rating test was the best, and what that makes of the stock's rating. */
@Command(
        name = "rating",
        description = {
            "Asks which frame of a rating test is the best, and says what to rate the film at, with how sure that is.",
            "The tests of all rolls of that stock count together. The test itself is shot with the word rating "
                    + "on the prompt."
        },
        footer = {"", "For example:", "  takeup rating 3", "  takeup rating 3 --best 2"})
public final class RatingSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "ROLL", description = "A roll with a rating test: R0007, r7, or 7.")
    RollArgument roll;

    @Option(
            names = "--best",
            paramLabel = "FRAMES",
            description = "The best frame, by the texture of its shadows; several that are as good: 5,6. It takes the "
                    + "place of what was said before.")
    String best;

    @Option(names = "--rate", description = "Writes the rating into your own profile of the stock, after a yes.")
    boolean rate;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() throws IOException {
        Roll found = roll.find(global).roll();
        List<Integer> places = RatingTest.frames(found);
        if (places.isEmpty()) {
            throw new CommandFailed(
                    1, "there is no rating test on " + found.id() + ": the word rating on the prompt shoots one");
        }
        if (best != null) {
            keep(found, places, FrameNumbers.of(best, found));
        }
        List<RatingTest.Answer> answers = new ArrayList<>();
        boolean isWhole = ArchivedRolls.reviewed(global).forEach(ArchivedRolls.Reviewed::new, it -> {
            if (isSameFilm(it.roll(), found)) {
                answers.add(RatingTest.Answer.of(it.roll(), it.review()));
            }
        });
        Optional<RatingTest> test = RatingTest.of(answers);
        if (json.isAsked()) {
            global.console().json("rating", json(found, places, test));
        } else {
            print(found, places, test);
        }
        if (rate) {
            RatingTest sure = test.filter(RatingTest::isSure)
                    .orElseThrow(() -> new CommandFailed(
                            1,
                            "the test is not sure enough to rate "
                                    + found.film().stock().key() + " by: nothing was written"));
            new RatedStock(global, found.film().stock().key())
                    .write(index(found.film().stock(), sure.stops().estimate()));
        }
        return isWhole ? 0 : 1;
    }

    private static boolean isSameFilm(Roll one, Roll other) {
        return one.film().stock().key().equals(other.film().stock().key())
                && one.film().development().pushStops()
                        == other.film().development().pushStops();
    }

    /**
     * Of the test's frames the best are judged good; what was called so before and is not now has no verdict any more.
     */
    private void keep(Roll found, List<Integer> places, List<Integer> chosen) {
        List<Optional<Density>> before =
                Review.of(global.archive().reviewOf(found.id()).records()).verdicts(found);
        List<ReviewEvent> events = new ArrayList<>();
        for (int place : chosen) {
            if (!places.contains(place)) {
                throw new CommandFailed(
                        2,
                        "frame " + found.frames().get(place).number() + " is none of the rating test: "
                                + String.join(
                                        ", ",
                                        places.stream()
                                                .map(it -> Integer.toString(
                                                        found.frames().get(it).number()))
                                                .toList()));
            }
            events.add(new ReviewEvent.Judged(FrameKey.of(found.frames().get(place)), Optional.of(Density.GOOD)));
        }
        for (int place : places) {
            if (!chosen.contains(place) && before.get(place).equals(Optional.of(Density.GOOD))) {
                events.add(new ReviewEvent.Judged(FrameKey.of(found.frames().get(place)), Optional.empty()));
            }
        }
        new Decisions(global.archive(), found.id(), events).saveOrFail(global.console());
    }

    private void print(Roll found, List<Integer> places, Optional<RatingTest> test) {
        Console out = global.console();
        Review review = Review.of(global.archive().reviewOf(found.id()).records());
        RatingTest.Answer answer = RatingTest.Answer.of(found, review);
        List<Optional<Density>> verdicts = review.verdicts(found);
        List<Optional<String>> scans = review.scans(found);
        out.line(found.id() + " · " + found.film().stock().name() + " · rating test of "
                + English.count(places.size(), "frame"));
        for (int i = 0; i < places.size(); i++) {
            var frame = found.frames().get(places.get(i));
            double over = answer.bracket().get(i);
            out.line((Width.padLeft(Integer.toString(frame.number()), 4) + "  "
                            + Width.pad(frame.note().orElse("").substring(RatingTest.NOTE.length()), 16) + "  "
                            + Width.pad(Math.abs(over) < 0.05 ? "box speed" : Stops.error(over) + " box", 14) + "  "
                            + Width.pad(scans.get(places.get(i)).orElse(""), 16) + "  "
                            + (verdicts.get(places.get(i)).equals(Optional.of(Density.GOOD)) ? "best" : ""))
                    .stripTrailing());
        }
        if (test.isEmpty()) {
            out.line("Which one is the best, by the texture of its shadows? takeup rating " + found.id() + " --best 5");
            return;
        }
        Stock stock = found.film().stock();
        RatingTest it = test.get();
        out.line("Rate " + stock.key() + " at " + index(stock, it.stops().estimate()) + " ("
                + index(stock, it.stops().high()) + " to "
                + index(stock, it.stops().low()) + "), by "
                + English.count(it.bestStops().size(), "answer") + "; the box says " + stock.boxSpeed() + ".");
        if (it.isOpenEnded()) {
            out.line("A best frame stands at the end of its bracket: a further one might be better. Shoot a test "
                    + "that goes on from there.");
        } else if (!it.isSure()) {
            out.line("The answers lie too far apart to change a rating by: look again, or shoot a second test.");
        } else if (!rate) {
            out.line("takeup rating " + found.id() + " --rate writes that into your own profile, after a yes.");
        }
    }

    private static String index(Stock stock, double stops) {
        return Plain.number(Finding.nearest(RatingTest.index(stock, stops)));
    }

    private static Json.Obj json(Roll found, List<Integer> places, Optional<RatingTest> test) {
        Stock stock = found.film().stock();
        return Json.object()
                .and("roll", found.id())
                .and("stock", stock.key())
                .and("boxSpeed", stock.boxSpeed().arithmetic())
                .and(
                        "frames",
                        places.stream()
                                .map(it -> found.frames().get(it).number())
                                .toList())
                .and("answers", test.map(it -> it.bestStops().size()).orElse(0))
                .and("overBoxStops", test.map(it -> IntervalJson.of(it.stops())))
                .and(
                        "index",
                        test.map(it -> Json.object()
                                .and(
                                        "estimate",
                                        Json.digits(
                                                RatingTest.index(
                                                        stock, it.stops().estimate()),
                                                4))
                                .and(
                                        "low",
                                        Json.digits(
                                                RatingTest.index(
                                                        stock, it.stops().high()),
                                                4))
                                .and(
                                        "high",
                                        Json.digits(
                                                RatingTest.index(
                                                        stock, it.stops().low()),
                                                4))))
                .and("open", test.map(RatingTest::isOpenEnded))
                .and("sure", test.map(RatingTest::isSure));
    }
}
