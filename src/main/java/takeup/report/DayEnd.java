package takeup.report;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import takeup.history.RollsOfDay;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.roll.CounterCheck;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.text.ClockText;
import takeup.text.English;

/**
 * The end of a day: every roll of it is closed, in a camera, or missing by name; what is odd and should be asked about;
 * and what is written on each roll.
 *
 * @param date the day
 * @param rolls each roll and where it is
 * @param asks what to ask about, in sentences
 * @param elsewhere rolls of other writers in the same folder, where they are known by their line alone
 */
public record DayEnd(LocalDate date, List<RollEntry> rolls, List<String> asks, List<RollSummary> elsewhere) {
    /** Where a roll is. */
    public enum RollWhereabouts {
        CLOSED("closed"),
        IN_CAMERA("in a camera"),
        REWOUND("rewound, to be loaded again"),
        WITHDRAWN("withdrawn: the loading was taken back"),
        MISSING("MISSING");

        private final String words;

        RollWhereabouts(String words) {
            this.words = words;
        }

        /** As other programs read it: {@code in-camera}. */
        String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** A roll, where it is, and the words about it. */
    public record RollEntry(RollId id, RollWhereabouts is, Optional<Roll> roll, String words) {}

    public DayEnd {
        rolls = List.copyOf(rolls);
        asks = List.copyOf(asks);
        elsewhere = List.copyOf(elsewhere);
    }

    /**
     * The day as it stands.
     *
     * @param s with all rolls of the day read in
     * @param letters the writer's letters, to find numbers that were given and are gone
     * @param held the rolls that the photographer holds; empty where they were not named
     */
    public static DayEnd of(ShootState s, OffsetDateTime now, String letters, Optional<Set<RollId>> held) {
        return of(s, List.of(), List.of(), now, letters, held);
    }

    /** The same with the rolls of other writers, whose laptops log on their own. */
    public static DayEnd of(
            ShootState s, List<Roll> others, OffsetDateTime now, String letters, Optional<Set<RollId>> held) {
        return of(s, others, List.of(), now, letters, held);
    }

    private static DayEnd of(
            ShootState s,
            List<Roll> others,
            List<RollSummary> elsewhere,
            OffsetDateTime now,
            String letters,
            Optional<Set<RollId>> held) {
        List<RollEntry> rolls = new ArrayList<>();
        List<String> asks = new ArrayList<>();
        List<Roll> both = new ArrayList<>(s.rolls().values());
        both.addAll(others);
        List<Roll> all = RollsOfDay.of(both, now);
        for (Roll roll : all) {
            RollWhereabouts is = is(roll, held);
            rolls.add(new RollEntry(roll.id(), is, Optional.of(roll), words(roll, is)));
        }
        for (RollId id : RollsOfDay.missing(s, now, letters)) {
            rolls.add(new RollEntry(
                    id,
                    RollWhereabouts.MISSING,
                    Optional.empty(),
                    "its number was given, and its file is not there or cannot be read (takeup check)"));
        }
        rolls.sort(Comparator.comparing(RollEntry::id));
        all.forEach(it -> ask(it, asks));
        held.ifPresent(it -> odd(without(it, elsewhere), s, all, asks));
        asks.addAll(PlanTable.onOneRoll(s.day().job().plan(), both, now));
        return new DayEnd(RollsOfDay.date(now), rolls, asks, elsewhere);
    }

    private static Set<RollId> without(Set<RollId> held, List<RollSummary> elsewhere) {
        Set<RollId> rest = new LinkedHashSet<>(held);
        elsewhere.forEach(it -> rest.remove(it.id()));
        return rest;
    }

    /**
     * The same with what is known of the other writers' rolls by their line alone.
     *
     * @param all the lines of all rolls in the folder
     */
    public static DayEnd withListed(
            ShootState s, List<RollSummary> all, OffsetDateTime now, String letters, Optional<Set<RollId>> held) {
        List<RollSummary> elsewhere = all.stream()
                .filter(it -> !it.id().letters().equals(letters) && isOfDay(it, now))
                .toList();
        return of(s, List.of(), elsewhere, now, letters, held);
    }

    private static boolean isOfDay(RollSummary roll, OffsetDateTime now) {
        return switch (roll.state()) {
            case OPEN, REWOUND -> true;
            case FINISHED ->
                !roll.finishedAt().orElse(roll.loadedAt()).toLocalDate().isBefore(RollsOfDay.date(now));
            case WITHDRAWN -> false;
        };
    }

    private static String words(RollSummary roll) {
        String film = roll.stock() + ", " + roll.framesUsed() + " of " + roll.framesNominal() + " frames";
        return roll.id() + "  " + (roll.state() == Roll.State.OPEN ? "in " : "out of ") + roll.place() + ", " + film
                + roll.finishedAt()
                        .map(it -> ", finished " + ClockText.clock(it))
                        .orElse(roll.state() == Roll.State.REWOUND ? ", rewound" : "");
    }

    private static RollWhereabouts is(Roll roll, Optional<Set<RollId>> held) {
        boolean isGone = held.isPresent() && !held.get().contains(roll.id());
        return switch (roll.state()) {
            case OPEN -> RollWhereabouts.IN_CAMERA;
            case WITHDRAWN -> RollWhereabouts.WITHDRAWN;
            case REWOUND -> isGone ? RollWhereabouts.MISSING : RollWhereabouts.REWOUND;
            case FINISHED -> isGone ? RollWhereabouts.MISSING : RollWhereabouts.CLOSED;
        };
    }

    private static String words(Roll roll, RollWhereabouts is) {
        String film = roll.film().stock().key() + ", " + roll.framesUsed() + " of "
                + roll.film().framesNominal() + " frames";
        String finished =
                roll.finishedAt().map(it -> ", finished " + ClockText.clock(it)).orElse("");
        return switch (is) {
            case IN_CAMERA -> "in " + roll.place() + ", " + film + ", " + RollText.left(roll);
            case MISSING ->
                "not in your hand: " + film + ", out of " + roll.place() + finished
                        + "; look in the pockets and by the camera";
            case CLOSED, REWOUND -> "out of " + roll.place() + ", " + film + finished;
            case WITHDRAWN -> roll.place() + ", " + roll.film().stock().key();
        };
    }

    /** What is odd about a roll. */
    private static void ask(Roll roll, List<String> into) {
        RollId id = roll.id();
        String typed = id.typed();
        boolean isOpen = roll.state() == Roll.State.OPEN;
        if (roll.state() == Roll.State.WITHDRAWN) {
            return;
        }
        if (isOpen) {
            into.add(id + " is still in " + roll.place() + (roll.frames().isEmpty() ? " and has no frame" : "") + ", "
                    + RollText.left(roll) + ": unload it, or let it stay");
        } else if (roll.frames().isEmpty()) {
            into.add(
                    id + " has no frame: keep it apart if it is unexposed; if it was shot and not written down, insert "
                            + typed + " 1 unlogged x" + roll.film().framesNominal());
        }
        if (roll.state() == Roll.State.REWOUND) {
            into.add(id + " is rewound: load " + typed + " goes on with it, unload " + typed + " closes it");
        }
        int open = 0;
        for (Frame frame : roll.frames()) {
            open += frame.kind() == Frame.Kind.UNLOGGED ? 1 : 0;
        }
        if (open > 0) {
            into.add(English.count(open, "frame") + " of " + id + English.agree(open, " is", " are")
                    + " not written down: fix, or paper " + typed + ", while it is fresh");
        }
        if (roll.doubleAwaited()) {
            into.add(id + " waits for a second exposure on frame "
                    + roll.newest().map(Frame::number).orElse(0));
        }
        for (CounterCheck check : roll.counterChecks()) {
            int more = (int) IntStream.range(check.expected(), check.shown())
                    .filter(roll::isPassed)
                    .count();
            if (more > 0 || check.shown() < check.expected()) {
                into.add("on " + id + " the camera showed " + check.shown() + " where the log came to "
                        + check.expected() + ", at "
                        + ClockText.clock(check.at()) + ": "
                        + difference(more > 0 ? more : check.shown() - check.expected()));
            }
        }
    }

    /** What a camera's counter is ahead of the log, or behind it. */
    private static String difference(int more) {
        int count = Math.abs(more);
        String frames = English.count(count, "frame");
        return more > 0
                ? frames + " went past that " + English.agree(count, "is", "are") + " not in the log"
                : "the log has " + frames + " more than the camera";
    }

    /** What is held and cannot be. */
    private static void odd(Set<RollId> held, ShootState s, List<Roll> day, List<String> into) {
        for (RollId id : held) {
            Optional<Roll> roll = day.stream().filter(it -> it.id().equals(id)).findFirst();
            if (roll.isEmpty()) {
                into.add(id + " is in your hand and is "
                        + (s.known().contains(id) ? "no roll of this day" : "no roll known here"));
            } else if (roll.get().state() == Roll.State.OPEN) {
                into.add(
                        id + " is in your hand, and by the log in " + roll.get().place() + ": cam, then unload");
            } else if (roll.get().state() == Roll.State.WITHDRAWN) {
                into.add(id + " is in your hand, and its loading was taken back: what is on it?");
            }
        }
    }

    /** What is written on the cassette or band: number, film, process and push in words, how it was rated. */
    public static String label(Roll roll) {
        StringBuilder words = new StringBuilder(roll.id() + ", "
                + roll.film().stock().name() + ", " + roll.film().developmentWords());
        if (roll.state() == Roll.State.REWOUND) {
            words.append(", REWOUND after frame ").append(roll.lastPassed());
        }
        roll.conditions()
                .forEach(it -> words.append(", ")
                        .append(it.kind().toString().toUpperCase(Locale.ROOT))
                        .append(it.words().map(more -> " " + more).orElse("")));
        return words.toString();
    }

    /** Whether a roll is missing. */
    public boolean isShort() {
        return rolls.stream().anyMatch(it -> it.is() == RollWhereabouts.MISSING);
    }

    /** All of it as a list to read and to tick off. */
    public List<NightBefore.Section> sections() {
        List<NightBefore.Section> all = new ArrayList<>();
        for (Map.Entry<RollWhereabouts, List<RollEntry>> kind : byKind().entrySet()) {
            boolean missing = kind.getKey() == RollWhereabouts.MISSING;
            all.add(new NightBefore.Section(
                    English.capitalised(kind.getKey().words) + ", "
                            + English.count(kind.getValue().size(), "roll"),
                    kind.getValue().stream()
                            .map(it -> new NightBefore.Item(it.id() + "  " + it.words(), missing))
                            .toList()));
        }
        if (rolls.isEmpty()) {
            all.add(new NightBefore.Section(
                    "Rolls", List.of(new NightBefore.Item("no roll was loaded or finished on this day", false))));
        }
        if (!asks.isEmpty()) {
            all.add(new NightBefore.Section(
                    "To ask",
                    asks.stream()
                            .map(it -> new NightBefore.Item(English.capitalised(it), true))
                            .toList()));
        }
        if (!elsewhere.isEmpty()) {
            List<NightBefore.Item> others = new ArrayList<>(elsewhere.stream()
                    .map(it -> new NightBefore.Item(words(it), false))
                    .toList());
            others.add(new NightBefore.Item(
                    "whether one is missing, and what to write on each, tells takeup day-end", false));
            all.add(new NightBefore.Section(
                    "Logged by another writer in this folder, " + English.count(elsewhere.size(), "roll"), others));
        }
        List<NightBefore.Item> labels = new ArrayList<>();
        for (RollEntry one : rolls) {
            one.roll()
                    .filter(it -> it.state() != Roll.State.WITHDRAWN)
                    .ifPresent(it -> labels.add(new NightBefore.Item(label(it), false)));
        }
        if (!labels.isEmpty()) {
            all.add(new NightBefore.Section("To write on each roll", labels));
        }
        return all;
    }

    private Map<RollWhereabouts, List<RollEntry>> byKind() {
        Map<RollWhereabouts, List<RollEntry>> all = new EnumMap<>(RollWhereabouts.class);
        rolls.forEach(
                it -> all.computeIfAbsent(it.is(), kind -> new ArrayList<>()).add(it));
        return all;
    }

    /** The same in a few sentences, for a pipe. */
    public String sentence() {
        if (rolls.isEmpty()) {
            return "No roll was loaded or finished on " + date + ".";
        }
        List<String> parts = new ArrayList<>();
        byKind().forEach((is, list) -> parts.add(list.size() + " " + is.words + " ("
                + String.join(
                        is == RollWhereabouts.MISSING ? "; " : ", ",
                        list.stream()
                                .map(it -> it.id() + (is == RollWhereabouts.MISSING ? ": " + it.words() : ""))
                                .toList())
                + ")"));
        return English.count(rolls.size(), "roll") + ": " + String.join(", ", parts) + "."
                + (isShort() ? "" : " None is missing.")
                + (asks.isEmpty() ? "" : " To ask: " + String.join("; ", asks) + ".");
    }

    /** The same as other programs read it. */
    public Json.Obj json() {
        List<Json> all = new ArrayList<>();
        for (RollEntry one : rolls) {
            Optional<Roll> roll = one.roll();
            all.add(Json.object()
                    .and("roll", one.id())
                    .and("is", one.is().code())
                    .and("camera", roll.map(it -> it.camera().key()))
                    .and("back", roll.flatMap(Roll::back))
                    .and("stock", roll.map(it -> it.film().stock().key()))
                    .and("framesUsed", roll.map(Roll::framesUsed))
                    .and("framesNominal", roll.map(it -> it.film().framesNominal()))
                    .and("words", one.words())
                    .and(
                            "label",
                            roll.filter(it -> it.state() != Roll.State.WITHDRAWN)
                                    .map(DayEnd::label)));
        }
        return Json.object()
                .and("date", date)
                .and("rolls", all)
                .and(
                        "missing",
                        rolls.stream()
                                .filter(it -> it.is() == RollWhereabouts.MISSING)
                                .map(RollEntry::id)
                                .toList())
                .and("ask", asks);
    }

    /**
     * Roll numbers as they are typed: {@code r1 r2 r4-r7}.
     *
     * @param letters those of a bare number, where one is allowed
     * @throws IllegalArgumentException with the words to say, for anything else
     */
    public static Set<RollId> held(List<String> words, Optional<String> letters) {
        Set<RollId> all = new LinkedHashSet<>();
        for (String word : words) {
            int dash = word.indexOf('-');
            RollId from = number(dash < 0 ? word : word.substring(0, dash), letters);
            RollId to = dash < 0 ? from : number(word.substring(dash + 1), Optional.of(from.letters()));
            if (!to.letters().equals(from.letters())
                    || to.number() < from.number()
                    || to.number() - from.number() > 999) {
                throw new IllegalArgumentException(word + " is no row of rolls: r4-r7");
            }
            for (int number = from.number(); number <= to.number(); number++) {
                all.add(new RollId(from.letters(), number));
            }
        }
        return all;
    }

    private static RollId number(String word, Optional<String> letters) {
        return RollId.parse(word)
                .or(() -> letters.flatMap(it -> RollId.parse(it + word)))
                .orElseThrow(() -> new IllegalArgumentException(
                        (word.isEmpty() ? "nothing" : word) + " is no roll number: r1 r2 r4-r7"));
    }
}
