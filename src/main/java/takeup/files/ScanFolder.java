package takeup.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import takeup.disk.IoErrorText;
import takeup.scans.GreyPicture;
import takeup.scans.NaturalOrder;
import takeup.scans.Picture;
import takeup.scans.QrReader;
import takeup.scans.Scan;
import takeup.scans.ScreenClock;
import takeup.scans.Tone;

/**
 * The scans in a folder, and in the folders within it: JPEG, PNG and TIFF, in natural order. They are only read.
 *
 * @param folder the folder
 * @param scans the scans
 * @param pictures a small copy of each, by its name
 * @param problems what could not be read
 */
public record ScanFolder(Path folder, List<Scan> scans, Map<String, Picture> pictures, List<String> problems) {
    /** The long side of the small copies, in dots. */
    private static final int SMALL = 96;

    private static final int FINE = 384;
    /** The long side of what a slate is looked for in. */
    private static final int FINEST = 1500;

    /** The long side of a scan on a page, in dots: a third of a screen. */
    private static final int ON_PAGE = 360;

    /** The long side of a scan in true pixels, in dots. */
    private static final int LARGE = 900;

    private static final int MOST = 2000;
    /** Some systems' Java has the decoders of pictures from other packages, which a machine may be without. */
    private static final String LACKING =
            "this Java lacks a library for such pictures; install the whole of Java 17 or newer, not a part of "
                    + "it, and let JAVA_HOME name it";

    /**
     * Reads a folder.
     *
     * @param slates whether slates are looked for, which takes its time
     */
    public static ScanFolder read(Path folder, boolean slates) throws IOException {
        List<String> names = names(folder);
        if (names.size() > MOST) {
            throw new IOException(folder + " holds more than " + MOST + " pictures: name the folder of one film");
        }
        List<Scan> scans = new ArrayList<>();
        Map<String, Picture> pictures = new LinkedHashMap<>();
        List<String> problems = new ArrayList<>();
        for (String name : names) {
            Optional<String> whyNot = PictureKind.whyNotRead(name);
            if (whyNot.isPresent()) {
                problems.add(name + " is not read: " + whyNot.get());
                continue;
            }
            try {
                read(folder, name, slates, scans, pictures, problems);
            } catch (IOException e) {
                problems.add(name + " cannot be read: " + IoErrorText.words(e));
            } catch (LinkageError e) {
                problems.add(name + " cannot be read: " + LACKING);
            } catch (RuntimeException | OutOfMemoryError e) {
                problems.add(name + " cannot be read: it is damaged, or too large");
            }
        }
        return new ScanFolder(folder, scans, pictures, problems);
    }

    /** The pictures in a folder, and in the folders within it, in natural order. */
    private static List<String> names(Path folder) throws IOException {
        List<String> names = new ArrayList<>();
        for (Path path : list(folder)) {
            String name = path.getFileName().toString();
            if (Files.isDirectory(path)) {
                for (Path inner : list(path)) {
                    if (PictureKind.isPicture(inner)) {
                        names.add(name + "/" + inner.getFileName());
                    }
                }
            } else if (PictureKind.isPicture(path)) {
                names.add(name);
            }
        }
        names.sort(NaturalOrder.BY_NAME);
        return names;
    }

    private static List<Path> list(Path folder) throws IOException {
        List<Path> paths = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            all.forEach(paths::add);
        }
        return paths;
    }

    /** The screen's clock on a picture that a digital camera took of it. */
    public static Optional<ScreenClock> clock(Path file) throws IOException {
        try {
            return QrReader.clock(GreyPicture.of(PictureFile.open(file, FINEST).picture()));
        } catch (LinkageError e) {
            throw new IOException(file.getFileName() + " cannot be read: " + LACKING, e);
        }
    }

    private static void read(
            Path folder,
            String name,
            boolean slates,
            List<Scan> scans,
            Map<String, Picture> pictures,
            List<String> problems)
            throws IOException {
        PictureFile opened = PictureFile.open(folder.resolve(name), slates ? FINEST : FINE);
        Picture picture = small(opened.picture());
        pictures.put(name, picture);
        scans.add(new Scan(
                name,
                opened.width(),
                opened.height(),
                Tone.of(picture),
                slates ? QrReader.slate(GreyPicture.of(opened.picture())) : Optional.empty()));
        if (opened.isCut()) {
            problems.add(name + " was cut off: what is there counts as its scan; download it again");
        }
    }

    /** Small copies of the scans of a folder for a page, each read when it is asked for; empty where it cannot be. */
    public static Function<String, Optional<String>> embedded(Path folder) {
        return name -> {
            try {
                return Optional.of(
                        PictureFile.open(folder.resolve(name), ON_PAGE).dataAddress(ON_PAGE));
            } catch (IOException | RuntimeException | LinkageError e) {
                return Optional.empty(); // it was named among the problems when the folder was read
            }
        };
    }

    /** A scan large enough to judge its shadows by; empty where it cannot be read. */
    public static Optional<Picture> larger(Path folder, String name) {
        try {
            return Optional.of(PictureFile.open(folder.resolve(name), LARGE).picture());
        } catch (IOException | RuntimeException | LinkageError e) {
            return Optional.empty(); // the small copy stays
        }
    }

    private static Picture small(Picture whole) {
        return smaller(whole, SMALL);
    }

    /** With its long side at most so many dots. */
    static Picture smaller(Picture whole, int most) {
        int width = whole.columns();
        int height = whole.rows();
        int longer = Math.max(width, height);
        return longer <= most
                ? whole
                : whole.fitted(Math.max(1, width * most / longer), Math.max(1, height * most / longer));
    }
}
