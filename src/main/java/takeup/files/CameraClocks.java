package takeup.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import takeup.console.CommandFailed;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.journal.Archive;
import takeup.json.Json;
import takeup.json.JsonFields;
import takeup.json.JsonProblem;
import takeup.json.JsonText;
import takeup.scans.CameraClock;

/** What is known of the clocks of digital cameras: {@code clocks.json} in the data folder, replaced as a whole. */
public final class CameraClocks {
    /** The file as it is named in messages. */
    public static final String NAME = "clocks.json";

    private static final long LARGEST = 1 << 20;
    /** No clock is further off: more than the years that a date can have. */
    private static final double MOST_SECONDS = 1e18;

    private CameraClocks() {}

    /** The clocks by camera; none where there is no file. */
    public static Map<String, CameraClock> of(Path folder) throws IOException {
        Path file = folder.resolve(NAME);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Map.of();
        }
        try {
            Map<String, CameraClock> clocks = new TreeMap<>();
            for (JsonFields clock :
                    JsonFields.ofFile(NAME, InputFile.own(file, LARGEST)).objects("clocks")) {
                OffsetDateTime found = clock.time("foundAt");
                CameraClock one = new CameraClock(
                        clock.text("camera"),
                        (long) clock.number("behindSeconds", -MOST_SECONDS, MOST_SECONDS),
                        found.getOffset(),
                        found);
                clocks.put(one.camera(), one);
            }
            return clocks;
        } catch (InputFile.Unusable e) {
            boolean isTooLarge = e.fault() == InputFile.Fault.TOO_LARGE;
            throw new CommandFailed(
                    1, isTooLarge ? NAME + " is larger than any list of clocks can be" : e.getMessage());
        } catch (JsonProblem e) {
            throw new CommandFailed(
                    1,
                    NAME
                            + " cannot be read: move it away, and photograph the clock again (takeup digital "
                            + "--clock FILE)");
        } catch (IOException e) {
            throw new CommandFailed(1, NAME + " cannot be read: " + IoErrorText.words(e));
        }
    }

    /** Keeps one more, in place of what was known of that camera. */
    public static void keep(Archive archive, CameraClock clock) throws IOException {
        try (JournalStore held = JournalStore.take(archive)) {
            Map<String, CameraClock> clocks = new TreeMap<>(of(held.archive().folder()));
            clocks.put(clock.camera(), clock);
            List<Json> all = new ArrayList<>();
            clocks.values()
                    .forEach(it -> all.add(Json.object()
                            .and("camera", it.camera())
                            .and("behindSeconds", it.behindSeconds())
                            .and("foundAt", it.foundAt())));
            String text = JsonText.pretty(Json.object()
                    .and("format", "takeup-clocks")
                    .and("version", 1)
                    .and("clocks", all));
            Folders.replace(held.archive().folder().resolve(NAME), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new CommandFailed(1, "NOT SAVED: " + IoErrorText.words(e));
        }
    }
}
