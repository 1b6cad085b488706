package takeup.loading;

import java.util.List;
import java.util.Optional;
import takeup.advice.LoadChecks;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.report.LoadCheckText;
import takeup.roll.LoadCheck;
import takeup.roll.RollEvent;

/**
 * The load routine on the prompt: {@code yes} and {@code no} answer the look that stands, {@code routine on|off|skip}.
 */
final class LoadCheckAnswer {
    static Outcome routine(CommandContext context, List<String> words) {
        if (words.isEmpty()) {
            Optional<LoadChecks> now = LoadChecks.of(context.state());
            String text = now.map(it -> "Load routine of " + it.roll().id() + ", " + LoadCheckText.question(it)
                            + " yes, no, or routine skip.")
                    .orElse("The load routine is "
                            + (context.state().day().routine()
                                    ? "on: three looks after the first roll of the day in each camera or back."
                                    : "off."));
            return new Outcome.Accepted(
                    List.of(),
                    context.before(),
                    new Outcome.Answer("routine", text, fields(context.state()), List.of()),
                    Optional.empty(),
                    List.of());
        }
        String word = Arguments.one("routine", words, "routine off");
        return switch (word) {
            case "on", "off" -> turn(context, word.equals("on"));
            case "skip" -> answered(context, standing(context), LoadCheck.Answer.SKIPPED);
            default -> throw new CommandRejected("routine on, off or skip, not " + word);
        };
    }

    private static Outcome turn(CommandContext context, boolean on) {
        List<JournalEntry> entries = List.of(new JournalEntry.OnDay(new DayEvent.RoutineSet(on)));
        ShootState after = context.after(entries);
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "routine",
                        on
                                ? "The load routine is on: three looks after the first roll of the day in each "
                                        + "camera or back."
                                : "The load routine is off, also on the days to come.",
                        fields(after),
                        List.of()),
                List.of());
    }

    static Outcome answer(CommandContext context, String word, List<String> rest) {
        Arguments.alone(word, rest);
        return answered(context, standing(context), word.equals("yes") ? LoadCheck.Answer.YES : LoadCheck.Answer.NO);
    }

    private static LoadChecks standing(CommandContext context) {
        return LoadChecks.of(context.state()).orElseThrow(() -> new CommandRejected("nothing was asked"));
    }

    private static Outcome answered(CommandContext context, LoadChecks routine, LoadCheck.Answer answer) {
        List<JournalEntry> entries = context.on(routine.roll(), new RollEvent.LoadChecked(routine.check(), answer));
        ShootState after = context.after(entries);
        Optional<LoadChecks> next = LoadChecks.of(after);
        String text = routine.roll().id() + ": "
                + switch (answer) {
                    case YES ->
                        switch (routine.check()) {
                                    case FILM -> "the right film at the right index";
                                    case METER ->
                                        "the meter says "
                                                + routine.roll().film().index();
                                    case MOVING -> "the film moves";
                                }
                                + ", and that is on record."
                                + next.map(it -> " Next, " + LoadCheckText.question(it))
                                        .orElse("");
                    case NO -> LoadCheckText.afterNo(routine);
                    case SKIPPED -> "the load routine is skipped, and that is on record.";
                };
        Json.Obj fields = CommandContext.fields(after.rolls().get(routine.roll().id()))
                .and("check", routine.check())
                .and("answer", answer)
                .and("next", next.map(LoadCheckText::question));
        return context.does(entries, after, new Outcome.Answer("routine", text, fields, List.of()), List.of());
    }

    private static Json.Obj fields(ShootState s) {
        Optional<LoadChecks> now = LoadChecks.of(s);
        return Json.object()
                .and("on", s.day().routine())
                .and("roll", now.map(it -> it.roll().id()))
                .and("check", now.map(LoadChecks::check))
                .and("next", now.map(LoadCheckText::question));
    }
}
