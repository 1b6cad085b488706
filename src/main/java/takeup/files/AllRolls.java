package takeup.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import takeup.disk.ReadAhead;
import takeup.index.ArchiveIndex;
import takeup.index.RollReading;
import takeup.index.RollsAsLoaded;
import takeup.journal.Archive;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * Every roll of an archive in the order of loading, or of each only what is made of it, so that an archive of years is
 * never held with all its frames.
 *
 * @param rolls the rolls, or what is made of them
 * @param problems what could not be read
 */
public record AllRolls<T>(List<T> rolls, List<String> problems) {
    public static AllRolls<Roll> of(Archive archive) throws IOException {
        return of(archive, it -> it);
    }

    public static <T> AllRolls<T> of(Archive archive, Function<Roll, T> made) throws IOException {
        List<String> problems = new ArrayList<>();
        // In this order a roll that is finished at this very moment is in one of the two.
        Set<RollId> ids = new TreeSet<>(archive.openRolls());
        ids.addAll(archive.finishedRolls());
        List<Placed<T>> rolls = new ArrayList<>();
        ReadAhead.inOrder(ids, id -> placed(archive, id, made), it -> {
            problems.addAll(it.problems);
            return it.made.isEmpty() || rolls.add(it);
        });
        return new AllRolls<>(inOrder(rolls), problems);
    }

    /** The line of each in a list, from the index where that is quicker. */
    public static AllRolls<RollSummary> summaries(ArchiveIndex index) throws IOException {
        RollsAsLoaded listed = index.asLoaded();
        List<RollSummary> rolls = new ArrayList<>();
        listed.forEach(rolls::add);
        return new AllRolls<>(rolls, listed.problems());
    }

    private static <T> List<T> inOrder(List<Placed<T>> rolls) {
        // Steps are counted by each writer apart.
        rolls.sort(Comparator.comparing((Placed<T> it) -> it.id.letters())
                .thenComparing(it -> it.loading)
                .thenComparing(it -> it.id));
        List<T> all = new ArrayList<>();
        for (Placed<T> roll : rolls) {
            all.add(roll.made.orElseThrow());
        }
        return all;
    }

    private static <T> Placed<T> placed(Archive archive, RollId id, Function<Roll, T> made) {
        RollReading reading = RollReading.of(archive, id);
        return new Placed<>(reading.id(), reading.loading(), reading.roll().map(made), reading.problems());
    }

    /** What was made of a roll, with what it is put in order by, and what could not be read. */
    private record Placed<T>(RollId id, long loading, Optional<T> made, List<String> problems) {}
}
