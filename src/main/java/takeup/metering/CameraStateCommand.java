package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.LensChange;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.prompt.CameraStateParser;
import takeup.prompt.FrameArguments;

/** A state of the camera in hand that takes one word: {@code bias +1/3}, {@code tube 30mm}, {@code tripod on}. */
public enum CameraStateCommand implements Command {
    BIAS(CommandInfo.of("bias", "deliberate deviation; + is more light on the film")
            .usage("bias +1/3", "bias 0")
            .form("bias +1/3", "a third of a stop more light on the film")
            .form("bias -1", "a stop less")
            .form("bias 0", "none")
            .needs(Need.CAMERA)),
    EXT(CommandInfo.of("ext", "from lens to film, the whole draw")
            .usage("ext 110mm", "ext off")
            .form("ext 110mm", "from lens to film, the whole draw")
            .form("ext off", "none")
            .needs(Need.CAMERA)),
    TUBE(CommandInfo.of("tube", "what is added to the lens")
            .usage("tube 30mm")
            .form("tube 30mm", "what is added to the lens")
            .form("tube off", "none")
            .needs(Need.CAMERA)),
    MAG(CommandInfo.of("mag", "magnification on the film, or the distance it follows from")
            .usage("mag 0.5", "mag 0.5m")
            .form("mag 0.5", "half life size on the film; mag 1:2 too")
            .form("mag 0.5m", "from the distance to the subject")
            .form("mag off", "none")
            .needs(Need.CAMERA)),
    LENS(CommandInfo.of("lens", "the lens on the camera").usage("lens 80").needs(Need.CAMERA)),
    TRIPOD(CommandInfo.of("tripod", "a tripod lifts the hand-held limit")
            .usage("tripod on")
            .form("tripod on", "lifts the hand-held limit")
            .form("tripod off", "it stands again")
            .needs(Need.CAMERA));

    private final CommandInfo info;

    CameraStateCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Camera camera = context.camera();
        CameraSetup before = context.state().inHand(camera);
        String word = info.word();
        String value = arguments.one(info.example());
        CameraSetup setup = before.with(CameraStateParser.read(
                word, value, camera, before.setting().lens(), before.setting().zoomMm()));
        Optional<LensChange> lens =
                this == LENS ? setup.setting().lens().map(it -> new LensChange(camera, before, it)) : Optional.empty();
        Outcome.Accepted changed = SetupChange.of(setup, context)
                .says(
                        text(value, camera, setup),
                        "." + lens.map(LensChange::stays).orElse(""))
                .titled(word + " " + value + (this == TRIPOD ? " " : " on ") + camera.key())
                .accepted();
        return changed.thenAsking(lens.flatMap(it -> it.question(changed, List.of(), context)));
    }

    private String text(String value, Camera camera, CameraSetup setup) {
        String key = camera.key();
        return switch (this) {
            case LENS ->
                "Lens on " + key + ": " + setup.setting().lens().orElseThrow().name();
            case BIAS -> bias(key, setup.setting().biasStops());
            case TRIPOD -> key + ": tripod " + value;
            case EXT, TUBE, MAG ->
                value.equals("off")
                        ? "No extension on " + key
                        : "On " + key + ": "
                                + FrameArguments.extensionWords(setup.setting().extension(), setup.setting());
        };
    }

    private static String bias(String camera, double stops) {
        return stops == 0
                ? "No bias on " + camera
                : "Bias on " + camera + ": " + Stops.words(stops) + (stops > 0 ? " more" : " less")
                        + " light on the film";
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return switch (this) {
            case BIAS -> List.of();
            case EXT, TUBE, MAG -> Completions.once(before, List.of("off"));
            case LENS -> Completions.once(before, Completions.lenses(state));
            case TRIPOD -> Completions.once(before, Completions.ON_OFF);
        };
    }
}
