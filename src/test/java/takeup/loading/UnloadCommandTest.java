package takeup.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import takeup.ShippedShelf;
import takeup.command.Outcome;
import takeup.kit.Kit;
import takeup.session.Playing;

/** {@code unload} from another camera: what it tells to type is the camera and the back by their names. */
class UnloadCommandTest {
    /** The shipped profiles and a view camera whose backs are called backa and backb. */
    private record NamedBacks(ShippedShelf shipped) implements Kit.ProfileSource {
        private static final String VIEW = """
                {"name": "View camera", "frameSize": "6x9", "frames": {"120": 8}, "backs": ["backa", "backb"],
                 "times": {"step": "full", "longest": "1s", "fastest": "1/500", "bulb": true},
                 "lenses": [{"key": "90", "name": "90mm f/8", "focalMm": 90, "widest": 8, "narrowest": 45,
                  "step": "full"}],
                 "source": "invented"}
                """;

        @Override
        public List<String> keys(Kit.Sort sort) {
            return sort == Kit.Sort.CAMERAS
                    ? Stream.concat(shipped.keys(sort).stream(), Stream.of("view"))
                            .sorted()
                            .toList()
                    : shipped.keys(sort);
        }

        @Override
        public Optional<Kit.File> file(Kit.Sort sort, String key) {
            return sort == Kit.Sort.CAMERAS && key.equals("view")
                    ? Optional.of(new Kit.File("view.json", VIEW, Optional.empty()))
                    : shipped.file(sort, key);
        }
    }

    private static String why(Playing day, String line) {
        return ((Outcome.Rejected) day.shoot().outcome(line)).why();
    }

    @Test
    void aBackWhoseNameBeginsWithTheWordBackIsNamedWhole() {
        Playing day = Playing.with(
                new NamedBacks(new ShippedShelf()), "cam view backb", "load cn400", "cam 35", "load bw400");
        assertEquals("R0001 is in view back backb: cam view backb, then unload", why(day, "unload r1"));
        day.lines("cam view backb", "unload yes");
        assertEquals("R0001 is finished already", why(day, "unload r1"));
    }

    @Test
    void aBackWithANumberIsNamedAsItIsTyped() {
        Playing day = Playing.of("cam 645 2", "load cn400", "cam 35", "load bw400");
        assertEquals("R0001 is in 645 back 2: cam 645 2, then unload", why(day, "unload r1"));
    }
}
