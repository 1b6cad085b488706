package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.LensChange;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.kit.Camera;
import takeup.prompt.CommandRejected;
import takeup.prompt.FrameArguments;
import takeup.report.SetupText;

/** {@code set 4 125}: the setting in hand, without a frame. */
public final class SetCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("set", "changes the setting in hand, logs nothing")
            .usage("set 4 125")
            .form("set 4 125", "aperture and time in hand")
            .form("set 50mm", "focal length of a zoom")
            .form("set 3m", "distance of the subject")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Camera camera = context.camera();
        if (arguments.rest().isEmpty()) {
            throw new CommandRejected("set what? such as set 4 125");
        }
        FrameArguments said = FrameArguments.ofFrame(arguments.rest(), camera, context.setting());
        if (said.count().isPresent()) {
            throw new CommandRejected("set logs nothing, so it takes no count");
        }
        CameraSetup setup = context.state().inHand(camera).with(said.change());
        Optional<LensChange> lens = said.change()
                .lens()
                .map(it -> new LensChange(camera, context.state().inHand(camera), it));
        Outcome.Accepted set = SetupChange.of(setup, context)
                .says("Set on " + camera.key() + ": " + SetupText.of(setup), ". Nothing logged.")
                .warnings(FlashSync.tooFast(setup, camera))
                .accepted();
        return set.thenAsking(lens.flatMap(it -> it.question(set, List.of(), context)))
                .askedFirst(said.question());
    }
}
