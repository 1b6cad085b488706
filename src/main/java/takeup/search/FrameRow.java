package takeup.search;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.review.Density;
import takeup.review.Review;
import takeup.roll.Assignment;
import takeup.roll.Exposure;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Scene;
import takeup.roll.Setting;
import takeup.text.IsoTime;
import takeup.text.Plain;
import takeup.text.TabFields;

/**
 * A frame as it is found: its values in one line of text, cut apart only where a value is asked for, so that hundreds
 * of thousands are gone through in a second.
 *
 * @param roll what it shares with the other frames of its roll
 * @param line its values in the order of {@link FrameColumn}, a tab between two; what is not known is empty
 */
public record FrameRow(RollHead roll, String line) {
    /** The lines of all frames of a roll, each ending in a line feed. */
    public static String lines(Roll roll, Review review) {
        List<Optional<String>> scans = review.scans(roll);
        List<Optional<Density>> verdicts = review.verdicts(roll);
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < roll.frames().size(); i++) {
            Frame frame = roll.frames().get(i);
            lines.append(i + 1).append('\t').append(frame.number()).append('\t').append(frame.kind());
            exposure(frame, lines);
            value(lines, decimal(ExposureResult.of(roll, frame).errorStops()));
            boolean isBlank = frame.kind() == Frame.Kind.BLANK;
            value(lines, !isBlank && frame.exposure().setting().flash() ? "flash" : "");
            value(lines, !isBlank && frame.exposure().setting().tripod() ? "tripod" : "");
            Scene scene = frame.scene();
            Optional<Assignment> shoot = scene.shoot().or(roll::assignment);
            value(lines, String.join(", ", scene.people()));
            value(
                    lines,
                    scene.place()
                            .name()
                            .or(() -> shoot.flatMap(it -> it.place().name()))
                            .orElse(""));
            value(lines, shoot.map(Assignment::name).orElse(""));
            value(lines, frame.note().orElse(""));
            value(lines, scans.get(i).orElse(""));
            value(lines, verdicts.get(i).map(Density::toString).orElse(""));
            value(lines, scene.people().isEmpty() ? "" : release(roll, frame));
            lines.append('\n');
        }
        return lines.toString();
    }

    private static String release(Roll roll, Frame frame) {
        return roll.notes().unreleased(frame).isEmpty() ? "released" : "unreleased";
    }

    /** When, and how the camera was set; a blank frame had no exposure, whatever was set. */
    private static void exposure(Frame frame, StringBuilder line) {
        Exposure exposure = frame.exposure();
        Setting setting = frame.kind() == Frame.Kind.BLANK ? Setting.NONE : exposure.setting();
        value(line, exposure.at().map(IsoTime::of).orElse(""));
        value(line, setting.aperture().map(Object::toString).orElse(""));
        value(line, setting.aperture().map(it -> Plain.number(it.fNumber())).orElse(""));
        value(line, setting.time().map(Object::toString).orElse(""));
        value(line, setting.time().map(it -> Plain.number(it.seconds())).orElse(""));
        value(line, setting.lens().map(Lens::name).orElse(""));
        value(line, decimal(setting.focalMm()));
        value(
                line,
                String.join(", ", setting.filters().stream().map(Filter::name).toList()));
    }

    private static String decimal(OptionalDouble value) {
        return value.isPresent() ? Plain.number(Plain.rounded(value.getAsDouble(), 9)) : "";
    }

    private static void value(StringBuilder line, String value) {
        line.append('\t').append(TabFields.escaped(value));
    }

    /** A value; empty text where it is not known. */
    public String text(FrameColumn column) {
        int from = 0;
        for (int tabs = column.ordinal(); tabs > 0; tabs--) {
            from = line.indexOf('\t', from) + 1;
        }
        int end = line.indexOf('\t', from);
        return TabFields.unescaped(line.substring(from, end < 0 ? line.length() : end));
    }

    /** A number; empty where it is not known. */
    OptionalDouble number(FrameColumn column) {
        String text = text(column);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    /** Whether a value has these words in it, which are in lower case. */
    boolean has(FrameColumn column, String words) {
        return has(text(column), words);
    }

    static boolean has(String text, String words) {
        return !text.isEmpty() && text.toLowerCase(Locale.ROOT).contains(words);
    }
}
