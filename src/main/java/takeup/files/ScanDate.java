package takeup.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * When a scan was made, as its own file says: DateTimeDigitized (0x9004), else DateTime (0x0132), of the Exif part of a
 * JPEG or of a TIFF. {@code 2026:10:01 09:30:00} becomes {@code 2026-10-01T09:30:00}. Tags: Exif 2.32, 4.6.5 (second
 * hand, exiftool's tag tables). A date of the file system says when it was downloaded, and is not asked.
 */
final class ScanDate {
    private static final int DIGITISED = 0x9004;
    private static final int DATE = 0x0132;
    private static final int EXIF = 0x8769;
    private static final int MOST_ENTRIES = 500;

    private final SeekableByteChannel channel;
    private long start;
    private ByteOrder order = ByteOrder.BIG_ENDIAN;

    private ScanDate(SeekableByteChannel channel) {
        this.channel = channel;
    }

    /** The date; empty where the file names none, or cannot be read. */
    static Optional<String> of(Path path) {
        try (SeekableByteChannel channel = Files.newByteChannel(path)) {
            return new ScanDate(channel).read();
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private Optional<String> read() throws IOException {
        int magic = bytes(0, 2).getShort() & 0xffff;
        if (magic == 0xffd8) {
            start = exifOfJpeg();
            if (start < 0) {
                return Optional.empty();
            }
        }
        int endian = bytes(start, 2).getShort() & 0xffff;
        order = endian == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        long first = bytes(start + 4, 4).getInt() & 0xffffffffL;
        Optional<Long> exif = entry(first, EXIF).map(it -> number(it + 8));
        Optional<Long> digitised = exif.isPresent() ? entry(exif.get(), DIGITISED) : Optional.empty();
        Optional<String> date = digitised.isPresent() ? text(digitised.get()) : Optional.empty();
        if (date.isPresent()) {
            return date;
        }
        Optional<Long> other = entry(first, DATE);
        return other.isPresent() ? text(other.get()) : Optional.empty();
    }

    /** Where the Exif part of a JPEG begins; -1 if there is none in front of the picture. */
    private long exifOfJpeg() throws IOException {
        long at = 2;
        while (at + 4 < channel.size()) {
            int marker = bytes(at, 2).getShort() & 0xffff;
            int length = bytes(at + 2, 2).getShort() & 0xffff;
            if (marker == 0xffda || marker >> 8 != 0xff || length < 2) {
                return -1;
            }
            if (marker == 0xffe1 && length > 8 && bytes(at + 4, 4).getInt() == 0x45786966) {
                return at + 10;
            }
            at += 2 + length;
        }
        return -1;
    }

    /** Where the entry of a tag lies in the directory that begins there. */
    private Optional<Long> entry(long directory, int tag) throws IOException {
        int count = bytes(start + directory, 2).getShort() & 0xffff;
        for (int i = 0; i < Math.min(count, MOST_ENTRIES); i++) {
            long at = directory + 2 + 12L * i;
            if ((bytes(start + at, 2).getShort() & 0xffff) == tag) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private long number(long at) {
        try {
            return bytes(start + at, 4).getInt() & 0xffffffffL;
        } catch (IOException e) {
            return -1;
        }
    }

    private Optional<String> text(long entry) throws IOException {
        ByteBuffer bytes = bytes(start + number(entry + 8), 19);
        String date = StandardCharsets.US_ASCII.decode(bytes).toString();
        for (int i = 0; i < 19; i++) {
            char wanted = "0000:00:00 00:00:00".charAt(i);
            char c = date.charAt(i);
            if (wanted == '0' ? c < '0' || c > '9' : c != wanted) {
                return Optional.empty();
            }
        }
        return date.startsWith("0000")
                ? Optional.empty()
                : Optional.of(date.substring(0, 4) + "-" + date.substring(5, 7) + "-" + date.substring(8, 10) + "T"
                        + date.substring(11));
    }

    private ByteBuffer bytes(long at, int count) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(count).order(order);
        channel.position(at);
        while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
            continue;
        }
        if (buffer.hasRemaining()) {
            throw new IOException("the file ends too soon");
        }
        return buffer.flip();
    }
}
