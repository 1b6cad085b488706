package takeup.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.handoff.FirstSidecar;
import takeup.handoff.MadeBy;
import takeup.handoff.Sidecar;
import takeup.journal.Archive;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.text.English;

/**
 * Sidecars beside accepted scans. One that takeup wrote, and nobody changed since, is renewed; another program's file
 * is never touched: the facts go into a second file beside it.
 */
public final class SidecarFiles {
    /** How a sidecar is named after its scan: programs that read sidecars look for one name or the other. */
    public enum Naming {
        /** {@code crew_01.jpg.xmp}. */
        FULL,
        /** {@code crew_01.xmp}. */
        SHORT;

        /** The naming of that word. */
        public static Naming named(String word) {
            return switch (word) {
                case "full" -> FULL;
                case "short" -> SHORT;
                default ->
                    throw new CommandFailed(
                            2, "--sidecars full writes crew_01.jpg.xmp, --sidecars short writes crew_01.xmp");
            };
        }

        /** The usual name, and the one beside another program's file. */
        private List<Path> sidecars(Path scan) {
            String name = scan.getFileName().toString();
            int dot = name.lastIndexOf('.');
            String front = this == FULL || dot < 1 ? name : name.substring(0, dot);
            return List.of(scan.resolveSibling(front + ".xmp"), scan.resolveSibling(front + ".takeup.xmp"));
        }
    }

    /** No sidecar of takeup's own is longer, in bytes. */
    private static final long LARGEST = 1 << 20;

    private final Console out;

    private final Archive archive;

    public SidecarFiles(Console out, Archive archive) {
        this.out = out;
        this.archive = archive;
    }

    /** What became of one sidecar. */
    private enum Outcome {
        WRITTEN,
        RENEWED,
        SAME,
        FAILED
    }

    /** A sidecar as it should be. */
    private record Wanted(String file, Path scan, String text) {}

    /** Writes one for each scan that shows a frame; false if one could not be written. */
    public boolean write(Roll roll, Review review, Naming naming) {
        ReviewEvent.Accepted accepted = review.accepted()
                .orElseThrow(() ->
                        new CommandFailed(1, "no scans of " + roll.id() + " are accepted yet: --accept comes first"));
        Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
        OwnSidecars own = new OwnSidecars(archive, roll.id());
        for (Wanted wanted : wanted(roll, review, accepted, Version.madeBy(archive))) {
            counts.merge(write(wanted, Path.of(accepted.folder()), naming, own), 1, Integer::sum);
        }
        out.line(English.count(counts.getOrDefault(Outcome.WRITTEN, 0), "sidecar") + " written"
                + more(counts, Outcome.RENEWED, " renewed") + more(counts, Outcome.SAME, " up to date") + " in "
                + accepted.folder());
        return !counts.containsKey(Outcome.FAILED);
    }

    private static String more(Map<Outcome, Integer> counts, Outcome outcome, String words) {
        return counts.containsKey(outcome) ? ", " + counts.get(outcome) + words : "";
    }

    /** The names of sidecars of takeup's own that say something else than the log now does. */
    public static List<String> stale(Roll roll, Review review, Archive archive) {
        if (review.accepted().isEmpty()) {
            return List.of();
        }
        List<String> stale = new ArrayList<>();
        OwnSidecars own = new OwnSidecars(archive, roll.id());
        for (Wanted wanted : wanted(roll, review, review.accepted().get(), Version.madeBy(archive))) {
            for (Naming naming : Naming.values()) {
                for (Path path : naming.sidecars(wanted.scan)) {
                    Optional<String> there = read(path);
                    if (there.filter(it -> !it.equals(wanted.text) && own.isOwn(it, wanted.scan))
                            .isPresent()) {
                        stale.add(path.getFileName().toString());
                    }
                }
            }
        }
        return stale;
    }

    private static List<Wanted> wanted(Roll roll, Review review, ReviewEvent.Accepted accepted, MadeBy madeBy) {
        List<Wanted> all = new ArrayList<>();
        Path folder = Path.of(accepted.folder());
        for (ReviewEvent.PlacedScan placed : accepted.scans()) {
            List<Integer> places = new ArrayList<>();
            for (FrameKey key : placed.frames()) {
                int at = key.placeIn(roll.frames());
                if (at >= 0) {
                    places.add(at);
                }
            }
            if (!places.isEmpty()) {
                Path scan = folder.resolve(placed.file()).normalize();
                List<Frame> frames = places.stream().map(roll.frames()::get).toList();
                Optional<Density> verdict = review.verdicts(roll).get(places.get(0));
                String text = Sidecar.of(roll, frames, ScanDate.of(scan), verdict.map(Density::toString), madeBy);
                all.add(new Wanted(placed.file(), scan, text));
            }
        }
        return all;
    }

    private Outcome write(Wanted wanted, Path folder, Naming naming, OwnSidecars own) {
        if (!wanted.scan.startsWith(folder) || !Files.isRegularFile(wanted.scan)) {
            out.error(wanted.file + " is not in " + folder + " any more, so it gets no sidecar");
            return Outcome.FAILED;
        }
        List<Path> paths = naming.sidecars(wanted.scan);
        Path usual = paths.get(0);
        Path path = isAnothers(usual, wanted, own) ? paths.get(1) : usual;
        try {
            if (isAnothers(path, wanted, own)) {
                out.error(usual.getFileName() + " and " + path.getFileName()
                        + " are another program's and are not touched");
                return Outcome.FAILED;
            }
            Outcome outcome = write(path, wanted.text);
            if (path != usual) {
                boolean isChanged =
                        read(usual).filter(FirstSidecar::isBegunByIt).isPresent();
                out.line(usual.getFileName()
                        + (isChanged
                                ? " was written by takeup 1.0.0 but says what this roll's log never said, so somebody "
                                        + "changed it: it is not touched, and takeup's facts are in "
                                : " is another program's and is not touched: takeup's facts are in ")
                        + path.getFileName());
            }
            return outcome;
        } catch (IOException e) {
            out.error(path.getFileName() + " could not be written: " + IoErrorText.words(e));
            return Outcome.FAILED;
        }
    }

    private static Outcome write(Path path, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            writeNew(path, bytes);
            return Outcome.WRITTEN;
        }
        if (read(path).filter(text::equals).isPresent()) {
            return Outcome.SAME;
        }
        Path fresh = path.resolveSibling("." + path.getFileName() + ".new");
        Files.deleteIfExists(fresh);
        writeNew(fresh, bytes);
        Files.move(fresh, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return Outcome.RENEWED;
    }

    /** Whether something is there that takeup did not write, or that was changed since. */
    private static boolean isAnothers(Path path, Wanted wanted, OwnSidecars own) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS)
                && read(path).filter(it -> own.isOwn(it, wanted.scan)).isEmpty();
    }

    private static Optional<String> read(Path path) {
        try {
            return Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS) && Files.size(path) <= LARGEST
                    ? Optional.of(Files.readString(path))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Forced, and taken away again where it could not be written whole. */
    private static void writeNew(Path path, byte[] bytes) throws IOException {
        boolean isWhole = false;
        FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
        try (channel) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
            isWhole = true;
        } finally {
            if (!isWhole) {
                Files.deleteIfExists(path);
            }
        }
    }
}
