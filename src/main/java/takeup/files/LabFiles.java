package takeup.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import takeup.kit.Kit;
import takeup.kit.ProfileReader;
import takeup.order.Lab;
import takeup.text.Nearest;

/**
 * Labs that files describe: the photographer's own win over the shipped one.
 *
 * @param own the folder {@code labs} of the photographer's own
 * @param shipped that of the shipped ones
 */
public record LabFiles(Path own, Path shipped) {
    private static final String ENDING = ".json";

    public static LabFiles of(Path data) {
        return new LabFiles(
                data.resolve("profiles").resolve("labs"), DataFolder.profiles().resolve("labs"));
    }

    public List<String> keys() {
        TreeSet<String> keys = new TreeSet<>(keys(own));
        keys.addAll(keys(shipped));
        return new ArrayList<>(keys);
    }

    private static List<String> keys(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(it -> it.getFileName().toString())
                    .filter(it -> it.endsWith(ENDING))
                    .map(it -> it.substring(0, it.length() - ENDING.length()))
                    .filter(ProfileReader::isKey)
                    .map(it -> it.toLowerCase(Locale.ROOT))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** The lab that an order goes to if none is named: the only one of the photographer's own, else the shipped one. */
    public String usual() {
        List<String> mine = keys(own);
        return mine.size() == 1 ? mine.get(0) : "lab";
    }

    /** The lab of that key, with what is to be said of its file. */
    public Lab.Read lab(String typed) {
        String key = typed.toLowerCase(Locale.ROOT);
        for (Path folder : ProfileReader.isKey(key) ? List.of(own, shipped) : List.<Path>of()) {
            Path path = folder.resolve(key + ENDING);
            if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
                String name = "labs/" + key + ENDING;
                Kit.File file = folder.equals(own)
                        ? InputFile.readOwn(path, name, ProfileFiles.LARGEST)
                        : InputFile.read(path, name, ProfileFiles.LARGEST);
                return file.problem().isPresent()
                        ? new Lab.Read(Optional.empty(), List.of(file.problem().get()))
                        : Lab.of(key, file.name(), file.text());
            }
        }
        List<String> known = keys();
        return new Lab.Read(
                Optional.empty(),
                List.of(typed + " is no lab known here"
                        + Nearest.to(key, known)
                                .map(it -> "; did you mean " + it + "?")
                                .orElse("; known: " + (known.isEmpty() ? "none" : String.join(", ", known)))));
    }

    /** What is wrong with any of them. */
    public List<String> problems() {
        return keys().stream().flatMap(it -> lab(it).problems().stream()).toList();
    }
}
