package takeup.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import takeup.files.ReadAhead;
import takeup.handoff.FrameJsonLines;
import takeup.handoff.RollText;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/** {@code takeup frames}: every frame of the archive, roll by roll, so that no more than a few are ever held. */
final class FramesSubcommand {
    private final Subcommands commands;

    FramesSubcommand(Subcommands commands) {
        this.commands = commands;
    }

    int run(boolean json) throws IOException {
        boolean[] isBad = {false};
        forEach(
                commands,
                true,
                json ? FramesSubcommand::lines : (roll, review) -> RollText.of(roll) + "\n",
                text -> {
                    if (json) {
                        commands.out().raw(text);
                    } else {
                        commands.out().lines(text);
                    }
                },
                isBad);
        return isBad[0] ? 1 : 0;
    }

    private static String lines(Roll roll, Review review) {
        return FrameJsonLines.of(
                roll,
                review.scans(roll),
                review.verdicts(roll).stream()
                        .map(it -> it.map(Object::toString))
                        .toList());
    }

    /** A roll and what was decided about its scans. */
    record Reviewed(Roll roll, Review review) {}

    /** A roll as it was read, made into what is wanted of it. */
    private record Read<T>(Optional<T> made, List<String> problems) {}

    /**
     * Every roll by its number, or those alone that have a review; a roll is forgotten as soon as it was made into
     * something.
     *
     * @param made of a roll and what was decided about its scans; on several threads at once
     * @param taken in the order of the numbers
     */
    static <T> void forEach(
            Subcommands commands, boolean all, BiFunction<Roll, Review, T> made, Consumer<T> taken, boolean[] isBad)
            throws IOException {
        Archive archive = commands.archive();
        TreeSet<RollId> ids = new TreeSet<>(archive.reviewedRolls());
        if (all) {
            ids.addAll(archive.finishedRolls());
            ids.addAll(archive.openRolls());
        }
        ReadAhead.inOrder(ids, id -> read(archive, id, made), it -> {
            for (String problem : it.problems) {
                commands.out().error(problem);
            }
            isBad[0] |= !it.problems.isEmpty();
            it.made.ifPresent(taken);
            return !commands.out().failed();
        });
    }

    private static <T> Read<T> read(Archive archive, RollId id, BiFunction<Roll, Review, T> made) {
        JournalRecords<RollRecord> opened = archive.roll(id);
        JournalRecords<ReviewEvent> review = archive.reviewOf(id);
        List<String> problems = new ArrayList<>(opened.problems());
        for (String problem : review.problems()) {
            problems.add("reviews/" + problem);
        }
        Optional<Roll> roll = Roll.of(opened.records());
        boolean counts = roll.isPresent() && roll.get().state() != Roll.State.WITHDRAWN;
        return new Read<>(
                counts ? Optional.of(made.apply(roll.get(), Review.of(review.records()))) : Optional.empty(), problems);
    }
}
