package takeup.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import takeup.roll.Roll;
import takeup.text.ClockText;
import takeup.text.English;

/** The end of a day as a list to tick off, and in a few sentences. */
public final class DayEndText {
    private DayEndText() {}

    /** All of it as a list to read and to tick off. */
    public static List<CheckList.Section> sections(DayEnd end) {
        List<CheckList.Section> all = new ArrayList<>();
        end.byWhereabouts()
                .forEach((where, rolls) -> all.add(new CheckList.Section(
                        English.capitalised(where.words()) + ", " + English.count(rolls.size(), "roll"),
                        rolls.stream()
                                .map(it -> new CheckList.Item(it.id() + "  " + words(it), where == Whereabouts.MISSING))
                                .toList())));
        if (end.rolls().isEmpty()) {
            all.add(CheckList.Section.of("Rolls", List.of("no roll was loaded or finished on this day")));
        }
        List<CheckList.Item> questions = questions(end).stream()
                .map(it -> CheckList.Item.caution(English.capitalised(it)))
                .toList();
        if (!questions.isEmpty()) {
            all.add(new CheckList.Section("To check", questions));
        }
        if (!end.elsewhere().isEmpty()) {
            all.add(CheckList.Section.of(
                    "Logged by another writer in this folder, "
                            + English.count(end.elsewhere().size(), "roll"),
                    Stream.concat(
                                    end.elsewhere().stream().map(DayEndText::words),
                                    Stream.of(
                                            "whether one is missing, and what to write on each, tells takeup day-end"))
                            .toList()));
        }
        List<String> labels =
                end.rolls().stream().flatMap(it -> label(it).stream()).toList();
        if (!labels.isEmpty()) {
            all.add(CheckList.Section.of("Label for each roll", labels));
        }
        return all;
    }

    /** The same in a few sentences, for a pipe. */
    public static String sentence(DayEnd end) {
        if (end.rolls().isEmpty()) {
            return "No roll was loaded or finished on " + end.date() + ".";
        }
        List<String> parts = new ArrayList<>();
        end.byWhereabouts()
                .forEach((where, rolls) -> parts.add(rolls.size() + " " + where.words() + " ("
                        + (where == Whereabouts.MISSING
                                ? joined(rolls, "; ", it -> it.id() + ": " + words(it))
                                : joined(rolls, ", ", it -> it.id().toString()))
                        + ")"));
        List<String> questions = questions(end);
        return English.count(end.rolls().size(), "roll") + ": " + String.join(", ", parts) + "."
                + (end.isRollMissing() ? "" : " None is missing.")
                + (questions.isEmpty() ? "" : " To check: " + String.join("; ", questions) + ".");
    }

    private static String joined(
            List<DayEnd.RollEntry> rolls, String between, Function<DayEnd.RollEntry, String> words) {
        return String.join(between, rolls.stream().map(words).toList());
    }

    /** What to ask about. */
    static List<String> questions(DayEnd end) {
        List<String> all = new ArrayList<>();
        end.oddities().forEach(it -> all.add(OddityText.words(it)));
        end.unsafeMoments().forEach(it -> all.add(MomentText.unsafe(it)));
        return all;
    }

    /** What is written on a roll; empty for one that is withdrawn or gone. */
    static Optional<String> label(DayEnd.RollEntry entry) {
        return entry.roll().filter(it -> it.state() != Roll.State.WITHDRAWN).map(RollText::label);
    }

    /** Where a roll is. */
    static String words(DayEnd.RollEntry entry) {
        return entry.roll()
                .map(it -> words(it, entry.where()))
                .orElse("its number was given, and its file is not there or cannot be read (takeup check)");
    }

    private static String words(Roll roll, Whereabouts where) {
        String film = roll.film().stock().key() + ", "
                + used(roll.framesUsed(), roll.film().framesNominal());
        String finished = finished(roll.finishedAt()).orElse("");
        return switch (where) {
            case IN_CAMERA -> "in " + roll.place() + ", " + film + ", " + RollText.left(roll);
            case MISSING ->
                "not in your hand: " + film + ", out of " + roll.place() + finished
                        + "; look in the pockets and by the camera";
            case CLOSED, REWOUND -> "out of " + roll.place() + ", " + film + finished;
            case WITHDRAWN -> roll.place() + ", " + roll.film().stock().key();
        };
    }

    private static String words(RollSummary roll) {
        return roll.id() + "  " + (roll.state() == Roll.State.OPEN ? "in " : "out of ") + roll.place() + ", "
                + roll.film().stock() + ", "
                + used(roll.framesUsed(), roll.film().framesNominal())
                + finished(roll.finishedAt()).orElse(roll.state() == Roll.State.REWOUND ? ", rewound" : "");
    }

    private static String used(int used, int nominal) {
        return used + " of " + nominal + " frames";
    }

    private static Optional<String> finished(Optional<OffsetDateTime> at) {
        return at.map(it -> ", finished " + ClockText.clock(it));
    }
}
