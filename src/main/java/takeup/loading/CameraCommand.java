package takeup.loading;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.history.ShootState;
import takeup.kit.Kit;
import takeup.metering.SettingCommands;

/** Takes up a camera, or another back of it. */
public enum CameraCommand implements Command {
    CAM(CommandInfo.of("cam", "takes up a camera, and a back of it")
            .usage("cam 645 2")
            .form("cam 645", "takes up a camera, with the back it had last")
            .form("cam 645 2", "a camera and one of its backs")),
    BACK(CommandInfo.of("back", "takes up another back").usage("back 2").needs(Need.BACKS));

    private final CommandInfo info;

    CameraCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return this == CAM
                ? SettingCommands.cam(context, arguments.rest())
                : SettingCommands.back(context, arguments.rest());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        if (this == BACK) {
            return Completions.once(
                    before, state.cameraInHand().map(it -> it.backs()).orElse(List.of()));
        }
        return switch (before.size()) {
            case 1 -> state.kit().keys(Kit.Sort.CAMERAS);
            case 2 -> state.camera(before.get(1)).map(it -> it.backs()).orElse(List.of());
            default -> List.of();
        };
    }
}
