package takeup.prompt;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Extension;
import takeup.kit.Camera;
import takeup.kit.Lens;
import takeup.roll.SettingPatch;
import takeup.text.Nearest;
import takeup.text.Plain;

/** Reads the states of a camera that take one word: lens, ext, tube, mag, flash, tripod, bias. */
public final class CameraStateParser {
    private CameraStateParser() {}

    /** The change that a state and its word mean. */
    public static SettingPatch read(
            String state, String word, Camera camera, Optional<Lens> lens, OptionalDouble zoomMm) {
        return switch (state) {
            case "lens" -> SettingPatch.lens(lens(word, camera));
            case "bias" -> SettingPatch.bias(Fractions.signed(word));
            case "flash" -> SettingPatch.flash(onOrOff(state, word));
            case "tripod" -> SettingPatch.tripod(onOrOff(state, word));
            default -> SettingPatch.extension(extension(state, word, lens, zoomMm));
        };
    }

    public static boolean onOrOff(String state, String word) {
        if (!word.equals("on") && !word.equals("off")) {
            throw new CommandRejected(state + " is on or off, not " + word);
        }
        return word.equals("on");
    }

    private static Lens lens(String key, Camera camera) {
        if (camera.lenses().isEmpty()) {
            throw new CommandRejected(camera.name() + " has a lens of its own and none to change");
        }
        List<String> keys = camera.lenses().stream().map(Lens::key).toList();
        return camera.lens(key)
                .orElseThrow(() -> new CommandRejected(key + " is no lens of " + camera.name()
                        + Nearest.question(key, keys) + "; it has " + String.join(", ", keys)));
    }

    private static Extension extension(String state, String word, Optional<Lens> lens, OptionalDouble zoomMm) {
        if (word.equals("off")) {
            return Extension.NONE;
        }
        if (state.equals("mag")) {
            Token far = Tokens.token(word);
            if (far.is(Token.Kind.METRES)) {
                return fromDistance(far, focal(lens, zoomMm));
            }
            String number = word.startsWith("1:") ? word.substring(2) : word;
            double value = Tokens.number(number)
                    .filter(it -> it > 0 && it <= 50)
                    .orElseThrow(() -> new CommandRejected(
                            word + " is no magnification: mag 0.5, or mag 1:2; above 0 and up to 50"));
            return new Extension(Extension.Kind.MAGNIFICATION, number.equals(word) ? value : 1 / value);
        }
        Token token = Tokens.token(word);
        if (!token.is(Token.Kind.MILLIMETRES) || !(token.value() > 0 && token.value() <= 5000)) {
            throw new CommandRejected(state + " takes millimetres, such as " + state
                    + (state.equals("ext") ? " 110mm" : " 30mm") + ", or off");
        }
        OptionalDouble focal = focal(lens, zoomMm);
        if (focal.isEmpty()) {
            throw new CommandRejected(
                    "the loss depends on the focal length, which is not known here: name it first (set 50mm), "
                            + "or use mag");
        }
        if (state.equals("ext") && token.value() < focal.getAsDouble() - 0.05) {
            throw new CommandRejected("ext " + word + ": from lens to film it is at least the focal length, "
                    + Plain.number(focal.getAsDouble()) + " mm; what is added to the lens is tube " + word);
        }
        return new Extension(state.equals("ext") ? Extension.Kind.DRAW : Extension.Kind.TUBE, token.value());
    }

    private static OptionalDouble focal(Optional<Lens> lens, OptionalDouble zoomMm) {
        return zoomMm.isPresent() || lens.isEmpty() || lens.get().isZoom()
                ? zoomMm
                : OptionalDouble.of(lens.get().shortestMm());
    }

    /** m = focal / (distance - focal), the distance from the subject to the lens (thin lens equation). */
    private static Extension fromDistance(Token far, OptionalDouble focalMm) {
        if (focalMm.isEmpty()) {
            throw new CommandRejected(
                    "the magnification follows from the focal length, which is not known here: name it first "
                            + "(set 50mm)");
        }
        double focal = focalMm.getAsDouble();
        double magnification = focal / (FrameArguments.distance(far) * 1000 - focal);
        if (!(magnification > 0 && magnification <= 50)) {
            throw new CommandRejected("mag " + far.text() + ": nothing is sharp nearer than the focal length, "
                    + Plain.number(focal) + " mm; the distance is farther than that");
        }
        return new Extension(Extension.Kind.MAGNIFICATION, Plain.rounded(magnification, 4));
    }
}
