package takeup.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The measure is the parser: what is read by hand is what it reads, letter for letter and line for line. */
class PlainJsonTest {
    private static final int LONGEST = 20_000;

    @Test
    void profilesAndJournalsAreReadAsTheParserReadsThem() throws IOException {
        List<String> texts = texts();
        int byHand = 0;
        for (String text : texts) {
            byHand += isSame(text) ? 1 : 0;
        }
        assertTrue(texts.size() > 300, texts.size() + " texts");
        assertTrue(byHand > texts.size() * 0.95, byHand + " of " + texts.size() + " read by hand");
    }

    /** Letters left out, put in and changed for others that mean something. */
    @Test
    void whatIsDamagedIsReadAsTheParserReadsItOrLeftToIt() throws IOException {
        Random random = new Random(20260912);
        String letters = "{}[]:,\"\\.-+0159eEtfn \n\r\t\u0000\u007f\u00e9\ud83d\uffff";
        List<String> texts = texts().stream().filter(it -> it.length() < 1500).toList();
        for (int turn = 0; turn < 60_000; turn++) {
            StringBuilder text = new StringBuilder(texts.get(random.nextInt(texts.size())));
            for (int change = random.nextInt(3); change >= 0 && !text.isEmpty(); change--) {
                int at = random.nextInt(text.length());
                String letter = String.valueOf(letters.charAt(random.nextInt(letters.length())));
                text.replace(at, at + random.nextInt(2), random.nextInt(3) == 0 ? "" : letter);
            }
            isSame(text.toString());
        }
    }

    @Test
    void numbersAreTheNearestOnes() {
        Random random = new Random(20260912);
        for (int turn = 0; turn < 200_000; turn++) {
            int decimals = random.nextInt(14);
            long digits = random.nextLong(1_000_000_000_000_000L) / (long) Math.pow(10, random.nextInt(15));
            String number = new BigDecimal(BigInteger.valueOf(digits), decimals).toPlainString();
            Optional<Json> read = PlainJson.read(number, LONGEST, false);
            if (read.isPresent()) {
                assertEquals(new Json.Num(Double.parseDouble(number), 1), read.get(), number);
            }
        }
        for (int turn = 0; turn < 50_000; turn++) {
            double value = random.nextDouble() * (turn % 2 == 0 ? 1 : -1000);
            String number =
                    new BigDecimal(value).setScale(17, RoundingMode.HALF_UP).toPlainString();
            assertEquals(
                    Optional.of(new Json.Num(Double.parseDouble(number), 1)), PlainJson.read(number, LONGEST, false));
        }
        assertEquals(Optional.of(new Json.Num(-5.6, 1)), PlainJson.read("-5.6", LONGEST, false));
        assertEquals(Optional.of(new Json.Num(0.0078125, 1)), PlainJson.read("0.0078125", LONGEST, false));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-",
                "-0",
                "-0.0",
                "01",
                "1.",
                ".5",
                "1e3",
                "1E3",
                "1.5.2",
                "1 2",
                "1234567890123456",
                "tru",
                "truefalse",
                "nul",
                "[1,]",
                "[,1]",
                "[1 2]",
                "[",
                "]",
                "{\"a\":1,}",
                "{\"a\" 1}",
                "{\"a\":1,\"a\":2}",
                "{a:1}",
                "{\"a\":1]",
                "[1}",
                "\"a",
                "\"a\tb\"",
                "\"a\\nb\"",
                "{} {}",
                "{}\uffff",
                "\ufeff{}",
                "NaN"
            })
    void whatIsUnusualIsLeftToTheParser(String text) {
        assertEquals(Optional.empty(), PlainJson.read(text, LONGEST, true));
        isSame(text);
    }

    @Test
    void whatIsTooLongOrTooDeepIsLeftToTheParser() {
        isSame("[".repeat(32) + "]".repeat(32));
        for (String text : List.of(
                "\"" + "a".repeat(LONGEST + 1) + "\"",
                "{\"" + "a".repeat(201) + "\":1}",
                "[".repeat(33) + "]".repeat(33),
                "[".repeat(100_000))) {
            assertEquals(Optional.empty(), PlainJson.read(text, LONGEST, true));
            isSame(text);
        }
        assertTrue(isSame("\"" + "a".repeat(LONGEST) + "\""));
        assertTrue(isSame("{\"" + "a".repeat(200) + "\":1}"));
    }

    /** Whether it was read by hand; fails where the parser reads something else. */
    private static boolean isSame(String text) {
        boolean byHand = false;
        for (boolean isOfManyLines : new boolean[] {true, false}) {
            Optional<Json> plain = PlainJson.read(text, LONGEST, isOfManyLines);
            byHand |= plain.isPresent();
            if (plain.isPresent()) {
                try {
                    Json parsed = ParsedJson.read(text, LONGEST, isOfManyLines);
                    assertEquals(parsed.toString(), plain.get().toString(), text);
                    assertEquals(parsed, plain.get(), text);
                } catch (JsonText.NotJson e) {
                    throw new AssertionError(text + " is refused: " + e.getMessage(), e);
                }
            }
        }
        return byHand;
    }

    private static List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> profiles = Files.walk(Path.of("profiles"));
                Stream<Path> files = Files.walk(Path.of("src/test/resources"))) {
            for (Path path : Stream.concat(profiles, files).sorted().toList()) {
                if (path.toString().endsWith(".json")) {
                    texts.add(Files.readString(path));
                } else if (path.toString().endsWith(".journal")) {
                    texts.addAll(new String(Files.readAllBytes(path), StandardCharsets.UTF_8)
                            .lines()
                            .toList());
                }
            }
        }
        return texts;
    }
}
