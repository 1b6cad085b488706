package takeup.files;

import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegSegmentReader;
import com.drew.imaging.jpeg.JpegSegmentType;
import com.drew.imaging.tiff.TiffReader;
import com.drew.lang.ByteArrayReader;
import com.drew.lang.RandomAccessFileReader;
import com.drew.lang.RandomAccessReader;
import com.drew.lang.StreamReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.ExifTiffHandler;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.io.SequenceInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * When a scan was made, as its own file says: DateTimeDigitized, else DateTime, of the Exif part of a JPEG or of a
 * TIFF. {@code 2026:10:01 09:30:00} becomes {@code 2026-10-01T09:30:00}. A date of the file system says when it was
 * downloaded, and is not asked.
 */
final class ScanDate {
    private static final Pattern DATE =
            Pattern.compile("(?!0000)[0-9]{4}:[0-9]{2}:[0-9]{2} [0-9]{2}:[0-9]{2}:[0-9]{2}");
    /** The Exif part of a JPEG stands within so many bytes. */
    private static final int JPEG_FRONT = 4 << 20;
    /** No date is longer, in bytes; a longer one would be read into memory whole. */
    private static final int LONGEST = 100;

    private static final Set<Integer> TAGS =
            Set.of(ExifIFD0Directory.TAG_DATETIME, ExifSubIFDDirectory.TAG_DATETIME_DIGITIZED);
    private static final byte[] JPEG_START = {(byte) 0xff, (byte) 0xd8};
    private static final byte[] JPEG_END = {(byte) 0xff, (byte) 0xd9};

    private ScanDate() {}

    /** The date; empty where the file names none, or cannot be read. */
    static Optional<String> of(Path path) {
        try {
            if (!Files.isRegularFile(path)) {
                return Optional.empty();
            }
            Metadata metadata = isJpeg(path) ? ofJpeg(path, TAGS) : ofTiff(path);
            return date(metadata, ExifSubIFDDirectory.class, ExifSubIFDDirectory.TAG_DATETIME_DIGITIZED)
                    .or(() -> date(metadata, ExifIFD0Directory.class, ExifIFD0Directory.TAG_DATETIME));
        } catch (IOException | ImageProcessingException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private static boolean isJpeg(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return Arrays.equals(in.readNBytes(2), JPEG_START);
        }
    }

    /** What the Exif parts of a JPEG say under a few tags; nothing is read but those, and no block behind a block. */
    static Metadata ofJpeg(Path path, Set<Integer> tags) throws IOException, ImageProcessingException {
        Metadata metadata = new Metadata();
        try (InputStream file = Files.newInputStream(path)) {
            // A file that was cut off behind its Exif part has its date all the same.
            InputStream in = new SequenceInputStream(
                    new ByteArrayInputStream(file.readNBytes(JPEG_FRONT)), new ByteArrayInputStream(JPEG_END));
            Iterable<byte[]> segments = JpegSegmentReader.readSegments(
                            new StreamReader(in), List.of(JpegSegmentType.APP1))
                    .getSegments(JpegSegmentType.APP1);
            for (byte[] segment : segments) {
                if (ExifReader.startsWithJpegExifPreamble(segment)) {
                    read(new ByteArrayReader(segment, ExifReader.JPEG_SEGMENT_PREAMBLE.length()), metadata, tags);
                }
            }
        }
        return metadata;
    }

    private static Metadata ofTiff(Path path) throws IOException, ImageProcessingException {
        Metadata metadata = new Metadata();
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
            read(new RandomAccessFileReader(file), metadata, TAGS);
        }
        return metadata;
    }

    private static void read(RandomAccessReader in, Metadata into, Set<Integer> tags)
            throws IOException, ImageProcessingException {
        new TiffReader().processTiff(in, new FewTags(into, tags), 0);
    }

    /**
     * Of a scan of many megabytes only a few tags are read, and one block below the first: a file in which each block
     * names a further one would be followed until the stack is full.
     */
    private static final class FewTags extends ExifTiffHandler {
        private final Set<Integer> tags;
        private boolean isBelow;

        FewTags(Metadata metadata, Set<Integer> tags) {
            super(metadata, null, 0);
            this.tags = tags;
        }

        @Override
        public boolean tryEnterSubIfd(int tag) {
            boolean isEntered =
                    !isBelow && tag == ExifIFD0Directory.TAG_EXIF_SUB_IFD_OFFSET && super.tryEnterSubIfd(tag);
            isBelow |= isEntered;
            return isEntered;
        }

        @Override
        public boolean hasFollowerIfd() {
            return false;
        }

        @Override
        public boolean customProcessTag(
                int at, Set<Integer> done, int header, RandomAccessReader in, int tag, int bytes) {
            return !tags.contains(tag) || bytes > LONGEST;
        }
    }

    private static Optional<String> date(Metadata metadata, Class<? extends Directory> of, int tag) {
        return Optional.ofNullable(metadata.getFirstDirectoryOfType(of))
                .map(it -> it.getString(tag))
                .flatMap(ScanDate::date);
    }

    private static Optional<String> date(String text) {
        return DATE.matcher(text).lookingAt()
                ? Optional.of(text.substring(0, 10).replace(':', '-') + "T" + text.substring(11, 19))
                : Optional.empty();
    }
}
