package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import takeup.roll.Frame;
import takeup.roll.Roll;

/** The form for the day the laptop dies. */
class FrameFormTest {
    private static final LocalDate DATE = LocalDate.of(2026, 9, 12);

    private static Roll roll() {
        return Rolls.loaded()
                .frame(1, Frame.Kind.EXPOSED, Rolls.sample())
                .frame(2, Frame.Kind.UNLOGGED, Rolls.sample())
                .roll();
    }

    private static List<String> numbers(String text) {
        return text.lines()
                .map(it -> it.strip().split(" ")[0])
                .filter(it -> !it.isEmpty() && it.chars().allMatch(Character::isDigit))
                .toList();
    }

    /** The roll has 16 frames: the one that nobody wrote down, then 3 to 18; the empty sheet has 1 to 38. */
    @Test
    void aSheetGoesOnWhereTheLogStops() {
        List<String> numbers = numbers(FrameForm.text(List.of(roll()), "R0008", DATE));
        assertEquals(List.of("2", "3", "4"), numbers.subList(0, 3));
        assertEquals("18", numbers.get(16));
        assertEquals(List.of("1", "38"), List.of(numbers.get(17), numbers.get(numbers.size() - 1)));
    }

    @Test
    void theHeadSaysWhichRollThisIs() {
        String text = FrameForm.text(List.of(roll()), "R0008", DATE);
        for (String words : List.of(
                "Roll " + roll().id(),
                roll().camera().name(),
                roll().film().developmentWords(),
                "2026-09-12",
                "the next is R0008")) {
            assertTrue(text.contains(words), words + " is missing in\n" + text);
        }
    }

    /** 66 lines of text stand on both papers; three are left free at either end. */
    @Test
    void aSheetOfThirtySixFitsAPage() {
        List<String> lines = FrameForm.text(List.of(), "R0008", DATE).lines().toList();
        assertTrue(lines.size() <= 60, lines.size() + " lines");
        lines.forEach(it -> assertTrue(it.length() <= 78, it));
    }

    /** Content Security Policy Level 3, 6.7.3.3: the hash is that of the text between the tags. */
    @Test
    void thePolicyOfThePageAllowsItsOneStyleBlockAndNothingElse() throws NoSuchAlgorithmException {
        String html = FrameForm.html(List.of(Rolls.loaded().roll()), "R0008", DATE, "A4");
        String style = html.substring(html.indexOf("<style>") + 7, html.indexOf("</style>"));
        String hash = Base64.getEncoder()
                .encodeToString(MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8)));
        assertTrue(html.contains("content=\"default-src 'none'; style-src 'sha256-" + hash + "'; "), html);
        assertFalse(html.contains("unsafe") || html.contains("style="), html);
    }

    @Test
    void thePageNeedsNothingElseAndRunsNothing() {
        Roll noted = Rolls.loaded().roll();
        String html = FrameForm.html(List.of(noted), "R0008", DATE, "Letter");
        assertTrue(html.contains("size: Letter"));
        assertTrue(html.contains("&quot; stands for the same as above"), html);
        for (String no : List.of("http:", "https:", "<script", "src=", "url(", "@import")) {
            assertFalse(html.contains(no), no);
        }
        assertEquals(2, html.split("<section>", -1).length - 1);
    }
}
