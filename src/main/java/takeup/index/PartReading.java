package takeup.index;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import takeup.roll.RollId;

/**
 * A part of the index while its rolls are gone through, some of them on one thread and some on another: its file is
 * read by the first that asks, and what changed is written by the last.
 */
final class PartReading {
    private final String name;
    private final SortedMap<RollId, String> stamps = new TreeMap<>();
    private final Map<IndexKind<?>, SortedMap<RollId, IndexPart.Entry>> anew = new IdentityHashMap<>();
    private final Set<RollId> leftOut = new HashSet<>();
    private IndexPart.Content known;
    private int slices;

    PartReading(String name) {
        this.name = name;
    }

    String name() {
        return name;
    }

    /** Before any is read: a roll that is there and is not gone through, so that its entry stays as it is. */
    void leaveOut(RollId roll) {
        leftOut.add(roll);
    }

    /** Before any is read: there is one slice more of it to go through. */
    void addSlice() {
        slices++;
    }

    /** The entries of one kind, as the file has them. */
    synchronized IndexPart.Content known(IndexFile file, IndexKind<?> kind) {
        if (known == null) {
            known = file.read(name, kind);
        }
        return known;
    }

    /** Sizes and times of the files of a roll that is there. */
    synchronized void stamp(RollId roll, String stamp) {
        stamps.put(roll, stamp);
    }

    /** An entry that was made from the journal. */
    synchronized void put(IndexKind<?> kind, RollId roll, IndexPart.Entry entry) {
        anew.computeIfAbsent(kind, it -> new TreeMap<>()).put(roll, entry);
    }

    /**
     * A slice was gone through; with the last one what is no longer as it was is written, and all of it forgotten.
     *
     * @return whether the file now has every roll of the part
     */
    synchronized boolean endSlice(IndexFile file, IndexKind<?> kind) {
        if (--slices > 0) {
            return false;
        }
        leftOut.forEach(roll ->
                Optional.ofNullable(known.entries().get(roll)).ifPresent(entry -> stamps.put(roll, entry.stamp())));
        int sound = file.write(name, kind, known, anew.getOrDefault(kind, new TreeMap<>()), stamps);
        anew.forEach((other, entries) -> {
            if (other != kind) {
                file.write(name, other, file.read(name, other), entries, stamps);
            }
        });
        boolean isWhole = sound == stamps.size() && leftOut.isEmpty();
        known = null;
        anew.clear();
        stamps.clear();
        return isWhole;
    }
}
