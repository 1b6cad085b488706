package takeup.index;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.CRC32C;

/** The journal of one roll as that of another, as if the same film had been shot again. */
public final class CopiedJournal {
    private CopiedJournal() {}

    /** @param loading the step that loaded it, which its first record has */
    public static String of(String journal, String roll, long loading) {
        int from = journal.indexOf('\n') + 1;
        int end = journal.indexOf('\n', from);
        String loaded = journal.substring(from, journal.lastIndexOf(",\"crc\":\"", end))
                .replaceFirst("\"roll\":\"[A-Z0-9]+\"", "\"roll\":\"" + roll + "\"")
                .replaceFirst("\"step\":[0-9]+", "\"step\":" + loading);
        CRC32C crc = new CRC32C();
        crc.update(loaded.getBytes(StandardCharsets.UTF_8));
        return journal.substring(0, from)
                + loaded
                + String.format(Locale.ROOT, ",\"crc\":\"%08x\"}", crc.getValue())
                + journal.substring(end);
    }
}
