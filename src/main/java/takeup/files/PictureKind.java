package takeup.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What kind of picture a file is, by the ending of its name: one that is read, or one that is named with the reason.
 */
final class PictureKind {
    private static final Set<String> READ = Set.of("jpg", "jpeg", "tif", "tiff", "png");
    /** What digital cameras call the file of their sensor. */
    private static final Set<String> RAW = Set.of(
            "3fr", "arw", "cr2", "cr3", "crw", "dcr", "erf", "fff", "iiq", "kdc", "mos", "mrw", "nef", "nrw", "orf",
            "pef", "raf", "raw", "rw2", "rwl", "sr2", "srf", "srw", "x3f");

    private static final Set<String> OTHER = Set.of(
            "webp", "heic", "heif", "hif", "avif", "jxl", "jp2", "j2k", "bmp", "gif", "psd", "psb", "exr", "tga");

    private PictureKind() {}

    /** Whether a file is a picture at all. */
    static boolean isPicture(Path path) {
        String name = path.getFileName().toString();
        String kind = kind(name);
        return !name.startsWith(".")
                && (READ.contains(kind) || RAW.contains(kind) || OTHER.contains(kind) || kind.equals("dng"))
                && Files.isRegularFile(path);
    }

    /** Why a picture is not read, and what to do; empty for one that is. */
    static Optional<String> whyNotRead(String name) {
        String kind = kind(name);
        if (READ.contains(kind)) {
            return Optional.empty();
        }
        String export = "; save it as JPEG, PNG or TIFF";
        return Optional.of(
                kind.equals("dng") || RAW.contains(kind)
                        ? "a raw file (" + kind.toUpperCase(Locale.ROOT) + ") holds no finished picture" + export
                        : kind.toUpperCase(Locale.ROOT) + " has no reader here" + export);
    }

    private static String kind(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }
}
