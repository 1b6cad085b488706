package takeup.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import takeup.handoff.FrameLines;
import takeup.handoff.RollText;
import takeup.journal.Archive;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Recorded;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code takeup frames}: every frame of the archive, roll by roll, so that no more than one roll is ever held. */
final class FramesCommand {
    private final Commands commands;

    FramesCommand(Commands commands) {
        this.commands = commands;
    }

    int run(boolean json) throws IOException {
        boolean[] isBad = {false};
        forEach(commands, true, (roll, review) -> {
            if (!json) {
                commands.out().lines(RollText.of(roll) + "\n");
                return;
            }
            List<Optional<String>> verdicts = review.verdicts(roll).stream().map(it -> it.map(Object::toString)).toList();
            commands.out().raw(FrameLines.of(roll, review.scans(roll), verdicts));
        }, isBad);
        return isBad[0] ? 1 : 0;
    }

    /** What is done with a roll and what was decided about its scans. */
    interface Each {
        void take(Roll roll, Review review);
    }

    /** Every roll by its number, or those alone that have a review; a roll is forgotten before the next is read. */
    static void forEach(Commands commands, boolean all, Each each, boolean[] isBad) throws IOException {
        Archive archive = commands.archive();
        TreeSet<RollId> ids = new TreeSet<>(archive.reviewedRolls());
        if (all) {
            ids.addAll(archive.finishedRolls());
            ids.addAll(archive.openRolls());
        }
        for (RollId id : ids) {
            if (commands.out().failed()) {
                return;
            }
            Archive.Opened<Recorded> opened = archive.roll(id);
            Archive.Opened<ReviewEvent> review = archive.reviewOf(id);
            opened.problems().forEach(commands.out()::error);
            review.problems().forEach(it -> commands.out().error("reviews/" + it));
            isBad[0] |= !opened.problems().isEmpty() || !review.problems().isEmpty();
            Roll.of(opened.records()).filter(it -> it.state() != Roll.State.WITHDRAWN).ifPresent(it -> each.take(it, Review.of(review.records())));
        }
    }
}
