package takeup.reviewing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import takeup.files.ScanFolder;
import takeup.journal.Archive;
import takeup.review.Review;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.scans.Scan;
import takeup.scans.ScansByRoll;
import takeup.scans.Slate;
import takeup.scans.Slot;

/** The rolls of the archive that the scans of a folder may belong to. */
record ScanCandidates(Archive archive, List<ScansByRoll.Candidate> near) {
    /** The roll itself, and rolls near to it whose scans may lie in the same folder. */
    static ScanCandidates of(Archive archive, Roll roll, Path folder) throws IOException {
        TreeSet<RollId> near = new TreeSet<>();
        List<RollId> all = archive.finishedRolls();
        int at = all.indexOf(roll.id());
        for (int i = Math.max(0, at - 2); at >= 0 && i < Math.min(all.size(), at + 4); i++) {
            near.add(all.get(i));
        }
        near.add(roll.id());
        List<ScansByRoll.Candidate> candidates = new ArrayList<>();
        for (RollId id : near) {
            if (id.equals(roll.id())) {
                candidates.add(candidate(roll));
            } else if (!isElsewhere(archive, id, folder)) {
                read(archive, id).filter(it -> !it.frames().isEmpty()).ifPresent(it -> candidates.add(candidate(it)));
            }
        }
        return new ScanCandidates(archive, candidates);
    }

    /** Whether the scans of a roll were accepted, and lie in another folder. */
    private static boolean isElsewhere(Archive archive, RollId id, Path folder) {
        return Review.of(archive.reviewOf(id).records())
                .accepted()
                .filter(it -> !it.folder().equals(folder.toString()))
                .isPresent();
    }

    /** Whether a slate was photographed on one of them. */
    boolean haveSlates() {
        return near.stream().anyMatch(it -> it.slots().stream().anyMatch(slot -> slot.kind() == Frame.Kind.SLATE));
    }

    /** The same, and rolls whose slates were found, wherever they stand. */
    List<ScansByRoll.Candidate> withSlatesOf(ScanFolder folder) throws IOException {
        TreeMap<RollId, ScansByRoll.Candidate> all = new TreeMap<>();
        near.forEach(it -> all.put(it.roll(), it));
        List<RollId> finished = archive.finishedRolls();
        for (Scan scan : folder.scans()) {
            scan.slate()
                    .map(Slate::roll)
                    .filter(it -> finished.contains(it) && !all.containsKey(it))
                    .flatMap(it -> read(archive, it))
                    .ifPresent(it -> all.put(it.id(), candidate(it)));
        }
        return List.copyOf(all.values());
    }

    private static Optional<Roll> read(Archive archive, RollId id) {
        return Roll.of(archive.roll(id).records());
    }

    private static ScansByRoll.Candidate candidate(Roll roll) {
        return new ScansByRoll.Candidate(roll.id(), Slot.of(roll), roll.film().framesNominal());
    }
}
