package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.exposure.Stops;
import takeup.kit.Camera;
import takeup.kit.Filter;
import takeup.kit.Hold;
import takeup.prompt.CameraStateParser;
import takeup.prompt.CommandRejected;
import takeup.prompt.DialNumbers;
import takeup.prompt.FilterParser;
import takeup.prompt.FrameArguments;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.report.SetupText;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** Lines that change what is in hand: the camera and its setting. */
public final class SettingCommands {
    private SettingCommands() {}

    static Outcome set(CommandContext context, List<String> words) {
        Camera camera = context.camera();
        if (words.isEmpty()) {
            throw new CommandRejected("set what? such as set 4 125");
        }
        FrameArguments said = FrameArguments.ofFrame(words, camera, context.setting());
        if (said.count().isPresent()) {
            throw new CommandRejected("set logs nothing, so it takes no count");
        }
        CameraSetup inHand = context.state().inHand(camera).with(said.change());
        return context.changed(
                        camera, inHand, "Set on " + camera.key() + ": " + SetupText.of(inHand) + ". Nothing logged.")
                .unlessDoubted(said.doubt());
    }

    static Outcome hold(CommandContext context, List<String> words) {
        Camera camera = context.camera();
        if (words.isEmpty() || words.size() > 1) {
            throw new CommandRejected("hold one aperture or one time: hold f2.8, hold 1/250, hold off");
        }
        CameraSetup before = context.state().inHand(camera);
        if (words.get(0).equals("off")) {
            return context.changed(
                    camera, before.holding(Optional.empty()), "Nothing is held on " + camera.key() + ".");
        }
        Token token = Tokens.token(words.get(0));
        if (!token.is(Token.Kind.APERTURE)
                && !token.is(Token.Kind.TIME)
                && !token.is(Token.Kind.BULB)
                && !token.is(Token.Kind.BARE)) {
            throw new CommandRejected(words.get(0) + " is no aperture and no time: hold f2.8, hold 1/250, hold off");
        }
        SettingPatch change = DialNumbers.of(camera, before.setting().lens()).pair(List.of(token));
        Hold hold = change.aperture()
                .map(Hold::of)
                .orElseGet(() -> Hold.of(change.time().orElseThrow()));
        return context.changed(
                camera, before.holding(Optional.of(hold)), "Suggestions on " + camera.key() + " keep " + hold + ".");
    }

    static Outcome state(CommandContext context, String word, List<String> words) {
        Camera camera = context.camera();
        CameraSetup before = context.state().inHand(camera);
        String value = Arguments.one(
                word,
                words,
                switch (word) {
                    case "lens" -> "lens 80";
                    case "bias" -> "bias +1/3";
                    case "ext" -> "ext 110mm";
                    case "tube" -> "tube 30mm";
                    case "mag" -> "mag 0.5";
                    default -> word + " on";
                });
        SettingPatch change = CameraStateParser.read(
                word, value, camera, before.setting().lens(), before.setting().zoomMm());
        CameraSetup inHand = before.with(change);
        return context.changed(
                camera,
                inHand,
                switch (word) {
                    case "lens" ->
                        "Lens on " + camera.key() + ": "
                                + inHand.setting().lens().orElseThrow().name() + ".";
                    case "bias" ->
                        inHand.setting().biasStops() == 0
                                ? "No bias on " + camera.key() + "."
                                : "Bias on " + camera.key() + ": "
                                        + Stops.words(inHand.setting().biasStops())
                                        + (inHand.setting().biasStops() > 0 ? " more" : " less")
                                        + " light on the film.";
                    case "tripod" -> camera.key() + ": " + word + " " + value + ".";
                    default ->
                        value.equals("off")
                                ? "No extension on " + camera.key() + "."
                                : "On " + camera.key() + ": "
                                        + FrameArguments.extensionWords(
                                                inHand.setting().extension(), inHand.setting()) + ".";
                });
    }

    static Outcome filter(CommandContext context, List<String> words) {
        Camera camera = context.camera();
        CameraSetup inHand = context.state().inHand(camera).with(SettingPatch.filters(FilterParser.read(words)));
        Setting setting = inHand.setting();
        if (setting.filters().isEmpty()) {
            return context.changed(camera, inHand, "No filter on " + camera.key() + ".");
        }
        String each = String.join(
                ", ", setting.filters().stream().map(SettingCommands::loss).toList());
        String sum = setting.filters().size() > 1 ? ", together " + Stops.words(setting.filterStops()) : "";
        return context.changed(camera, inHand, "On " + camera.key() + ": " + each + sum + ".");
    }

    /** A factor and its stops as one thing: {@code 3x = 1.6 stops}; other filters as they say themselves. */
    private static String loss(Filter filter) {
        boolean factor =
                filter.name().endsWith("x") && Tokens.isDigit(filter.name().charAt(0));
        return factor ? filter.name() + " = " + Stops.words(filter.stops()) : filter.words();
    }
}
