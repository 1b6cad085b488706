package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import takeup.action.Choice;
import takeup.action.Field;
import takeup.action.Menu;
import takeup.command.Outcome;
import takeup.message.Key;

/** Everything without a command: Enter, arrows and digits alone make each line of a day. */
class ActionsTest {
    @Test
    void aFrameWithAnotherSettingIsPickedAndItsLineIsShown() {
        Playing day = Playing.medium("4 125");
        pick(day, "a frame with another setting").type("8").press(Key.Name.ENTER);
        assertEquals("f8 1/125", menu(day).preview());
        day.type("250").press(Key.Name.ENTER);
        assertEquals("f8 1/250", menu(day).preview());
        day.press(Key.Name.ENTER);
        assertEquals("f/8 1/250", day.framePair());
        assertEquals(Session.Page.SHOOT, day.page());
        day.press(Key.Name.PAGE_UP);
        assertEquals("f8 1/250", day.prompt());
    }

    @Test
    void aReadingIsPickedByItsKind() {
        Playing day = Playing.medium("4 125");
        pick(day, "new reading");
        pickRow(day, "an exposure value").type("11.3").press(Key.Name.ENTER);
        assertEquals(
                11.3, day.shoot().shown().day().light().orElseThrow().ev100().stops(), 1e-9);
    }

    @Test
    void aNoteIsTypedAndEscGoesBackStepByStep() {
        Playing day = Playing.medium("4 125");
        pick(day, "a note on the last frame").type("bow seat, 7 of 8?");
        assertEquals("; bow seat, 7 of 8?", menu(day).preview());
        day.press(Key.Name.ENTER);
        assertEquals(
                "bow seat, 7 of 8?",
                day.roll("R0001").newest().orElseThrow().note().orElseThrow());
        pick(day, "filter").press(Key.Name.ESCAPE);
        assertEquals("What next?", menu(day).field().title());
        day.press(Key.Name.ESCAPE);
        assertEquals(Session.Page.SHOOT, day.page());
    }

    @Test
    void aLetterLeavesTheActionsForThePrompt() {
        Playing day = Playing.medium("4 125").press(Key.Name.ENTER).type("x2");
        assertEquals("x2", day.prompt());
        assertEquals(Session.Page.SHOOT, day.page());
    }

    @Test
    void aMomentStartsAtTheNextHalfHourAndAnotherTimeAtItsOwn() {
        Playing day = Playing.medium().later(10).press(Key.Name.F4).press(Key.Name.ENTER);
        pickRow(day, "plan another moment");
        assertEquals(
                "15:30", menu(day).field().choices().get(menu(day).chosen()).typed());
        day = Playing.medium("plan 16:10 Start wants 2").press(Key.Name.F4).press(Key.Name.ENTER);
        pickRow(day, "at another time");
        assertEquals(
                "16:10", menu(day).field().choices().get(menu(day).chosen()).typed());
        day = Playing.medium("routine skip").later(8 * 60 + 45).press(Key.Name.ENTER);
        pickRow(day, "plan a moment");
        assertEquals(
                "23:30", menu(day).field().choices().get(menu(day).chosen()).typed());
    }

    @Test
    void theRowOfAListHasItsOwnActions() {
        Playing day = Playing.medium("4 125 x3").press(Key.Name.F2).press(Key.Name.DOWN);
        day.press(Key.Name.ENTER);
        assertEquals("Frame 2", menu(day).field().title());
        pickRow(day, "it is fogged or lost");
        assertEquals("lost", day.roll("R0001").frames().get(1).kind().toString());
        day = Playing.medium("plan 16:30 Prize-giving wants 12")
                .press(Key.Name.F4)
                .press(Key.Name.ENTER);
        pickRow(day, "out of the plan");
        assertTrue(day.shoot().shown().day().plan().moments().isEmpty());
        day = Playing.medium("4 125").press(Key.Name.F3).pass(10).press(Key.Name.ENTER);
        assertEquals("R0001", menu(day).field().title());
    }

    @Test
    void theBagAndTheEndOfTheDayAreGoneThroughRowByRow() {
        Playing day = Playing.of("bag add 3 cn400 120", "bag add 2 bw400 120", "cam 645")
                .press(Key.Name.F5)
                .press(Key.Name.DOWN)
                .press(Key.Name.DOWN);
        day.press(Key.Name.ENTER);
        assertEquals("cn400 120", menu(day).field().title());
        pickRow(day, "load one");
        assertEquals("cn400", day.roll("R0001").film().stock().key());
        day.press(Key.Name.F5).press(Key.Name.ENTER);
        pickRow(day, "take one out");
        assertEquals(
                List.of(1, 2),
                day.shoot().shown().day().bag().filled().stream()
                        .map(it -> it.getValue())
                        .toList());
        day.press(Key.Name.F6).pass(10).press(Key.Name.DOWN).press(Key.Name.ENTER);
        assertEquals("R0001", menu(day).field().title());
    }

    @Test
    void aRollInAnotherCameraIsTakenIntoTheHandAndAFrameMovesToIt() {
        Playing day = Playing.of("cam 645 1", "load bw100", "cam 35", "load cn400", "4 125 x2");
        day.press(Key.Name.F2).press(Key.Name.ENTER);
        pickRow(day, "it was shot on another roll").press(Key.Name.ENTER);
        assertEquals(1, day.roll("R0001").frames().size());
        assertEquals(1, day.roll("R0002").frames().size());
        day.press(Key.Name.F3).pass(10).press(Key.Name.DOWN).press(Key.Name.DOWN);
        day.press(Key.Name.ENTER);
        assertEquals("R0001", menu(day).field().title());
        pickRow(day, "into the hand, to finish it or go on");
        assertEquals(
                "645 back 1", day.shoot().shown().placeInHand().orElseThrow().toString());
    }

    @Test
    void closeUpsAreSetWithoutTyping() {
        Playing day = Playing.medium("m 5.6 125");
        pick(day, "close-up: magnification").press(Key.Name.ENTER);
        assertTrue(day.said().contains("mag 0.5 takes 1.2 stops"), day.said());
        pick(day, "take filter, tube, bias, hold and flash off");
        assertFalse(pick(day, "close-up: a tube").press(Key.Name.ENTER).said().isEmpty());
        assertTrue(day.said().contains("30"), day.said());
    }

    @Test
    void enterAsksForWordsWhereNoneWereTyped() {
        Playing day = Playing.medium("4 125");
        pick(day, "a note on the roll").press(Key.Name.ENTER);
        assertEquals("type the words first; Esc goes back", day.said());
        day.type("bow seat").press(Key.Name.ENTER);
        assertEquals("bow seat", day.roll("R0001").note().orElseThrow());
    }

    /** Half shot, then as before, then what the bag holds, then the newest rolls' films, then the others. */
    @Test
    void theLikelyFilmsStandFirstAndEachHasItsRating() {
        Playing day = Playing.of(
                "bag add 3 cn400 120",
                "bag add 2 bw400 135",
                "cam 35",
                "load bw400",
                "4 125 x3",
                "rewind",
                "load bw100",
                "4 125 x36",
                "unload");
        pick(day, "load a film");
        List<Choice> films = menu(day).field().choices();
        assertEquals(
                List.of("r1", "", "bw400", "bw100"),
                films.stream().map(Choice::typed).limit(4).toList(),
                films.toString());
        assertTrue(films.stream().allMatch(it -> it.name().contains("EI ")), films.toString());
        assertTrue(films.get(2).name().endsWith("1 in the bag"), films.toString());
        assertTrue(films.get(0).name().contains("frame 4"), films.toString());
        assertEquals(
                List.of("load r1", "load", "load bw400", "load bw100"),
                day.shoot().picks().rows().stream()
                        .map(it -> it.line())
                        .limit(4)
                        .toList());
    }

    @Test
    void whatComesNextMostLikelyStandsFirst() {
        assertEquals("take up a camera", first(Playing.of()));
        assertEquals("load a film", first(Playing.of("cam 645")));
        assertEquals("new reading", first(Playing.medium("routine skip")));
        assertEquals("a frame with another setting", first(Playing.medium("m 5.6 125")));
        assertEquals("finish the roll", first(Playing.medium("4 125", "m 5.6 125", "x15")));
        assertEquals("stop the bulb timer", first(Playing.medium("m 5.6 125", "set b30s", "time")));
    }

    /** Each way through the actions, by its first rows, ends in a line that the program takes. */
    @Test
    void everyActionMakesALineThatIsTaken() {
        for (List<String> lines : List.of(
                List.<String>of(),
                List.of("cam 645"),
                List.of("cam 645", "load cn400", "m 5.6 125", "4 125", "bag add 3 cn400 120"),
                List.of("cam 35", "load bw400", "4 125 x3"))) {
            Playing day = Playing.of(lines.toArray(String[]::new)).press(Key.Name.ENTER);
            List<String> refused = new ArrayList<>();
            int whole = 0;
            for (Menu end : ends(menu(day), 0)) {
                whole++;
                if (day.shoot().outcome(end.preview()) instanceof Outcome.Rejected why) {
                    refused.add(end.preview() + ": " + why.why());
                }
            }
            assertTrue(whole > 5, whole + " lines");
            assertEquals(List.of(), refused);
        }
    }

    /** The menus of which the next Enter makes a whole line: every row of a list of names, the first of numbers. */
    private static List<Menu> ends(Menu menu, int depth) {
        List<Menu> all = new ArrayList<>();
        assertTrue(depth < 9, menu.preview());
        boolean isList = menu.field().entry() == Field.Entry.NUMBERED;
        for (int i = 0; i < Math.max(1, isList ? menu.field().choices().size() : 1); i++) {
            Menu at = isList ? menu.moved(i - menu.chosen()) : menu;
            at = at.canEnter() ? at : at.typed("bow seat");
            if (at.isLast()) {
                all.add(at);
            } else {
                all.addAll(ends(at.taken().next().orElseThrow(), depth + 1));
            }
        }
        return all;
    }

    private static String first(Playing day) {
        return menu(day.press(Key.Name.ENTER)).field().choices().get(0).name();
    }

    private static Menu menu(Playing day) {
        return day.shoot().view().menu().orElseThrow();
    }

    private static Playing pick(Playing day, String name) {
        return pickRow(day.press(Key.Name.ENTER), name);
    }

    private static Playing pickRow(Playing day, String name) {
        List<Choice> choices = menu(day).field().choices();
        int row = choices.stream().map(Choice::name).toList().indexOf(name);
        assertFalse(row < 0, name + " in " + Set.copyOf(choices));
        for (int i = 0; i < row; i++) {
            day.press(Key.Name.DOWN);
        }
        return day.press(Key.Name.ENTER);
    }
}
