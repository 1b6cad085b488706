package takeup.scans;

import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads a QR code off a scan or a photograph: turned, mirrored, as a negative, dim, soft, grainy. A text is given out
 * only if the caller knows it for takeup's own; with that check a code read with a fault says nothing at all.
 */
public final class QrReader {
    /**
     * Long sides that are tried, in dots: in the small ones grain is gone, in the large ones a small code is still
     * there.
     */
    private static final int[] SIDES = {600, 1000, 380, 1500};
    /** A code that lies askew in a soft picture may show only once the picture is turned. */
    private static final int[] TURNS = {45, 22, 68};

    private static final Map<DecodeHintType, Object> HARDER = Map.of(DecodeHintType.TRY_HARDER, true);

    private QrReader() {}

    /** The slate on a picture. */
    public static Optional<Slate> slate(GreyPicture picture) {
        return read(picture, Slate::read);
    }

    /** The screen's clock on a picture. */
    public static Optional<ScreenClock> clock(GreyPicture picture) {
        return read(picture, ScreenClock::read);
    }

    /** What a picture's code means to the one who asks; empty if no code is seen, or none that means anything. */
    static <T> Optional<T> read(GreyPicture picture, Function<String, Optional<T>> meaning) {
        int last = 0;
        for (int side : SIDES) {
            GreyPicture sized = picture.within(side);
            int now = Math.max(sized.columns(), sized.rows());
            if (now != last) {
                Optional<T> found = sized(sized, meaning);
                if (found.isPresent()) {
                    return found;
                }
            }
            last = now;
        }
        for (int turn : TURNS) {
            Optional<T> found = sized(picture.within(SIDES[0]).turned(turn), meaning);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static <T> Optional<T> sized(GreyPicture picture, Function<String, Optional<T>> meaning) {
        for (GreyPicture one : new GreyPicture[] {picture, picture.inverted()}) {
            LuminanceSource source = source(one);
            LuminanceSource soft = source(one.smoothed());
            for (Binarizer way : new Binarizer[] {
                new HybridBinarizer(source), new HybridBinarizer(soft), new GlobalHistogramBinarizer(soft)
            }) {
                Optional<T> found = decoded(way).flatMap(meaning);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static LuminanceSource source(GreyPicture picture) {
        return new PlanarYUVLuminanceSource(
                picture.light(), picture.columns(), picture.rows(), 0, 0, picture.columns(), picture.rows(), false);
    }

    /** The library tries a mirrored code too. Its exceptions only say that nothing was found. */
    private static Optional<String> decoded(Binarizer way) {
        try {
            return Optional.of(
                    new QRCodeReader().decode(new BinaryBitmap(way), HARDER).getText());
        } catch (ReaderException | IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }
}
