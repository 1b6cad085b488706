package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Hold;
import takeup.prompt.CommandRejected;
import takeup.prompt.DialNumbers;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.roll.SettingPatch;

/** {@code hold f2.8}: what suggestions keep. */
public final class HoldCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("hold", "suggestions keep this aperture or time")
            .usage("hold f2.8", "hold 1/250", "hold off")
            .form("hold f2.8", "suggestions keep this aperture")
            .form("hold 1/250", "suggestions keep this time")
            .form("hold off", "neither is kept")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Camera camera = context.camera();
        if (arguments.rest().size() != 1) {
            throw new CommandRejected("hold one aperture or one time: hold f2.8, hold 1/250, hold off");
        }
        CameraSetup before = context.state().inHand(camera);
        String word = arguments.rest().get(0);
        if (word.equals("off")) {
            return SetupChange.of(before.holding(Optional.empty()), context)
                    .says("Nothing is held on " + camera.key(), ".")
                    .accepted();
        }
        Token token = Tokens.token(word);
        if (!token.is(Token.Kind.APERTURE)
                && !token.is(Token.Kind.TIME)
                && !token.is(Token.Kind.BULB)
                && !token.is(Token.Kind.BARE)) {
            throw new CommandRejected(word + " is no aperture and no time: hold f2.8, hold 1/250, hold off");
        }
        SettingPatch change = DialNumbers.of(camera, before.setting().lens()).pair(List.of(token));
        Hold hold = change.aperture()
                .map(Hold::of)
                .orElseGet(() -> Hold.of(change.time().orElseThrow()));
        CameraSetup after = before.holding(Optional.of(hold));
        return SetupChange.of(after, context)
                .says("Suggestions on " + camera.key() + " keep " + hold, ".")
                .warnings(FlashSync.tooFast(after, camera))
                .accepted();
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, List.of("off"));
    }
}
