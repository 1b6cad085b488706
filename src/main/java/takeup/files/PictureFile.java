package takeup.files;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import takeup.scans.Picture;

/**
 * A picture as it was read from its file, made smaller on the way in: a scan of 20 megapixels is never in memory whole.
 *
 * @param picture the smaller copy
 * @param width of the file, in dots
 * @param height of the file, in dots
 * @param isCut whether the file ends before its picture does
 */
record PictureFile(Picture picture, int width, int height, boolean isCut) {
    private static final long LARGEST = 1_000_000_000;

    static {
        // No window is ever opened for a picture.
        System.setProperty("java.awt.headless", "true");
        ImageIO.setUseCache(false);
    }

    /** A picture with its long side at least so many dots, if it has them, and less than twice as many. */
    static PictureFile open(Path file, int side) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers =
                    in == null ? List.<ImageReader>of().iterator() : ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException("it is not a JPEG, PNG or TIFF, whatever its name says");
            }
            ImageReader reader = readers.next();
            try {
                return read(reader, in, side);
            } finally {
                reader.dispose();
            }
        }
    }

    private static PictureFile read(ImageReader reader, ImageInputStream in, int side) throws IOException {
        AtomicBoolean isCut = new AtomicBoolean();
        reader.addIIOReadWarningListener((from, warning) -> {
            if (isOfTheEnd(warning)) {
                isCut.set(true);
            }
        });
        reader.setInput(in, true, true);
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > LARGEST) {
            throw new IOException("it is larger than a thousand million dots");
        }
        ImageReadParam param = reader.getDefaultReadParam();
        int every = Math.max(1, Math.max(width, height) / side);
        param.setSourceSubsampling(every, every, 0, 0);
        return new PictureFile(whole(reader.read(0, param)), width, height, isCut.get());
    }

    /** The picture with its long side at most so many dots, as the address of an image that stands in a page itself. */
    String dataAddress(int side) throws IOException {
        Picture small = ScanFolder.smaller(picture, side);
        BufferedImage image = new BufferedImage(small.columns(), small.rows(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, small.columns(), small.rows(), small.rgb(), 0, small.columns());
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        if (!ImageIO.write(image, "jpg", jpeg)) {
            throw new IOException("this Java writes no JPEG");
        }
        return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg.toByteArray());
    }

    /** Java's own reader of JPEG goes on over a missing end, and says so in these words alone. */
    private static boolean isOfTheEnd(String warning) {
        String words = warning.toLowerCase(Locale.ROOT);
        return words.contains("premature end") || words.contains("truncated") || words.contains("eoi");
    }

    private static Picture whole(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        return new Picture(width, height, image.getRGB(0, 0, width, height, null, 0, width));
    }
}
