package takeup.shoot;

import java.util.List;
import java.util.Optional;
import takeup.day.DayEvent;
import takeup.kit.Json;
import takeup.roll.LoadCheck;
import takeup.roll.RollEvent;

/**
 * The load routine on the prompt: {@code yes} and {@code no} answer the look that stands, {@code routine on|off|skip}.
 */
final class RoutineLines {
    private final Interpreter in;

    RoutineLines(Interpreter in) {
        this.in = in;
    }

    Outcome routine(List<String> words) {
        if (words.isEmpty()) {
            Optional<Routine> now = Routine.of(in.s);
            String text = now.map(it ->
                            "Load routine of " + it.roll().id() + ", " + it.question() + " yes, no, or routine skip.")
                    .orElse("The load routine is "
                            + (in.s.day().routine()
                                    ? "on: three looks after the first roll of the day in each camera or back."
                                    : "off."));
            return new Outcome.Does(
                    List.of(),
                    in.original,
                    new Outcome.Answer("routine", text, fields(in.s), List.of()),
                    Outcome.Act.NOTHING,
                    List.of());
        }
        String word = Interpreter.one("routine", words, "routine off");
        return switch (word) {
            case "on", "off" -> turn(word.equals("on"));
            case "skip" -> answered(standing(), LoadCheck.Answer.SKIPPED);
            default -> throw new Refusal("routine on, off or skip, not " + word);
        };
    }

    private Outcome turn(boolean on) {
        List<Entry> entries = List.of(new Entry.OnDay(new DayEvent.RoutineSet(on)));
        Situation after = in.after(entries);
        return in.does(
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

    Outcome answer(String word, List<String> rest) {
        Interpreter.alone(word, rest);
        return answered(standing(), word.equals("yes") ? LoadCheck.Answer.YES : LoadCheck.Answer.NO);
    }

    private Routine standing() {
        return Routine.of(in.s).orElseThrow(() -> new Refusal("nothing was asked"));
    }

    private Outcome answered(Routine routine, LoadCheck.Answer answer) {
        List<Entry> entries = in.on(routine.roll(), new RollEvent.Checked(routine.beat(), answer));
        Situation after = in.after(entries);
        Optional<Routine> next = Routine.of(after);
        String text = routine.roll().id() + ": "
                + switch (answer) {
                    case YES ->
                        switch (routine.beat()) {
                                    case FILM -> "the right film at the right index";
                                    case METER ->
                                        "the meter says "
                                                + routine.roll().film().index();
                                    case MOVING -> "the film moves";
                                }
                                + ", and that is on record."
                                + next.map(it -> " Next, " + it.question()).orElse("");
                    case NO -> routine.afterNo();
                    case SKIPPED -> "the load routine is skipped, and that is on record.";
                };
        Json.Obj fields = Interpreter.fields(after.rolls().get(routine.roll().id()))
                .and("check", routine.beat())
                .and("answer", answer)
                .and("next", next.map(Routine::question));
        return in.does(entries, after, new Outcome.Answer("routine", text, fields, List.of()), List.of());
    }

    private static Json.Obj fields(Situation s) {
        Optional<Routine> now = Routine.of(s);
        return Json.object()
                .and("on", s.day().routine())
                .and("roll", now.map(it -> it.roll().id()))
                .and("check", now.map(Routine::beat))
                .and("next", now.map(Routine::question));
    }
}
