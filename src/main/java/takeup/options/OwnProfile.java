package takeup.options;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import takeup.disk.Folders;
import takeup.files.JournalStore;
import takeup.kit.Kit;

/** A profile of the photographer's own in the data folder: {@code profiles/stocks/cn400.json}. */
public record OwnProfile(GlobalOptions global, Kit.Sort sort, String key) {
    public Path path() {
        return in(global.folder());
    }

    /** Writes it while nobody else writes in the folder; an older one is replaced. */
    public void write(String text) throws IOException {
        try (JournalStore held = JournalStore.take(global.archive())) {
            Folders.replace(in(held.archive().folder()), text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private Path in(Path folder) {
        return folder.resolve("profiles")
                .resolve(sort.name().toLowerCase(Locale.ROOT))
                .resolve(key + ".json");
    }
}
