package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.report.SetupText;

/** What is set on a camera, what is on its lens, and which camera it is. */
class CameraStateTest {
    @Test
    void setChangesTheSettingInHandAndLogsNothing() {
        Shooting shooting = Shooting.medium();
        assertEquals("Set on 645: f/4 1/125, 80mm f/2.8. Nothing logged.", shooting.type("set 4 125"));
        assertEquals("state", shooting.answer().event());
        assertEquals("f/4 1/125", shooting.pair());
        assertEquals(0, shooting.roll().frames().size());
        shooting.type("set 8");
        shooting.type("set 3m");
        assertEquals("f/8 1/125", shooting.pair());
        assertEquals(3, shooting.setting().distanceM().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "set",
                "set x5",
                "set 8 11",
                "set 7",
                "set @200",
                "set ev11",
                "set on",
                "set 4 125 ; words",
                "set filter yellow"
            })
    void setTakesNoCountNoNoteAndNoOtherWord(String line) {
        Shooting.medium("4 125").refused(line);
    }

    @Test
    void holdStaysUntilItIsOff() {
        Shooting shooting = Shooting.medium("hold f2.8");
        assertEquals("f/2.8", shooting.inHand().hold().orElseThrow().toString());
        assertEquals("Nothing is held on 645.", shooting.type("hold off"));
        assertTrue(shooting.inHand().hold().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "bias +1/3,0.333333",
        "bias -1,-1",
        "bias 0,0",
        "bias +0,0",
        "bias -0,0",
        "'bias +0,5',0.5",
        "bias -2/3,-0.666667",
        "bias +1.5,1.5"
    })
    void biasIsInStopsAndPlusIsMoreLight(String line, double stops) {
        Shooting shooting = Shooting.medium(line);
        assertEquals(stops, shooting.setting().biasStops(), 1e-6);
        assertEquals(
                stops == 0 ? "No bias on 645." : stops > 0 ? "more light" : "less light",
                stops == 0
                        ? shooting.answer().text()
                        : shooting.answer().text().replaceAll(".*(more light|less light).*", "$1"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bias 1",
                "bias 1/3",
                "bias",
                "bias +",
                "bias on",
                "bias +1/0",
                "bias +21",
                "bias + 1",
                "bias +1 +1",
                "bias +f4"
            })
    void biasDemandsItsSign(String line) {
        Shooting shooting = Shooting.medium();
        String why = shooting.refused(line);
        assertTrue(!line.matches("bias 1.*") || why.contains("+1") && why.contains("-1"), why);
    }

    @ParameterizedTest
    @ValueSource(strings = {"flash", "tripod"})
    void flashAndTripodAreOnOrOff(String word) {
        Shooting shooting = Shooting.medium(word + " on");
        assertTrue(
                word.equals("flash")
                        ? shooting.setting().flash()
                        : shooting.setting().tripod());
        shooting.type(word + " off");
        assertFalse(
                word.equals("flash")
                        ? shooting.setting().flash()
                        : shooting.setting().tripod());
        shooting.refused(word);
        shooting.refused(word + " maybe");
        shooting.refused(word + " on off");
    }

    // Factor = (draw / focal length)^2, (1 + magnification)^2: the textbook formulas.
    @ParameterizedTest(name = "{0} takes {1} stops")
    @CsvSource({
        "ext 110mm,0.918865",
        "ext 110 mm,0.918865",
        "ext 160mm,2",
        "tube 30mm,0.918863",
        "tube 80mm,2",
        "mag 0.5,1.169925",
        "mag 1,2",
        "mag 1:2,1.169925",
        "ext 80mm,0",
        "ext off,0",
        "tube off,0",
        "mag off,0",
        // m = focal / (distance - focal), same place: 80 / 420 at 0.5 m, 1 at 0.16 m, 80 / 224.8 at a foot (80 mm).
        "mag 0.5m,0.503078",
        "mag 0.16m,2",
        "mag 1ft,0.878442"
    })
    void anExtensionIsSaidAsDrawTubeOrMagnification(String line, double stops) {
        assertEquals(stops, Shooting.medium("tube 10mm", line).setting().extensionStops(), 1e-4);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ext 50mm",
                "ext 110",
                "tube 30",
                "mag 0",
                "mag 51",
                "mag 50mm",
                "ext",
                "tube",
                "mag",
                "tube 0mm",
                "ext 6000mm",
                "mag 1:0",
                "ext on",
                "mag 0.08m",
                "mag 0.05m",
                "mag 0m"
            })
    void anExtensionThatCannotBeIsRefused(String line) {
        Shooting.medium("tube 10mm").refused(line);
    }

    @Test
    void aDrawShorterThanTheLensIsRefusedWithWhatWasProbablyMeant() {
        assertEquals(
                "ext 30mm: from lens to film it is at least the focal length, 80 mm; what is added to the lens "
                        + "is tube 30mm",
                Shooting.medium().refused("ext 30mm"));
    }

    @Test
    void onAZoomATubeNeedsTheFocalLengthFirst() {
        Shooting shooting = Shooting.of("cam 35af", "lens 28-90");
        assertTrue(shooting.refused("tube 20mm").contains("focal length"));
        shooting.type("set 50mm");
        shooting.type("tube 20mm");
        assertEquals(0.970854, shooting.setting().extensionStops(), 1e-4);
    }

    @Test
    void theFirstLensIsInHandUntilLensSaysOtherwise() {
        Shooting shooting = Shooting.medium();
        assertEquals("80", shooting.setting().lens().orElseThrow().key());
        assertEquals("Lens on 645: 150mm f/3.5.", shooting.type("lens 150"));
        shooting.refused("lens 300");
        shooting.refused("lens");
        shooting.refused("lens 80 150");
        shooting.type(".");
        assertEquals(
                "150",
                shooting.frame().exposure().setting().lens().orElseThrow().key());
        assertTrue(Shooting.of("cam compact").refused("lens 80").contains("none to change"));
    }

    @Test
    void aCamerasStatesComeBackWithIt() {
        Shooting shooting = Shooting.medium(
                "set 4 125",
                "lens 150",
                "filter yellow",
                "tube 30mm",
                "hold f4",
                "bias +1/3",
                "flash on",
                "tripod on",
                "cam 35");
        assertEquals(". .", shooting.pair());
        assertEquals(1, SetupText.marks(shooting.inHand()).size() + 1);
        shooting.type("set 8 60");
        shooting.type("cam 645");
        // The focal-plane shutter syncs to 1/60, so flash on brought the time there.
        assertEquals("f/4 1/60", shooting.pair());
        assertEquals(
                "[FILTER yellow, TUBE 30mm, BIAS +1/3, HOLD f/4, FLASH, TRIPOD]",
                SetupText.marks(shooting.inHand()).toString());
        assertEquals("150", shooting.setting().lens().orElseThrow().key());
    }

    @Test
    void camTakesTheBackThatWasLastOnTheCamera() {
        Shooting shooting =
                Shooting.of("cam 645", "load cn400", "cam 645 2", "load bw400", "4 125", "cam 35", "cam 645");
        assertEquals("R0002", shooting.roll().id().toString());
        assertEquals(
                "645 reflex, back 1: R0001, Colour negative 400 EI 200, next frame 1, 16 left.",
                shooting.type("back 1"));
        shooting.type("cam 35");
        assertEquals(
                "645 reflex, back 1: R0001, Colour negative 400 EI 200, next frame 1, 16 left.",
                shooting.type("CAM 645"));
        assertEquals("f/4 1/125", shooting.pair());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cam",
                "cam 6x6",
                "cam 645 3",
                "cam 35 1",
                "cam 645 1 2",
                "back",
                "back 3",
                "back 1 2",
                "cam cn400"
            })
    void aCameraOrBackThatIsNotThereIsRefused(String line) {
        Shooting.medium().refused(line);
    }

    @Test
    void aCameraWithoutBacksHasNoneToChange() {
        assertTrue(Shooting.of("cam 35").refused("back 2").contains("no backs"));
    }

    @Test
    void anEmptyBackIsSaidWhenItComesInHandAndNotAgain() {
        Shooting shooting = Shooting.medium("back 2");
        assertEquals("no-film", shooting.warnings());
        shooting.type("back 2");
        assertEquals("", shooting.warnings());
        assertEquals("no-film", shooting.standing());
        shooting.type("back 1");
        assertEquals("", shooting.warnings());
        assertEquals("no-light", shooting.standing());
    }

    @Test
    void aMeterIsChosenWithTheTimeItIsPresetTo() {
        Shooting shooting = Shooting.medium();
        assertEquals(
                "Meter: Incident meter, aperture at a preset time, preset to 1/125.",
                shooting.type("meter preset 125"));
        assertEquals(
                "1/60",
                Shooting.medium("meter preset 1/60")
                        .situation()
                        .day()
                        .preset()
                        .orElseThrow()
                        .toString());
        shooting.type("meter hand");
        assertEquals("hand", shooting.situation().meterInHand().key());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "meter",
                "meter wrong",
                "meter preset f8",
                "meter preset 1/125 f8",
                "meter preset 127",
                "meter preset 8s 4",
                "meter preset 125mm"
            })
    void anUnknownMeterOrNoTimeIsRefused(String line) {
        Shooting.medium().refused(line);
    }
}
