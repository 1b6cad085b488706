package takeup.kit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.text.Nearest;

/**
 * All cameras, stocks and meters that profiles describe, each read when it is first asked for. Who opens the files is
 * the {@link Shelf}'s business.
 */
public final class Kit {
    private final ProfileSource shelf;
    private final OptionalInt fewLeft;
    private final Map<String, ProfileReader.Read<?>> read = new HashMap<>();
    /**
     * Lists of files are asked for at each key that is pressed; a file that is met for the first time may be a new one.
     */
    private final Map<Sort, List<String>> listed = new EnumMap<>(Sort.class);

    /** The three sorts of profile, named as their folders are. */
    public enum Sort {
        CAMERAS,
        STOCKS,
        METERS
    }

    /** Where the texts of profiles come from. */
    public interface ProfileSource {
        /** The keys of that sort in order of the alphabet, the photographer's own and the shipped ones, each once. */
        List<String> keys(Sort sort);

        /** The file of that key, the photographer's own before a shipped one. */
        Optional<File> file(Sort sort, String key);

        /** What lies among the files of that sort and is never read: each with why. */
        default List<String> strangers(Sort sort) {
            return List.of();
        }

        /** The folder that the file of that key lies in, to be named where something is wrong with it. */
        default Optional<String> folder(Sort sort, String key) {
            return Optional.empty();
        }
    }

    /**
     * The text of a profile file.
     *
     * @param name the file as it is named in messages
     * @param text what it holds; empty where it could not be read
     * @param problem why it could not be read; empty where it could
     */
    public record File(String name, String text, Optional<String> problem) {}

    /** A kit on a shelf. */
    public Kit(ProfileSource shelf) {
        this(shelf, OptionalInt.empty());
    }

    /** A kit on a shelf, of a photographer who calls so many frames few. */
    public Kit(ProfileSource shelf, OptionalInt fewLeft) {
        this.shelf = shelf;
        this.fewLeft = fewLeft;
    }

    /** How many frames left of a roll of so many are few: what the photographer said, else a quarter, but at most 5. */
    public int fewLeft(int framesNominal) {
        return fewLeft.orElse(ExposureWarnings.fewLeft(framesNominal));
    }

    /** The camera of that key; empty if there is none or its file is wrong. */
    public Optional<Camera> camera(String key) {
        return profile(Sort.CAMERAS, key, Camera.class);
    }

    /** The stock of that key; empty if there is none or its file is wrong. */
    public Optional<Stock> stock(String key) {
        return profile(Sort.STOCKS, key, Stock.class);
    }

    /** The meter of that key; empty if there is none or its file is wrong. */
    public Optional<Meter> meter(String key) {
        return profile(Sort.METERS, key, Meter.class);
    }

    /** The keys of that sort. */
    public List<String> keys(Sort sort) {
        if (!listed.containsKey(sort)) {
            listed.put(sort, shelf.keys(sort));
        }
        return listed.get(sort);
    }

    /** What is wrong with, or to be said of, the file of that key; empty if nothing is, or there is no such file. */
    public List<String> problems(Sort sort, String key) {
        return read(sort, key).map(ProfileReader.Read::problems).orElse(List.of());
    }

    /** What is to be said of a profile that can be used all the same, as the end of a sentence; empty if nothing is. */
    public String remark(Sort sort, String key) {
        List<String> problems = problems(sort, key);
        return problems.isEmpty() ? "" : " In its profile: " + String.join("; ", problems) + ".";
    }

    /** Why a key names nothing: the file's own problem, or that it is unknown, with the nearest known one. */
    public String whyNot(Sort sort, String key) {
        List<String> problems = problems(sort, key);
        if (!problems.isEmpty()) {
            return String.join("; ", problems)
                    + shelf.folder(sort, key).map(it -> " (in " + it + ")").orElse("");
        }
        String one = switch (sort) {
            case CAMERAS -> "camera";
            case STOCKS -> "stock";
            case METERS -> "meter";
        };
        listed.remove(sort);
        List<String> known = keys(sort);
        return Nearest.to(key, known)
                .map(it -> key + " is no " + one + " known here; did you mean " + it + "?")
                .orElseGet(() -> key + " is no " + one + " known here; known: " + listed(known));
    }

    /** Every problem of every file: reads them all. */
    public List<String> allProblems() {
        List<String> all = new ArrayList<>();
        for (Sort sort : Sort.values()) {
            for (String key : keys(sort)) {
                all.addAll(problems(sort, key));
            }
            all.addAll(shelf.strangers(sort));
        }
        return all;
    }

    private static String listed(List<String> keys) {
        if (keys.isEmpty()) {
            return "none";
        }
        return keys.size() > 14 ? String.join(", ", keys.subList(0, 14)) + " and more" : String.join(", ", keys);
    }

    private <T> Optional<T> profile(Sort sort, String key, Class<T> type) {
        Optional<ProfileReader.Read<?>> found = read(sort, key);
        return found.isPresent() && found.get().profile().isPresent()
                ? Optional.of(type.cast(found.get().profile().get()))
                : Optional.empty();
    }

    private Optional<ProfileReader.Read<?>> read(Sort sort, String typed) {
        String key = typed.toLowerCase(Locale.ROOT);
        if (!ProfileReader.isKey(key)) {
            return Optional.empty();
        }
        String name = sort + "/" + key;
        ProfileReader.Read<?> known = read.get(name);
        if (known == null) {
            Optional<File> found = shelf.file(sort, key);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            File file = found.get();
            known = file.problem().isPresent()
                    ? new ProfileReader.Read<>(
                            Optional.empty(), List.of(file.problem().get()))
                    : switch (sort) {
                        case CAMERAS -> ProfileReader.camera(key, file.name(), file.text());
                        case STOCKS -> ProfileReader.stock(key, file.name(), file.text());
                        case METERS -> ProfileReader.meter(key, file.name(), file.text());
                    };
            read.put(name, known);
            if (listed.containsKey(sort) && !listed.get(sort).contains(key)) {
                listed.remove(sort);
            }
        }
        return Optional.of(known);
    }
}
