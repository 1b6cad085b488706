package takeup.scanview;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import takeup.grid.Grid;
import takeup.message.Key;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.ExposureResult;
import takeup.roll.Roll;
import takeup.scans.Aligner;
import takeup.scans.Picture;
import takeup.scans.Proposal;
import takeup.scans.Scan;
import takeup.scans.Slot;
import takeup.scans.Tone;

/**
 * What a lab would send of a roll, drawn by ourselves: crew portraits at a boathouse, one for each frame but those that
 * it left out.
 */
public final class ScansOfTheDay {
    private static final int WIDE = 96;
    private static final int HIGH = 72;

    private final Map<String, Picture> pictures = new TreeMap<>();
    private final List<ReviewEvent> kept = new ArrayList<>();
    private ScansState desk;

    private ScansOfTheDay() {}

    /** The scans of a roll, as far as they came back, with so many frames judged good and the one after them thin. */
    public static Grid of(Roll roll, int leftOut, int good, int columns, int rows) {
        ScansOfTheDay day = new ScansOfTheDay();
        List<Scan> scans = new ArrayList<>();
        for (int i = 0; i < roll.frames().size(); i++) {
            if (roll.frames().get(i).number() != leftOut) {
                String name = "4412-" + (scans.size() < 9 ? "0" : "") + (scans.size() + 1) + ".jpg";
                Picture picture = boathouse(
                        i,
                        ExposureResult.of(roll, roll.frames().get(i))
                                .overBoxStops()
                                .orElse(0));
                day.pictures.put(name, picture);
                scans.add(new Scan(name, 3072, 2304, Tone.of(picture)));
            }
        }
        Proposal proposal = Aligner.of(scans, Slot.of(roll), 1);
        day.desk = ScansState.of(roll, "/scans/4412", proposal, Review.NONE);
        for (int i = 0; i < good; i++) {
            day.press("g");
        }
        day.press("t");
        return ScansView.render(day.desk, day.pictures, columns, rows);
    }

    private void press(String key) {
        desk = ScanKeys.after(desk, Key.typed(key));
        kept.addAll(desk.toSave());
        desk = desk.saved(Review.of(kept));
    }

    /**
     * Sky, roof, open doors, water, and a crew of four that stands elsewhere in each; what got more light is brighter.
     */
    private static Picture boathouse(int seed, double overStops) {
        double light = Math.pow(2, 0.4 * (overStops - 1.3));
        int[] dots = new int[WIDE * HIGH];
        for (int y = 0; y < HIGH; y++) {
            for (int x = 0; x < WIDE; x++) {
                dots[y * WIDE + x] = lit(dot(x, y, 14 + seed * 5 % 34), light);
            }
        }
        return new Picture(WIDE, HIGH, dots);
    }

    private static int lit(int colour, double light) {
        int red = (int) Math.min(255, light * (colour >> 16));
        int green = (int) Math.min(255, light * (colour >> 8 & 0xff));
        int blue = (int) Math.min(255, light * (colour & 0xff));
        return red << 16 | green << 8 | blue;
    }

    private static int dot(int x, int y, int crew) {
        for (int i = 0; i < 4; i++) {
            int middle = crew + 12 * i;
            if (Math.abs(x - middle) < 3 && y >= 32 && y < 38) {
                return 0xc99b78;
            }
            if (Math.abs(x - middle) < 5 && y >= 38 && y < 60) {
                return i % 2 == 0 ? 0xb5473a : 0xe6e0d2;
            }
        }
        int roof = 10 + Math.abs(x - 54) / 3;
        boolean isHouse = x >= 18 && x < 90;
        if (y < 26 && (y < roof || !isHouse)) {
            return 0xa9c4d6;
        }
        if (y < 26) {
            return 0x6a4a3a;
        }
        if (y < 56) {
            return !isHouse ? 0x8aa37a : x > 30 && x < 78 ? 0x2b2622 : 0x8b6a4f;
        }
        return y < 62 ? 0x9a8f80 : 0x4d6f80;
    }
}
