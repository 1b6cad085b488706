package takeup.handoff;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The file of a table in the format {@link takeup.text.OpenDocument}: a ZIP with the table and what it is. */
public final class OpenDocumentFile {
    private static final String TYPE = "application/vnd.oasis.opendocument.spreadsheet";
    private static final String MANIFEST = """
            <?xml version="1.0" encoding="UTF-8"?>
            <manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" \
            manifest:version="1.2">
            <manifest:file-entry manifest:full-path="/" manifest:version="1.2" manifest:media-type="TYPE"/>
            <manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>
            </manifest:manifest>
            """.replace("TYPE", TYPE);

    private OpenDocumentFile() {}

    /** The file of a table that was written in this format. */
    public static byte[] of(String table) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            byte[] type = TYPE.getBytes(StandardCharsets.US_ASCII);
            // It stands first and is not packed, so that a program knows the file by its first bytes.
            ZipEntry first = entry("mimetype");
            CRC32 crc = new CRC32();
            crc.update(type);
            first.setMethod(ZipEntry.STORED);
            first.setSize(type.length);
            first.setCrc(crc.getValue());
            zip.putNextEntry(first);
            zip.write(type);
            zip.putNextEntry(entry("content.xml"));
            zip.write(table.getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(entry("META-INF/manifest.xml"));
            zip.write(MANIFEST.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** The same bytes at any time of day: one time for all. */
    private static ZipEntry entry(String name) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(LocalDateTime.of(2000, 1, 1, 0, 0));
        return entry;
    }
}
