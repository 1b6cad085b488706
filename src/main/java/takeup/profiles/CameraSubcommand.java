package takeup.profiles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.Kit;
import takeup.kit.Lens;
import takeup.kit.ProfileJson;
import takeup.kit.Shutter;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;

/** {@code takeup camera}: all cameras; with a KEY what is known about one. */
@Command(
        name = "camera",
        description = "Prints what is known about a camera.",
        footer = {"", "For example:", "  takeup camera", "  takeup camera 645"},
        subcommands = CameraNewSubcommand.class)
public final class CameraSubcommand extends ProfileSubcommand<Camera> {
    @Parameters(
            paramLabel = "KEY",
            arity = "0..1",
            description = "The camera's key, such as 645; without it all are listed.")
    String key;

    @Mixin
    JsonOption json;

    CameraSubcommand() {
        super(Kit.Sort.CAMERAS);
    }

    /** The command with nothing but these. */
    public static CameraSubcommand of(GlobalOptions global, Optional<String> key, boolean isJson) {
        CameraSubcommand camera = new CameraSubcommand();
        camera.global = global;
        camera.key = key.orElse(null);
        camera.json = JsonOption.asked(isJson);
        return camera;
    }

    @Override
    public Integer call() {
        return run(Optional.ofNullable(key), json);
    }

    @Override
    Optional<Camera> find(Kit kit, String key) {
        return kit.camera(key);
    }

    @Override
    String key(Camera camera) {
        return camera.key();
    }

    @Override
    String summary(Camera camera) {
        return camera.name() + ", " + camera.frameSize();
    }

    @Override
    Json.Obj summaryJson(Camera camera) {
        return Json.object().and("key", camera.key()).and("name", camera.name()).and("frameSize", camera.frameSize());
    }

    @Override
    Json.Obj json(Camera camera) {
        return ProfileJson.of(camera).and("key", camera.key());
    }

    @Override
    List<String> lines(Camera camera) {
        List<String> lines = new ArrayList<>();
        lines.add(camera.name() + " (" + camera.key() + "): " + camera.frameSize());
        camera.frames().forEach((size, count) -> lines.add(count + " frames on " + size));
        if (!camera.backNames().isEmpty()) {
            lines.add("backs "
                    + String.join(
                            ", ",
                            camera.backs().stream().map(CameraSubcommand::back).toList()));
        }
        lines.add(camera.shutter().map(CameraSubcommand::dial).orElse("sets its times itself"));
        camera.syncTime().ifPresent(it -> lines.add("flash up to " + it));
        for (Lens lens : camera.lenses()) {
            lines.add("lens " + lens.key() + ": " + lens.name() + ", " + lens.focalWords() + ", "
                    + lens.ring().widest() + " to " + lens.ring().narrowest()
                    + lens.shutter().map(it -> "; its own " + dial(it)).orElse("")
                    + lens.syncTime().map(it -> "; flash up to " + it).orElse(""));
        }
        return lines;
    }

    /** A back, and what is other than on the body: {@code 645 (6x4.5, 16 frames on 120)}. */
    private static String back(Camera.Back back) {
        List<String> own = new ArrayList<>();
        back.size().ifPresent(it -> own.add(it.toString()));
        back.frames().forEach((size, count) -> own.add(count + " frames on " + size));
        return back.name() + (own.isEmpty() ? "" : " (" + String.join(", ", own) + ")");
    }

    private static String dial(Shutter shutter) {
        return "times " + shutter.longest() + " to " + shutter.fastest() + (shutter.bulb() ? ", bulb" : "")
                + shutter.measuredMarks().entrySet().stream()
                        .map(it -> ", " + it.getKey() + " gives " + it.getValue())
                        .collect(Collectors.joining());
    }
}
