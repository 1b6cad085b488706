package takeup.cli;

import java.util.ArrayList;
import java.util.List;
import takeup.console.CommandFailed;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Camera;
import takeup.kit.Kit;
import takeup.kit.Lens;
import takeup.kit.ProfileJson;
import takeup.kit.Shutter;

/** {@code takeup camera}: all cameras; with a KEY what is known about one. */
final class CameraSubcommand {
    private final Subcommands commands;

    CameraSubcommand(Subcommands commands) {
        this.commands = commands;
    }

    int run(String key, boolean json) {
        Kit kit = commands.kit();
        Camera camera = kit.camera(key).orElseThrow(() -> new CommandFailed(2, kit.whyNot(Kit.Sort.CAMERAS, key)));
        kit.problems(Kit.Sort.CAMERAS, key).forEach(commands.out()::error);
        if (json) {
            commands.out().raw(JsonText.pretty(ProfileJson.of(camera).and("key", camera.key())));
        } else {
            words(camera).forEach(commands.out()::line);
        }
        return 0;
    }

    /** All that there are, a line each; a file with a mistake is told and left out. */
    int list(boolean json) {
        Kit kit = commands.kit();
        List<Camera> cameras = kit.keys(Kit.Sort.CAMERAS).stream()
                .flatMap(it -> kit.camera(it).stream())
                .toList();
        kit.keys(Kit.Sort.CAMERAS)
                .forEach(it -> kit.problems(Kit.Sort.CAMERAS, it).forEach(commands.out()::error));
        if (json) {
            commands.out()
                    .raw(JsonText.pretty(Json.object()
                            .and(
                                    "cameras",
                                    cameras.stream()
                                            .map(it -> Json.object()
                                                    .and("key", it.key())
                                                    .and("name", it.name())
                                                    .and("frameSize", it.frameSize()))
                                            .toList())));
        } else {
            int widest =
                    cameras.stream().mapToInt(it -> it.key().length()).max().orElse(0);
            cameras.forEach(it -> commands.out()
                    .line(it.key() + " ".repeat(widest - it.key().length()) + "  " + it.name() + ", "
                            + it.frameSize()));
        }
        return 0;
    }

    private static List<String> words(Camera camera) {
        List<String> lines = new ArrayList<>();
        lines.add(camera.name() + " (" + camera.key() + "): " + camera.frameSize());
        camera.frames().forEach((size, count) -> lines.add(count + " frames on " + size));
        if (!camera.backs().isEmpty()) {
            lines.add("backs " + String.join(", ", camera.backs()));
        }
        lines.add(camera.shutter().map(CameraSubcommand::dial).orElse("sets its times itself"));
        camera.syncTime().ifPresent(it -> lines.add("flash up to " + it));
        for (Lens lens : camera.lenses()) {
            lines.add("lens " + lens.key() + ": " + lens.name() + ", " + lens.focalWords() + ", "
                    + lens.ring().widest() + " to " + lens.ring().narrowest());
        }
        return lines;
    }

    private static String dial(Shutter shutter) {
        return "times " + shutter.longest() + " to " + shutter.fastest() + (shutter.bulb() ? ", bulb" : "");
    }
}
