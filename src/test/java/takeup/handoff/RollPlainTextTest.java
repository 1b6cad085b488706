package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.exposure.Extension;
import takeup.exposure.FilmSpeed;
import takeup.exposure.FlashLight;
import takeup.exposure.Scale;
import takeup.kit.Filter;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** A roll as people read it. */
class RollPlainTextTest {
    @Test
    void aRollReadsAsAPageOfItsOwn() {
        check(Rolls.regatta(), """
                roll         R0007, finished
                camera       645 reflex, back 1, 6x4.5
                stock        Colour negative 400, 120
                development  C-41, NORMAL (rated 200, box 400)
                frames       5 used of 16, 3 exposed
                loaded       2026-09-12 15:10
                unloaded     2026-09-12 15:40
                lens         80mm f/2.8
                condition    torn
                counter      the camera showed 5, the log came to 4 (2026-09-12 15:20)
                note         crew portraits at the boathouse

                frame  at     aperture    shutter    EV  error      kind      with                      note
                    1  15:12  f/2.8       1/250    10.1  0.9 under            filter yellow
                    2  15:13  -           -           -  -          blank
                    3  -      f/5.6+3/10  1/60     10.0  0.1 over             2 exposures, 3 m, tripod  bow seat; with the cox
                       15:16  f/8         1/125    10.0  2.0 under            exposed again, tripod
                    5  -      -           -           -  -          unlogged
                """);
    }

    @Test
    void aRollJustLoadedSaysThatNothingIsLoggedYet() {
        check(Rolls.loaded().roll(), """
                roll         R0007, open
                camera       645 reflex, back 1, 6x4.5
                stock        Colour negative 400, 120
                development  C-41, NORMAL (rated 200, box 400)
                frames       0 used of 16, 0 exposed
                loaded       2026-09-12 15:10

                no frames logged
                """);
    }

    @Test
    void severalLensesHaveAColumnAndAllThatIsNotNeutralIsInWords() {
        FlashLight flash = new FlashLight(Scale.anyAperture(8), new FilmSpeed(200), "m flash 8", Rolls.at("15:11:00"));
        Exposure lit = new Exposure(
                Optional.of(Rolls.at("15:12:00")),
                Rolls.set(5.6, 1 / 60.0).with(SettingPatch.flash(true).and(SettingPatch.bias(1))),
                Optional.empty(),
                Optional.of(flash));
        Setting close = Setting.NONE
                .with(SettingPatch.lens(Rolls.ZOOM))
                .with(SettingPatch.zoom(100)
                        .and(SettingPatch.bias(-1 / 3.0))
                        .and(SettingPatch.extension(new Extension(Extension.Kind.TUBE, 30)))
                        .and(SettingPatch.filters(List.of(new Filter("+1", 1)))));
        Roll roll = Rolls.loaded()
                .frame(15, Frame.Kind.EXPOSED, lit)
                .frame(
                        16,
                        Frame.Kind.EXPOSED,
                        new Exposure(Optional.empty(), close, Optional.empty(), Optional.empty()))
                .roll();
        check(roll, """
                roll         R0007, open
                camera       645 reflex, back 1, 6x4.5
                stock        Colour negative 400, 120
                development  C-41, NORMAL (rated 200, box 400)
                frames       16 used of 16, 2 exposed
                loaded       2026-09-12 15:10

                frame  at     aperture  shutter  lens            EV  error  with                                                   warnings
                   15  15:12  f/5.6     1/60     80mm f/2.8       -  right  bias 1 stop more, flash f/8                            frames-left
                   16  -      -         -        75-150mm f/4.5   -  -      100 mm, filter 1 stop, tube 30mm, bias 0.3 stops less  frames-left
                """);
    }

    @Test
    void aFormerNumberAnAwaitedExposureAndAnotherDayAreSaid() {
        Roll roll = Rolls.loaded()
                .frame(1, Frame.Kind.EXPOSED, Rolls.sample())
                .then(
                        "15:32:00",
                        new RollEvent.Added(
                                Frame.of(
                                        1,
                                        Frame.Kind.EXPOSED,
                                        new Exposure(
                                                Optional.of(Rolls.at("00:05:00").plusDays(1)),
                                                Setting.NONE,
                                                Optional.empty(),
                                                Optional.empty()),
                                        Optional.empty()),
                                RollEvent.Origin.INSERTED,
                                OptionalInt.of(1)))
                .then("15:33:00", new RollEvent.DoubleAnnounced(1))
                .roll();
        assertEquals("""
                frame  at                aperture  shutter    EV  error  with                                            warnings
                    1  2026-09-13 00:05  -         -           -  -                                                      no-light
                    2  2026-09-12 15:12  f/2.8     1/250    10.1  -      was 1, another exposure to come, filter yellow
                """, table(roll));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bow\nstroke", "bow\r\nstroke", "bow\rstroke", "bow\u2028stroke", "bow\u0085stroke\n"})
    void aLineBreakInANoteDoesNotBreakTheTable(String note) {
        String table = table(Rolls.loaded().noted(1, Exposure.UNKNOWN, note).roll());
        assertEquals(
                "    1  -   -         -         -  -      bow stroke",
                table.lines().skip(1).findFirst().orElseThrow());
        assertEquals(2, table.lines().count());
    }

    @Test
    void wideLettersAndAccentsTakeTheirOwnWidth() {
        TextTable table = new TextTable(List.of("a", "b"), Set.of());
        table.row(List.of("船上", "next"));
        table.row(List.of("cafe\u0301", "next"));
        assertEquals(List.of("a     b", "船上  next", "cafe\u0301  next"), table.lines());
    }

    @Test
    void whateverHappenedNoBareOneWithASignIsPrinted() {
        Pattern bare = Pattern.compile("(?<![0-9.])[+-]1(?![0-9/.])");
        for (long seed = 1; seed <= 500; seed++) {
            Roll roll = RandomRolls.of(seed, List.of("bow seat", "stroke\nseat"));
            if (RandomRolls.countsFromNought(roll)) {
                assertFalse(bare.matcher(RollPlainText.of(roll)).find(), "seed " + seed);
            }
        }
    }

    @Test
    void whateverHappenedEachExposureIsOneLine() {
        for (long seed = 1; seed <= 200; seed++) {
            Roll roll = RandomRolls.of(seed, List.of("bow\nseat", "\r\n"));
            int rows = roll.frames().stream()
                    .mapToInt(it -> 1 + it.further().size())
                    .sum();
            assertEquals(
                    1 + rows, Math.max(rows == 0 ? 1 : 2, table(roll).lines().count()), "seed " + seed);
        }
    }

    private static String table(Roll roll) {
        String text = RollPlainText.of(roll);
        return text.substring(text.indexOf("\n\n") + 2);
    }

    private static void check(Roll roll, String expected) {
        assertEquals(expected, RollPlainText.of(roll));
    }
}
