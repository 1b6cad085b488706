package takeup.loading;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.prompt.CommandRejected;
import takeup.report.RollText;
import takeup.report.WarningText;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.text.ClockText;

/**
 * A 35mm roll that is rewound before its end, and loaded again later: {@code rewind}, {@code load r3}.
 *
 * <p>The routine of press photographers: the tongue is left out, the count is written on the cassette; loaded again,
 * the film is wound on with the lens capped to what is written there, and one or two frames further to be safe.
 */
public final class RewindCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "rewind", "a 35mm roll comes out before its end; load r3 goes on with it")
            .form("rewind", "out of the camera with its tongue out; says what to write on the cassette")
            .form("load r3", "goes on with it: so many blank frames first, lens capped")
            .form("unload r3", "or closes it")
            .needs(Need.FILM);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return rewind(context, arguments.rest());
    }

    /** Frames left blank behind the last exposed one. */
    static final int SPARE = 2;

    static Outcome rewind(CommandContext context, List<String> words) {
        boolean sure = words.equals(List.of("yes"));
        if (!sure) {
            Arguments.alone("rewind", words);
        }
        Roll roll = context.roll();
        if (roll.film().size() != FilmSize.F135) {
            throw new CommandRejected(roll.id() + " is " + roll.film().size()
                    + ", which is wound on to its end and never back: unload finishes it");
        }
        List<JournalEntry> entries = List.of(new JournalEntry.OnRoll(roll.id(), new RollEvent.Rewound()));
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(roll.id());
        String text = now.id() + " rewound after frame " + now.lastPassed() + ", " + RollText.left(now)
                + ". Leave the tongue out, and write " + now.id() + " and " + now.lastPassed()
                + " on the cassette. Loaded again (load " + now.id().typed() + "), it wants " + blanks(now)
                + " blank frames first.";
        Json.Obj fields = CommandContext.fields(now)
                .and("camera", now.camera().key())
                .and("back", now.back())
                .and("write", now.lastPassed())
                .and("blanks", blanks(now))
                .and("state", now.state());
        Outcome.Accepted does = context.does(
                entries,
                after,
                new Outcome.Answer(
                        "rewind",
                        text,
                        fields,
                        context.unsilenced(WarningText.begunBetween(context.state(), after, context.now()))),
                List.of());
        boolean atEnd = roll.framesLeft() <= 0;
        return atEnd && !sure
                ? new Outcome.NeedsConfirmation(
                        roll.id() + " is at its end: unload finishes it; yes rewinds it to be loaded again", does)
                : does;
    }

    private static int spare(Roll roll) {
        return roll.frames().isEmpty() ? 0 : SPARE;
    }

    /** How often the shutter is fired with the lens capped: the frames that went by, and those to spare. */
    static int blanks(Roll roll) {
        return roll.lastPassed() + spare(roll);
    }

    /** Whether the words behind {@code load} name a roll rather than a stock. */
    static Optional<RollId> named(CommandContext context, List<String> words) {
        return context.rollNumber(words)
                .filter(it -> context.state().kit().stock(words.get(0)).isEmpty()
                        && (it.letters().equals(context.letters())
                                || context.state().known().contains(it)));
    }

    static Outcome again(CommandContext context, RollId id, List<String> more) {
        Camera camera = context.camera();
        CameraPlace place = context.state().placeInHand().orElseThrow();
        Roll roll = context.roll(id);
        fits(context, roll, camera, place);
        if (!more.isEmpty()) {
            throw new CommandRejected(id + " keeps its film and index: load " + id.typed() + " stands alone; "
                    + more.get(0) + " is one word too many");
        }
        List<JournalEntry> entries = new ArrayList<>();
        if (!context.state().day().used().contains(place)) {
            entries.add(new JournalEntry.OnDay(new DayEvent.CameraSelected(place)));
        }
        entries.add(new JournalEntry.OnRoll(id, new RollEvent.Reloaded(camera, place.back(), spare(roll))));
        ShootState after = context.after(entries);
        Roll now = after.rolls().get(id);
        String text = id + " in " + place + " again: " + now.film().stock().name() + ", "
                + now.film().developmentWords() + ". Cap the lens and fire " + blanks(roll)
                + " blank frames until the counter shows " + now.next() + ": " + roll.lastPassed() + " went by, "
                + spare(roll)
                + " to spare. The meter must be set to "
                + now.film().index() + ". Next is frame " + now.next() + ", " + RollText.left(now) + ".";
        Json.Obj fields = RollCommands.fields(now).and("frame", now.next()).and("blanks", blanks(roll));
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "load",
                        text,
                        fields,
                        context.unsilenced(WarningText.begunBetween(context.state(), after, context.now()))),
                List.of());
    }

    /**
     * A roll goes into a camera a second time only if it was rewound for that, and only where its frames are of the
     * same size.
     */
    private static void fits(CommandContext context, Roll roll, Camera camera, CameraPlace place) {
        RollId id = roll.id();
        switch (roll.state()) {
            case FINISHED -> {
                OffsetDateTime at = roll.finishedAt().orElse(roll.loadedAt());
                if (roll.frames().isEmpty()) {
                    throw new CommandRejected(id
                            + " is finished, without a frame: if it is not exposed, load and its stock "
                            + "gives it a fresh number");
                }
                throw new CommandRejected(id + " is exposed: it was finished on " + at.toLocalDate() + " at "
                        + ClockText.clock(at) + " with " + roll.framesUsed()
                        + " frames, and a second time in a camera would expose it twice; load and a "
                        + "stock gives a fresh roll its own number");
            }
            case OPEN ->
                throw new CommandRejected(id + " is in " + roll.place() + " already, next frame " + roll.next());
            case WITHDRAWN ->
                throw new CommandRejected("the loading of " + id
                        + " was taken back, and its number is not given again: load and a stock");
            case REWOUND ->
                context.state().rollIn(place).ifPresent(it -> {
                    throw new CommandRejected(it.id() + " (" + it.film().stock().name() + ", " + RollText.left(it)
                            + ") is in " + place + ": unload it first");
                });
        }
        if (!camera.frames().containsKey(roll.film().size())
                || !camera.frameSize().equals(roll.camera().frameSize())) {
            throw new CommandRejected(id + " is " + roll.film().size() + " with frames of "
                    + roll.camera().frameSize() + ", and " + camera.name() + " is another: cam "
                    + roll.camera().key() + " first");
        }
    }
}
