package takeup.files;

import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.lang.Rational;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.scans.DigitalShot;
import takeup.text.Plain;

/** The Exif part of a digital camera's JPEG. */
public final class ExifFile {
    private static final Set<Integer> TAGS = Set.of(
            ExifIFD0Directory.TAG_MODEL,
            ExifSubIFDDirectory.TAG_BODY_SERIAL_NUMBER,
            ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL,
            ExifSubIFDDirectory.TAG_TIME_ZONE_ORIGINAL,
            ExifSubIFDDirectory.TAG_FNUMBER,
            ExifSubIFDDirectory.TAG_EXPOSURE_TIME,
            ExifSubIFDDirectory.TAG_ISO_EQUIVALENT);

    private ExifFile() {}

    /** What a file says; empty where it has no time of its own. */
    public static Optional<DigitalShot> of(Path path, String name) throws IOException {
        if (!Files.isRegularFile(path)) {
            throw new IOException("it is no plain file");
        }
        Metadata metadata;
        try {
            metadata = ScanDate.ofJpeg(path, TAGS);
        } catch (JpegProcessingException e) {
            throw new IOException("it is no JPEG", e);
        } catch (ImageProcessingException e) {
            return Optional.empty();
        }
        Optional<Directory> exif = Optional.ofNullable(metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class));
        Optional<LocalDateTime> at =
                text(exif, ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL).flatMap(ExifFile::time);
        Optional<Directory> first = Optional.ofNullable(metadata.getFirstDirectoryOfType(ExifIFD0Directory.class));
        return at.map(it -> new DigitalShot(
                name,
                camera(first, exif),
                it,
                text(exif, ExifSubIFDDirectory.TAG_TIME_ZONE_ORIGINAL).flatMap(ExifFile::zone),
                set(exif)));
    }

    private static Optional<String> text(Optional<Directory> directory, int tag) {
        return directory.map(it -> it.getString(tag)).map(String::strip).filter(it -> !it.isEmpty());
    }

    /** {@code 2026:09:12 15:12:40}; what is no date is none. */
    private static Optional<LocalDateTime> time(String text) {
        if (text.length() != 19 || text.charAt(10) != ' ') {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDateTime.parse(text.substring(0, 10).replace(':', '-') + "T" + text.substring(11)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<ZoneOffset> zone(String text) {
        try {
            return Optional.of(ZoneOffset.of(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static String camera(Optional<Directory> first, Optional<Directory> exif) {
        String model = text(first, ExifIFD0Directory.TAG_MODEL).orElse("a camera without a name");
        return model
                + text(exif, ExifSubIFDDirectory.TAG_BODY_SERIAL_NUMBER)
                        .map(it -> " no. " + it)
                        .orElse("");
    }

    private static String set(Optional<Directory> exif) {
        List<String> words = new ArrayList<>();
        rational(exif, ExifSubIFDDirectory.TAG_FNUMBER)
                .ifPresent(it -> words.add("f/" + Plain.digits(it.doubleValue(), 3)));
        rational(exif, ExifSubIFDDirectory.TAG_EXPOSURE_TIME)
                .ifPresent(it -> words.add(
                        it.doubleValue() <= 0.3
                                ? "1/" + Math.round(1 / it.doubleValue())
                                : Plain.digits(it.doubleValue(), 3) + "s"));
        exif.map(it -> it.getInteger(ExifSubIFDDirectory.TAG_ISO_EQUIVALENT))
                .filter(it -> it > 0)
                .ifPresent(it -> words.add("ISO " + it));
        return String.join(" ", words);
    }

    private static Optional<Rational> rational(Optional<Directory> exif, int tag) {
        return exif.map(it -> it.getRational(tag)).filter(it -> it.getDenominator() != 0 && it.doubleValue() > 0);
    }
}
