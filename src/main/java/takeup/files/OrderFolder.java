package takeup.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import takeup.disk.FileSystem;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.disk.ReadAhead;
import takeup.index.ArchiveIndex;
import takeup.index.ListedRoll;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.json.JsonProblem;
import takeup.kit.Kit;
import takeup.order.ExposedRoll;
import takeup.order.Order;
import takeup.order.OrderHtml;
import takeup.order.OrderNumbers;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * Orders on the disk, and the rolls that they are made from: those of the data folder, or any folder with files of
 * format takeup-roll. The orders lie in {@code orders} of the same folder.
 *
 * @param base the data folder, or the folder with the files
 * @param isLoose whether it is the latter
 */
public record OrderFolder(Path base, boolean isLoose) {
    static final String ENDING = ".json";
    /** No roll's and no order's file is larger, in bytes. */
    private static final long LARGEST = 8_000_000;

    /** What could be read, and what could not, each one sentence with the file's name. */
    public record Found<T>(List<T> all, List<String> problems) {}

    private interface Reader<T> {
        T read(String file, String text);
    }

    public Path orders() {
        return base.resolve("orders");
    }

    public Path file(Order order, String ending) {
        return orders().resolve(order.order() + ending);
    }

    /** Takes the folder to write in. */
    public Closeable take() throws IOException {
        if (isLoose) {
            return Folders.lock(orders().resolve("lock"));
        }
        JournalStore disk = JournalStore.take(new Archive(base));
        return disk::close;
    }

    /** All orders, oldest first. */
    public Found<Order> allOrders() {
        return files(orders(), it -> OrderNumbers.parse(it).equals(Optional.of(it)), "orders/", (file, text) -> {
            Order order = Order.read(file, text);
            if (!file.equals("orders/" + order.order() + ENDING)) {
                throw new IllegalArgumentException(
                        file + ":1: it holds " + order.order() + ": give the file its own name back");
            }
            return order;
        });
    }

    /** A roll that came out of the camera, and the day on which it did. */
    public record Unloaded(String roll, Optional<LocalDate> on) {}

    /** The rolls whose numbers are wanted, in the order of their numbers. In a folder with files all are read. */
    public Found<ExposedRoll> rolls(Predicate<String> wanted) throws IOException {
        return rolls(wanted, Optional::of);
    }

    /** The same, of each only what is made of it, so that not all of them are held with their frames. */
    public <T> Found<T> rolls(Predicate<String> wanted, Function<ExposedRoll, Optional<T>> made) throws IOException {
        return rolls(wanted, made, it -> made.apply(RollToOrder.of(it)));
    }

    /** The same of all of them in the data folder, from the index where that is quicker. */
    Found<ExposedRoll> rolls(ArchiveIndex index, Predicate<String> wanted) throws IOException {
        List<ExposedRoll> all = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        List<String> unread = index.forEach(RollToOrder.KIND, it -> wanted.test(it.toString()), it -> {
            it.roll().ifPresent(all::add);
            if (it.roll().isEmpty()) {
                problems.add(it.problem());
            }
            return true;
        });
        unread.stream().filter(it -> !it.startsWith("reviews/")).forEach(problems::add);
        return new Found<>(all, problems);
    }

    /**
     * The finished ones among the rolls whose numbers are wanted; what they hold is not looked at.
     *
     * @param taken takes them in the order of their numbers
     * @return what could not be read
     */
    public List<String> unloaded(ArchiveIndex index, Predicate<String> wanted, Consumer<Unloaded> taken)
            throws IOException {
        if (isLoose) {
            Found<Unloaded> found = looseRolls(
                    wanted,
                    it -> it.isFinished()
                            ? Optional.of(
                                    new Unloaded(it.roll(), it.finishedAt().map(OffsetDateTime::toLocalDate)))
                            : Optional.empty());
            found.all.forEach(taken);
            return found.problems;
        }
        List<String> problems = index.forEach(ListedRoll.KIND, it -> {
            RollSummary roll = it.head().summary();
            if (roll.state() == Roll.State.FINISHED && wanted.test(roll.id().toString())) {
                taken.accept(
                        new Unloaded(roll.id().toString(), roll.finishedAt().map(OffsetDateTime::toLocalDate)));
            }
            return true;
        });
        return problems.stream()
                .filter(it -> wanted.test(it.substring(0, Math.max(0, it.indexOf('.')))))
                .toList();
    }

    private <T> Found<T> rolls(
            Predicate<String> wanted, Function<ExposedRoll, Optional<T>> ofFile, Function<Roll, Optional<T>> ofRoll)
            throws IOException {
        List<T> all = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        if (isLoose) {
            return looseRolls(wanted, ofFile);
        }
        Archive archive = new Archive(base);
        TreeSet<RollId> ids = new TreeSet<>(archive.finishedRolls());
        ids.addAll(archive.openRolls());
        ids.removeIf(it -> !wanted.test(it.toString()));
        ReadAhead.inOrder(ids, id -> roll(archive, id, ofRoll), it -> {
            problems.addAll(it.problems);
            return it.all.isEmpty() || all.addAll(it.all);
        });
        return new Found<>(all, problems);
    }

    private <T> Found<T> looseRolls(Predicate<String> wanted, Function<ExposedRoll, Optional<T>> made) {
        List<T> all = new ArrayList<>();
        Found<ExposedRoll> found = files(base, it -> true, "", ExposedRoll::of);
        found.all.stream()
                .filter(it -> wanted.test(it.roll()))
                .sorted(Comparator.comparing(ExposedRoll::roll))
                .forEach(it -> made.apply(it).ifPresent(all::add));
        return new Found<>(all, found.problems);
    }

    private static <T> Found<T> roll(Archive archive, RollId id, Function<Roll, Optional<T>> made) {
        JournalRecords<RollRecord> opened = archive.roll(id);
        List<String> problems = new ArrayList<>(opened.problems());
        Optional<Roll> roll = Roll.of(opened.records());
        if (roll.isEmpty()) {
            problems.add(id + ".journal: the record of its loading is missing, so the roll cannot be ordered");
            return new Found<>(List.of(), problems);
        }
        try {
            return new Found<>(made.apply(roll.get()).stream().toList(), problems);
        } catch (JsonProblem e) {
            problems.add(e.getMessage());
            return new Found<>(List.of(), problems);
        }
    }

    private static <T> Found<T> files(Path folder, Predicate<String> wanted, String named, Reader<T> reader) {
        List<T> all = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        List<Path> paths;
        try (Stream<Path> list = Files.list(folder)) {
            paths = list.filter(it -> it.getFileName().toString().endsWith(ENDING)
                            && !it.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (NoSuchFileException e) {
            return new Found<>(all, problems);
        } catch (IOException e) {
            problems.add(folder + " cannot be read: " + IoErrorText.words(e));
            return new Found<>(all, problems);
        }
        for (Path path : paths) {
            String name = path.getFileName().toString();
            if (!wanted.test(name.substring(0, name.length() - ENDING.length()))) {
                continue;
            }
            String file = named + name;
            try {
                Kit.File text =
                        named.isEmpty() ? InputFile.read(path, file, LARGEST) : InputFile.readOwn(path, file, LARGEST);
                if (text.problem().isPresent()) {
                    problems.add(text.problem().get());
                } else {
                    all.add(reader.read(file, text.text()));
                }
            } catch (JsonProblem | IllegalArgumentException e) {
                problems.add(e.getMessage());
            }
        }
        return new Found<>(all, problems);
    }

    /**
     * Writes an order: the page to print, then the file itself. Cut short in between, there is no order yet, and its
     * number is still free.
     */
    public void save(Order order) throws IOException {
        Folders.refuseLink(FileSystem.REAL, orders());
        Folders.replace(
                file(order, ".html"),
                OrderHtml.of(order, order.lab().paper(), List.of(), Set.of()).getBytes(StandardCharsets.UTF_8));
        Folders.replace(file(order, ENDING), order.json(Version.number()).getBytes(StandardCharsets.UTF_8));
    }
}
