package takeup.command;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.day.ShootInfo;
import takeup.history.ClockShiftDetector;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.Kit;
import takeup.kit.Warning;
import takeup.prompt.CommandRejected;
import takeup.roll.Assignment;
import takeup.roll.Exposure;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.Scene;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.Nearest;

/**
 * What a line is read in: the state, the clock, the letters of new rolls. Nothing is written, so the same reading
 * serves the echo before Enter and what Enter does.
 *
 * @param before the state after the last line
 * @param state the same as of today
 * @param nowMillis the time of day to the millisecond, for the bulb timer alone
 * @param drift by how many seconds the clock was moved against the running time since the last frame or reading, as far
 *     as is known
 * @param letters the writer's letters for new roll numbers
 */
public record CommandContext(
        ShootState before, ShootState state, OffsetDateTime nowMillis, long drift, String letters) {

    public static CommandContext of(ShootState before, OffsetDateTime now, long drift, String letters) {
        return new CommandContext(before, before.asOf(now), now, drift, letters);
    }

    /** The time of day in whole seconds. */
    public OffsetDateTime now() {
        return nowMillis.withNano(0);
    }

    /** What tells how the clock was moved before that which this line logs. */
    public ClockShiftDetector clockShifts() {
        return new ClockShiftDetector(before.history(), now(), drift);
    }

    /** Thrown where a line names a finished roll that is not in memory. */
    public static final class RollNotRead extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final RollId roll;

        public RollNotRead(RollId roll) {
            super("", null, false, false);
            this.roll = roll;
        }

        public RollId roll() {
            return roll;
        }
    }

    public Camera camera() {
        Optional<Camera> camera = state.cameraInHand();
        if (camera.isPresent()) {
            return camera.get();
        }
        throw new CommandRejected(
                state.placeInHand().isPresent()
                        ? state.kit()
                                .whyNot(
                                        Kit.Sort.CAMERAS,
                                        state.placeInHand().get().camera())
                        : "no camera in hand: type cam and one of "
                                + String.join(", ", state.kit().keys(Kit.Sort.CAMERAS)));
    }

    public Roll roll() {
        camera();
        Optional<Roll> roll = state.rollInHand();
        if (roll.isEmpty()) {
            throw new CommandRejected(Need.noFilm(state, state.placeInHand().orElseThrow()));
        }
        return roll.get();
    }

    /** The roll of a typed number, or the one in hand; the example shows how a finished one is named. */
    public Roll roll(Optional<RollId> id, String example) {
        return id.map(this::roll)
                .or(state::rollInHand)
                .orElseThrow(() -> new CommandRejected("no film in "
                        + state.placeInHand().map(Object::toString).orElse("hand")
                        + ": load a stock first, or name the roll (" + example + ")"));
    }

    /** The roll of a typed number; read in first if it is a finished one. */
    public Roll roll(RollId id) {
        Roll roll = state.rolls().get(id);
        if (roll != null) {
            return roll;
        }
        if (state.known().contains(id) && !id.letters().equals(letters)) {
            throw new CommandRejected(id + " is a roll of another laptop, whose numbers begin with " + id.letters()
                    + ": only that one writes to it");
        }
        if (state.known().contains(id)) {
            throw new RollNotRead(id);
        }
        throw new CommandRejected("there is no roll " + id);
    }

    /** A roll number, or a roll's own name, in front of other words, if one stands there. */
    public Optional<RollId> rollNumber(List<String> words) {
        return words.isEmpty() ? Optional.empty() : rollNamed(words.get(0)).or(() -> RollId.parse(words.get(0)));
    }

    /** The roll with a name of the photographer's own, finished or not. */
    public Optional<RollId> rollNamed(String name) {
        return state.rolls().values().stream()
                .filter(it -> it.state() != Roll.State.WITHDRAWN)
                .filter(it ->
                        it.film().label().name().filter(name::equalsIgnoreCase).isPresent())
                .map(Roll::id)
                .findFirst()
                .or(() -> state.day().rollNamed(name).filter(it -> !isKnownOtherwise(it)));
    }

    /** Whether what was read of a roll says that it was withdrawn, or is called otherwise by now. */
    private boolean isKnownOtherwise(RollId id) {
        return state.rolls().containsKey(id) || !state.known().contains(id);
    }

    public Setting setting() {
        return state.inHand(camera()).setting();
    }

    /** Who and where on a frame of a roll that is logged now, and for which shoot where that is not the roll's. */
    public Scene scene(Roll roll) {
        Optional<ShootInfo> open = state.day().shoot();
        if (open.isEmpty()) {
            return state.day().scene().servingShoot(Optional.empty());
        }
        Assignment shoot = open.get().assignment();
        boolean isOfRoll = roll.assignment().isPresent()
                && shoot.isSameShoot(roll.assignment().get());
        return state.day().scene().servingShoot(isOfRoll ? Optional.empty() : Optional.of(shoot));
    }

    public Exposure exposure(Setting setting) {
        return new Exposure(
                Optional.of(now()),
                setting,
                state.day().light(),
                setting.flash() ? state.day().flash() : Optional.empty());
    }

    /** The entries that change a roll; for a finished one the day notes it, so that it is found again. */
    public List<JournalEntry> on(Roll roll, RollEvent event) {
        List<JournalEntry> entries = new ArrayList<>(List.of(new JournalEntry.OnRoll(roll.id(), event)));
        if (roll.state() == Roll.State.FINISHED) {
            entries.add(
                    new JournalEntry.OnDay(new DayEvent.RollClosed(roll.id(), CameraPlace.of(roll), Optional.empty())));
        }
        return entries;
    }

    public List<RollId> rollsToExport(Roll roll) {
        return roll.state() == Roll.State.FINISHED ? List.of(roll.id()) : List.of();
    }

    JournalStep step(List<JournalEntry> entries) {
        List<JournalEntry> all = new ArrayList<>(before.carryOverEntries(now()));
        all.addAll(entries);
        return new JournalStep(before.nextStep(), now(), all);
    }

    public ShootState after(List<JournalEntry> entries) {
        return entries.isEmpty() ? before : before.and(step(entries));
    }

    /** Something else of the setting in hand. */
    public DayEvent changedSetup(SettingPatch change) {
        return new CameraEvent.CameraSetupChanged(
                camera().key(), state.inHand(camera()).with(change));
    }

    public List<Warning> unsilenced(List<Warning> warnings) {
        List<Warning> unsilenced = new ArrayList<>();
        for (Warning warning : warnings) {
            if (!state.day().silenced().contains(warning.code())) {
                unsilenced.add(warning);
            }
        }
        return unsilenced;
    }

    /** The place that a camera's key, and maybe a back, name. */
    public CameraPlace place(List<String> words) {
        String key = words.get(0).toLowerCase(Locale.ROOT);
        Camera camera = state.camera(key)
                .orElseThrow(() -> new CommandRejected(state.kit().whyNot(Kit.Sort.CAMERAS, key)));
        if (camera.backNames().isEmpty()) {
            if (words.size() > 1) {
                throw new CommandRejected(camera.name() + " has no backs to change");
            }
            return new CameraPlace(key, Optional.empty());
        }
        String typed = words.size() > 1
                ? words.get(1)
                : state.day().lastBack().getOrDefault(key, camera.backNames().get(0));
        String back = camera.backNames().stream()
                .filter(it -> it.equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new CommandRejected(
                        typed + " is no back of " + camera.name() + Nearest.question(typed, camera.backNames())
                                + "; it has " + String.join(", ", camera.backNames())));
        return new CameraPlace(key, Optional.of(back));
    }

    public static Json.Obj fields(Roll roll) {
        return Json.object().and("roll", roll.id()).and("framesLeft", roll.framesLeft());
    }

    public static String upper(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** The same clock and letters, once that is done: for what is asked behind it. */
    public CommandContext after(Outcome.Accepted done) {
        return of(done.after(), nowMillis, 0, letters);
    }

    /** The answer to a line that writes these entries; it is still to be told what it says. */
    public Reply reply(List<JournalEntry> entries) {
        return new Reply(this, entries);
    }

    /** The answer to a line that writes one entry on the day. */
    public Reply reply(DayEvent event) {
        return reply(List.of(new JournalEntry.OnDay(event)));
    }

    /** Says something and writes nothing. */
    public Outcome.Accepted says(String event, String text, Json.Obj fields) {
        return says(event, text, new AnswerFields.Given(fields));
    }

    /** The same, with fields that are worked out where a program asks for them. */
    public Outcome.Accepted says(String event, String text, AnswerFields fields) {
        return reply(List.of()).event(event).says(text, "").fields(fields).accepted();
    }

    /** Says something and shows it on the screen. */
    public Outcome.Accepted shows(ScreenAction action, String event, String text, Json.Obj fields) {
        return says(event, text, fields).showing(action);
    }
}
