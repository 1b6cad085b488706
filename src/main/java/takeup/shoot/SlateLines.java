package takeup.shoot;

import java.util.List;
import java.util.Optional;
import takeup.kit.Json;
import takeup.roll.Frame;
import takeup.roll.Roll;

/**
 * Lines about the slate: {@code slate} logs the frame that it is photographed on and shows it, {@code slate show} shows
 * it again.
 */
final class SlateLines {
    private final Interpreter in;

    SlateLines(Interpreter in) {
        this.in = in;
    }

    Outcome read(List<String> rest, Optional<String> note) {
        if (rest.isEmpty()) {
            Outcome.Does logged = new FrameLines(in).slate(note);
            Outcome.Answer said = logged.answer();
            String text = said.text() + " Photograph this sheet; undo takes it back.";
            return new Outcome.Does(
                    logged.entries(),
                    logged.after(),
                    new Outcome.Answer(said.event(), text, said.fields(), said.warnings()),
                    Outcome.Act.SHOW_SLATE,
                    List.of());
        }
        String word = Interpreter.one("slate", rest, "slate show");
        if (!word.equals("show") && !word.equals("clock")) {
            throw new Refusal("slate alone logs a frame and shows the sheet to photograph; slate show shows it again, "
                    + "slate clock the time of day");
        }
        if (note.isPresent()) {
            throw new Refusal("slate " + word + " logs nothing, so it takes no note");
        }
        if (word.equals("clock")) {
            return new Outcome.Does(
                    List.of(),
                    in.original,
                    new Outcome.Answer(
                            "state",
                            "The clock is on the screen for the digital camera; later: takeup digital --clock FILE.",
                            Json.object().and("at", in.now),
                            List.of()),
                    Outcome.Act.SHOW_CLOCK,
                    List.of());
        }
        Roll roll = in.roll();
        Frame slate = roll.newest(Frame.Kind.SLATE)
                .orElseThrow(() -> new Refusal("no slate on " + roll.id() + " yet: slate logs one"));
        return new Outcome.Does(
                List.of(),
                in.original,
                new Outcome.Answer(
                        "state",
                        "The slate of " + roll.id() + " is frame " + slate.number() + ".",
                        Json.object().and("roll", roll.id()).and("frame", slate.number()),
                        List.of()),
                Outcome.Act.SHOW_SLATE,
                List.of());
    }
}
