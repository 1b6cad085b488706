package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import takeup.roll.RollId;

/**
 * What is said of certainty against what is true, over folders that are made anew: of those that are called 95 % sure
 * or more at most 1 in 100 is wrong. {@code -Dfolders=1000} runs more of them; the table is printed.
 */
@Tag("slow")
class CalibrationTest {
    private static final int FOLDERS = Integer.getInteger("folders", 160);
    /** Lower ends of the bands of the table. */
    private static final double[] BANDS = {0, 0.5, 0.8, 0.9, 0.95, 0.99};

    @Test
    void ofTheFoldersThatAreCalledSureAtMostOneInAHundredIsWrong() {
        int[] said = new int[BANDS.length];
        int[] right = new int[BANDS.length];
        double[] sum = new double[BANDS.length];
        List<String> wrong = new ArrayList<>();
        for (long seed = 0; seed < FOLDERS; seed++) {
            ReturnedFolder folder = ReturnedFolder.of(seed);
            RollId asked = folder.rolls().get(folder.rolls().size() - 1).roll();
            Proposal proposal =
                    RollMatcher.of(folder.scans(), folder.rolls(), asked).asked();
            boolean isRight = folder.isMetBy(asked, proposal);
            int band = BANDS.length - 1;
            while (proposal.confidence() < BANDS[band]) {
                band--;
            }
            said[band]++;
            sum[band] += proposal.confidence();
            right[band] += isRight ? 1 : 0;
            if (!isRight && proposal.confidence() >= 0.95) {
                wrong.add(folder.kind() + " " + seed + " " + proposal.confidence());
            }
        }
        int sure = said[4] + said[5];
        System.out.println(table(said, right, sum) + "called 95 % sure or more: " + sure + " of " + FOLDERS
                + ", wrong among them: " + wrong);
        assertTrue(sure >= 0.25 * FOLDERS, "so few are called sure that it says little: " + sure);
        assertTrue(wrong.size() <= 0.01 * sure, wrong.size() + " of " + sure + " wrong: " + wrong);
    }

    private static String table(int[] said, int[] right, double[] sum) {
        StringBuilder table = new StringBuilder("said          folders   mean said   true\n");
        for (int i = 0; i < BANDS.length; i++) {
            double to = i + 1 < BANDS.length ? BANDS[i + 1] : 1;
            double count = Math.max(1, said[i]);
            table.append(String.format(
                    Locale.ROOT,
                    "%.2f to %.2f  %7d  %8.1f %%  %5.1f %%%n",
                    BANDS[i],
                    to,
                    said[i],
                    100 * sum[i] / count,
                    100 * right[i] / count));
        }
        return table.toString();
    }
}
