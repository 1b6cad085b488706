package takeup.roll;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Many roll numbers side by side say what a set of them says. */
class RollNumbersTest {
    private static final List<String> NAMES = List.of(
            "R0001",
            "R9999",
            "R10000",
            "R99999999",
            "A0001",
            "Z0002",
            "AA0003",
            "AZ0001",
            "ZZZ0001",
            "AAA99999999",
            "RA0007");

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "R0007, true",
        "AB0012, true",
        "R12345, true",
        "ZZZ99999999, true",
        "r0007, false",
        "R7, false",
        "R007, false",
        "R00007, false",
        "R0000, false",
        "ABCD0001, false",
        "0007, false",
        "R, false",
        "'', false",
        "R0007 (copy), false",
        "R000x, false",
        "Ä0001, false",
        "R١٢٣٤, false",
        "R123456789, false"
    })
    void aNameCountsOnlyAsTheNumberItselfIsWritten(String name, boolean counts) {
        assertEquals(counts ? List.of(name) : List.of(), words(RollNumbers.named(List.of(name))));
    }

    /** The plain reading of a typed number, and its print, are the measure. */
    @Test
    void anyNameIsTakenOrPassedOverAsItsTypedNumberIs() {
        Random random = new Random(20260912);
        for (int i = 0; i < 200_000; i++) {
            StringBuilder name = new StringBuilder();
            for (int letters = random.nextInt(5); letters > 0; letters--) {
                name.append("ARZ@[ra".charAt(random.nextInt(random.nextInt(4) == 0 ? 7 : 3)));
            }
            for (int digits = random.nextInt(10); digits > 0; digits--) {
                name.append("0189/:".charAt(random.nextInt(random.nextInt(8) == 0 ? 6 : 4)));
            }
            String typed = name.toString();
            List<String> expected = RollId.parse(typed)
                    .map(RollId::toString)
                    .filter(typed::equals)
                    .map(List::of)
                    .orElse(List.of());
            assertEquals(expected, words(RollNumbers.named(List.of(typed))), typed);
        }
    }

    @Test
    void theyStandInTheOrderOfRollsEachOnce() {
        List<String> twice = new ArrayList<>(NAMES);
        twice.addAll(NAMES);
        RollNumbers numbers = RollNumbers.named(twice);
        Set<RollId> plain = new TreeSet<>();
        NAMES.forEach(it -> plain.add(RollId.parse(it).orElseThrow()));
        assertEquals(List.copyOf(plain), List.copyOf(numbers));
        assertEquals(plain, numbers);
        assertEquals(NAMES.size(), numbers.size());
        assertEquals(numbers, RollNumbers.of(plain));
        assertTrue(numbers.containsAll(plain));
        assertFalse(numbers.contains(new RollId("R", 2)));
        assertFalse(numbers.contains("R0001"));
    }

    @ParameterizedTest(name = "the highest of {0} is {1}")
    @CsvSource({"R, 99999999", "A, 1", "AA, 3", "AAA, 99999999", "RA, 7", "Z, 2", "ZZZ, 1", "B, 0", "AB, 0", "ZZ, 0"})
    void theHighestNumberIsThatOfTheWriterAlone(String letters, int highest) {
        assertEquals(highest, RollNumbers.named(NAMES).highest(letters));
        assertEquals(0, RollNumbers.of(Set.of()).highest(letters));
    }

    @Test
    void othersComeInAndNothingGoesOut() {
        RollNumbers one = RollNumbers.of(Set.of(new RollId("R", 2)));
        RollNumbers two = one.and(List.of(new RollId("R", 1), new RollId("R", 2), new RollId("AB", 5)));
        assertEquals(List.of("AB0005", "R0001", "R0002"), words(two));
        assertEquals(List.of("R0002"), words(one));
        assertSame(two, two.and(List.of(new RollId("R", 1))));
        assertSame(two, RollNumbers.of(two));
        assertThrows(UnsupportedOperationException.class, () -> two.add(new RollId("R", 9)));
        assertThrows(
                NoSuchElementException.class,
                () -> RollNumbers.of(Set.of()).iterator().next());
    }

    @Test
    void thoseThatAreReadLaterAreReadOnceAnAnswerDependsOnThem() {
        List<String> asked = new ArrayList<>();
        RollNumbers later = RollNumbers.named(List.of("R0002", "R0004", "AB0001"));
        RollNumbers all = RollNumbers.named(List.of("R0003", "R0005")).andLater(() -> {
            asked.add("asked");
            return later;
        });
        RollNumbers more = all.and(List.of(new RollId("R", 5), new RollId("R", 1)));
        assertTrue(all.contains(new RollId("R", 5)) && more.contains(new RollId("R", 1)));
        assertFalse(more.isEmpty());
        assertTrue(all.areSeveral());
        assertEquals(List.of(), asked);

        assertTrue(all.contains(new RollId("AB", 1)) && more.contains(new RollId("R", 4)));
        assertFalse(more.contains(new RollId("R", 9)));
        assertEquals(5, all.highest("R"));
        assertEquals(1, all.highest("AB"));
        assertEquals(List.of("AB0001", "R0001", "R0002", "R0003", "R0004", "R0005"), words(more));
        assertEquals(6, more.size());
        assertEquals(
                4,
                RollNumbers.of(Set.of())
                        .andLater(() -> later)
                        .and(List.of(new RollId("R", 7)))
                        .size());
        assertTrue(
                RollNumbers.of(Set.of(new RollId("R", 2))).andLater(() -> later).areSeveral());
        RollNumbers none = RollNumbers.of(Set.of());
        assertFalse(
                RollNumbers.of(Set.of(new RollId("R", 2))).andLater(() -> none).areSeveral());
        assertTrue(none.andLater(() -> none).isEmpty());
        assertFalse(none.andLater(() -> later).isEmpty());
    }

    private static List<String> words(RollNumbers numbers) {
        return numbers.stream().map(RollId::toString).toList();
    }
}
