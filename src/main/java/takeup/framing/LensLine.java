package takeup.framing;

import java.util.List;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.command.LensChange;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraSetup;
import takeup.history.JournalEntry;
import takeup.kit.Camera;
import takeup.kit.Lens;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.SettingPatch;

/** {@code 8 125 lens 28}: frames with another lens, which stays on the camera. */
record LensLine(LensChange change, NewFrames frames, CommandContext context) {
    static LensLine of(Lens lens, NewFrames frames, CommandContext context) {
        Camera camera = context.camera();
        return new LensLine(new LensChange(camera, context.state().inHand(camera), lens), frames, context);
    }

    Outcome outcome(Optional<String> question) {
        Roll before = context.roll();
        CameraSetup setup = change.before().with(SettingPatch.lens(change.lens()));
        Reply reply = frames.reply(
                context,
                List.of(new JournalEntry.OnDay(
                        new CameraEvent.CameraSetupChanged(change.camera().key(), setup.with(frames.pair())))));
        Roll after = reply.roll(before.id());
        Outcome.Accepted logged = reply.saysMore(" Lens on " + change.camera().key() + ": "
                        + change.lens().name() + "." + change.stays())
                .accepted();
        int last = after.newest().orElseThrow().number();
        RollEvent off = new RollEvent.Corrected(last - frames.count() + 1, last, SettingPatch.filters(List.of()));
        return logged.thenAsking(change.question(logged, List.of(new JournalEntry.OnRoll(before.id(), off)), context))
                .askedFirst(question.or(() -> FrameQuestion.of(frames.count(), before, after)));
    }
}
