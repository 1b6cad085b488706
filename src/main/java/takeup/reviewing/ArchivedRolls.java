package takeup.reviewing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Predicate;
import takeup.console.Console;
import takeup.disk.ReadAhead;
import takeup.index.IndexKind;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.options.GlobalOptions;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollNumbers;
import takeup.roll.RollRecord;

/** Rolls of the archive with what was decided about their scans, one after the other: no more than a few are held. */
record ArchivedRolls(GlobalOptions global, RollNumbers ids) {
    /** A roll and what was decided about its scans. */
    record Reviewed(Roll roll, Review review) {}

    /** A roll as it was read, made into what is wanted of it. */
    private record Read<T>(Optional<T> made, List<String> problems) {}

    /** Those that have a review. */
    static ArchivedRolls reviewed(GlobalOptions global) throws IOException {
        return new ArchivedRolls(global, global.archive().reviewedRolls());
    }

    static ArchivedRolls all(GlobalOptions global) throws IOException {
        Archive archive = global.archive();
        return new ArchivedRolls(global, archive.reviewedRolls().and(archive.rolls()));
    }

    /**
     * Each by its number; a roll is forgotten as soon as it was made into something. What could not be read goes to the
     * console.
     *
     * @param made of a roll and what was decided about its scans; on several threads at once
     * @param taken in the order of the numbers
     * @return whether all could be read
     */
    <T> boolean forEach(BiFunction<Roll, Review, T> made, Consumer<T> taken) throws IOException {
        return forEach(it -> it.state() != Roll.State.WITHDRAWN, made, taken);
    }

    /** The same, with the rolls whose loading was taken back. */
    <T> boolean forEachEver(BiFunction<Roll, Review, T> made, Consumer<T> taken) throws IOException {
        return forEach(it -> true, made, taken);
    }

    private <T> boolean forEach(Predicate<Roll> wanted, BiFunction<Roll, Review, T> made, Consumer<T> taken)
            throws IOException {
        Archive archive = global.archive();
        AtomicBoolean isWhole = new AtomicBoolean(true);
        ReadAhead.inOrder(ids, id -> read(archive, id, wanted, made), it -> {
            it.problems.forEach(global.console()::error);
            isWhole.compareAndSet(true, it.problems.isEmpty());
            it.made.ifPresent(taken);
            return !global.console().failed();
        });
        return isWhole.get();
    }

    /**
     * The same of what an index holds of each roll, so that what did not change is not read again.
     *
     * @param taken in the order of the numbers
     */
    <T> boolean forEach(IndexKind<T> kind, Consumer<T> taken) throws IOException {
        Console console = global.console();
        List<String> problems = new ArrayList<>(global.index().alsoMaking(kind).forEach(kind, it -> {
            taken.accept(it);
            return !console.failed();
        }));
        problems.removeIf(it -> roll(it).filter(id -> !ids.contains(id)).isPresent());
        // What was decided about a roll whose journal is gone.
        RollNumbers there = global.archive().rolls();
        for (RollId id : ids) {
            if (!there.contains(id)) {
                problems.addAll(global.archive().roll(id).problems());
            }
        }
        problems.forEach(console::error);
        return problems.isEmpty();
    }

    /** The roll that a problem is about, which begins with the name of a file. */
    private static Optional<RollId> roll(String problem) {
        int from = problem.startsWith("reviews/") ? "reviews/".length() : 0;
        return RollId.parse(problem.substring(from, Math.max(from, problem.indexOf('.'))));
    }

    private static <T> Read<T> read(
            Archive archive, RollId id, Predicate<Roll> wanted, BiFunction<Roll, Review, T> made) {
        JournalRecords<RollRecord> opened = archive.roll(id);
        JournalRecords<ReviewEvent> review = archive.reviewOf(id);
        List<String> problems = new ArrayList<>(opened.problems());
        for (String problem : review.problems()) {
            problems.add("reviews/" + problem);
        }
        return new Read<>(
                Roll.of(opened.records()).filter(wanted).map(it -> made.apply(it, Review.of(review.records()))),
                problems);
    }
}
