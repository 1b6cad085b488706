package takeup.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.day.CameraSetup;
import takeup.exposure.Stops;
import takeup.json.Json;
import takeup.kit.Filter;
import takeup.prompt.FrameArguments;
import takeup.prompt.SceneWords;
import takeup.report.AdviceJson;
import takeup.report.SetupText;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** A frame, or what was changed of one, in words and as fields of an answer. */
public final class FrameDescription {
    private FrameDescription() {}

    /** A frame without its number: {@code f/4 1/125, filter yellow, 0.5 over, bow seat}. */
    public static String of(Roll roll, Frame frame) {
        Setting setting = frame.exposure().setting();
        boolean isExposed = frame.kind() == Frame.Kind.EXPOSED;
        String pair = FrameArguments.words(setting.aperture(), setting.time(), SettingPatch.NOTHING);
        List<String> parts = new ArrayList<>();
        parts.add(isExposed ? "" : frame.kind().toString());
        parts.add(isExposed && pair.isEmpty() ? "setting not known" : pair);
        SetupText.marks(new CameraSetup(setting, Optional.empty()))
                .forEach(it -> parts.add(it.toLowerCase(Locale.ROOT)));
        ExposureResult.of(roll, frame).errorStops().stream()
                .mapToObj(Stops::error)
                .forEach(parts::add);
        if (!frame.scene().people().isEmpty()) {
            parts.add("with " + String.join(", ", frame.scene().people()));
        }
        frame.scene().place().name().ifPresent(it -> parts.add("at " + it));
        frame.note().ifPresent(parts::add);
        return joined(parts);
    }

    /** What was put right of several frames; nothing else is known to be the same in all of them. */
    static String of(SettingPatch change) {
        List<String> parts = new ArrayList<>();
        change.kind().ifPresent(it -> parts.add(it.toString()));
        parts.add(FrameArguments.words(change.aperture(), change.time(), change));
        change.lens().ifPresent(it -> parts.add(it.name()));
        change.filters().ifPresent(it -> parts.add(it.isEmpty() ? "no filter" : "filter " + names(it)));
        change.extension().ifPresent(it -> parts.add(it.toString()));
        change.biasStops().ifPresent(it -> parts.add(it == 0 ? "no bias" : "bias " + SetupText.bias(it)));
        change.flash().ifPresent(it -> parts.add(it ? "flash on" : "flash off"));
        change.tripod().ifPresent(it -> parts.add(it ? "tripod on" : "tripod off"));
        parts.add(new SceneWords("", change.people(), change.place()).words());
        change.note().ifPresent(parts::add);
        return joined(parts);
    }

    private static String names(List<Filter> filters) {
        return String.join(" and ", filters.stream().map(Filter::name).toList());
    }

    private static String joined(List<String> parts) {
        return String.join(", ", parts.stream().filter(it -> !it.isEmpty()).toList());
    }

    static Json.Obj fields(Roll roll, Frame frame) {
        Setting setting = frame.exposure().setting();
        return Json.object()
                .and("frame", frame.number())
                .and("kind", frame.kind())
                .and("aperture", setting.aperture().map(Object::toString))
                .and("time", setting.time().map(Object::toString))
                .and(
                        "errorStops",
                        AdviceJson.exact(ExposureResult.of(roll, frame).errorStops()));
    }
}
