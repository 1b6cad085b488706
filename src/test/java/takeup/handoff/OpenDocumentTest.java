package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.NodeList;
import takeup.text.OpenDocument;

/** OpenDocument 1.2, part 3, 3.3: mimetype stands first, not packed; part 1, 19.385: what a cell's value is. */
class OpenDocumentTest {
    private static final String TEXT = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";

    @Test
    void theFileIsKnownByItsFirstEntry() throws IOException {
        byte[] file = OpenDocumentFile.of("<x/>");
        assertEquals(
                "mimetypeapplication/vnd.oasis.opendocument.spreadsheet",
                new String(file, 30, 54, StandardCharsets.US_ASCII));
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        assertEquals(List.of("mimetype", "content.xml", "META-INF/manifest.xml"), names);
    }

    @Test
    void wordsAreInTheCellAsTheyAreAndNumbersAreNumbers() throws Exception {
        OpenDocument format = new OpenDocument();
        String table = format.start()
                + format.row(List.of(
                        format.text("=4412+1"),
                        format.text("+1 stop, \"maybe\" <a & b>\nمینا 👩‍👩‍👧"),
                        format.text(""),
                        format.number("0.125"),
                        format.flag(true)))
                + format.end();
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        NodeList lines = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(table.getBytes(StandardCharsets.UTF_8)))
                .getElementsByTagNameNS(TEXT, "p");
        List<String> words = new ArrayList<>();
        for (int i = 0; i < lines.getLength(); i++) {
            words.add(lines.item(i).getTextContent());
        }
        assertEquals(List.of("=4412+1", "+1stop,\"maybe\"<a&b>", "مینا👩‍👩‍👧", "0.125", "true"), words);
        assertTrue(table.contains("office:value-type=\"float\" office:value=\"0.125\""), table);
    }
}
