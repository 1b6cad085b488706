package takeup.index;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import takeup.journal.IndexFiles;
import takeup.roll.RollId;

/**
 * The parts of the index as files that one version of the program writes.
 *
 * @param told takes a sentence where one is damaged
 */
record IndexFile(IndexFiles files, String version, Consumer<String> told) {
    /** What the file of a part holds for one kind of entry. */
    IndexPart.Content read(String part, IndexKind<?> kind) {
        String file = IndexPart.file(part, kind);
        IndexPart.Content content = files.read(file)
                .map(it -> IndexPart.read(it, IndexPart.maker(kind, version)))
                .orElse(IndexPart.Content.NONE);
        if (content.isDamaged()) {
            told.accept("index/" + file + " was damaged and is made anew from the journals");
        }
        return content;
    }

    /**
     * Writes a part with what was made anew, and without what is no longer as it was; nothing where it is as known.
     *
     * @return how many entries it holds
     */
    int write(
            String part,
            IndexKind<?> kind,
            IndexPart.Content known,
            SortedMap<RollId, IndexPart.Entry> anew,
            SortedMap<RollId, String> stamps) {
        SortedMap<RollId, IndexPart.Entry> entries = new TreeMap<>(known.entries());
        entries.entrySet().removeIf(it -> !it.getValue().stamp().equals(stamps.get(it.getKey())));
        if (!anew.isEmpty() || entries.size() < known.entries().size()) {
            entries.putAll(anew);
            files.write(IndexPart.file(part, kind), IndexPart.bytes(entries, IndexPart.maker(kind, version)));
        }
        return entries.size();
    }
}
