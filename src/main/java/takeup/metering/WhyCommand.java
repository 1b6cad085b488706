package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.advice.AdviceExplanation;
import takeup.advice.AdviceRequest;
import takeup.advice.Alternatives;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.exposure.Light;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.MeteredPair;
import takeup.kit.Suggestions;
import takeup.prompt.CommandRejected;
import takeup.report.AdviceText;

/** {@code why}: why the best setting is the best. */
public final class WhyCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("why", "why this setting is the best, and what else would do")
            .needs(Need.FILM, Need.SETTABLE_CAMERA, Need.LIGHT)
            .with(CommandInfo.Trait.SHOWS_ONLY);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    /** What the setting follows from where no light of the room was read. */
    private static String nothingChosen(ShootState state) {
        return state.day()
                .flash()
                .filter(it -> state.inHand().setting().flash())
                .map(it -> "the aperture follows from the flash, " + it.aperture() + " at EI " + it.index()
                        + "; the room's light was not read (m 5.6 125)")
                .orElse("no light reading today, so nothing was chosen: m 5.6 125");
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        arguments.alone();
        Camera camera = context.camera();
        context.roll();
        if (camera.isAutomatic()) {
            throw new CommandRejected(camera.name() + " sets itself: there is nothing to choose");
        }
        Light light =
                context.state().day().light().orElseThrow(() -> new CommandRejected(nothingChosen(context.state())));
        AdviceRequest request = AdviceRequest.inHand(context.state()).orElseThrow();
        Optional<MeteredPair> shown = ShownPair.of(light, context.state(), context.now());
        Suggestions suggestions = request.advice(light, shown);
        if (suggestions.suggestions().isEmpty()) {
            throw new CommandRejected(camera.name() + " has no lens in hand to choose an aperture of");
        }
        String text = AdviceText.words(AdviceExplanation.of(request, light, shown));
        if (Alternatives.areNeeded(request, suggestions)) {
            List<String> alternatives = AdviceText.words(
                    Alternatives.of(request, light, context.state().kit()));
            text += alternatives.isEmpty()
                    ? " Nothing here fits better."
                    : " What would fit: " + String.join("; ", alternatives) + ".";
        }
        return context.says("light", text, ReadingFields.again(context.state(), light, suggestions, context));
    }
}
