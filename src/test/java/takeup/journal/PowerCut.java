package takeup.journal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import takeup.disk.MemoryFileSystem;

/**
 * What may be on a disk when the power goes after some deed. What was forced is there. Of the rest nothing is taken for
 * granted: bytes that were written are there up to any one, and behind it the file ends, or is as long as it should be
 * and holds zeros or rubbish; a name that was given or taken away may be on the disk or not, whatever became of the
 * others. Two things alone are held to come in one piece: a name that changes within one folder, and a byte. A file
 * whose force failed once is believed no later force.
 */
final class PowerCut {
    /** What follows the last byte that reached the disk. */
    enum Rest {
        END,
        ZEROS,
        RUBBISH
    }

    private final Map<Integer, byte[]> contents = new HashMap<>();
    private final Map<Integer, List<MemoryFileSystem.Deed>> bytesWaiting = new TreeMap<>();
    private final Map<Path, TreeMap<String, Integer>> names = new TreeMap<>();
    private final List<MemoryFileSystem.Deed> namesWaiting = new ArrayList<>();
    private final Set<Integer> condemned = new HashSet<>();
    private int said;

    /** After so many of the deeds. */
    PowerCut(List<MemoryFileSystem.Deed> deeds, int after) {
        names.put(Path.of("/"), new TreeMap<>());
        deeds.subList(0, after).forEach(this::follow);
    }

    /** One deed later. */
    void follow(MemoryFileSystem.Deed deed) {
        if (deed instanceof MemoryFileSystem.Wrote wrote) {
            bytesWaiting.computeIfAbsent(wrote.file(), it -> new ArrayList<>()).add(deed);
        } else if (deed instanceof MemoryFileSystem.Cut cut) {
            bytesWaiting.computeIfAbsent(cut.file(), it -> new ArrayList<>()).add(deed);
        } else if (deed instanceof MemoryFileSystem.Forced forced) {
            if (forced.failed()) {
                condemned.add(forced.file());
            }
            List<MemoryFileSystem.Deed> waiting = bytesWaiting.remove(forced.file());
            if (waiting != null && !condemned.contains(forced.file())) {
                waiting.forEach(
                        it -> contents.put(forced.file(), after(contents.get(forced.file()), it, Integer.MAX_VALUE)));
            }
        } else if (deed instanceof MemoryFileSystem.NamesForced forced) {
            List<MemoryFileSystem.Deed> here = namesWaiting.stream()
                    .filter(it -> folder(it).equals(forced.folder()))
                    .toList();
            here.forEach(it -> apply(names, it));
            namesWaiting.removeAll(here);
        } else if (deed instanceof MemoryFileSystem.Said some) {
            said = some.things();
        } else {
            namesWaiting.add(deed);
        }
    }

    private static byte[] after(byte[] before, MemoryFileSystem.Deed deed, int bytes) {
        byte[] content = before == null ? new byte[0] : before;
        if (deed instanceof MemoryFileSystem.Cut cut) {
            return Arrays.copyOf(content, Math.min(content.length, cut.length()));
        }
        MemoryFileSystem.Wrote wrote = (MemoryFileSystem.Wrote) deed;
        int length = Math.min(bytes, wrote.bytes().length);
        byte[] all = Arrays.copyOf(content, Math.max(content.length, wrote.at() + length));
        System.arraycopy(wrote.bytes(), 0, all, wrote.at(), length);
        return all;
    }

    private static Path folder(MemoryFileSystem.Deed deed) {
        return deed instanceof MemoryFileSystem.Named named
                ? named.folder()
                : deed instanceof MemoryFileSystem.Renamed renamed
                        ? renamed.folder()
                        : deed instanceof MemoryFileSystem.Unnamed unnamed
                                ? unnamed.folder()
                                : ((MemoryFileSystem.Made) deed).folder().getParent();
    }

    private static void apply(Map<Path, TreeMap<String, Integer>> names, MemoryFileSystem.Deed deed) {
        TreeMap<String, Integer> folder = names.get(folder(deed));
        if (deed instanceof MemoryFileSystem.Made made) {
            names.put(made.folder(), new TreeMap<>());
        } else if (folder == null) {
            return;
        } else if (deed instanceof MemoryFileSystem.Named named) {
            folder.put(named.name(), named.file());
        } else if (deed instanceof MemoryFileSystem.Renamed renamed) {
            folder.remove(renamed.from());
            folder.put(renamed.to(), renamed.file());
        } else if (deed instanceof MemoryFileSystem.Unnamed unnamed) {
            folder.remove(unnamed.name());
        }
    }

    /** How many things the photographer had been told are safe. */
    int said() {
        return said;
    }

    /** How many names are given or taken away and not forced. */
    int namesWaiting() {
        return namesWaiting.size();
    }

    /** Whether one of them is taken away: a moment at which a whole journal may go. */
    boolean isNameGoing() {
        return namesWaiting.stream().anyMatch(it -> it instanceof MemoryFileSystem.Unnamed);
    }

    /** The files with bytes that are not forced. */
    int filesWaiting() {
        return bytesWaiting.size();
    }

    /** The length of the last write that is not forced; 0 if there is none. */
    int bytesWaiting() {
        int length = 0;
        for (List<MemoryFileSystem.Deed> waiting : bytesWaiting.values()) {
            length = waiting.get(waiting.size() - 1) instanceof MemoryFileSystem.Wrote wrote ? wrote.bytes().length : 0;
        }
        return length;
    }

    /** The disk on which of the last write so many bytes arrived, and of the waiting names those whose bit is set. */
    MemoryFileSystem disk(int bytes, Rest rest, int kept, Random random) {
        Map<Integer, byte[]> now = new HashMap<>(contents);
        bytesWaiting.forEach((file, waiting) -> {
            for (int i = 0; i < waiting.size() - 1; i++) {
                now.put(file, after(now.get(file), waiting.get(i), Integer.MAX_VALUE));
            }
            MemoryFileSystem.Deed last = waiting.get(waiting.size() - 1);
            byte[] arrived = after(now.get(file), last, bytes);
            if (rest != Rest.END
                    && last instanceof MemoryFileSystem.Wrote wrote
                    && wrote.at() + wrote.bytes().length > arrived.length) {
                int length = arrived.length;
                arrived = Arrays.copyOf(arrived, wrote.at() + wrote.bytes().length);
                byte[] rubbish = new byte[arrived.length - length];
                random.nextBytes(rubbish);
                System.arraycopy(
                        rest == Rest.RUBBISH ? rubbish : new byte[rubbish.length], 0, arrived, length, rubbish.length);
            }
            now.put(file, arrived);
        });
        Map<Path, TreeMap<String, Integer>> named = new TreeMap<>();
        names.forEach((folder, files) -> named.put(folder, new TreeMap<>(files)));
        for (int i = 0; i < namesWaiting.size(); i++) {
            if ((kept >> i & 1) == 1) {
                apply(named, namesWaiting.get(i));
            }
        }
        MemoryFileSystem disk = new MemoryFileSystem();
        Map<Integer, Path> placed = new HashMap<>();
        for (Path folder : new TreeSet<>(named.keySet())) {
            disk.put(folder);
            named.get(folder).forEach((name, file) -> {
                if (placed.containsKey(file)) {
                    disk.put(folder.resolve(name), placed.get(file));
                } else {
                    disk.put(folder.resolve(name), now.getOrDefault(file, new byte[0]));
                    placed.put(file, folder.resolve(name));
                }
            });
        }
        return disk;
    }
}
