package takeup.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import javax.imageio.ImageIO;
import takeup.scans.QrCode;
import takeup.scans.Slate;

/** A lab of our own: writes scans of a boathouse that never was. */
final class FakeLab {
    private final Path folder;

    FakeLab(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
    }

    /** A scan of about so much mean lightness (0 to 1), with so much contrast; the scene comes from the seed. */
    FakeLab scan(String name, double brightness, double contrast, int width, int height, long seed) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        int horizon = height / 3 + random.nextInt(height / 4);
        int post = random.nextInt(width);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double scene = (y < horizon ? 1.2 : -0.6)
                        + (Math.abs(x - post) < width / 12 ? -0.9 : 0.2)
                        + 0.3 * Math.sin(x * 9.0 / width);
                int light = (int) Math.round(255 * Math.max(0, Math.min(1, brightness + contrast * scene)));
                image.setRGB(x, y, light << 16 | light << 8 | Math.min(255, light + 12));
            }
        }
        ImageIO.write(
                image,
                name.toLowerCase(Locale.ROOT).endsWith("f") ? "tiff" : "jpg",
                folder.resolve(name).toFile());
        return this;
    }

    /** A usual scan, 90 by 60 dots. */
    FakeLab scan(String name, double brightness) throws IOException {
        return scan(name, brightness, 0.15, 90, 60, name.hashCode());
    }

    /** A scan of a slate, turned by an angle in degrees. */
    FakeLab slate(String name, Slate slate, double degrees) throws IOException {
        ImageIO.write(code(slate.text(), degrees), "jpg", folder.resolve(name).toFile());
        return this;
    }

    /** A picture of a code, turned by an angle in degrees. */
    static BufferedImage code(String text, double degrees) {
        boolean[][] dark = QrCode.of(text);
        BufferedImage image = new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB);
        double unit = 12;
        double sine = Math.sin(Math.toRadians(degrees));
        double cosine = Math.cos(Math.toRadians(degrees));
        for (int y = 0; y < 600; y++) {
            for (int x = 0; x < 900; x++) {
                int column = (int) Math.floor(((x - 450) * cosine + (y - 300) * sine) / unit + dark.length / 2.0);
                int row = (int) Math.floor((-(x - 450) * sine + (y - 300) * cosine) / unit + dark.length / 2.0);
                boolean isCode = column >= 0 && row >= 0 && column < dark.length && row < dark.length;
                image.setRGB(x, y, isCode && dark[row][column] ? 0x202428 : 0xd8dcd0);
            }
        }
        return image;
    }

    Path folder() {
        return folder;
    }
}
