package takeup.index;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import takeup.journal.Archive;
import takeup.roll.RollId;

/**
 * What is listed and found in a large archive without reading every journal. The journals stay the truth: whatever size
 * or time changed is read again, and the whole may be thrown away at any moment. It is written in parts of a hundred
 * rolls, so that a hundred new rolls cost no more than those hundred.
 */
public final class ArchiveIndex {
    /** Fewer rolls than these are read nearly as quickly as an index of them, which changes with each frame. */
    private static final int WORTH = 20;

    private final Archive archive;
    private final IndexFile file;
    private final int worth;
    private final Optional<IndexKind<?>> further;

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
        this(archive, sayingOneByOne(archive, version, told), worth, Optional.empty());
    }

    private ArchiveIndex(Archive archive, IndexFile file, int worth, Optional<IndexKind<?>> further) {
        this.archive = archive;
        this.file = file;
        this.worth = worth;
        this.further = further;
    }

    /** The same, which makes entries of a further kind of each journal that is read, so that it is read but once. */
    public ArchiveIndex alsoMaking(IndexKind<?> kind) {
        return new ArchiveIndex(archive, file, worth, Optional.of(kind));
    }

    private static IndexFile sayingOneByOne(Archive archive, String version, Consumer<String> told) {
        // One sentence at a time, whichever thread it comes from.
        return new IndexFile(archive.indexFiles(), version, sentence -> {
            synchronized (told) {
                told.accept(sentence);
            }
        });
    }

    /**
     * The entry of each roll, by its number; rolls that cannot be read are left out.
     *
     * @param isGoingOn takes one after the other, and tells whether the next is wanted
     * @return what could not be read
     */
    public <T> List<String> forEach(IndexKind<T> kind, Predicate<T> isGoingOn) throws IOException {
        return snapshot().forEach(kind, isGoingOn);
    }

    /**
     * The same of the rolls whose numbers are wanted; others are not looked at.
     *
     * @param isWanted called before any is read
     */
    public <T> List<String> forEach(IndexKind<T> kind, Predicate<RollId> isWanted, Predicate<T> isGoingOn)
            throws IOException {
        return snapshot().forEach(kind, isWanted, isGoingOn);
    }

    /** The list of rolls in the order of loading. */
    public RollsAsLoaded asLoaded() throws IOException {
        return RollsAsLoaded.of(snapshot());
    }

    private ArchiveSnapshot snapshot() throws IOException {
        return new ArchiveSnapshot(archive, file, worth, further);
    }
}
