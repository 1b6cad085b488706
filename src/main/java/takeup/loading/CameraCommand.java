package takeup.loading;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Kit;
import takeup.prompt.CommandRejected;
import takeup.report.FilmChangeText;
import takeup.report.RollText;

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
        CameraPlace place = this == CAM ? camera(arguments.rest(), context) : back(arguments, context);
        Reply reply = context.reply(new CameraEvent.CameraSelected(place));
        ShootState after = reply.after();
        String what = after.cameraInHand().map(Camera::name).orElse(place.camera())
                + place.back().map(it -> ", back " + it).orElse("");
        String roll = after.rollInHand()
                .map(it -> it.id() + ", " + it.film().stock().name() + " EI "
                        + it.film().index() + ", next frame " + it.next() + ", " + RollText.left(it))
                .orElseGet(() -> after.noFilm(after.placeInHand()));
        String remark = context.state().kit().remark(Kit.Sort.CAMERAS, place.camera());
        return reply.says(what, ": " + roll + "." + FilmChangeText.of(after) + remark)
                .warningsBegun()
                .accepted();
    }

    private static CameraPlace camera(List<String> words, CommandContext context) {
        if (words.isEmpty() || words.size() > 2) {
            throw new CommandRejected("which camera? one of "
                    + String.join(", ", context.state().kit().keys(Kit.Sort.CAMERAS)));
        }
        return context.place(words);
    }

    private static CameraPlace back(Arguments arguments, CommandContext context) {
        Camera camera = context.camera();
        return context.place(List.of(camera.key(), arguments.one("back 2")));
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        if (this == BACK) {
            return Completions.once(
                    before, state.cameraInHand().map(it -> it.backNames()).orElse(List.of()));
        }
        return switch (before.size()) {
            case 1 -> state.kit().keys(Kit.Sort.CAMERAS);
            case 2 -> state.camera(before.get(1)).map(it -> it.backNames()).orElse(List.of());
            default -> List.of();
        };
    }
}
