package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.message.Key;
import takeup.report.RatingText;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.session.Playing;

/**
 * A rating test on the shoot screen: EV 11 on a box of 400; box speed is then f/5.6 at 1/250 (2^5 * 2^8 = 2^(11+2)).
 */
class RatingCommandTest {
    @Test
    void theWordTellsTheLabAndPutsTheFirstCardInHandAndLogsNothing() {
        Playing day = Playing.medium("m ev11", "rating");
        assertEquals(0, day.frames());
        assertEquals(
                "rating test, no density correction on the scans",
                day.roll("R0001").conditions().get(0).words().orElseThrow());
        assertTrue(
                day.shoot().lastAnswer().text().contains("Card 1 of 6: set"),
                day.shoot().lastAnswer().text());
        assertEquals(
                Optional.of("Card 1 of 6: R0001 1 STOP UNDER"),
                RatingText.nextCard(day.shoot().shown()));
    }

    @Test
    void aConditionTypedInTheWordsOfTheTestStartsNone() {
        String order = "condition rating test, no density correction on the scans";
        Playing day = Playing.medium("m ev11", order, "set 8 250");
        assertEquals(Optional.empty(), RatingText.nextCard(day.shoot().shown()));
        day.space();
        assertEquals(Optional.empty(), day.roll("R0001").frames().get(0).note());
        day.lines("rating");
        assertTrue(RatingText.nextCard(day.shoot().shown()).isPresent());
    }

    /** Others may want the lab to leave the densities alone, too. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "condition no density correction",
                "condition rating test",
                "condition partial rating test, no density correction on the scans"
            })
    void aConditionInOtherWordsIsNoRatingTest(String line) {
        Playing day = Playing.medium("m ev11", "4 125", line);
        assertEquals(Optional.empty(), RatingText.nextCard(day.shoot().shown()));
        assertEquals(Optional.empty(), day.space().roll("R0001").frames().get(1).note());
        assertTrue(
                day.lines("rating").shoot().lastAnswer().text().contains("The lab is told"),
                day.shoot().lastAnswer().text());
    }

    /** In the pipe no key stands for the word, so the sentence names it. */
    @Test
    void whoCannotSeeTheCardHearsItAndTheWordThatLogsIt() {
        Shooting shooting = Shooting.medium("m ev11");
        assertTrue(
                shooting.type("rating").contains(" Space, or the word rating, logs it."),
                shooting.answer().text());
        assertTrue(
                shooting.type("say").contains(" Rating test, Card 1 of 6: R0001 1 STOP UNDER: rating logs it."),
                shooting.answer().text());
        assertTrue(
                shooting.type("rating").contains("Card 2 of 6: set"),
                shooting.answer().text());
    }

    @Test
    void aPointLogsTheNextCardInThePipeAsSpaceDoes() {
        Shooting shooting = Shooting.medium("m ev11", "rating");
        assertTrue(
                shooting.type(".").contains("Card 2 of 6: set"),
                shooting.answer().text());
        assertTrue(
                shooting.type(".").contains("Card 3 of 6: set"),
                shooting.answer().text());
    }

    @Test
    void sixSpacesAreTheBracketByTheApertureAlone() {
        Playing day = Playing.medium("m ev11", "rating");
        for (int i = 0; i < 6; i++) {
            day.space();
        }
        Roll roll = day.roll("R0001");
        assertEquals(
                List.of("1 STOP UNDER", "1/2 STOP UNDER", "BOX SPEED", "1/2 STOP OVER", "1 STOP OVER", "2 STOPS OVER"),
                roll.frames().stream()
                        .map(it -> it.note().orElseThrow().substring("rating test: ".length()))
                        .toList());
        double[] over = {-1, -0.5, 0, 0.5, 1, 2};
        for (int i = 0; i < over.length; i++) {
            assertEquals(
                    over[i],
                    ExposureResult.of(roll, roll.frames().get(i)).overBoxStops().orElseThrow(),
                    0.01,
                    "card " + (i + 1));
        }
        assertEquals(
                1,
                roll.frames().stream()
                        .map(it -> it.exposure().setting().time())
                        .distinct()
                        .count());
        assertEquals(Optional.empty(), RatingText.nextCard(day.shoot().shown()), "the test is over");
        assertTrue(
                day.shoot().lastAnswer().text().contains("has all its cards"),
                day.shoot().lastAnswer().text());
        day.space();
        assertEquals(
                Optional.empty(), day.roll("R0001").frames().get(6).note(), "the next one is a frame as any other");
        assertEquals(
                1,
                ExposureResult.of(day.roll("R0001"), day.roll("R0001").frames().get(6))
                        .overBoxStops()
                        .orElseThrow(),
                0.4,
                "at the roll's index of 200 again");
        assertTrue(Shooting.medium("m ev11").refused("rating x").contains("stands alone"));
    }

    @Test
    void anotherSettingInBetweenIsAFrameAsAnyOtherAndTheTestGoesOnWithTheWord() {
        Playing day = Playing.medium("m ev11", "rating").space().lines("8 60").space();
        assertEquals(
                List.of(true, false, false),
                day.roll("R0001").frames().stream()
                        .map(it -> it.note().isPresent())
                        .toList());
        day.lines("rating");
        assertEquals(3, day.frames());
        day.space();
        assertEquals(
                Optional.of("rating test: 1/2 STOP UNDER"),
                day.roll("R0001").newest().flatMap(Frame::note));
    }

    @Test
    void otherLightGivesOtherSettingsForTheSameCards() {
        Playing day = Playing.medium("m ev11", "rating").space().lines("m ev13", "rating", "rating");
        Roll roll = day.roll("R0001");
        assertEquals(Optional.of("rating test: 1/2 STOP UNDER"), roll.newest().flatMap(Frame::note));
        assertEquals(
                -0.5,
                ExposureResult.of(roll, roll.newest().orElseThrow())
                        .overBoxStops()
                        .orElseThrow(),
                0.01);
    }

    @Test
    void undoTakesTheCardBackAndAsksForItAgain() {
        Playing day = Playing.medium("m ev11", "rating").space().press(Key.ctrl('z'));
        assertEquals(0, day.frames());
        assertEquals(
                Optional.of("Card 1 of 6: R0001 1 STOP UNDER"),
                RatingText.nextCard(day.shoot().shown()));
    }

    @Test
    void whatATestNeedsIsSaid() {
        assertTrue(Shooting.medium("4 125").refused("rating").contains("no light reading"));
        assertTrue(Shooting.medium("m ev11", "flash on").refused("rating").contains("without flash"));
        assertTrue(Shooting.medium("m ev 24").refused("rating").contains("hold no bracket"));
    }
}
