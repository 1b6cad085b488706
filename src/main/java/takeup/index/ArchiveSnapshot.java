package takeup.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import takeup.disk.ReadAhead;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.journal.RollStamps;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * The archive as it was at one moment, gone through once or several times: names are read once, and files that were
 * found as the index has them are not looked at again.
 */
final class ArchiveSnapshot {
    /** So many rolls are handed to a thread at a time: a hundred new ones are read by two. */
    private static final int AT_A_TIME = 25;
    /** After so many rolls that were read anew it is said how far it is. */
    private static final int TOLD = 2000;
    /** A journal that is read for one of these kinds is read for all of them. */
    private static final List<IndexKind<?>> MADE_TOGETHER = List.of(ListedRoll.KIND, IndexedRoll.KIND);

    private final Archive archive;
    private final IndexFile file;
    private final List<IndexKind<?>> madeTogether;
    private final RollStamps stamps;
    private final boolean isIndexed;
    private final Set<String> found = ConcurrentHashMap.newKeySet();
    private final AtomicInteger read = new AtomicInteger();

    ArchiveSnapshot(Archive archive, IndexFile file, int worth, Optional<IndexKind<?>> further) throws IOException {
        this.madeTogether = new ArrayList<>(MADE_TOGETHER);
        further.ifPresent(madeTogether::add);
        this.archive = archive;
        this.file = file;
        this.stamps = archive.stamps();
        this.isIndexed = stamps.rolls().size() >= worth;
    }

    /** Whether there is an index of it: fewer rolls are read as quickly themselves. */
    boolean isIndexed() {
        return isIndexed;
    }

    /** Some rolls of a part, one after the other. */
    private record Slice(PartReading part, List<RollId> rolls) {}

    /** What was made of them, and what could not be read. */
    private record Entries<T>(List<T> entries, List<String> problems) {}

    /**
     * The entry of each roll, by its number; rolls that cannot be read are left out.
     *
     * @return what could not be read
     */
    <T> List<String> forEach(IndexKind<T> kind, Predicate<T> isGoingOn) throws IOException {
        return forEach(kind, it -> true, isGoingOn);
    }

    <T> List<String> forEach(IndexKind<T> kind, Predicate<RollId> isWanted, Predicate<T> isGoingOn) throws IOException {
        List<String> problems = new ArrayList<>();
        try {
            ReadAhead.inOrder(
                    slices(isWanted), slice -> isIndexed ? indexed(kind, slice) : unindexed(kind, slice), made -> {
                        problems.addAll(made.problems);
                        for (T entry : made.entries) {
                            if (!isGoingOn.test(entry)) {
                                return false;
                            }
                        }
                        return true;
                    });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return problems;
    }

    private List<Slice> slices(Predicate<RollId> isWanted) {
        List<Slice> slices = new ArrayList<>();
        PartReading part = new PartReading("");
        Slice slice = new Slice(part, List.of());
        for (RollId roll : stamps.rolls()) {
            String name = IndexPart.of(roll);
            boolean isSame = name.equals(part.name());
            if (!isSame) {
                part = new PartReading(name);
            }
            if (!isWanted.test(roll)) {
                part.leaveOut(roll);
                continue;
            }
            if (slice.part != part || slice.rolls.size() == AT_A_TIME) {
                slice = new Slice(part, new ArrayList<>(AT_A_TIME));
                part.addSlice();
                slices.add(slice);
            }
            slice.rolls.add(roll);
        }
        return slices;
    }

    private <T> Entries<T> unindexed(IndexKind<T> kind, Slice slice) {
        Entries<T> made = new Entries<>(new ArrayList<>(), new ArrayList<>());
        slice.rolls.forEach(
                id -> readRoll(id, made.problems).ifPresent(it -> made.entries.add(kind.read(it.text(kind)))));
        return made;
    }

    private <T> Entries<T> indexed(IndexKind<T> kind, Slice slice) {
        PartReading part = slice.part;
        IndexPart.Content known = part.known(file, kind);
        String foundAs = IndexPart.file(part.name(), kind);
        Entries<T> made = new Entries<>(new ArrayList<>(), new ArrayList<>());
        for (RollId id : slice.rolls) {
            IndexPart.Entry entry = known.entries().get(id);
            String stamp = entry != null && found.contains(foundAs) ? entry.stamp() : stamp(id);
            part.stamp(id, stamp);
            Optional<T> before = entry != null && entry.stamp().equals(stamp) ? read(kind, entry) : Optional.empty();
            if (before.isPresent()) {
                made.entries.add(before.get());
            } else {
                readAnew(kind, part, id, stamp, made);
            }
        }
        if (part.endSlice(file, kind)) {
            found.add(foundAs);
        }
        return made;
    }

    private <T> void readAnew(IndexKind<T> kind, PartReading part, RollId id, String stamp, Entries<T> made) {
        int problems = made.problems.size();
        Optional<ReadRoll> roll = readRoll(id, made.problems);
        boolean isSound = made.problems.size() == problems && !stamp.isEmpty();
        roll.ifPresent(it -> {
            String text = it.text(kind);
            made.entries.add(kind.read(text));
            if (isSound) {
                part.put(kind, id, new IndexPart.Entry(stamp, text));
                madeBeside(kind).forEach(other -> part.put(other, id, new IndexPart.Entry(stamp, it.text(other))));
            }
        });
        int soFar = read.incrementAndGet();
        if (soFar % TOLD == 0) {
            file.told().accept(soFar + " rolls read that were new or changed; the next time they need not be");
        }
    }

    /** The other kinds that are made of a journal which is read for one. */
    private List<IndexKind<?>> madeBeside(IndexKind<?> kind) {
        List<IndexKind<?>> others = madeTogether.stream()
                .filter(it -> !it.name().equals(kind.name()))
                .toList();
        return others.size() < madeTogether.size() ? others : List.of();
    }

    private String stamp(RollId id) {
        try {
            return stamps.of(id);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What an entry says; empty where somebody wrote there what is none, checksum and all. */
    private static <T> Optional<T> read(IndexKind<T> kind, IndexPart.Entry entry) {
        try {
            return Optional.of(kind.read(entry.text()));
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    /** A roll as it was read. */
    private record ReadRoll(Roll roll, long loading, Review review) {
        String text(IndexKind<?> kind) {
            return kind.text(roll, loading, review);
        }
    }

    private Optional<ReadRoll> readRoll(RollId id, List<String> problems) {
        RollReading reading = RollReading.of(archive, id);
        JournalRecords<ReviewEvent> review = archive.reviewOf(id);
        problems.addAll(reading.problems());
        for (String problem : review.problems()) {
            problems.add("reviews/" + problem);
        }
        return reading.roll().map(it -> new ReadRoll(it, reading.loading(), Review.of(review.records())));
    }
}
