package takeup.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.handoff.Sidecar;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.text.English;

/** Sidecars beside accepted scans. A file that is there already is never overwritten. */
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

        private Path sidecar(Path scan) {
            String name = scan.getFileName().toString();
            int dot = name.lastIndexOf('.');
            return scan.resolveSibling((this == FULL || dot < 1 ? name : name.substring(0, dot)) + ".xmp");
        }
    }

    private final Console out;

    public SidecarFiles(Console out) {
        this.out = out;
    }

    /** Writes one for each scan that shows a frame; false if one could not be written. */
    public boolean write(Roll roll, Review review, Naming naming) {
        ReviewEvent.Accepted accepted = review.accepted()
                .orElseThrow(() ->
                        new CommandFailed(1, "no scans of " + roll.id() + " are accepted yet: --accept comes first"));
        int written = 0;
        boolean isWhole = true;
        for (ReviewEvent.PlacedScan placed : accepted.scans()) {
            List<Integer> frames = new ArrayList<>();
            for (FrameKey key : placed.frames()) {
                int at = key.placeIn(roll.frames());
                if (at >= 0) {
                    frames.add(at);
                }
            }
            if (!frames.isEmpty()) {
                boolean isDone = write(roll, review, frames, Path.of(accepted.folder()), placed.file(), naming);
                isWhole &= isDone;
                written += isDone ? 1 : 0;
            }
        }
        out.line(English.count(written, "sidecar") + " written in " + accepted.folder());
        return isWhole;
    }

    private boolean write(Roll roll, Review review, List<Integer> places, Path folder, String file, Naming naming) {
        Path scan = folder.resolve(file).normalize();
        if (!scan.startsWith(folder) || !Files.isRegularFile(scan)) {
            out.error(file + " is not in " + folder + " any more, so it gets no sidecar");
            return false;
        }
        Path path = naming.sidecar(scan);
        List<Frame> frames = places.stream().map(roll.frames()::get).toList();
        Optional<Density> verdict = review.verdicts(roll).get(places.get(0));
        String text = Sidecar.of(roll, frames, ScanDate.of(scan), verdict.map(Density::toString), Version.number());
        try {
            writeNew(path, text.getBytes(StandardCharsets.UTF_8));
            return true;
        } catch (FileAlreadyExistsException e) {
            out.error(path.getFileName() + " is there already and is not touched");
        } catch (IOException e) {
            out.error(path.getFileName() + " could not be written: " + IoErrorText.words(e));
        }
        return false;
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
