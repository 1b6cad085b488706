package takeup.scans;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A text as a QR code (ISO/IEC 18004), as squares that are dark or light. A slate's has 25 squares a side. */
public final class QrCode {
    /** The light border that a reader needs, in squares (ISO/IEC 18004, 9.1: four). */
    public static final int QUIET = 4;

    private QrCode() {}

    /** The squares row by row, true for dark, without the border; a quarter of them may be lost (level Q). */
    public static boolean[][] of(String text) {
        ByteMatrix squares;
        try {
            squares = Encoder.encode(text, ErrorCorrectionLevel.Q).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for a code: " + text, e);
        }
        boolean[][] dark = new boolean[squares.getHeight()][squares.getWidth()];
        for (int row = 0; row < dark.length; row++) {
            for (int column = 0; column < dark[row].length; column++) {
                dark[row][column] = squares.get(column, row) == 1;
            }
        }
        return dark;
    }
}
