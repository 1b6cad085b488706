package takeup.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Predicate;
import takeup.disk.ReadAhead;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * What is listed and found in a large archive without reading every journal. The journals stay the truth: whatever size
 * or time changed is read again, and the whole may be thrown away at any moment. It is written in parts of a hundred
 * rolls, so that a hundred new rolls cost no more than those hundred.
 */
public final class ArchiveIndex {
    /** Fewer rolls than these are read as quickly as an index of them. */
    private static final int WORTH = 200;
    /** After so many rolls that were read anew it is said how far it is. */
    private static final int TOLD = 2000;
    /** A journal that is read for one of these kinds is read for all of them. */
    private static final List<IndexKind<?>> MADE_TOGETHER = List.of(ListedRoll.KIND, IndexedRoll.KIND);

    private final Archive archive;
    private final String version;
    private final Consumer<String> told;
    private final int worth;

    /**
     * The index of an archive; nothing is read yet.
     *
     * @param version of the program: another one's index is made anew
     * @param told takes sentences for the photographer, also on other threads: how far it is, and what was damaged
     */
    public ArchiveIndex(Archive archive, String version, Consumer<String> told) {
        this(archive, version, told, WORTH);
    }

    ArchiveIndex(Archive archive, String version, Consumer<String> told, int worth) {
        this.archive = archive;
        this.version = version;
        this.told = told;
        this.worth = worth;
    }

    /** Entries of a part, with what could not be read. */
    private record Part<T>(List<T> entries, List<String> problems) {}

    /**
     * The entry of each roll, by its number; rolls that cannot be read are left out.
     *
     * @param isGoingOn takes one after the other, and tells whether the next is wanted
     * @return what could not be read
     */
    public <T> List<String> forEach(IndexKind<T> kind, Predicate<T> isGoingOn) throws IOException {
        SortedMap<RollId, String> stamps = archive.stamps();
        Map<String, SortedMap<RollId, String>> parts = new TreeMap<>(ArchiveIndex::inOrder);
        stamps.forEach((id, stamp) ->
                parts.computeIfAbsent(IndexPart.of(id), it -> new TreeMap<>()).put(id, stamp));
        AtomicInteger read = new AtomicInteger();
        List<String> problems = new ArrayList<>();
        boolean isIndexed = stamps.size() >= worth;
        ReadAhead.inOrder(
                parts.keySet(),
                part -> isIndexed ? indexed(kind, part, parts.get(part), read) : unindexed(kind, parts.get(part)),
                part -> {
                    problems.addAll(part.problems);
                    for (T entry : part.entries) {
                        if (!isGoingOn.test(entry)) {
                            return false;
                        }
                    }
                    return true;
                });
        return problems;
    }

    /** By letters, then by number: R-2 before R-10. */
    private static int inOrder(String one, String other) {
        int byLength = Integer.compare(one.length(), other.length());
        String letters = one.substring(0, one.indexOf('-'));
        int byLetters = letters.compareTo(other.substring(0, other.indexOf('-')));
        if (byLetters != 0) {
            return byLetters;
        }
        return byLength != 0 ? byLength : one.compareTo(other);
    }

    private <T> Part<T> unindexed(IndexKind<T> kind, SortedMap<RollId, String> stamps) {
        Part<T> part = new Part<>(new ArrayList<>(), new ArrayList<>());
        stamps.keySet()
                .forEach(id -> readRoll(id, part.problems).ifPresent(it -> part.entries.add(kind.read(it.text(kind)))));
        return part;
    }

    private <T> Part<T> indexed(IndexKind<T> kind, String name, SortedMap<RollId, String> stamps, AtomicInteger read) {
        IndexPart.Content known = known(kind, name);
        Part<T> part = new Part<>(new ArrayList<>(), new ArrayList<>());
        List<IndexKind<?>> made = MADE_TOGETHER.contains(kind) ? MADE_TOGETHER : List.of(kind);
        Map<IndexKind<?>, SortedMap<RollId, IndexPart.Entry>> anew = new HashMap<>();
        made.forEach(it -> anew.put(it, new TreeMap<>()));
        for (Map.Entry<RollId, String> entry : stamps.entrySet()) {
            RollId id = entry.getKey();
            String stamp = entry.getValue();
            Optional<T> before = Optional.ofNullable(known.entries().get(id))
                    .filter(it -> it.stamp().equals(stamp))
                    .flatMap(it -> read(kind, it.text()));
            if (before.isPresent()) {
                part.entries.add(before.get());
                continue;
            }
            int problems = part.problems.size();
            Optional<ReadRoll> roll = readRoll(id, part.problems);
            boolean isSound = part.problems.size() == problems && !stamp.isEmpty();
            roll.ifPresent(it -> {
                String text = it.text(kind);
                part.entries.add(kind.read(text));
                if (isSound) {
                    made.forEach(other ->
                            anew.get(other).put(id, new IndexPart.Entry(stamp, other == kind ? text : it.text(other))));
                }
            });
            countRead(read.incrementAndGet());
        }
        write(kind, name, known, anew.get(kind), stamps);
        for (IndexKind<?> other : made) {
            if (other != kind && !anew.get(other).isEmpty()) {
                write(other, name, known(other, name), anew.get(other), stamps);
            }
        }
        return part;
    }

    /** What an entry says; empty where somebody wrote there what is none, checksum and all. */
    private static <T> Optional<T> read(IndexKind<T> kind, String text) {
        try {
            return Optional.of(kind.read(text));
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    /** Writes a part with what was made anew, and without what is no longer as it was. */
    private void write(
            IndexKind<?> kind,
            String part,
            IndexPart.Content known,
            SortedMap<RollId, IndexPart.Entry> anew,
            SortedMap<RollId, String> stamps) {
        SortedMap<RollId, IndexPart.Entry> entries = new TreeMap<>(known.entries());
        entries.entrySet().removeIf(it -> !it.getValue().stamp().equals(stamps.get(it.getKey())));
        if (!anew.isEmpty() || entries.size() < known.entries().size()) {
            entries.putAll(anew);
            archive.indexFiles()
                    .write(IndexPart.file(part, kind), IndexPart.bytes(entries, IndexPart.maker(kind, version)));
        }
    }

    private IndexPart.Content known(IndexKind<?> kind, String part) {
        String file = IndexPart.file(part, kind);
        IndexPart.Content content = archive.indexFiles()
                .read(file)
                .map(it -> IndexPart.read(it, IndexPart.maker(kind, version)))
                .orElse(IndexPart.Content.NONE);
        if (content.isDamaged()) {
            tell("index/" + file + " was damaged and is made anew from the journals");
        }
        return content;
    }

    private void countRead(int read) {
        if (read % TOLD == 0) {
            tell(read + " rolls read that were new or changed; the next time they need not be");
        }
    }

    /** One sentence at a time, whichever thread it comes from. */
    private synchronized void tell(String sentence) {
        told.accept(sentence);
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
