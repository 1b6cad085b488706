package takeup.loading;

import java.util.List;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.history.JournalEntry;
import takeup.kit.Camera;
import takeup.prompt.CommandRejected;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/** {@code move back 1 645 to 645leaf}: a back goes on another body, and what is in it goes along. */
public final class BackMove {
    private static final String EXAMPLE = "move back 1 645 to 645leaf";

    private BackMove() {}

    /** What the words behind {@code move back} come to. */
    public static Outcome run(List<String> words, CommandContext context) {
        int to = words.indexOf("to");
        if (to < 1 || to > 2 || words.size() != to + 2) {
            throw new CommandRejected("which back, and to which body? " + EXAMPLE);
        }
        String from = to == 2 ? words.get(1) : context.camera().key();
        CameraPlace place = backOn(from, words.get(0), context);
        CameraPlace other = backOn(words.get(to + 1), words.get(0), context);
        if (place.equals(other)) {
            throw new CommandRejected("back " + words.get(0) + " is on " + from + " already");
        }
        Roll roll = context.state()
                .rollIn(place)
                .orElseThrow(() -> new CommandRejected(
                        "no film in " + place + ": cam " + other.typed() + " takes up the back on the other body"));
        context.state().rollIn(other).ifPresent(it -> {
            throw new CommandRejected(it.id() + " is in " + other + ": that back goes elsewhere, or is unloaded first");
        });
        Camera body = context.state().camera(other.camera()).orElseThrow().withBack(other.back());
        if (!body.frameSize().equals(roll.camera().frameSize())) {
            throw new CommandRejected(
                    "back " + words.get(0) + " takes " + roll.camera().frameSize() + " on " + from + " and "
                            + body.frameSize() + " on " + body.key() + ": they are different backs");
        }
        Reply reply = context.reply(List.of(
                new JournalEntry.OnRoll(
                        roll.id(), new RollEvent.BackMoved(body, other.back().orElseThrow())),
                new JournalEntry.OnDay(new CameraEvent.CameraSelected(other))));
        Roll now = reply.roll(roll.id());
        return reply.event("fix")
                .says(
                        "Back " + other.back().orElseThrow() + " is on " + other.camera(),
                        ", and " + now.id() + " in it: next frame " + now.next() + ", " + RollText.left(now) + ".")
                .fields(RollWords.fields(now))
                .warningsBegun()
                .accepted();
    }

    private static CameraPlace backOn(String camera, String back, CommandContext context) {
        CameraPlace place = context.place(List.of(camera, back));
        return new CameraPlace(place.camera(), Optional.of(place.back().orElseThrow()));
    }
}
