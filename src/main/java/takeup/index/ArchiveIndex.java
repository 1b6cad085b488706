package takeup.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Predicate;
import takeup.disk.ReadAhead;
import takeup.journal.Archive;
import takeup.journal.IndexFiles;
import takeup.journal.JournalRecords;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.RollId;
import takeup.search.FrameRow;
import takeup.search.RollHead;

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

    /** The rolls of a part, with what could not be read. */
    private record Part(List<IndexedRoll> rolls, List<String> problems) {}

    /**
     * Each roll, by its number; those that cannot be read are left out.
     *
     * @param isGoingOn takes one after the other, and tells whether the next is wanted
     * @return what could not be read
     */
    public List<String> forEach(Predicate<IndexedRoll> isGoingOn) throws IOException {
        SortedMap<RollId, String> stamps = archive.stamps();
        Map<String, SortedMap<RollId, String>> parts = new TreeMap<>(ArchiveIndex::inOrder);
        stamps.forEach((id, stamp) -> parts.computeIfAbsent(IndexPart.fileOf(id), it -> new TreeMap<>())
                .put(id, stamp));
        AtomicInteger read = new AtomicInteger();
        List<String> problems = new ArrayList<>();
        boolean isIndexed = stamps.size() >= worth;
        ReadAhead.inOrder(
                parts.keySet(),
                file -> isIndexed ? indexed(file, parts.get(file), read) : unindexed(parts.get(file)),
                part -> {
                    problems.addAll(part.problems);
                    for (IndexedRoll roll : part.rolls) {
                        if (!isGoingOn.test(roll)) {
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

    private Part unindexed(SortedMap<RollId, String> stamps) {
        Part part = new Part(new ArrayList<>(), new ArrayList<>());
        stamps.forEach((id, stamp) -> read(id, stamp, part));
        return part;
    }

    private Part indexed(String file, SortedMap<RollId, String> stamps, AtomicInteger read) {
        IndexFiles files = archive.indexFiles();
        Map<RollId, IndexedRoll> known = known(files, file);
        Part part = new Part(new ArrayList<>(), new ArrayList<>());
        List<IndexedRoll> sound = new ArrayList<>();
        int kept = 0;
        for (Map.Entry<RollId, String> entry : stamps.entrySet()) {
            IndexedRoll before = known.get(entry.getKey());
            if (before != null && before.stamp().equals(entry.getValue())) {
                part.rolls.add(before);
                sound.add(before);
                kept++;
            } else {
                read(entry.getKey(), entry.getValue(), part).forEach(sound::add);
                countRead(read.incrementAndGet());
            }
        }
        if (kept < sound.size() || kept < known.size()) {
            files.write(file, IndexPart.bytes(sound, version));
        }
        return part;
    }

    private Map<RollId, IndexedRoll> known(IndexFiles files, String file) {
        IndexPart.Content content =
                files.read(file).map(it -> IndexPart.read(it, version)).orElse(IndexPart.Content.NONE);
        if (content.isDamaged()) {
            tell("index/" + file + " was damaged and is made anew from the journals");
        }
        return content.rolls();
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

    /** Reads a roll into a part; one that was read without a problem is given back, to be kept. */
    private List<IndexedRoll> read(RollId id, String stamp, Part into) {
        RollReading reading = RollReading.of(archive, id);
        JournalRecords<ReviewEvent> review = archive.reviewOf(id);
        into.problems.addAll(reading.problems());
        for (String problem : review.problems()) {
            into.problems.add("reviews/" + problem);
        }
        if (reading.roll().isEmpty()) {
            return List.of();
        }
        IndexedRoll made = new IndexedRoll(
                RollHead.of(reading.roll().get()),
                stamp,
                reading.loading(),
                FrameRow.lines(reading.roll().get(), Review.of(review.records())));
        into.rolls.add(made);
        boolean isSound = reading.problems().isEmpty() && review.problems().isEmpty() && !stamp.isEmpty();
        return isSound ? List.of(made) : List.of();
    }
}
