package takeup.action;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.FilmLot;
import takeup.day.KeyMoment;
import takeup.history.ShootState;
import takeup.kit.Filter;
import takeup.prompt.FrameArguments;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.SettingPatch;

/** What can be done with the row of a list: a frame, a roll, a moment of the plan, the bag, the end of the day. */
public final class RowActions {
    private static final List<String> MOMENTS =
            List.of("Arrival", "Portraits", "Group", "Start", "Finish", "Speeches", "Prize-giving", "Dinner");

    private RowActions() {}

    /** A frame of the roll in hand. */
    public static Menu frame(ShootState s, int number) {
        String n = Integer.toString(number);
        List<Choice> all = new ArrayList<>(List.of(
                Choice.of("fix " + n, "correct it", correction(s)),
                Choice.of("fix " + n + " ;", "another note", Field.words("The note", "", List.of())),
                Choice.of(
                        "insert " + n,
                        "a frame was forgotten before it",
                        ExposureFields.aperture(s),
                        ExposureFields.time(s)),
                Choice.of("release " + n, "those on it signed a release"),
                Choice.of("lost " + n, "it is fogged or lost"),
                Choice.of("drop " + n, "it never happened; later ones are renumbered")));
        List<Choice> others = FilmFields.otherRolls(s);
        if (!others.isEmpty()) {
            all.add(Choice.of("move " + n + " cam", "it was shot on another roll", Field.list("On which?", others)));
        }
        return menu("Frame " + n, all.toArray(Choice[]::new));
    }

    /** A roll of the list of rolls. */
    public static Menu roll(ShootState s, RollId id, Roll.State state) {
        String r = id.typed();
        List<Choice> all = new ArrayList<>();
        boolean isInHand =
                s.rollInHand().map(Roll::id).filter(it -> it.equals(id)).isPresent();
        if (isInHand) {
            all.add(Choice.of("frames", "its frames"));
        }
        s.placesInUse().stream()
                .filter(it -> !isInHand && state == Roll.State.OPEN)
                .filter(it -> s.rollIn(it).map(Roll::id).equals(Optional.of(id)))
                .forEach(it -> all.add(Choice.of("cam " + it.typed(), "into the hand, to finish it or go on")));
        if (isInHand || state == Roll.State.REWOUND) {
            all.add(Choice.of(isInHand ? "unload" : "unload " + r, "finish it"));
        }
        if (state == Roll.State.REWOUND) {
            all.add(Choice.of("load " + r, "goes on in the camera in hand"));
        }
        if (state == Roll.State.FINISHED) {
            all.add(Choice.of("developed " + r, "developed as the last of this film"));
            all.add(Choice.of(
                    "developed " + r + " in",
                    "developed otherwise",
                    Field.words("Developer, time and temperature", "", List.of())));
            all.add(Choice.of("cost " + r, "what it cost", Field.words("Such as film 9.80 scans 8", "", List.of())));
        }
        all.add(Choice.of("release " + r, "who signed a release"));
        all.add(Choice.of("note " + r, "a note on it", Field.words("The note", "", List.of())));
        all.add(Choice.of(
                "condition " + r,
                "what the lab must know",
                FilmFields.condition(s).get(0)));
        if (state == Roll.State.FINISHED) {
            all.add(Choice.of("order", "hand over: the lab order"));
            all.add(Choice.of("scans " + r, "its scans", Field.words("The folder that came back", "", List.of())));
        }
        all.add(Choice.of("day-end", "where every roll of the day is"));
        return menu(id.toString(), all.toArray(Choice[]::new));
    }

    /** A moment of the plan. */
    public static Menu moment(KeyMoment moment, LocalTime now) {
        int number = moment.number();
        return menu(
                "Moment " + number,
                Choice.of(
                        "plan " + number,
                        "at another time",
                        FilmFields.clock("When?", moment.at().toLocalTime())),
                Choice.of("plan drop " + number, "out of the plan"),
                lateness("plan late", "all that are to come are later"),
                lateness("plan early", "all that are to come are earlier"),
                another(now));
    }

    /** The plan while it has no moment. */
    public static Menu plan(LocalTime now) {
        return menu("Plan", another(now));
    }

    /** The bag. */
    public static Menu bag(ShootState s) {
        List<Choice> all = new ArrayList<>();
        if (s.rollInHand().isEmpty() && s.cameraInHand().isPresent()) {
            all.add(new Choice("load", "load a film", FilmFields.load(s)));
        }
        all.add(new Choice("bag add", "film into the bag", FilmFields.lot(s)));
        if (!s.day().bag().filled().isEmpty()) {
            all.add(new Choice("bag take", "film out of the bag", FilmFields.inBag(s)));
        }
        packing(s, all);
        return menu("Bag", all.toArray(Choice[]::new));
    }

    /** Film of the bag that is alike. */
    public static Menu lot(ShootState s, FilmLot lot) {
        String film = lot.stock() + " " + lot.size();
        List<Choice> all = new ArrayList<>();
        boolean fits = s.cameraInHand()
                .filter(it -> s.rollInHand().isEmpty() && it.frames().containsKey(lot.size()))
                .isPresent();
        if (fits) {
            all.add(Choice.of("load " + film, "load one"));
        }
        all.add(Choice.of("bag take 1 " + film, "take one out"));
        all.add(new Choice("bag add", "other film into the bag", FilmFields.lot(s)));
        all.add(new Choice("bag take", "more film out of it", FilmFields.inBag(s)));
        packing(s, all);
        return menu(lot.toString(), all.toArray(Choice[]::new));
    }

    /** Film of the fridge that is alike. */
    public static Menu inFridge(ShootState s, FilmLot lot) {
        String film = lot.stock() + " " + lot.size();
        List<Choice> all = new ArrayList<>(List.of(
                Choice.of("bag pack 1 " + film, "one into the bag"),
                new Choice("bag pack", "more film into the bag", FilmFields.inFridge(s)),
                Choice.of("fridge take 1 " + film, "take one out, not into the bag")));
        packing(s, all);
        return menu(lot.toString(), all.toArray(Choice[]::new));
    }

    private static void packing(ShootState s, List<Choice> all) {
        if (!s.day().fridge().filled().isEmpty()) {
            all.add(Choice.of("bag pack", "from the fridge what the plan wants"));
        }
        if (s.day().fridge().kept() && !s.day().bag().filled().isEmpty()) {
            all.add(Choice.of("bag unpack", "what is left back to the fridge"));
        }
        all.add(new Choice("fridge add", "film into the fridge", FilmFields.lot(s)));
    }

    private static Choice another(LocalTime now) {
        return new Choice("plan", "plan another moment", moment(now));
    }

    private static Choice lateness(String line, String name) {
        return Choice.of(
                line,
                name,
                Field.digits("By how many minutes?", "", List.of("5", "10", "15", "20", "30", "45", "60"), 2));
    }

    /** What a moment is made of. */
    static List<Field> moment(LocalTime now) {
        return List.of(
                FilmFields.clock("When?", FilmFields.nextHalfHour(now)),
                new Field(
                        "What?",
                        Field.Entry.WORDS,
                        "",
                        MOMENTS.stream().map(Choice::value).toList(),
                        0),
                Field.digits(
                                "How many frames?",
                                "wants ",
                                List.of(
                                        "wants 4",
                                        "wants 6",
                                        "wants 8",
                                        "wants 12",
                                        "wants 16",
                                        "wants 24",
                                        "wants 36"),
                                3)
                        .orNothing("it does not matter"),
                Field.list("Is the day lost without it?", List.of(Choice.of("", "no"), Choice.of("must", "yes"))));
    }

    /** What can be wrong with a frame. */
    static Field correction(ShootState s) {
        List<Choice> filters = new ArrayList<>(List.of(Choice.of("off", "none")));
        Filter.names().forEach(it -> filters.add(Choice.value(it)));
        return Field.list(
                "What was it?",
                List.of(
                        Choice.of("", "another aperture", ExposureFields.aperture(s)),
                        Choice.of("", "another time", ExposureFields.time(s)),
                        Choice.of("filter", "another filter", Field.list("Filter", filters)),
                        Choice.of("flash", "flash", ExposureFields.onOff(s).get(0)),
                        Choice.of("blank", "nothing on it"),
                        Choice.of("unlogged", "exposed, setting not known"),
                        Choice.of("exposed", "exposed after all")));
    }

    static String words(Frame frame) {
        String pair = FrameArguments.words(
                frame.exposure().setting().aperture(),
                frame.exposure().setting().time(),
                SettingPatch.NOTHING);
        return (pair.isEmpty() ? frame.kind().toString() : pair)
                + frame.note().map(it -> "; " + it).orElse("");
    }

    private static Menu menu(String title, Choice... choices) {
        return Menu.of(Field.list(title, List.of(choices)));
    }
}
