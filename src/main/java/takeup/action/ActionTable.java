package takeup.action;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import takeup.dispatch.Completion;
import takeup.history.ShootState;
import takeup.report.StaysOn;
import takeup.roll.Frame;
import takeup.roll.Roll;

/** All that a day needs, as actions: a row each, in the order in which they are offered. */
public final class ActionTable {
    private static final List<Action> ALL = List.of(
            Action.of("stop the bulb timer", "time")
                    .where(s -> s.timerInHand().isPresent())
                    .likely(s -> true),
            Action.asking("take up a camera", "cam", FilmFields::camera)
                    .where(s -> s.placeInHand().isEmpty())
                    .likely(s -> true),
            Action.asking("load a film", "load", FilmFields::load).likely(s -> true),
            Action.asking("a frame with another setting", "", ActionTable::frame)
                    .where(ActionTable::isSettable),
            Action.asking("a note on the last frame", ";", ActionTable::note)
                    .where(s -> newest(s).isPresent()),
            Action.asking("new reading", "m", ExposureFields::reading)
                    .likely(s -> s.day().light().isEmpty()),
            Action.asking("another setting, no frame", "set", s -> pair(s)).where(ActionTable::isSettable),
            Action.asking("filter", "filter", ExposureFields::filter),
            Action.asking("flash", "flash", ExposureFields::flash),
            Action.asking("hold an aperture or a time", "hold", ExposureFields::hold)
                    .where(ActionTable::isSettable),
            Action.asking("sharp from near to far", "sharp", ExposureFields::sharp)
                    .where(ActionTable::isSettable),
            Action.asking("bias", "bias", ExposureFields::bias),
            Action.asking("close-up: magnification", "mag", ExposureFields::magnification)
                    .where(ActionTable::isSettable),
            Action.asking("close-up: a tube", "tube", ExposureFields::tube).where(ActionTable::isSettable),
            Action.asking("close-up: the whole draw", "ext", ExposureFields::draw)
                    .where(ActionTable::isSettable),
            Action.of("start the bulb timer", "time").where(s -> s.timerInHand().isEmpty()),
            Action.asking("another camera or back", "cam", FilmFields::camera)
                    .where(s -> s.placeInHand().isPresent()),
            Action.of("finish the roll", "unload")
                    .likely(s ->
                            s.rollInHand().filter(it -> it.framesLeft() <= 0).isPresent()),
            Action.asking("another lens", "lens", ExposureFields::lens)
                    .where(s -> s.cameraInHand()
                            .filter(it -> it.lenses().size() > 1)
                            .isPresent()),
            Action.of("take filter, tube, bias, hold and flash off", "clear")
                    .where(s -> s.placeInHand().isPresent()
                            && !StaysOn.of(s.inHand()).isEmpty()),
            Action.asking("tripod", "tripod", ExposureFields::onOff),
            Action.asking("correct a frame", "fix", ActionTable::frameNumbers)
                    .where(s -> newest(s).isPresent()),
            Action.asking("the counter shows another number", "counter", ActionTable::counter),
            Action.asking("frames that were not logged", "unlogged", s -> times()),
            Action.asking("wasted frames", "blank", s -> times()),
            Action.of("expose the frame once more", "double")
                    .where(s -> newest(s).isPresent()),
            Action.of("a slate frame", "slate"),
            Action.of("rewind before the end", "rewind")
                    .where(s -> s.rollInHand()
                            .filter(it -> it.film().size().toString().equals("135"))
                            .isPresent()),
            Action.asking("push", "push", ExposureFields::stops),
            Action.asking("pull", "pull", ExposureFields::stops),
            Action.of("normal development", "normal"),
            Action.asking("a note on the roll", "note", s -> List.of(Field.words("The note", "", List.of()))),
            Action.asking(
                            "a roll was developed",
                            "developed",
                            s -> List.of(
                                    finished(s),
                                    Field.words("Such as in fine-grain 1+1 9m45s at 20C", "in ", List.of())))
                    .where(s -> !finished(s).choices().isEmpty()),
            Action.asking(
                            "what a roll cost",
                            "cost",
                            s -> List.of(finished(s), Field.words("Such as film 9.80 scans 8", "", List.of())))
                    .where(s -> !finished(s).choices().isEmpty()),
            Action.asking(
                            "who signed a model release",
                            "release",
                            s -> List.of(Field.words("Their names", "", List.of())))
                    .where(s -> s.rollInHand().isPresent()),
            Action.asking("what the lab must know", "condition", FilmFields::condition),
            Action.of("the plan", "plan"),
            Action.timed("plan a moment", "plan", (s, now) -> RowActions.moment(now)),
            Action.of("the bag", "bag"),
            Action.asking("film into the bag", "bag add", FilmFields::lot),
            Action.asking("film out of the bag", "bag take", FilmFields::inBag)
                    .where(s -> !s.day().bag().filled().isEmpty()),
            Action.of("pack the bag for the plan", "bag pack")
                    .where(s -> !s.day().fridge().filled().isEmpty()),
            Action.of("what is left in the bag back to the fridge", "bag unpack")
                    .where(s ->
                            s.day().fridge().kept() && !s.day().bag().filled().isEmpty()),
            Action.of("the fridge", "fridge").where(s -> s.day().fridge().kept()),
            Action.asking("film into the fridge", "fridge add", FilmFields::lot),
            Action.of("all frames of this roll", "frames"),
            Action.asking(
                    "who is on the frames to come", "with", s -> List.of(Field.words("Their names", "", List.of()))),
            Action.asking("where the frames to come are", "at", s -> List.of(Field.words("The place", "", List.of()))),
            Action.asking("where the shoot is", "place", s -> List.of(Field.words("The place", "", List.of())))
                    .where(s -> s.day().shoot().isPresent()),
            Action.asking("open a shoot", "shoot", s -> List.of(Field.words("Its name", "", List.of()))),
            Action.asking("another meter", "meter", FilmFields::meter),
            Action.asking("three looks after each loading", "routine", FilmFields::routine),
            Action.of("a rating test on this roll", "rating").where(ActionTable::isSettable),
            Action.of("all rolls", "rolls"),
            Action.asking("find frames in all rolls", "find", s -> List.of(Field.words("What?", "", List.of()))),
            Action.of("why this setting", "why"),
            Action.of("undo", "undo"),
            Action.of("redo", "redo"),
            Action.of("end of the day", "day-end"),
            Action.of("hand over: the lab order", "order"),
            Action.of("big counter", "big"),
            Action.of("next theme", "theme"),
            Action.of("help", "help"),
            Action.of("leave", "quit"));

    private ActionTable() {}

    /** What can be done now, the likeliest first. */
    public static Menu menu(ShootState s, LocalTime now) {
        List<Choice> likely = new ArrayList<>();
        List<Choice> rest = new ArrayList<>();
        for (Action it : ALL) {
            if (it.isPossible(s)) {
                (it.isLikely().test(s) ? likely : rest).add(it.choice(s, now));
            }
        }
        likely.addAll(rest);
        return Menu.of(Field.list("What next?", likely));
    }

    /** The answers to a question, the safe one first. */
    public static Menu answers(String question) {
        return Menu.of(Field.list(question, List.of(Choice.of("no", "all stays as it is"), Choice.of("yes", "do it"))));
    }

    private static boolean isSettable(ShootState s) {
        return s.cameraInHand().filter(it -> !it.isAutomatic()).isPresent();
    }

    private static Optional<Frame> newest(ShootState s) {
        return s.rollInHand().flatMap(Roll::newest);
    }

    static List<Field> pair(ShootState s) {
        return List.of(ExposureFields.aperture(s), ExposureFields.time(s));
    }

    private static List<Field> frame(ShootState s) {
        List<Field> all = new ArrayList<>(pair(s));
        all.add(Field.words("A note with it?", "; ", notes(s)).orNothing("no note"));
        return all;
    }

    private static List<Field> note(ShootState s) {
        return List.of(Field.words("The note", "", notes(s)));
    }

    private static List<String> notes(ShootState s) {
        return newest(s)
                .flatMap(it -> it.exposure().at())
                .map(it -> Completion.notes(s, it.toLocalDate(), ""))
                .orElse(List.of());
    }

    /** The finished rolls at hand; those of earlier days are in the list of rolls. */
    private static Field finished(ShootState s) {
        return Field.list(
                "Which roll",
                s.rolls().values().stream()
                        .filter(it -> it.state() == Roll.State.FINISHED)
                        .map(it -> Choice.of(
                                it.id().toString().toLowerCase(Locale.ROOT),
                                it.film().stock().name()))
                        .toList());
    }

    private static List<Field> times() {
        return List.of(Field.digits(
                "How many?",
                "x",
                IntStream.rangeClosed(1, 36).mapToObj(it -> "x" + it).toList(),
                0));
    }

    private static List<Field> counter(ShootState s) {
        int next = s.rollInHand().map(Roll::next).orElse(1);
        return List.of(Field.digits(
                "What does it show?",
                "",
                IntStream.rangeClosed(1, 40).mapToObj(Integer::toString).toList(),
                Math.min(39, next - 1)));
    }

    private static List<Field> frameNumbers(ShootState s) {
        List<Choice> frames = new ArrayList<>();
        List<Frame> all = s.rollInHand().map(Roll::frames).orElse(List.of());
        for (int i = all.size() - 1; i >= 0; i--) {
            frames.add(Choice.of(Integer.toString(all.get(i).number()), RowActions.words(all.get(i))));
        }
        return List.of(Field.list("Which frame?", frames), RowActions.correction(s));
    }
}
