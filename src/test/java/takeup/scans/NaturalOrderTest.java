package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NaturalOrderTest {
    /** Each line as a person lays the prints out. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "1.jpg 2.jpg 10.jpg",
                "crew_9.tif crew_10.tif crew_010a.tif crew_11.tif",
                "00.jpg 0.jpg 1.jpg 36.jpg 37.jpg",
                "a1b2.jpg a1b10.jpg a2b1.jpg",
                "IMG_2.JPG img_3.jpg IMG_10.jpg",
                "99999999999999999998.jpg 99999999999999999999.jpg 100000000000000000000.jpg",
                "R1/2.jpg R1/10.jpg R2/1.jpg",
                "bow.jpg bow1.jpg stroke.jpg"
            })
    void readsNumbersAsNumbers(String line) {
        List<String> names = List.of(line.split(" "));
        List<String> shuffled = new ArrayList<>(names);
        Collections.shuffle(shuffled, new Random(line.hashCode()));
        shuffled.sort(NaturalOrder.BY_NAME);
        assertEquals(names, shuffled);
    }

    @Test
    void isOneOrderWhateverTheNames() {
        Random random = new Random(1);
        for (int i = 0; i < 20_000; i++) {
            String a = name(random);
            String b = name(random);
            String c = name(random);
            assertEquals(sign(a, b), -sign(b, a), a + " " + b);
            assertTrue(sign(a, b) < 0 || sign(b, c) < 0 || sign(a, c) >= 0, a + " " + b + " " + c);
            assertEquals(a.equals(b), sign(a, b) == 0, a + " " + b);
        }
    }

    private static int sign(String a, String b) {
        return Integer.signum(NaturalOrder.BY_NAME.compare(a, b));
    }

    private static String name(Random random) {
        StringBuilder name = new StringBuilder();
        for (int i = random.nextInt(5); i >= 0; i--) {
            name.append("0012aA_".charAt(random.nextInt(7)));
        }
        return name.toString();
    }
}
