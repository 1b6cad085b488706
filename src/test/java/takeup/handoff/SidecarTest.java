package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import takeup.ReferenceTable;
import takeup.roll.Frame;
import takeup.roll.Roll;

class SidecarTest {
    /** Properties that no log can know, or that another one stands for. */
    private static final List<String> LEFT_OUT = List.of(
            "exif:ApertureValue",
            "exif:ShutterSpeedValue",
            "exifEX:LensMake",
            "exifEX:BodySerialNumber",
            "aux:Lens",
            "tiff:Make",
            "dc:creator");

    static Stream<ReferenceTable.Row> properties() {
        return ReferenceTable.rows("metadata_properties").filter(it -> !LEFT_OUT.contains(it.text("property")));
    }

    @Test
    void isKnownAsTakeupsOwnUntilAnythingInItIsChanged() {
        String text = sample();
        assertTrue(SidecarDigest.isOwn(text), text);
        assertFalse(
                SidecarDigest.isOwn(text.replace("<xmp:CreatorTool>", "<xmp:Rating>4</xmp:Rating><xmp:CreatorTool>")));
        assertFalse(SidecarDigest.isOwn(text.replaceAll("<takeup:digest>.*</takeup:digest>", "")));
        assertFalse(SidecarDigest.isOwn("mine"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("properties")
    void eachPropertyOfTheTableIsThereInItsForm(ReferenceTable.Row row) throws Exception {
        String text = sample();
        parsed(text);
        String name = row.text("property");
        int at = text.indexOf("<" + name + ">");
        assertTrue(at > 0, name + " is missing in\n" + text);
        String inside = text.substring(at + name.length() + 2, text.indexOf("</" + name + ">"))
                .strip();
        String form = row.text("form");
        assertTrue(
                form.startsWith("n/d")
                        ? inside.matches("-?\\d+/\\d+")
                        : form.startsWith("rdf:")
                                ? inside.startsWith("<" + form.split(",")[0] + ">")
                                : form.startsWith("ISO")
                                        ? inside.matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d[+]\\d\\d:\\d\\d")
                                        : !inside.isEmpty(),
                name + ": " + inside);
    }

    @Test
    void whenItWasTakenAndWhenItWasScannedAreKeptApart() {
        String text = sample();
        assertTrue(text.contains("<exif:DateTimeOriginal>2026-09-12T15:12:40+02:00<"), text);
        assertTrue(text.contains("<xmp:CreateDate>2026-10-01T09:30:00<"), text);
        assertFalse(of(Rolls.regatta(), 0, Optional.empty()).contains("CreateDate"), "not known is left out");
    }

    @Test
    void aBlankFrameSaysNothingThatWasNotMeasured() {
        String text = of(Rolls.regatta(), 1, Optional.empty());
        assertFalse(text.contains("FNumber") || text.contains("ExposureTime") || text.contains("exif:Flash"), text);
    }

    @Test
    void wordsWithSignsOfXmlAndWithControlCharactersStayReadable() throws Exception {
        Roll roll = Rolls.loaded()
                .noted(1, Rolls.sample(), "<b>&\"bow\" ]]> \u0007 seat\n2")
                .roll();
        Document document = parsed(of(roll, 0, Optional.empty()));
        assertTrue(document.getDocumentElement().getTextContent().contains("<b>&\"bow\" ]]> "));
    }

    /** Printed labels at face value: metadata_properties.csv, 56/10 and 1/125; 90 s is 90/1. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"5.6, 56/10", "8, 8/1", "90, 90/1", "0.8, 8/10", "6.28, 628/100", "12.5, 125/10"})
    void aNumberIsTheShortestFraction(double value, String fraction) {
        assertEquals(fraction, Sidecar.rational(value));
    }

    @Test
    void twoHalfFramesAreBothNamed() {
        List<Frame> frames = Rolls.regatta().frames();
        String text = Sidecar.of(
                Rolls.regatta(),
                List.of(frames.get(0), frames.get(2)),
                Optional.empty(),
                Optional.of("good"),
                MadeBy.version("1.0.0"));
        assertTrue(text.contains("Roll R0007, frame 1 | Roll R0007, frame 3: bow seat; with the cox"), text);
        assertTrue(text.contains("<rdf:li>frame 3</rdf:li>") && text.contains("<rdf:li>good</rdf:li>"), text);
    }

    private static String sample() {
        return of(Rolls.regatta(), 0, Optional.of("2026-10-01T09:30:00"));
    }

    private static String of(Roll roll, int place, Optional<String> scannedAt) {
        return Sidecar.of(
                roll, List.of(roll.frames().get(place)), scannedAt, Optional.empty(), MadeBy.version("1.0.0"));
    }

    private static Document parsed(String xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }
}
