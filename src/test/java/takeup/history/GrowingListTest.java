package takeup.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists of steps that grow one by one say what plain lists say. */
class GrowingListTest {
    private static JournalStep step(long number) {
        return new JournalStep(number, OffsetDateTime.parse("2026-09-12T15:00+02:00"), List.of());
    }

    @Test
    void itGrowsAsAPlainListDoes() {
        List<JournalStep> plain = new ArrayList<>();
        GrowingList<JournalStep> steps = GrowingList.of(List.of());
        for (int number = 1; number <= 300; number++) {
            plain.add(step(number));
            steps = steps.and(step(number));
            assertEquals(plain, steps);
            assertEquals(steps, GrowingList.of(plain));
            assertEquals(number, steps.get(number - 1).step());
        }
    }

    /** The line that is typed is tried many times before it is entered. */
    @Test
    void whatIsAddedToOneIsInNoOther() {
        for (int size : new int[] {0, 1, 63, 64, 65, 128}) {
            List<JournalStep> plain = new ArrayList<>();
            for (int number = 1; number <= size; number++) {
                plain.add(step(number));
            }
            GrowingList<JournalStep> base = GrowingList.of(plain);
            GrowingList<JournalStep> one = base.and(step(1001));
            GrowingList<JournalStep> other = base.and(step(1002));
            assertEquals(plain, base);
            assertEquals(1001, one.get(size).step());
            assertEquals(1002, other.get(size).step());
            assertEquals(size + 2, one.and(step(1003)).size());
        }
    }

    @Test
    void nothingChangesIt() {
        List<JournalStep> plain = new ArrayList<>(List.of(step(1)));
        GrowingList<JournalStep> steps = GrowingList.of(plain);
        plain.set(0, step(2));
        assertEquals(1, steps.get(0).step());
        assertSame(steps, GrowingList.of(steps));
        assertThrows(UnsupportedOperationException.class, () -> steps.set(0, step(2)));
        assertThrows(UnsupportedOperationException.class, () -> steps.add(step(2)));
        assertThrows(IndexOutOfBoundsException.class, () -> steps.get(1));
    }
}
