package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.exposure.Extension;
import takeup.kit.Camera;
import takeup.prompt.CommandRejected;
import takeup.report.StaysOn;
import takeup.roll.SettingPatch;

/** {@code clear}: takes off all that stays on a camera from frame to frame. */
public final class ClearCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("clear", "takes off filter, tube, bias, hold and flash")
            .form("clear", "all that stays on the camera from frame to frame is taken off; Ctrl-O does it too")
            .needs(Need.SOMETHING_ON);

    private static final SettingPatch NEUTRAL = SettingPatch.filters(List.of())
            .and(SettingPatch.extension(Extension.NONE))
            .and(SettingPatch.bias(0))
            .and(SettingPatch.flash(false));

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        arguments.alone();
        Camera camera = context.camera();
        CameraSetup before = context.state().inHand(camera);
        List<String> on = StaysOn.of(before);
        if (on.isEmpty()) {
            throw new CommandRejected(Need.SOMETHING_ON.missing(context.state()).orElseThrow());
        }
        return SetupChange.of(before.with(NEUTRAL).holding(Optional.empty()), context)
                .says("Taken off " + camera.key() + ": " + String.join(", ", on), ".")
                .accepted();
    }
}
