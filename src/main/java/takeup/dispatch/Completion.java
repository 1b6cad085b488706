package takeup.dispatch;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import takeup.command.Command;
import takeup.history.ShootState;
import takeup.prompt.Tokens;
import takeup.roll.Frame;
import takeup.roll.Roll;

/** What Tab makes of the word in front of the cursor. */
public final class Completion {
    /** The words behind which a roll is named. */
    private static final List<String> OF_ROLLS = List.of(
            "note",
            "cost",
            "developed",
            "release",
            "condition",
            "scans",
            "paper",
            "load",
            "unload",
            "fix",
            "insert",
            "drop",
            "move",
            "lost");

    private Completion() {}

    /** The words that could stand there; empty if none is known. */
    public static List<String> of(ShootState s, String typed) {
        int start = typed.lastIndexOf(' ') + 1;
        String begun = typed.substring(start).toLowerCase(Locale.ROOT);
        List<String> before = Tokens.of(typed.substring(0, start)).words();
        List<String> fitting = new ArrayList<>();
        for (String word : known(s, before)) {
            if (word.startsWith(begun)) {
                fitting.add(word);
            }
        }
        if (isRoll(before)) {
            for (String name : s.day().cameras().names().keySet()) {
                if (name.regionMatches(true, 0, begun, 0, begun.length())) {
                    fitting.add(name);
                }
            }
        }
        return fitting;
    }

    /** Whether a roll may be named there, by its own name too. */
    private static boolean isRoll(List<String> before) {
        if (before.isEmpty()) {
            return false;
        }
        String last = before.get(before.size() - 1);
        return switch (before.get(0)) {
            case "day-end" -> true;
            case "order" -> before.size() > 1 && (last.equals("with") || last.equals("without"));
            case "find" -> last.equals("roll");
            default ->
                before.size() == 1 && OF_ROLLS.contains(before.get(0))
                        || before.size() == 2 && before.get(0).equals("fix") && last.equals("roll");
        };
    }

    private static List<String> known(ShootState s, List<String> before) {
        if (before.isEmpty()) {
            return CommandTable.firstWords();
        }
        Optional<Command> command = CommandTable.named(before.get(0));
        if (command.isEmpty()) {
            command = CommandTable.of(new Tokens(before, Optional.empty()));
        }
        return command.isPresent() ? command.get().completions(before, s) : List.of();
    }

    /** Notes of this day's frames and of the roll in hand that begin so, each once and the newest first. */
    public static List<String> notes(ShootState s, LocalDate today, String begun) {
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
    public static int noteStart(String typed) {
        int at = typed.indexOf(';') + 1;
        if (at == 0) {
            at = typed.regionMatches(true, 0, "n ", 0, 2) ? 2 : -1;
        }
        while (at > 0 && at < typed.length() && typed.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    /** The longest start that all words share, whatever the case of their letters; never half a character. */
    public static String shared(List<String> words) {
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
