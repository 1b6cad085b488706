package takeup.loading;

import java.time.OffsetDateTime;
import java.util.List;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraPlace;
import takeup.kit.Camera;
import takeup.prompt.CommandRejected;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.text.ClockText;

/**
 * {@code load r3}: a roll that was rewound before its end goes into a camera again.
 *
 * <p>The routine of press photographers: the tongue is left out, the count is written on the cassette; loaded again,
 * the film is wound on with the lens capped to what is written there, and one or two frames further to be safe.
 */
final class Reloading {
    /** Frames left blank behind the last exposed one. */
    static final int SPARE = 2;

    private Reloading() {}

    private static int spare(Roll roll) {
        return roll.frames().isEmpty() ? 0 : SPARE;
    }

    /** How often the shutter is fired with the lens capped: the frames that went by, and those to spare. */
    static int blanks(Roll roll) {
        return roll.lastPassed() + spare(roll);
    }

    static Outcome run(RollId id, List<String> more, CommandContext context) {
        Camera camera = context.camera();
        CameraPlace place = context.state().placeInHand().orElseThrow();
        Roll roll = context.roll(id);
        check(roll, camera, place, context);
        if (!more.isEmpty()) {
            throw new CommandRejected(id + " keeps its film and index: load " + id.typed() + " stands alone; "
                    + more.get(0) + " is one word too many");
        }
        Reply reply =
                context.reply(RollWords.putIn(id, new RollEvent.Reloaded(camera, place.back(), spare(roll)), context));
        Roll now = reply.roll(id);
        Outcome.Accepted loaded = reply.event("load")
                .says(
                        id + " in " + place + " again",
                        ": " + now.film().stock().name() + ", " + now.film().developmentWords()
                                + ". Cap the lens and fire " + blanks(roll)
                                + " blank frames until the counter shows " + now.next() + ": " + roll.lastPassed()
                                + " went by, " + spare(roll) + " to spare. The meter must be set to "
                                + now.film().index() + ". Next is frame " + now.next() + ", " + RollText.left(now)
                                + ".")
                .fields(RollWords.fields(now).and("frame", now.next()).and("blanks", blanks(roll)))
                .warningsBegun()
                .accepted();
        return RollWords.asking(loaded, place, context);
    }

    /**
     * A roll goes into a camera a second time only if it was rewound for that, and only where its frames are of the
     * same size.
     */
    private static void check(Roll roll, Camera camera, CameraPlace place, CommandContext context) {
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
            case REWOUND -> RollWords.refuseTakenPlace(place, context);
        }
        if (!camera.frames().containsKey(roll.film().size())
                || !camera.frameSize().equals(roll.camera().frameSize())) {
            throw new CommandRejected(id + " is " + roll.film().size() + " with frames of "
                    + roll.camera().frameSize() + ", and " + camera.name() + " is another: cam "
                    + roll.camera().key() + " first");
        }
    }
}
