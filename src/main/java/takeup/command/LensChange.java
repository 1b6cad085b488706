package takeup.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.CameraEvent;
import takeup.day.CameraSetup;
import takeup.history.JournalEntry;
import takeup.kit.Camera;
import takeup.kit.Lens;
import takeup.report.StaysOn;
import takeup.roll.SettingPatch;
import takeup.text.English;

/**
 * What is asked and said when another lens comes on a camera: a filter belongs to the lens that it was screwed on, so
 * nobody but the photographer knows whether it comes along.
 *
 * @param camera the camera
 * @param before what was in hand with the lens before
 * @param lens the lens that comes on
 */
public record LensChange(Camera camera, CameraSetup before, Lens lens) {
    private boolean isOther() {
        return before.setting()
                .lens()
                .filter(it -> !it.key().equals(lens.key()))
                .isPresent();
    }

    /** What stays on whatever the lens, as a sentence with a blank in front. */
    public String stays() {
        return isOther() ? StaysOn.sentence(StaysOn.besideFilters(before)) : "";
    }

    /**
     * Whether the filter comes along, asked once the change is done; where it stays behind, so it does on the frames
     * that the line logged.
     *
     * @param done the line that changed the lens
     * @param frames what no puts right on frames that were logged with it; often nothing
     */
    public Optional<Outcome.NeedsConfirmation> question(
            Outcome.Accepted done, List<JournalEntry> frames, CommandContext context) {
        List<String> filters = StaysOn.filters(before);
        if (!isOther() || filters.isEmpty()) {
            return Optional.empty();
        }
        CommandContext then = context.after(done);
        List<JournalEntry> off = new ArrayList<>(frames);
        off.add(new JournalEntry.OnDay(new CameraEvent.CameraSetupChanged(
                camera.key(), then.state().inHand(camera).with(SettingPatch.filters(List.of())))));
        String what = String.join(" and ", filters);
        boolean isOne = filters.size() == 1;
        return Optional.of(new Outcome.NeedsConfirmation(
                English.capitalised(what) + (isOne ? " was" : " were") + " on the "
                        + before.setting().lens().orElseThrow().name() + ". "
                        + (isOne ? "Does it come" : "Do they come") + " along? y/n",
                then.reply(List.of())
                        .says("On the " + lens.name() + ", too: " + what, ".")
                        .accepted(),
                Optional.of(then.reply(off)
                        .says("No filter on the " + lens.name(), ".")
                        .accepted())));
    }
}
