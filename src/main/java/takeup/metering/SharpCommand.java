package takeup.metering;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.exposure.SharpRange;
import takeup.kit.Camera;
import takeup.kit.Hold;
import takeup.kit.Lens;
import takeup.kit.SharpSetting;
import takeup.prompt.CommandRejected;
import takeup.prompt.SharpRangeParser;
import takeup.report.SharpText;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/**
 * {@code sharp 2m-inf}: the aperture that makes it sharp from near to far is held, and the distance to focus is set.
 */
public final class SharpCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("sharp", "the aperture that is sharp from near to far")
            .usage("sharp 2m-inf", "sharp 2m-5m coc 0.05mm")
            .form("sharp 2m-inf", "from 2 m to infinity: suggestions keep the aperture")
            .form("sharp 2m-5m", "from near to far")
            .form("sharp 2m-inf coc 0.05mm", "with another circle of confusion")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        List<String> words = arguments.rest();
        boolean hasCircle = words.size() == 3 && words.get(1).equals("coc");
        if (words.size() != 1 && !hasCircle) {
            throw new CommandRejected("sharp from where to where? such as sharp 2m-inf, or sharp 2m-5m coc 0.05mm");
        }
        SharpRange range = SharpRangeParser.read(words.get(0));
        Camera camera = context.camera()
                .withCircle(SharpRangeParser.circle(hasCircle ? Optional.of(words.get(2)) : Optional.empty()));
        CameraSetup before = context.state().inHand(camera);
        SharpSetting sharp = setting(range, camera, before.setting());
        CameraSetup after =
                before.with(SettingPatch.distance(sharp.focusM())).holding(Optional.of(Hold.of(sharp.aperture())));
        return SetupChange.of(after, context)
                .says(SharpText.of(range, sharp, camera), ". Suggestions keep " + sharp.aperture() + ".")
                .titled("sharp " + words.get(0) + " on " + camera.key())
                .fields(SharpText.json(sharp))
                .accepted();
    }

    /** The setting that makes a range sharp with the lens that is on. */
    static SharpSetting setting(SharpRange range, Camera camera, Setting setting) {
        Lens lens = setting.lens()
                .orElseThrow(
                        () -> new CommandRejected("what is sharp depends on the lens: name the camera's lens first"));
        OptionalDouble focal = setting.focalMm();
        if (focal.isEmpty()) {
            throw new CommandRejected("what is sharp depends on the focal length: set it first, such as set 50mm");
        }
        if (range.nearM() * 1000 <= 2 * focal.getAsDouble()) {
            throw new CommandRejected("nearer than twice the focal length, lens tables do not hold: mag counts there");
        }
        return SharpSetting.of(range, lens.ring(), focal.getAsDouble(), camera.circleOfConfusionMm());
    }
}
