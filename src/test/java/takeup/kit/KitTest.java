package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.text.Nearest;

/** The kit on a shelf of three stocks: a good one, a wrong one and one that cannot be read. */
class KitTest {
    private final List<String> opened = new ArrayList<>();
    private final Kit kit = new Kit(new Kit.ProfileSource() {
        @Override
        public List<String> keys(Kit.Sort sort) {
            return sort == Kit.Sort.STOCKS
                    ? List.of("cn400", "torn", "wet")
                    : sort == Kit.Sort.CAMERAS ? List.of("box") : List.of();
        }

        @Override
        public Optional<Kit.File> file(Kit.Sort sort, String key) {
            if (!keys(sort).contains(key)) {
                return Optional.empty();
            }
            opened.add(key);
            return Optional.of(
                    switch (key) {
                        case "cn400" ->
                            new Kit.File("stocks/cn400.json", Shipped.text("stocks", "cn400"), Optional.empty());
                        case "box" ->
                            new Kit.File(
                                    "cameras/box.json",
                                    "{\"name\": \"Box\", \"frameSize\": \"6x6\",\n \"frames\": {\"120\": 12}, "
                                            + "\"lense\": 1}",
                                    Optional.empty());
                        case "torn" -> new Kit.File("stocks/torn.json", "{\"name\": \"Torn\"}", Optional.empty());
                        default ->
                            new Kit.File(
                                    "stocks/wet.json",
                                    "",
                                    Optional.of("stocks/wet.json cannot be read: permission denied"));
                    });
        }
    });

    @Test
    void aProfileIsReadWhenItIsFirstAskedForAndOnce() {
        assertEquals(List.of(), opened);
        assertTrue(kit.stock("CN400").isPresent());
        assertTrue(kit.stock("cn400").isPresent());
        assertEquals(List.of("cn400"), opened);
    }

    @Test
    void theFoldersAreLookedThroughOnceUntilAFileIsMetThatWasNotThere() {
        List<String> lying = new ArrayList<>(List.of("cn400"));
        List<Kit.Sort> lookedThrough = new ArrayList<>();
        Kit growing = new Kit(new Kit.ProfileSource() {
            @Override
            public List<String> keys(Kit.Sort sort) {
                lookedThrough.add(sort);
                return List.copyOf(lying);
            }

            @Override
            public Optional<Kit.File> file(Kit.Sort sort, String key) {
                return lying.contains(key)
                        ? Optional.of(
                                new Kit.File("stocks/" + key + ".json", Shipped.text("stocks", key), Optional.empty()))
                        : Optional.empty();
            }
        });
        assertEquals(growing.keys(Kit.Sort.STOCKS), growing.keys(Kit.Sort.STOCKS));
        growing.stock("cn400");
        growing.keys(Kit.Sort.STOCKS);
        assertEquals(List.of(Kit.Sort.STOCKS), lookedThrough);
        lying.add("bw400");
        assertTrue(growing.stock("bw400").isPresent());
        assertEquals(List.of("cn400", "bw400"), growing.keys(Kit.Sort.STOCKS));
        lying.add("cr100");
        assertTrue(growing.whyNot(Kit.Sort.STOCKS, "cr10").endsWith("did you mean cr100?"));
    }

    /** What a stock of which nothing but the name is given lacks. */
    private static final List<String> MISSING = Stream.of("kind", "process", "boxSpeed", "filmSizes", "latitude")
            .map(it -> "stocks/torn.json:1: " + it + " is missing")
            .toList();

    @Test
    void aWrongFileIsToldWithAllItsMistakes() {
        assertEquals(String.join("; ", MISSING), kit.whyNot(Kit.Sort.STOCKS, "torn"));
    }

    @Test
    void aWrongFileTakesOutItselfAlone() {
        assertEquals(Optional.empty(), kit.stock("torn"));
        assertTrue(kit.stock("cn400").isPresent());
        assertEquals(
                Stream.concat(MISSING.stream(), Stream.of("stocks/wet.json cannot be read: permission denied"))
                        .toList(),
                kit.allProblems().stream()
                        .filter(it -> it.startsWith("stocks/"))
                        .toList());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            wet | stocks/wet.json cannot be read: permission denied
            cn40 | cn40 is no stock known here; did you mean cn400?
            velvet | velvet is no stock known here; known: cn400, torn, wet
            """)
    void aKeyThatGivesNothingSaysWhy(String key, String why) {
        assertEquals(why, kit.whyNot(Kit.Sort.STOCKS, key));
    }

    /** An unknown field is a warning with file, line and the nearest known name; the profile is used all the same. */
    @Test
    void anUnknownFieldIsToldWhereTheProfileIsUsed() {
        assertTrue(kit.camera("box").isPresent());
        assertEquals(
                " In its profile: cameras/box.json:2: lense is no field known here, and is left out; did you "
                        + "mean lenses?.",
                kit.remark(Kit.Sort.CAMERAS, "box"));
        assertEquals("", kit.remark(Kit.Sort.STOCKS, "cn400"));
        assertEquals("", kit.remark(Kit.Sort.STOCKS, "velvet"));
    }

    /** No name from a prompt becomes a path. */
    @ParameterizedTest(name = "typed: {0}")
    @CsvSource({"../cn400", "a.b", "''", "a b"})
    void aWordThatIsNoKeyOpensNoFile(String key) {
        assertEquals(Optional.empty(), kit.stock(key));
        assertEquals(List.of(), opened);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"lod,load", "laod,load", "unlaod,unload", "LOAD,load", "zzzz,nothing", "lens,lens"})
    void aMisspeltWordFindsItsNeighbour(String typed, String meant) {
        assertEquals(
                meant,
                Nearest.to(typed, List.of("load", "unload", "lens", "lost")).orElse("nothing"));
    }
}
