package takeup.session;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import takeup.command.CommandTable;
import takeup.history.ShootState;
import takeup.kit.Filter;
import takeup.kit.Kit;
import takeup.kit.Lens;
import takeup.kit.Warning;
import takeup.prompt.Tokens;
import takeup.roll.Frame;
import takeup.roll.Roll;

/** What Tab makes of the word in front of the cursor. */
final class Completion {
    private static final List<String> ON_OFF = List.of("on", "off");

    private Completion() {}

    /** The words that could stand there; empty if none is known. */
    static List<String> of(ShootState s, String typed) {
        int start = typed.lastIndexOf(' ') + 1;
        String begun = typed.substring(start).toLowerCase(Locale.ROOT);
        List<String> before = Tokens.of(typed.substring(0, start)).words();
        List<String> fitting = new ArrayList<>();
        for (String word : known(s, before)) {
            if (word.startsWith(begun)) {
                fitting.add(word);
            }
        }
        return fitting;
    }

    private static List<String> known(ShootState s, List<String> before) {
        if (before.isEmpty()) {
            return CommandTable.firstWords();
        }
        String last = before.get(before.size() - 1);
        return switch (before.get(0)) {
            case "cam" ->
                before.size() == 1
                        ? s.kit().keys(Kit.Sort.CAMERAS)
                        : before.size() > 2
                                ? List.of()
                                : s.camera(last).map(it -> it.backs()).orElse(List.of());
            case "back" -> alone(before, s.cameraInHand().map(it -> it.backs()).orElse(List.of()));
            case "load" -> with(s.kit().keys(Kit.Sort.STOCKS), "push", "pull", "process", "frames");
            case "meter" -> alone(before, s.kit().keys(Kit.Sort.METERS));
            case "lens" -> alone(before, lenses(s));
            case "filter" -> with(Filter.names(), "off", "and");
            case "fix" ->
                last.equals("filter")
                        ? Filter.names()
                        : last.equals("lens")
                                ? lenses(s)
                                : last.equals("flash") || last.equals("tripod")
                                        ? ON_OFF
                                        : with(
                                                last.equals("roll") ? s.kit().keys(Kit.Sort.STOCKS) : List.of(),
                                                "roll",
                                                "filter",
                                                "lens",
                                                "bias",
                                                "tube",
                                                "flash",
                                                "tripod",
                                                "exposed",
                                                "blank",
                                                "unlogged",
                                                "slate");
            case "move" -> last.equals("cam") ? s.kit().keys(Kit.Sort.CAMERAS) : List.of("cam");
            case "m" ->
                last.equals("sky")
                        ? List.of("snow", "sun", "hazy", "cloudy", "overcast", "shade")
                        : List.of("ev", "low", "high", "spot", "reflected", "flash", "camera", "sky", "and");
            case "shoot" -> List.of("on", "at", "client", "today", "tomorrow");
            case "plan" ->
                before.size() == 1
                        ? List.of("drop", "late", "early")
                        : last.equals("cam")
                                ? s.kit().keys(Kit.Sort.CAMERAS)
                                : last.equals("light")
                                        ? List.of("sun", "hazy", "cloudy", "overcast", "shade", "snow")
                                        : List.of("wants", "must", "cam", "back", "light", "on", "today", "tomorrow");
            case "bag" ->
                before.size() == 1 ? List.of("add", "take") : with(s.kit().keys(Kit.Sort.STOCKS), "expires", "price");
            case "help" -> alone(before, CommandTable.firstWords());
            case "theme" -> alone(before, CommandTable.THEMES);
            case "condition" -> List.of("torn", "opened", "stuck", "partial");
            case "quiet" -> alone(before, codes());
            case "flash", "tripod" -> alone(before, ON_OFF);
            case "ext", "tube", "mag", "hold" -> alone(before, List.of("off"));
            default -> List.of();
        };
    }

    /** Notes of this day's frames and of the roll in hand that begin so, each once and the newest first. */
    static List<String> notes(ShootState s, LocalDate today, String begun) {
        List<Frame> frames = new ArrayList<>();
        for (Roll roll : s.rolls().values()) {
            boolean isInHand = s.rollInHand().equals(Optional.of(roll));
            for (Frame frame : roll.frames()) {
                if (frame.note().isPresent()
                        && (isInHand
                                || frame.exposure()
                                        .at()
                                        .filter(it -> it.toLocalDate().equals(today))
                                        .isPresent())) {
                    frames.add(frame);
                }
            }
        }
        frames.sort(Comparator.comparing(
                (Frame it) -> it.exposure().at().map(at -> at.toInstant()).orElse(Instant.EPOCH)));
        Set<String> notes = new LinkedHashSet<>();
        for (int i = frames.size() - 1; i >= 0; i--) {
            // A frame's further notes stand behind the first one, each after a semicolon.
            List<String> parts =
                    new ArrayList<>(List.of(frames.get(i).note().orElseThrow().split("; ", -1)));
            for (int part = parts.size() - 1; part >= 0; part--) {
                String note = parts.get(part);
                if (note.regionMatches(true, 0, begun, 0, begun.length()) && note.length() > begun.length()) {
                    notes.add(note);
                }
            }
        }
        return List.copyOf(notes);
    }

    /** Where the note of a line begins, behind the semicolon or {@code n}; -1 where the line has none. */
    static int noteStart(String typed) {
        int semicolon = typed.indexOf(';');
        int at = semicolon >= 0 ? semicolon + 1 : typed.regionMatches(true, 0, "n ", 0, 2) ? 2 : -1;
        while (at > 0 && at < typed.length() && typed.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    /** For a line that takes one word only. */
    private static List<String> alone(List<String> before, List<String> words) {
        return before.size() == 1 ? words : List.of();
    }

    private static List<String> lenses(ShootState s) {
        return s.cameraInHand()
                .map(it -> it.lenses().stream().map(Lens::key).toList())
                .orElse(List.of());
    }

    private static List<String> with(List<String> words, String... more) {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of(more));
        return all;
    }

    private static List<String> codes() {
        List<String> codes = new ArrayList<>();
        for (Warning.Code code : Warning.Code.values()) {
            codes.add(code.toString());
        }
        return codes;
    }

    /** The longest start that all words share, whatever the case of their letters; never half a character. */
    static String shared(List<String> words) {
        String shared = words.get(0);
        for (String word : words) {
            int same = 0;
            while (same < shared.length() && word.regionMatches(true, same, shared, same, 1)) {
                same++;
            }
            same -= same > 0 && same < shared.length() && Character.isHighSurrogate(shared.charAt(same - 1)) ? 1 : 0;
            shared = shared.substring(0, same);
        }
        return shared;
    }
}
