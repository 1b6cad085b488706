package takeup.files;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import takeup.disk.IoErrorText;
import takeup.kit.Kit;
import takeup.kit.ProfileReader;

/**
 * Profiles from two folders: the photographer's own win over the shipped ones.
 *
 * @param own the folder of the photographer's own
 * @param shipped the folder of the shipped ones
 */
public record ProfileFiles(Path own, Path shipped) implements Kit.ProfileSource {
    /** No profile and no lab is larger, in bytes. */
    static final long LARGEST = 1 << 20;

    private static final String ENDING = ".json";

    /** The shelf of a data folder: its own profiles, and those that came with the program. */
    public static ProfileFiles of(Path dataFolder) {
        return new ProfileFiles(dataFolder.resolve("profiles"), DataFolder.profiles());
    }

    private static String folder(Kit.Sort sort) {
        return sort.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public List<String> keys(Kit.Sort sort) {
        TreeSet<String> keys = new TreeSet<>();
        for (Path folder : List.of(own, shipped)) {
            for (String name : names(folder, sort)) {
                if (isKey(name)) {
                    keys.add(name);
                }
            }
        }
        return new ArrayList<>(keys);
    }

    @Override
    public List<String> strangers(Kit.Sort sort) {
        Optional<String> unreadable = whyUnreadable(sort);
        if (unreadable.isPresent()) {
            return List.of(unreadable.get());
        }
        return names(own, sort).stream()
                .filter(it -> !isKey(it))
                .sorted()
                .map(it -> folder(sort) + "/" + it + ENDING
                        + ":1: this name cannot be typed, so the file is not read: a to z, digits, - and _, then "
                        + ENDING)
                .toList();
    }

    /**
     * A key is typed in any case and its file is named in small letters: on some disks that is the same, on others not.
     */
    private static boolean isKey(String name) {
        return ProfileReader.isKey(name) && name.equals(name.toLowerCase(Locale.ROOT));
    }

    /** Why the photographer's own profiles cannot be listed, if they are there and cannot. */
    private Optional<String> whyUnreadable(Kit.Sort sort) {
        try {
            Files.list(own.resolve(folder(sort))).close();
            return Optional.empty();
        } catch (NoSuchFileException | NotDirectoryException e) {
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of("profiles/" + folder(sort) + " cannot be read: " + IoErrorText.words(e));
        }
    }

    /** The names of a folder's files without their ending. */
    private static List<String> names(Path folder, Kit.Sort sort) {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder.resolve(folder(sort)))) {
            for (Path file : files) {
                String name = file.getFileName().toString();
                if (name.endsWith(ENDING)) {
                    names.add(name.substring(0, name.length() - ENDING.length()));
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            return List.of(); // no such folder: no profiles in it
        }
        return names;
    }

    @Override
    public Optional<String> folder(Kit.Sort sort, String key) {
        String file = key.toLowerCase(Locale.ROOT) + ENDING;
        for (Path shelf : List.of(own, shipped)) {
            Path folder = shelf.resolve(folder(sort));
            if (Files.exists(folder.resolve(file), LinkOption.NOFOLLOW_LINKS)) {
                return Optional.of(folder.toString());
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<Kit.File> file(Kit.Sort sort, String key) {
        for (Path folder : List.of(own, shipped)) {
            Path path = folder.resolve(folder(sort)).resolve(key + ENDING);
            if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
                String name = folder(sort) + "/" + key + ENDING;
                return Optional.of(
                        folder.equals(own)
                                ? InputFile.readOwn(path, name, LARGEST)
                                : InputFile.read(path, name, LARGEST));
            }
        }
        return Optional.empty();
    }
}
