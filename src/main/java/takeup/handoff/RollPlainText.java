package takeup.handoff;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import takeup.exposure.Extension;
import takeup.exposure.Stops;
import takeup.kit.Lens;
import takeup.kit.Warning;
import takeup.roll.CounterCheck;
import takeup.roll.Exposure;
import takeup.roll.ExposureResult;
import takeup.roll.Film;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Release;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.text.ClockText;
import takeup.text.Plain;

/**
 * A roll as plain text for people: what it is, then a table of its frames. Differences in light are words ({@code 0.9
 * under}), and {@code -} is not known. Control characters are left for whoever shows it; line breaks in a note are
 * blanks.
 */
public final class RollPlainText {
    private static final List<String> HEADS =
            List.of("frame", "at", "aperture", "shutter", "lens", "EV", "error", "kind", "with", "warnings", "note");
    private static final String UNKNOWN = "-";

    private final Roll roll;
    private final boolean manyLenses;
    private final boolean manyDays;

    private RollPlainText(Roll roll) {
        this.roll = roll;
        this.manyLenses = lenses(roll).size() > 1;
        this.manyDays = exposures(roll).stream()
                .flatMap(it -> it.at().stream())
                .map(OffsetDateTime::toLocalDate)
                .anyMatch(it -> !it.equals(roll.loadedAt().toLocalDate()));
    }

    /** The roll in a state of any kind, as lines that end in a line feed. */
    public static String of(Roll roll) {
        return of(roll, List.of());
    }

    /** The same with who signed a release, for those who asked for it. */
    public static String withReleases(Roll roll) {
        return of(roll, roll.notes().releases());
    }

    private static String of(Roll roll, List<Release> releases) {
        RollPlainText text = new RollPlainText(roll);
        List<String> lines = new ArrayList<>(text.head(releases));
        lines.add("");
        if (roll.frames().isEmpty()) {
            lines.add("no frames logged");
        } else {
            lines.addAll(text.table());
        }
        return String.join("\n", lines) + "\n";
    }

    private List<String> head(List<Release> releases) {
        Film film = roll.film();
        TextTable head = new TextTable(List.of("roll", roll.id() + ", " + roll.state()), Set.of());
        roll.assignment()
                .ifPresent(it -> line(
                        head,
                        "shoot",
                        it.name() + ", " + it.date()
                                + it.place()
                                        .name()
                                        .map(place -> ", at " + place)
                                        .orElse("")));
        line(
                head,
                "camera",
                roll.camera().name() + roll.back().map(it -> ", back " + it).orElse("") + ", "
                        + roll.camera().frameSize());
        film.label().name().ifPresent(it -> line(head, "name", it));
        line(
                head,
                "stock",
                film.stock().name() + ", " + film.size()
                        + film.label().batch().map(it -> ", batch " + it).orElse(""));
        line(head, "development", film.developmentWords());
        line(
                head,
                "frames",
                roll.framesUsed() + " used of " + film.framesNominal() + ", " + roll.framesExposed() + " exposed");
        line(head, "loaded", day(roll.loadedAt()));
        roll.finishedAt().ifPresent(it -> line(head, "unloaded", day(it)));
        List<String> lenses = lenses(roll);
        if (lenses.size() == 1) {
            line(head, "lens", lenses.get(0));
        }
        roll.conditions()
                .forEach(it -> line(
                        head,
                        "condition",
                        it.kind() + it.words().map(words -> ": " + words).orElse("")));
        roll.counterChecks().forEach(it -> line(head, "counter", counter(it)));
        roll.rewindings()
                .forEach(it -> line(
                        head,
                        "rewound",
                        "after frame " + it.after() + " (" + day(it.at()) + ")"
                                + it.again()
                                        .map(again -> ", loaded again " + day(again) + ", " + it.spare()
                                                + " frames left blank to be safe")
                                        .orElse("")));
        if (!roll.loadChecks().isEmpty()) {
            line(
                    head,
                    "looks",
                    String.join(
                            ", ",
                            roll.loadChecks().stream()
                                    .map(it -> it.what() + " " + it.answer())
                                    .toList()));
        }
        roll.note().ifPresent(it -> line(head, "note", it));
        releases.forEach(it -> line(head, "released", it.toString()));
        return head.lines();
    }

    private static void line(TextTable head, String name, String words) {
        head.row(List.of(name, oneLine(words)));
    }

    private static String counter(CounterCheck check) {
        return "the camera showed " + check.shown() + ", the log came to " + check.expected() + " (" + day(check.at())
                + ")";
    }

    private static String day(OffsetDateTime at) {
        return at.toLocalDate() + " " + ClockText.clock(at);
    }

    private List<String> table() {
        TextTable table = new TextTable(HEADS, Set.of(0, 5));
        List<List<Warning>> warnings = FrameWarnings.of(roll);
        for (int i = 0; i < roll.frames().size(); i++) {
            Frame frame = roll.frames().get(i);
            String codes = String.join(
                    " ",
                    warnings.get(i).stream().map(it -> it.code().toString()).toList());
            table.row(row(
                    Integer.toString(frame.number()),
                    RollJson.shown(frame),
                    ExposureResult.of(roll, frame).errorStops(),
                    frame.kind() == Frame.Kind.EXPOSED ? "" : frame.kind().toString(),
                    ofFrame(frame),
                    codes,
                    frame.note()));
            for (Exposure more : frame.further()) {
                table.row(row(
                        "",
                        more,
                        ExposureResult.of(roll.film(), more).errorStops(),
                        "",
                        List.of("exposed again"),
                        "",
                        Optional.empty()));
            }
        }
        return table.lines();
    }

    private List<String> row(
            String number,
            Exposure exposure,
            OptionalDouble error,
            String kind,
            List<String> first,
            String codes,
            Optional<String> note) {
        Setting setting = exposure.setting();
        List<String> with = new ArrayList<>(first);
        with.addAll(with(exposure));
        return List.of(
                number,
                exposure.at()
                        .map(it -> manyDays ? day(it) : ClockText.clock(it))
                        .orElse(UNKNOWN),
                setting.aperture().map(Object::toString).orElse(UNKNOWN),
                setting.time().map(Object::toString).orElse(UNKNOWN),
                manyLenses ? oneLine(setting.lens().map(Lens::name).orElse(UNKNOWN)) : "",
                exposure.light()
                        .map(it -> Plain.decimals(it.ev100().stops(), 1))
                        .orElse(UNKNOWN),
                error.isPresent() ? Stops.error(error.getAsDouble()) : UNKNOWN,
                kind,
                oneLine(String.join(", ", with)),
                codes,
                oneLine(note.orElse("")));
    }

    private List<String> ofFrame(Frame frame) {
        List<String> words = new ArrayList<>();
        String parts = ExposureResult.of(roll, frame).light().parts();
        if (!parts.isEmpty()) {
            words.add(parts);
        }
        roll.otherShoot(frame).ifPresent(it -> words.add("for " + it.name()));
        if (!frame.scene().people().isEmpty()) {
            words.add("with " + String.join(", ", frame.scene().people()));
        }
        frame.scene().place().name().ifPresent(it -> words.add("at " + it));
        frame.scene()
                .body()
                .filter(it -> !it.key().equals(roll.camera().key()))
                .ifPresent(it -> words.add("on " + it.name()));
        frame.was().ifPresent(it -> words.add("was " + it));
        if (!frame.further().isEmpty()) {
            words.add(1 + frame.further().size() + " exposures");
        }
        if (roll.doubleAwaited() && roll.newest().filter(it -> it == frame).isPresent()) {
            words.add("another exposure to come");
        }
        return words;
    }

    /**
     * All that is not neutral: filters, extension, bias, flash, tripod, a focal length or a distance that was named.
     */
    private static List<String> with(Exposure exposure) {
        Setting setting = exposure.setting();
        List<String> words = new ArrayList<>();
        setting.zoomMm().ifPresent(it -> words.add(Plain.digits(it, 4) + " mm"));
        setting.distanceM().ifPresent(it -> words.add(Plain.digits(it, 3) + " m"));
        setting.filters().forEach(it -> words.add("filter " + ExposureFields.name(it)));
        if (setting.extension().kind() != Extension.Kind.NONE) {
            words.add(setting.extension().toString());
        }
        if (setting.biasStops() != 0) {
            words.add("bias " + Stops.words(setting.biasStops()) + (setting.biasStops() > 0 ? " more" : " less"));
        }
        if (setting.flash()) {
            words.add("flash"
                    + exposure.flashLight().map(it -> " " + it.aperture()).orElse(""));
        }
        if (setting.tripod()) {
            words.add("tripod");
        }
        return words;
    }

    private static List<Exposure> exposures(Roll roll) {
        List<Exposure> all = new ArrayList<>();
        for (Frame frame : roll.frames()) {
            all.add(RollJson.shown(frame));
            all.addAll(frame.further());
        }
        return all;
    }

    private static List<String> lenses(Roll roll) {
        return exposures(roll).stream()
                .flatMap(it -> it.setting().lens().stream())
                .map(Lens::name)
                .distinct()
                .toList();
    }

    /** Every kind of line break as a blank, and none at the ends. */
    private static String oneLine(String words) {
        StringBuilder line = new StringBuilder(words.length());
        for (int at = 0; at < words.length(); at++) {
            char c = words.charAt(at);
            boolean second = c == '\n' && at > 0 && words.charAt(at - 1) == '\r';
            if (!second) {
                line.append(c >= '\n' && c <= '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029' ? ' ' : c);
            }
        }
        return line.toString().strip();
    }
}
