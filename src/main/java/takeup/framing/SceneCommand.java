package takeup.framing;

import java.time.LocalDate;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.KnownNames;
import takeup.command.Outcome;
import takeup.day.PlanEvent;
import takeup.json.Json;
import takeup.prompt.SceneWords;
import takeup.roll.Scene;

/** Who and where on the frames to come, kept until it is changed: {@code with Anna, Ben}, {@code at boathouse}. */
public enum SceneCommand implements Command {
    WITH(CommandInfo.of("with", "who is on the frames to come, until it is changed")
            .usage("with Anna, Ben", "with nobody")
            .form("with Anna, Ben", "they are on all frames to come")
            .form("with nobody", "nobody is, any more")
            .form("with", "says who is")),
    AT(CommandInfo.of("at", "where the frames to come are taken, until it is changed")
            .usage("at boathouse", "at nowhere")
            .form("at boathouse", "the place of all frames to come")
            .form("at nowhere", "no place of their own, but that of the shoot")
            .form("at", "says where"));

    private final CommandInfo info;

    SceneCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Scene before = context.state().day().scene();
        if (arguments.rest().isEmpty()) {
            return context.says("scene", "Frames to come: " + words(before) + ".", fields(before));
        }
        LocalDate today = context.now().toLocalDate();
        String typed = arguments.textAfterWords(1);
        SceneWords said = (this == WITH
                        ? new SceneWords("", Optional.of(SceneWords.people(typed)), Optional.empty())
                        : new SceneWords("", Optional.empty(), Optional.of(SceneWords.place(typed))))
                .spelledAs(KnownNames.people(context.state(), today), KnownNames.places(context.state(), today));
        Scene after = said.on(before);
        return context.reply(new PlanEvent.SceneSet(after.people(), after.place()))
                .event("scene")
                .says("Frames to come: " + words(after), ".")
                .titled(said.words() + " on the frames to come")
                .fields(fields(after))
                .accepted();
    }

    private static String words(Scene scene) {
        return new SceneWords("", Optional.of(scene.people()), Optional.empty()).words()
                + scene.place().name().map(it -> " at " + it).orElse("");
    }

    private static Json.Obj fields(Scene scene) {
        return Json.object()
                .and("people", scene.people())
                .and("place", scene.place().name());
    }
}
