package takeup.handoff;

import com.adobe.internal.xmp.XMPConst;
import com.adobe.internal.xmp.XMPException;
import com.adobe.internal.xmp.XMPMeta;
import com.adobe.internal.xmp.XMPMetaFactory;
import com.adobe.internal.xmp.options.PropertyOptions;
import com.adobe.internal.xmp.options.SerializeOptions;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.kit.FrameSize;
import takeup.kit.Lens;
import takeup.roll.Exposure;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Place;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.text.IsoTime;
import takeup.text.Plain;

/**
 * What is known of a frame, as an XMP sidecar for its scan (ISO 16684-1; properties of Exif for XMP, CIPA DC-010). What
 * is not known is left out. The times of taking and of scanning are separate properties.
 */
public final class Sidecar {
    private static final String EXIF_EX = "http://cipa.jp/exif/1.0/";
    private static final String AROUND = "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\" x:xmptk=\"Adobe XMP Core 6.1.11\">\n";
    private static final double SMALL_DIAGONAL = FrameSize.SMALL.diagonalMm();

    private Sidecar() {}

    /**
     * The sidecar's text.
     *
     * @param frames the frames on the scan: one, or two half frames; the first one's values are written for both
     * @param scannedAt when the file says that it was made, as in {@code 2026-10-01T09:30:00}; empty where it does not
     * @param verdict thin, good or dense
     */
    public static String of(
            Roll roll, List<Frame> frames, Optional<String> scannedAt, Optional<String> verdict, MadeBy madeBy) {
        try {
            XMPMetaFactory.getSchemaRegistry().registerNamespace(SidecarDigest.SPACE, "takeup");
            XMPMeta meta = facts(roll, frames, scannedAt, verdict, madeBy.version());
            scene(meta, roll, frames);
            madeBy.folder().ifPresent(it -> set(meta, SidecarDigest.SPACE, "folder", it));
            for (Frame each : frames) {
                if (each.id().isPresent()) {
                    meta.appendArrayItem(
                            SidecarDigest.SPACE,
                            "frames",
                            new PropertyOptions().setArray(true),
                            each.id().get(),
                            null);
                }
            }
            set(meta, SidecarDigest.SPACE, SidecarDigest.NAME, SidecarDigest.OPEN);
            return SidecarDigest.sealed(text(meta));
        } catch (XMPException e) {
            throw new IllegalStateException("this frame cannot be written as XMP: " + e.getMessage(), e);
        }
    }

    /** Who is on the frames, and where they were (IPTC Core and Extension, and the GPS fields of Exif). */
    private static void scene(XMPMeta meta, Roll roll, List<Frame> frames) throws XMPException {
        Set<String> people = new LinkedHashSet<>();
        frames.forEach(it -> people.addAll(it.scene().people()));
        for (String name : people) {
            meta.appendArrayItem(
                    XMPConst.NS_IPTCEXT, "PersonInImage", new PropertyOptions().setArray(true), clean(name), null);
        }
        Place place = SceneFields.place(roll, frames.get(0));
        place.name().ifPresent(it -> set(meta, XMPConst.NS_IPTCCORE, "Location", it));
        place.shared().ifPresent(it -> {
            set(meta, XMPConst.NS_EXIF, "GPSVersionID", "2.3.0.0");
            set(meta, XMPConst.NS_EXIF, "GPSMapDatum", "WGS-84");
            set(meta, XMPConst.NS_EXIF, "GPSLatitude", degrees(it.latitude(), "N", "S"));
            set(meta, XMPConst.NS_EXIF, "GPSLongitude", degrees(it.longitude(), "E", "W"));
        });
    }

    /** Degrees and minutes as XMP has them: {@code 59,19.8000N}. */
    private static String degrees(double value, String above, String below) {
        double size = Math.abs(value);
        int whole = (int) size;
        long tenThousandths = Math.round((size - whole) * 600_000);
        if (tenThousandths == 600_000) {
            whole++;
            tenThousandths = 0;
        }
        return whole + "," + Plain.decimals(tenThousandths / 10_000.0, 4) + (value < 0 ? below : above);
    }

    /** What version 1.0.0 wrote of these frames, but for how it put the exposure into words: without its mark. */
    static String ofFirstVersion(Roll roll, List<Frame> frames, Optional<String> scannedAt, Optional<String> verdict) {
        try {
            return text(facts(roll, frames, scannedAt, verdict, FirstSidecar.VERSION));
        } catch (XMPException e) {
            return "";
        }
    }

    private static XMPMeta facts(
            Roll roll, List<Frame> frames, Optional<String> scannedAt, Optional<String> verdict, String version)
            throws XMPException {
        XMPMetaFactory.getSchemaRegistry().registerNamespace(EXIF_EX, "exifEX");
        XMPMeta meta = XMPMetaFactory.create();
        Frame frame = frames.get(0);
        exposure(meta, roll, RollJson.shown(frame));
        // Exif's DateTimeDigitized has this name in XMP.
        scannedAt.ifPresent(it -> set(meta, XMPConst.NS_XMP, "CreateDate", it));
        set(meta, XMPConst.NS_TIFF, "Model", roll.camera(frame).name());
        meta.setLocalizedText(XMPConst.NS_DC, "description", "", XMPConst.X_DEFAULT, clean(description(roll, frames)));
        meta.setLocalizedText(
                XMPConst.NS_EXIF, "UserComment", "", XMPConst.X_DEFAULT, clean(comment(roll, frame, verdict)));
        for (String subject : subjects(roll, frames, verdict)) {
            meta.appendArrayItem(XMPConst.NS_DC, "subject", new PropertyOptions().setArray(true), clean(subject), null);
        }
        set(meta, XMPConst.NS_XMP, "CreatorTool", "takeup " + version);
        return meta;
    }

    /**
     * As the library writes it, but for the element around it: for that one the library asks for its class loader, and
     * has none on the boot class path.
     */
    private static String text(XMPMeta meta) throws XMPException {
        SerializeOptions options = new SerializeOptions()
                .setUseCanonicalFormat(true)
                .setNewline("\n")
                .setReadOnlyPacket(true)
                .setOmitXmpMetaElement(true)
                .setBaseIndent(1);
        String text = XMPMetaFactory.serializeToString(meta, options);
        int from = text.indexOf("  <rdf:RDF");
        int to = text.lastIndexOf("</rdf:RDF>\n") + "</rdf:RDF>\n".length();
        return text.substring(0, from).strip() + "\n" + AROUND + text.substring(from, to) + "</x:xmpmeta>\n"
                + text.substring(to).strip() + "\n";
    }

    private static void set(XMPMeta meta, String space, String name, String value) {
        try {
            meta.setProperty(space, name, clean(value));
        } catch (XMPException e) {
            throw new IllegalStateException(name + " cannot be written as XMP: " + e.getMessage(), e);
        }
    }

    /** What XML cannot hold (XML 1.0, 2.2, Char) becomes the sign for a lost character. */
    private static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints()
                .forEach(it -> clean.appendCodePoint(
                        it == '\t'
                                        || it == '\n'
                                        || it == '\r'
                                        || it >= 0x20 && it <= 0xd7ff
                                        || it >= 0xe000 && it <= 0xfffd
                                        || it >= 0x10000
                                ? it
                                : 0xfffd));
        return clean.toString();
    }

    private static void exposure(XMPMeta meta, Roll roll, Exposure exposure) throws XMPException {
        Setting setting = exposure.setting();
        setting.aperture().ifPresent(it -> set(meta, XMPConst.NS_EXIF, "FNumber", rational(printed(it))));
        setting.time().ifPresent(it -> set(meta, XMPConst.NS_EXIF, "ExposureTime", time(it)));
        String index = Long.toString(Math.round(roll.film().index().arithmetic()));
        // A reader works out a light value only where the older name is there too: measured with exiftool 12.57.
        meta.appendArrayItem(
                XMPConst.NS_EXIF, "ISOSpeedRatings", new PropertyOptions().setArrayOrdered(true), index, null);
        set(meta, EXIF_EX, "PhotographicSensitivity", index);
        if (setting.aperture().isPresent() || setting.time().isPresent()) {
            set(meta, XMPConst.NS_EXIF, "ExposureBiasValue", bias(setting.biasStops()));
            meta.setStructField(
                    XMPConst.NS_EXIF, "Flash", XMPConst.NS_EXIF, "Fired", setting.flash() ? "True" : "False");
        }
        if (setting.focalMm().isPresent()) {
            double focal = setting.focalMm().getAsDouble();
            set(meta, XMPConst.NS_EXIF, "FocalLength", rational(focal));
            set(
                    meta,
                    XMPConst.NS_EXIF,
                    "FocalLengthIn35mmFilm",
                    Long.toString(Math.round(
                            focal * SMALL_DIAGONAL / roll.camera().frameSize().diagonalMm())));
        }
        setting.lens().map(Lens::name).ifPresent(it -> set(meta, EXIF_EX, "LensModel", it));
        setting.distanceM().ifPresent(it -> set(meta, XMPConst.NS_EXIF, "SubjectDistance", rational(it)));
        exposure.at().ifPresent(it -> set(meta, XMPConst.NS_EXIF, "DateTimeOriginal", IsoTime.of(it)));
    }

    /** As printed on the ring; between two marks what the optics are. */
    private static double printed(Aperture aperture) {
        return aperture.tenths() == 0 ? aperture.fNumber() : Math.rint(100 * aperture.exactFNumber()) / 100;
    }

    private static String time(ExposureTime time) {
        double below = Math.rint(1 / time.seconds());
        return time.seconds() < 0.75 && Math.abs(1 / time.seconds() - below) < 1e-6 * below
                ? "1/" + Math.round(below)
                : rational(time.seconds());
    }

    /** Thirds and halves as such: -1/3. */
    private static String bias(double stops) {
        for (int below : new int[] {1, 2, 3}) {
            if (Math.abs(stops * below - Math.rint(stops * below)) < 0.005) {
                return Math.round(stops * below) + "/" + below;
            }
        }
        return Math.round(100 * stops) + "/100";
    }

    static String rational(double value) {
        for (int below : new int[] {1, 10, 100}) {
            if (Math.abs(value * below - Math.rint(value * below)) < 1e-6 * below) {
                return Math.round(value * below) + "/" + below;
            }
        }
        return Math.round(value * 1000) + "/1000";
    }

    private static String description(Roll roll, List<Frame> frames) {
        List<String> words = new ArrayList<>();
        for (Frame frame : frames) {
            words.add("Roll " + roll.id() + ", frame " + frame.number()
                    + frame.note().map(it -> ": " + it).orElse(""));
        }
        return String.join(" | ", words);
    }

    private static String comment(Roll roll, Frame frame, Optional<String> verdict) {
        Exposure exposure = RollJson.shown(frame);
        List<String> words =
                new ArrayList<>(List.of(roll.film().stock().name(), roll.film().developmentWords()));
        exposure.light()
                .ifPresent(
                        it -> words.add("light EV " + Plain.decimals(it.ev100().stops(), 1) + " at ISO 100, "
                                + it.method().word()));
        exposure.setting().filters().forEach(it -> words.add("filter " + ExposureFields.name(it)));
        String light = ExposureResult.of(roll, frame).light().words();
        if (!light.isEmpty()) {
            words.add("exposure " + light);
        }
        verdict.ifPresent(it -> words.add("verdict " + it));
        return String.join("; ", words);
    }

    private static List<String> subjects(Roll roll, List<Frame> frames, Optional<String> verdict) {
        List<String> subjects = new ArrayList<>(List.of("roll " + roll.id()));
        frames.forEach(it -> subjects.add("frame " + it.number()));
        subjects.add(roll.film().stock().name());
        verdict.ifPresent(subjects::add);
        return subjects;
    }
}
