package takeup.panel;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.kit.Filter;
import takeup.kit.Lens;
import takeup.kit.Warning;
import takeup.report.ExposuresText;
import takeup.roll.Assignment;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.text.ClockText;
import takeup.text.Plain;
import takeup.text.Width;

/** One frame as a row of a list: its number, what was set, how it was exposed, and the note. */
public final class FrameText {
    /** Which columns a row has. */
    public enum Columns {
        /** Beside the suggestions of a narrow screen: each column that is saved is one of the note. */
        TIGHT(false, false),
        TIMED(true, false),
        WARNED(false, true),
        /** Time, light and warnings. */
        ALL(true, true);

        private final boolean hasTime;
        private final boolean hasWarnings;

        Columns(boolean hasTime, boolean hasWarnings) {
            this.hasTime = hasTime;
            this.hasWarnings = hasWarnings;
        }
    }

    private final Roll roll;
    private final Frame frame;
    private final Columns columns;
    private final int saved;

    private FrameText(Roll roll, Frame frame, Columns columns) {
        this.roll = roll;
        this.frame = frame;
        this.columns = columns;
        this.saved = columns == Columns.TIGHT ? 1 : 0;
    }

    /** A frame without its warnings. */
    static String of(Roll roll, Frame frame, Columns columns) {
        return of(roll, frame, columns, List.of());
    }

    public static String of(Roll roll, Frame frame, Columns columns, List<Warning> warnings) {
        return new FrameText(roll, frame, columns).row(warnings);
    }

    /** The codes of warnings as words. */
    static String codes(List<Warning> warnings, String between) {
        List<String> codes = new ArrayList<>();
        for (Warning warning : warnings) {
            codes.add(warning.code().toString());
        }
        return String.join(between, codes);
    }

    private String row(List<Warning> warnings) {
        OptionalDouble error = ExposureResult.of(roll, frame).errorStops();
        StringBuilder row = new StringBuilder();
        row.append(Width.padLeft(Integer.toString(frame.number()), 3)).append(" ".repeat(2 - saved));
        if (columns.hasTime) {
            Optional<OffsetDateTime> at = frame.exposure().at();
            row.append(at.isPresent() ? ClockText.clock(at.get()) : "  –  ").append("  ");
        }
        row.append(settingAndResult(error));
        if (columns == Columns.ALL) {
            row.append(Width.pad(light(), 9));
        }
        if (columns.hasWarnings) {
            row.append(warnings.isEmpty() ? "" : codes(warnings, " ") + "  ").append(extras());
        }
        row.append(error.isPresent() && frame.kind() == Frame.Kind.LOST ? "lost " : "");
        row.append(frame.further().isEmpty() ? "" : "×" + (frame.further().size() + 1) + " ");
        // A result as wide as its column, such as 11.0 under, leaves no blank.
        if (frame.was().isPresent()) {
            row.append(row.charAt(row.length() - 1) == ' ' ? "" : " ")
                    .append("(was ")
                    .append(frame.was().getAsInt())
                    .append(") ");
        }
        String optics = optics();
        row.append(optics.isEmpty() || row.charAt(row.length() - 1) == ' ' ? "" : " ")
                .append(optics)
                .append(optics.isEmpty() || frame.note().isEmpty() ? "" : "  ");
        return row.append(Plain.textOr(frame.note(), "")).toString();
    }

    /** The lens where it is not the usual one, the filters, and who and where: {@code 28 mm, red}. */
    private String optics() {
        List<String> words = new ArrayList<>();
        Optional<Lens> lens = lens(frame);
        boolean isOneOfMany = lens.isPresent() && hasAnotherLens(lens.get());
        boolean isAnother = lens.isPresent()
                && !lens.get().equals(roll.camera(frame).lenses().get(0));
        if (isOneOfMany || isAnother && columns.hasWarnings) {
            words.add(lens.get().focalWords());
        }
        for (Filter filter : frame.exposure().setting().filters()) {
            words.add(filter.name());
        }
        if (columns.hasWarnings) {
            addScene(words);
        }
        return String.join(", ", words);
    }

    /** Who and where, and for which shoot where that is not the roll's. */
    private void addScene(List<String> words) {
        List<String> people = frame.scene().people();
        if (!people.isEmpty()) {
            words.add("with " + String.join(", ", people));
        }
        Optional<String> place = frame.scene().place().name();
        if (place.isPresent()) {
            words.add("at " + place.get());
        }
        Optional<Assignment> shoot = roll.otherShoot(frame);
        if (shoot.isPresent()) {
            words.add("for " + shoot.get().name());
        }
    }

    private boolean hasAnotherLens(Lens lens) {
        for (Frame other : roll.frames()) {
            if (lens(other).isPresent() && !lens(other).get().key().equals(lens.key())) {
                return true;
            }
        }
        return false;
    }

    private static Optional<Lens> lens(Frame frame) {
        return frame.exposure().setting().lens();
    }

    /** The names of the columns, as wide as they are. */
    public static String head(Columns columns) {
        String time = columns.hasTime ? "at     " : "";
        String light = columns == Columns.ALL ? Width.pad("light", 9) : "";
        return " no  " + time + Width.pad("f-stop", 7) + Width.pad("time", 7) + " " + Width.pad("result", 11) + light
                + "warnings, with, note";
    }

    /** What else there was: flash, a clock that was moved. */
    private String extras() {
        Setting setting = frame.exposure().setting();
        return (setting.flash() ? "flash  " : "") + (frame.exposure().clock().isPresent() ? "clock moved  " : "");
    }

    private String settingAndResult(OptionalDouble error) {
        Setting setting = frame.exposure().setting();
        boolean isExposed = frame.kind() == Frame.Kind.EXPOSED;
        boolean isSet = setting.aperture().isPresent() || isExposed;
        int wide = 7 - saved;
        String pair = isSet
                ? Width.pad(Plain.textOr(setting.aperture(), "–"), wide)
                        + Width.pad(Plain.textOr(setting.time(), "–"), wide)
                : " ".repeat(2 * wide);
        String unjudged = isExposed ? "" : frame.kind().toString();
        String judged = error.isPresent() ? Stops.onMeter(error.getAsDouble()) : unjudged;
        String result = ExposuresText.soFar(roll, frame).orElse(judged);
        // With flash there is no result: the note begins in its place.
        boolean isShort = saved > 0 && isSet && result.isEmpty();
        return Width.pad(pair + " " + result, isShort ? 13 : 26 - 3 * saved);
    }

    private String light() {
        Optional<Light> light = frame.exposure().light();
        return light.isPresent() ? "EV " + Plain.decimals(light.get().ev100().stops(), 1) : "";
    }
}
