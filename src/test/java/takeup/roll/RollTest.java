package takeup.roll;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static takeup.roll.SampleRoll.and;
import static takeup.roll.SampleRoll.corrected;
import static takeup.roll.SampleRoll.dropped;
import static takeup.roll.SampleRoll.exposedAgain;
import static takeup.roll.SampleRoll.inserted;
import static takeup.roll.SampleRoll.logged;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.exposure.Aperture;
import takeup.exposure.FilmSpeed;
import takeup.kit.FilmSize;

/** What the events of one roll add up to. */
class RollTest {
    private static final RollEvent PUSHED = new RollEvent.RollCorrected(RollChange.push(1));
    private static final RollEvent TORN =
            new NoteEvent.ConditionNoted(new Condition(Condition.Kind.TORN, Optional.empty()));
    private static final Assignment REGATTA =
            new Assignment("Regatta day", LocalDate.parse("2026-09-12"), Optional.empty());

    /** Every kind of event that changes a roll, each on a roll with frames 1 to 3. */
    static Stream<RollEvent> changes() {
        return Stream.of(
                logged(4),
                inserted(2),
                exposedAgain("crew portrait"),
                corrected(2, 2, SettingPatch.note("cox")),
                dropped(2, 2),
                new RollEvent.DoubleAnnounced(1),
                new RollEvent.CounterShown(6),
                PUSHED,
                new NoteEvent.Noted("from the boathouse"),
                TORN,
                new NoteEvent.ShootAssigned(REGATTA),
                new RollEvent.LoadChecked(LoadCheck.What.MOVING, LoadCheck.Answer.YES),
                new RollEvent.Rewound(),
                new RollEvent.Reloaded(SampleRoll.OTHER_CAMERA, Optional.empty(), 1),
                new RollEvent.Unloaded());
    }

    @Test
    void nothingIsARollBeforeItWasLoaded() {
        assertEquals(Optional.empty(), Roll.of(List.of()));
        assertEquals(
                Optional.empty(), Roll.of(List.of(new RollRecord(1, SampleRoll.LOADED_AT, new RollEvent.Unloaded()))));
    }

    @Test
    void aLoadedRollIsOpenInItsCameraAndBack() {
        Roll roll = SampleRoll.roll();
        assertEquals(Roll.State.OPEN, roll.state());
        assertEquals("R0007", roll.id().toString());
        assertEquals("645 back 1", roll.place());
        assertEquals(SampleRoll.LOADED_AT, roll.loadedAt());
        assertEquals(Optional.empty(), roll.finishedAt());
    }

    @Test
    void aSecondLoadingOfTheSameRollChangesNothing() {
        Roll roll = SampleRoll.roll(logged(1), SampleRoll.LOADING);
        assertEquals("1", SampleRoll.frames(roll));
    }

    @Test
    void anUnloadedRollIsFinishedAndKnowsSinceWhen() {
        Roll roll = SampleRoll.roll(logged(1), new RollEvent.Unloaded());
        assertEquals(Roll.State.FINISHED, roll.state());
        assertEquals(Optional.of(SampleRoll.LOADED_AT.plusMinutes(2)), roll.finishedAt());
    }

    @ParameterizedTest
    @MethodSource("changes")
    void everyChangeCanBeUndoneAndRedone(RollEvent change) {
        RollEvent[] before = logged(1, 3);
        RollEvent undone = new RollEvent.Undone(5);
        RollEvent redone = new RollEvent.Redone(5);
        same(SampleRoll.roll(before), SampleRoll.roll(and(before, change, undone)));
        same(SampleRoll.roll(and(before, change)), SampleRoll.roll(and(before, change, undone, redone)));
        same(SampleRoll.roll(before), SampleRoll.roll(and(before, change, undone, redone, undone)));
        assertFalse(sameWords(SampleRoll.roll(before), SampleRoll.roll(and(before, change))), "it changes something");
    }

    @ParameterizedTest
    @MethodSource("changes")
    void aRollThatIsCarriedOnIsTheOneThatIsReadAnew(RollEvent change) {
        Roll before = SampleRoll.roll(logged(1, 3));
        List<RollRecord> all = SampleRoll.records(and(logged(1, 3), change));
        assertEquals(Roll.of(all).orElseThrow(), before.and(all.get(all.size() - 1)));
    }

    @Test
    void aStepThatIsUndoneInTheMiddleLeavesTheLaterOnesAlone() {
        Roll roll = SampleRoll.roll(logged(1), new NoteEvent.Noted("bow side"), logged(2), new RollEvent.Undone(3));
        assertEquals("1 2", SampleRoll.frames(roll));
        assertEquals(Optional.empty(), roll.note());
    }

    @Test
    void aRollWhoseLoadingWasUndoneIsWithdrawnUntilItIsRedone() {
        assertEquals(
                Roll.State.WITHDRAWN, SampleRoll.roll(new RollEvent.Undone(1)).state());
        assertEquals(
                Roll.State.WITHDRAWN,
                SampleRoll.roll(new RollEvent.Undone(1), new NoteEvent.Noted("late"))
                        .state());
        assertEquals(
                Roll.State.OPEN,
                SampleRoll.roll(new RollEvent.Undone(1), new RollEvent.Redone(1))
                        .state());
    }

    @Test
    void theRevisionCountsEveryEventAlsoThoseThatWereUndone() {
        assertEquals(1, SampleRoll.roll().revision());
        assertEquals(
                4,
                SampleRoll.roll(logged(1), logged(2), new RollEvent.Undone(3)).revision());
    }

    @Test
    void anEventOfALaterVersionChangesNothing() {
        Roll roll = SampleRoll.roll(logged(1), new RollEvent.Unknown("warmed", "{}"), logged(2));
        assertEquals("1 2", SampleRoll.frames(roll));
        assertEquals(4, roll.revision());
    }

    @Test
    void onlyAFurtherFrameOrASecondExposureEndsTheWaitingForADouble() {
        RollEvent[] awaited = {logged(1), new RollEvent.DoubleAnnounced(1)};
        assertTrue(SampleRoll.roll(awaited).doubleAwaited());
        assertTrue(SampleRoll.roll(and(awaited, corrected(1, 1, SettingPatch.note("cox"))))
                .doubleAwaited());
        assertTrue(SampleRoll.roll(and(awaited, new NoteEvent.Noted("cox"))).doubleAwaited());
        assertTrue(SampleRoll.roll(and(awaited, inserted(1))).doubleAwaited());
        assertTrue(SampleRoll.roll(and(awaited, new RollEvent.CounterShown(3))).doubleAwaited());
        assertFalse(SampleRoll.roll(and(awaited, logged(2))).doubleAwaited());
        assertFalse(SampleRoll.roll(and(awaited, exposedAgain(""))).doubleAwaited());
        assertFalse(SampleRoll.roll(and(awaited, dropped(1, 1))).doubleAwaited());
        assertFalse(SampleRoll.roll(and(awaited, new RollEvent.Rewound())).doubleAwaited());
    }

    @Test
    void theNoteOfASecondExposureJoinsThatOfTheFirst() {
        Roll roll = SampleRoll.roll(
                logged(1), corrected(1, 1, SettingPatch.note("cox")), exposedAgain("and the boat"), exposedAgain(""));
        assertEquals(Optional.of("cox; and the boat"), roll.frames().get(0).note());
    }

    @Test
    void aRewoundRollComesBackBehindItsLastFrameWithSpareFramesBlank() {
        RollEvent[] rewound = and(logged(1, 3), new RollEvent.Rewound());
        Roll out = SampleRoll.roll(rewound);
        assertEquals(Roll.State.REWOUND, out.state());
        assertEquals(3, out.rewindings().get(0).after());
        assertEquals(Optional.empty(), out.rewindings().get(0).again());

        Roll in = SampleRoll.roll(and(rewound, new RollEvent.Reloaded(SampleRoll.OTHER_CAMERA, Optional.empty(), 2)));
        assertEquals(Roll.State.OPEN, in.state());
        assertEquals("66", in.place());
        assertEquals("1 2 3 4-blank 5-blank", SampleRoll.frames(in));
        assertEquals(6, in.next());
        assertEquals(
                List.of(new Rewinding(
                        SampleRoll.LOADED_AT.plusMinutes(4), 4, Optional.of(SampleRoll.LOADED_AT.plusMinutes(5)), 2)),
                in.rewindings());
        assertEquals(SampleRoll.LOADED_AT, in.loadedAt(), "it was loaded when it was first loaded");
    }

    @Test
    void aRollCanBeRewoundTwice() {
        RollEvent reloaded = new RollEvent.Reloaded(SampleRoll.CAMERA, Optional.of("2"), 0);
        Roll roll = SampleRoll.roll(
                and(logged(1, 3), new RollEvent.Rewound(), reloaded, logged(4), new RollEvent.Rewound(), reloaded));
        assertEquals(
                List.of(3, 4), roll.rewindings().stream().map(Rewinding::after).toList());
        assertEquals("645 back 2", roll.place());
    }

    @Test
    void aLoadCheckKnowsWhichFrameComesNext() {
        Roll roll = SampleRoll.roll(logged(1), new RollEvent.LoadChecked(LoadCheck.What.MOVING, LoadCheck.Answer.NO));
        assertEquals(
                List.of(new LoadCheck(
                        SampleRoll.LOADED_AT.plusMinutes(2), 2, LoadCheck.What.MOVING, LoadCheck.Answer.NO)),
                roll.loadChecks());
    }

    @Test
    void whatTheLabMustKnowAddsUpAndSoDoNotesButAShootReplacesTheOneBefore() {
        Assignment party = new Assignment("Party", LocalDate.parse("2026-09-12"), Optional.of("the club"));
        Roll roll = SampleRoll.roll(
                TORN,
                TORN,
                new NoteEvent.Noted("bow side"),
                new NoteEvent.Noted("wet"),
                new NoteEvent.ShootAssigned(REGATTA),
                new NoteEvent.ShootAssigned(party));
        assertEquals(2, roll.conditions().size());
        assertEquals(Optional.of("bow side; wet"), roll.note());
        assertEquals(Optional.of(party), roll.assignment());
    }

    @Test
    void aBlankFrameThatGetsAnApertureWasExposed() {
        SettingPatch atEight = SettingPatch.aperture(Aperture.literal(8));
        Roll roll = SampleRoll.roll(inserted(1), corrected(1, 1, atEight));
        assertEquals("1", SampleRoll.frames(roll));
        assertEquals(
                Optional.of(Aperture.literal(8)),
                roll.frames().get(0).exposure().setting().aperture());
    }

    @Test
    void aFrameThatTurnsOutBlankLosesItsSettingButNotItsTime() {
        Roll roll = SampleRoll.roll(logged(1), corrected(1, 1, SettingPatch.kind(Frame.Kind.BLANK)));
        assertEquals(Setting.NONE, roll.frames().get(0).exposure().setting());
        assertEquals(
                Optional.of(SampleRoll.LOADED_AT.plusMinutes(1)),
                roll.frames().get(0).exposure().at());
    }

    @Test
    void aCorrectionOfFramesThatAreNotThereChangesNothing() {
        same(
                SampleRoll.roll(logged(1, 2)),
                SampleRoll.roll(and(logged(1, 2), corrected(3, 9, SettingPatch.note("cox")))));
    }

    @Test
    void aCorrectionOfTheFilmChangesOnlyWhatItNames() {
        Film pushed = SampleRoll.roll(PUSHED).film();
        assertEquals("C-41, PUSH 1 STOP (rated 200, box 400)", pushed.developmentWords());
        assertEquals(SampleRoll.STOCK, pushed.stock());
        assertEquals(16, pushed.framesNominal());

        RollChange everything = new RollChange(
                Optional.of(SampleRoll.stock("cn160", 160, 160)),
                Optional.of(FilmSize.F220),
                Optional.of(new FilmSpeed(100)),
                OptionalDouble.of(-0.5),
                Optional.of("E-6"),
                OptionalInt.of(32));
        Roll roll = SampleRoll.roll(and(logged(1, 3), new RollEvent.RollCorrected(everything)));
        assertEquals("E-6, PULL 0.5 STOPS (rated 100, box 160)", roll.film().developmentWords());
        assertEquals(FilmSize.F220, roll.film().size());
        assertEquals(29, roll.framesLeft());
    }

    private static void same(Roll expected, Roll found) {
        assertEquals(words(expected), words(found));
    }

    private static boolean sameWords(Roll one, Roll other) {
        return words(one).equals(words(other));
    }

    /** All of a roll but how many events it took. */
    private static List<Object> words(Roll roll) {
        return List.of(roll.id(), roll.life(), roll.loadedIn(), roll.film(), roll.log(), roll.handling(), roll.notes());
    }
}
