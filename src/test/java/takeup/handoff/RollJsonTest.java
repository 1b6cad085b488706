package takeup.handoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.Extension;
import takeup.exposure.FilmSpeed;
import takeup.exposure.FlashLight;
import takeup.exposure.Scale;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Filter;
import takeup.roll.Assignment;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.CsvFormat;
import takeup.text.IsoTime;

/** A roll as other programs read it. */
class RollJsonTest {
    /**
     * The sums by hand: metered = 2^(Av - EV - log2(EI/100) + filters), so frame 1 asks for 2^(3 - 10.1 - 1 + 1) =
     * 2^-7.1 s and got 2^-8, 0.9 under, 0.1 over box at EI 200 of 400; frame 3 is 0.3 under, then 2 under, together
     * log2(2^-0.3 + 2^-2) = 0.087 over.
     */
    @Test
    void aRollIsHandedOverFieldForFieldInThePublishedOrder() throws IOException, JsonText.NotJson {
        String published = Files.readString(Path.of("src/test/resources/handoff/R0007.json"));
        assertEquals(
                published.replaceAll("\\s", ""),
                RollJson.text(Rolls.regatta(), new MadeBy("1.0.0", Optional.of("0123456789abcdef")))
                        .replaceAll("\\s", ""));
    }

    @Test
    void theTextIsTheSameDataAndEndsInALineFeed() throws JsonText.NotJson {
        String text = RollJson.text(Rolls.regatta(), MadeBy.version("1.0.0"));
        assertEquals('\n', text.charAt(text.length() - 1));
        String line = JsonText.line(RollJson.of(Rolls.regatta(), MadeBy.version("1.0.0")));
        assertEquals(JsonText.read(line), JsonText.read(text.replaceAll("\\n *", "")));
    }

    @Test
    void theShootIsNamedAndItsClientOnlyWhereThatIsAskedFor() throws JsonText.NotJson {
        Roll roll = Rolls.loaded()
                .then(
                        "15:11:00",
                        new NoteEvent.ShootAssigned(new Assignment(
                                "Regatta day", LocalDate.parse("2026-09-13"), Optional.of("Harriet Ruder"))))
                .roll();
        check(roll, "shoot", "{\"name\":\"Regatta day\",\"date\":\"2026-09-13\",\"client\":null}");
        check(Rolls.loaded().roll(), "shoot", "{\"name\":null,\"date\":\"2026-09-12\",\"client\":null}");
        assertTrue(JsonText.line(
                        JsonText.read(RollJson.text(roll, MadeBy.version("1.0.0"), Set.of(RollJson.Private.CLIENT))))
                .contains("\"client\":\"Harriet Ruder\""));
        for (String text : new String[] {
            RollJson.text(roll, MadeBy.version("1.0.0")),
            RollPlainText.of(roll),
            RollCsv.of(roll, MadeBy.version("1.0.0"), CsvFormat.PLAIN)
        }) {
            assertTrue(!text.contains("Harriet"), text);
        }
        assertTrue(RollPlainText.of(roll).contains("Regatta day, 2026-09-13"));
    }

    @Test
    void anOpenRollHasNoEndAndNoFrames() {
        Roll open = Rolls.loaded().roll();
        check(open, "state", "\"open\"");
        check(open, "finishedAt", "null");
        check(open, "framesUsed", "0");
        check(open, "frames", "[]");
        check(open, "revision", "1");
    }

    @Test
    void aRollWhoseLoadingWasTakenBackIsWithdrawnAndCountsBothEvents() {
        Roll withdrawn =
                Rolls.loaded().then("15:11:00", new RollEvent.Undone(1)).roll();
        check(withdrawn, "state", "\"withdrawn\"");
        check(withdrawn, "revision", "2");
    }

    @Test
    void aCameraThatSetsItselfIsLoggedWithNulls() {
        Roll roll = Rolls.loaded(Rolls.COMPACT, Rolls.FILM)
                .frame(
                        1,
                        Frame.Kind.EXPOSED,
                        new Exposure(
                                Optional.of(Rolls.at("15:12:00")), Setting.NONE, Optional.empty(), Optional.empty()))
                .roll();
        check(roll, "camera", "{\"key\":\"compact\",\"name\":\"35 compact\",\"frameSize\":\"24x36\",\"back\":null}");
        for (String field : List.of(
                "aperture",
                "fNumber",
                "exactFNumber",
                "time",
                "seconds",
                "exactSeconds",
                "lens",
                "focalLengthMm",
                "distanceM",
                "light",
                "meteredSeconds",
                "correctedSeconds",
                "errorStops",
                "overBoxStops")) {
            checkFrame(roll, 0, field, "null");
        }
        checkFrame(roll, 0, "at", "\"2026-09-12T15:12:00+02:00\"");
    }

    @Test
    void pullIsANegativeNumberForProgramsAndAWordForPeople() {
        Roll pulled = Rolls.loaded()
                .then("15:11:00", new RollEvent.RollCorrected(RollChange.push(-1)))
                .roll();
        check(
                pulled,
                "development",
                "{\"process\":\"C-41\",\"pushStops\":-1.0,\"words\":\"C-41, PULL 1 STOP (rated 200, box 400)\"}");
    }

    @Test
    void aRenumberedFrameKeepsItsFormerNumber() {
        Roll roll = Rolls.loaded()
                .frame(1, Frame.Kind.EXPOSED, Rolls.sample())
                .frame(2, Frame.Kind.LOST, Rolls.sample())
                .then("15:31:00", new RollEvent.Dropped(1, 1, Optional.empty()))
                .then(
                        "15:32:00",
                        new RollEvent.Added(
                                Frame.of(1, Frame.Kind.UNLOGGED, Exposure.UNKNOWN, Optional.empty()),
                                RollEvent.Origin.INSERTED,
                                OptionalInt.of(1)))
                .then("15:33:00", new RollEvent.Dropped(1, 1, Optional.empty()))
                .roll();
        checkFrame(roll, 0, "frame", "1");
        checkFrame(roll, 0, "was", "2");
        checkFrame(roll, 0, "kind", "\"lost\"");
        checkFrame(roll, 0, "errorStops", "-0.9");
    }

    @Test
    void framesStandInTheOrderOfTheFilmAlsoWhenTheCounterWentBack() {
        Roll roll = Rolls.loaded()
                .frame(1, Frame.Kind.EXPOSED, Rolls.sample())
                .then("15:30:10", new RollEvent.CounterShown(0))
                .frame(0, Frame.Kind.EXPOSED, Rolls.sample())
                .frame(1, Frame.Kind.EXPOSED, Rolls.sample())
                .roll();
        assertEquals(
                List.of("1", "0", "1"),
                List.of(field(roll, 0, "frame"), field(roll, 1, "frame"), field(roll, 2, "frame")));
        assertEquals(
                List.of("1", "2", "3"),
                List.of(field(roll, 0, "sequence"), field(roll, 1, "sequence"), field(roll, 2, "sequence")));
        check(
                roll,
                "counterChecks",
                "[{\"at\":\"2026-09-12T15:30:10+02:00\",\"expected\":2,\"shown\":0,\"difference\":-2,\"since\":\"2026-09-12T15:10:03+02:00\"}]");
    }

    @Test
    void whileAFurtherExposureIsAwaitedNoErrorIsTold() {
        Rolls awaited = Rolls.loaded()
                .frame(1, Frame.Kind.EXPOSED, Rolls.sample())
                .then("15:13:00", new RollEvent.DoubleAnnounced(1));
        checkFrame(awaited.roll(), 0, "errorStops", "null");
        checkFrame(awaited.roll(), 0, "overBoxStops", "null");
        checkFrame(awaited.roll(), 0, "meteredSeconds", "0.00728932025");
    }

    @Test
    void aNoteWrittenBetweenTwoExposuresOfAFrameDoesNotEndTheWaiting() {
        Roll roll = Rolls.loaded()
                .frame(1, Frame.Kind.EXPOSED, Rolls.sample())
                .then("15:13:00", new RollEvent.DoubleAnnounced(1))
                .corrected(1, SettingPatch.note("stroke seat"))
                .roll();
        checkFrame(roll, 0, "note", "\"stroke seat\"");
        checkFrame(roll, 0, "errorStops", "null");
        assertEquals(true, roll.doubleAwaited());
    }

    /** The flash meter asked for f/8 at EI 200 and f/5.6 was set: a stop over, whatever the time and the daylight. */
    @Test
    void withFlashTheApertureIsJudgedAgainstTheFlashMeter() {
        FlashLight flash = new FlashLight(Scale.anyAperture(8), new FilmSpeed(200), "m flash 8", Rolls.at("15:11:00"));
        Exposure exposure = new Exposure(
                Optional.of(Rolls.at("15:12:00")),
                Rolls.set(5.6, 1 / 60.0).with(SettingPatch.flash(true)),
                Optional.empty(),
                Optional.of(flash));
        Roll roll = Rolls.loaded().frame(1, Frame.Kind.EXPOSED, exposure).roll();
        checkFrame(roll, 0, "errorStops", "1.0");
        checkFrame(roll, 0, "overBoxStops", "2.0");
        checkFrame(
                roll,
                0,
                "flashLight",
                "{\"method\":\"meter\",\"fNumber\":8.0,\"exactFNumber\":8.0,\"index\":200.0,\"time\":null,"
                        + "\"exactSeconds\":null,\"typed\":\"m flash 8\",\"at\":\"2026-09-12T15:11:00+02:00\"}");
    }

    /** Life size takes 2 stops: factor (1 + magnification) squared (armycommunications.tpub.com, SS0512). */
    @Test
    void anExtensionThatNeedsAnUnknownFocalLengthTakesAnUnknownLossAndNotNone() {
        Setting zoom =
                Setting.NONE.with(SettingPatch.lens(Rolls.ZOOM)).with(SettingPatch.aperture(Scale.anyAperture(8)));
        Roll roll = Rolls.loaded()
                .frame(
                        1,
                        Frame.Kind.EXPOSED,
                        Rolls.exposure(
                                "15:12:00",
                                zoom.with(SettingPatch.extension(new Extension(Extension.Kind.TUBE, 30))),
                                Rolls.incident(10, "15:11:00")))
                .frame(
                        2,
                        Frame.Kind.EXPOSED,
                        Rolls.exposure(
                                "15:12:00",
                                zoom.with(SettingPatch.extension(new Extension(Extension.Kind.MAGNIFICATION, 1))),
                                Rolls.incident(10, "15:11:00")))
                .roll();
        checkFrame(roll, 0, "extensionStops", "null");
        checkFrame(roll, 0, "focalLengthMm", "null");
        checkFrame(roll, 1, "extensionStops", "2.0");
    }

    @Test
    void aBlankFrameTellsNoSettingEvenIfAFilterWasTyped() {
        Roll roll = Rolls.loaded()
                .frame(1, Frame.Kind.BLANK, Exposure.UNKNOWN)
                .corrected(1, SettingPatch.filters(List.of(new Filter("red", 3))))
                .roll();
        checkFrame(roll, 0, "kind", "\"blank\"");
        checkFrame(roll, 0, "filters", "[]");
        checkFrame(roll, 0, "filterStops", "0.0");
    }

    @Test
    void aFilterTypedAsABareLossIsNamedInWords() {
        Exposure exposure = new Exposure(
                Optional.empty(),
                Setting.NONE.with(SettingPatch.filters(List.of(new Filter("+1", 1)))),
                Optional.empty(),
                Optional.empty());
        checkFrame(
                Rolls.loaded().frame(1, Frame.Kind.EXPOSED, exposure).roll(),
                0,
                "filters",
                "[{\"name\":\"1 stop\",\"stops\":1.0}]");
    }

    @Test
    void theWarningsOfAFrameStandWithThatFrame() {
        Roll roll = Rolls.loaded()
                .frame(16, Frame.Kind.EXPOSED, Rolls.sample())
                .frame(17, Frame.Kind.EXPOSED, Rolls.sample())
                .roll();
        checkFrame(
                roll,
                0,
                "warnings",
                "[{\"code\":\"frames-left\",\"text\":\"that was the last frame by the counter\"}]");
        checkFrame(
                roll,
                1,
                "warnings",
                "[{\"code\":\"past-end\",\"text\":\"frame 17 of 16: past the end by the counter; the film may "
                        + "stop any time\"}]");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-09-12T15:10+02:00, 2026-09-12T15:10:00+02:00",
        "2026-09-12T00:00:00.999999999Z, 2026-09-12T00:00:00Z",
        "2026-09-12T23:59:59.5-09:30, 2026-09-12T23:59:59-09:30"
    })
    void aTimeHasSecondsAndNoPartsOfThem(String at, String written) {
        assertEquals(written, IsoTime.of(OffsetDateTime.parse(at)));
    }

    @ParameterizedTest
    @CsvSource({"-0.9000000000000004, -0.9", "1e-16, 0.0", "-1e-10, 0.0", "0.333333333333, 0.333333333", "-0.0, 0.0"})
    void whatASumMissesIsRoundedAway(double stops, String written) {
        assertEquals(written, JsonText.line(RoundedJson.stops(stops)));
    }

    @Test
    void aWholeNumberOfAColumnOfDecimalsHasAPointForReadersThatSampleTheFirstLines() {
        String lines = FrameJsonLines.of(
                Rolls.regatta(),
                MadeBy.version("1.0.0"),
                Collections.nCopies(Rolls.regatta().frames().size(), Optional.empty()),
                Collections.nCopies(Rolls.regatta().frames().size(), Optional.empty()));
        Matcher whole = Pattern.compile(
                        "\"(fNumber|[a-zA-Z]*[sS]econds|[a-zA-Z]*Stops|focalLengthMm|distanceM|lightEv100"
                                + "|exactFNumber|flashFNumber)\":-?[0-9]+[,}]")
                .matcher(lines);
        assertFalse(whole.find(), () -> whole.group());
    }

    @Test
    void whatIsBeyondAllBoundsIsNotKnown() {
        assertEquals("null", JsonText.line(RoundedJson.number(OptionalDouble.of(Double.POSITIVE_INFINITY))));
    }

    private static void check(Roll roll, String field, String expected) {
        assertEquals(
                expected,
                JsonText.line(
                        RollJson.of(roll, MadeBy.version("1.0.0")).fields().get(field)),
                field);
    }

    private static void checkFrame(Roll roll, int index, String field, String expected) {
        assertEquals(expected, field(roll, index, field), field);
    }

    private static String field(Roll roll, int index, String field) {
        Json.Arr frames =
                (Json.Arr) RollJson.of(roll, MadeBy.version("1.0.0")).fields().get("frames");
        return JsonText.line(((Json.Obj) frames.items().get(index)).fields().get(field));
    }
}
