package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import takeup.exposure.FilmSpeed;
import takeup.handoff.Rolls;
import takeup.kit.FilmSize;
import takeup.roll.Development;
import takeup.roll.Exposure;
import takeup.roll.Film;
import takeup.roll.Frame;
import takeup.roll.Roll;

/** What a lab is expected to scan of a roll: film of 400 that tolerates 1 stop under and 3 over. */
class SlotTest {
    /** EV 11 at ISO 100 is f/4 at 1/125 s (tables of exposure values); film of 400 gets 2 stops more than it needs. */
    @Test
    void aFrameIsExpectedWithItsLightAboveBoxSpeed() {
        Slot slot = Slot.of(roll(0, 4, 1 / 125.0, 1 / 125.0)).get(1);
        assertEquals(List.of(1), slot.frames());
        assertEquals(2, slot.number());
        assertEquals(2, slot.overStops().orElseThrow(), 0.1);
        assertEquals(Optional.of(new Slate(Rolls.loaded().roll().id(), 2)), slot.slate());
        assertFalse(slot.isFarOff());
    }

    @Test
    void aPushCountsAsLight() {
        assertEquals(3, Slot.of(roll(1, 4, 1 / 125.0)).get(0).overStops().orElseThrow(), 0.1);
    }

    /**
     * 1/8 s is four stops more than 1/125 s: 6 over; 1/1000 s is three stops less: 1 under, which the film tolerates.
     */
    @Test
    void whatTheFilmDoesNotBearMayBeLeftOut() {
        List<Slot> slots = Slot.of(roll(0, 4, 1 / 8.0, 1 / 1000.0));
        assertTrue(slots.get(0).isFarOff());
        assertFalse(slots.get(1).isFarOff());
    }

    @Test
    void ofAFrameThatNobodyLoggedTheLightIsNotKnown() {
        Slot slot = Slot.of(Rolls.loaded()
                        .frame(1, Frame.Kind.UNLOGGED, Exposure.UNKNOWN)
                        .roll())
                .get(0);
        assertEquals(OptionalDouble.empty(), slot.overStops());
        assertFalse(slot.isFarOff());
    }

    @Test
    void twoHalfFramesShareAFileOfTwiceTheirWidth() {
        List<Slot> pairs = Slot.pairs(halves(0, 1, 2, 3), 0);
        assertEquals(
                List.of(List.of(0, 1), List.of(2, 3)),
                pairs.stream().map(Slot::frames).toList());
        assertEquals(List.of(1, 2), pairs.stream().map(Slot::number).toList());
        assertEquals(0.5, pairs.get(0).overStops().orElseThrow(), 1e-12);
        assertEquals(1.5, pairs.get(0).aspect(), 1e-12);
    }

    @Test
    void theFirstHalfFrameMayShareItsFileWithOneThatNobodyLogged() {
        assertEquals(
                List.of(List.of(0), List.of(1, 2), List.of(3)),
                Slot.pairs(halves(0, 1, 2, 3), -1).stream().map(Slot::frames).toList());
    }

    @Test
    void ofAPairWithAnUnknownHalfTheLightIsNotKnown() {
        List<Slot> halves = List.of(
                half(0, OptionalDouble.of(1), Frame.Kind.EXPOSED), half(1, OptionalDouble.empty(), Frame.Kind.BLANK));
        Slot pair = Slot.pairs(halves, 0).get(0);
        assertEquals(OptionalDouble.empty(), pair.overStops());
        assertEquals(Frame.Kind.EXPOSED, pair.kind(), "of two the better");
    }

    private static List<Slot> halves(double... over) {
        return IntStream.range(0, over.length)
                .mapToObj(it -> half(it, OptionalDouble.of(over[it]), Frame.Kind.EXPOSED))
                .toList();
    }

    /** A half frame of 18x24: its long side is 4/3 of the short one. */
    private static Slot half(int place, OptionalDouble over, Frame.Kind kind) {
        return new Slot(
                Rolls.loaded().roll().id(), List.of(place), place + 1, kind, over, false, 4 / 3.0, Optional.empty());
    }

    private static Roll roll(double pushStops, double fNumber, double... seconds) {
        Film film = new Film(Rolls.NEGATIVE, FilmSize.F120, new FilmSpeed(200), new Development("C-41", pushStops), 16);
        Rolls rolls = Rolls.loaded(Rolls.REFLEX, film);
        for (int i = 0; i < seconds.length; i++) {
            rolls.frame(
                    i + 1,
                    Frame.Kind.EXPOSED,
                    Rolls.exposure("15:12:40", Rolls.set(fNumber, seconds[i]), Rolls.incident(11, "15:12:00")));
        }
        return rolls.roll();
    }
}
