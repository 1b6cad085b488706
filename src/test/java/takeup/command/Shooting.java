package takeup.command;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Assertions;
import takeup.ShippedShelf;
import takeup.advice.StandingWarnings;
import takeup.day.CameraSetup;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Kit;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.Setting;
import takeup.session.MemoryStore;
import takeup.session.PromptSession;

/**
 * A regatta day at the prompt, with the profiles that go out with the program: lines are typed, and all that they did
 * is looked at.
 */
public final class Shooting {
    private static final Kit KIT = new Kit(new ShippedShelf());

    private OffsetDateTime now = OffsetDateTime.parse("2026-09-12T15:00+02:00");
    private final PromptSession session = new PromptSession(
            ShootState.of(KIT, List.of(), Optional.empty(), Set.of()), new MemoryStore(KIT), "R", now, ticks());
    private Outcome.Answer last = new Outcome.Answer("", "", Json.object(), List.of());

    /** Nothing typed yet but these lines. */
    public static Shooting of(String... lines) {
        Shooting shooting = new Shooting();
        for (String line : lines) {
            shooting.type(line);
        }
        return shooting;
    }

    /** The 645 reflex (80 mm, half stops, 8 s to 1/1000) with colour negative 400 at EI 200. */
    public static Shooting medium(String... lines) {
        Shooting shooting = of("cam 645", "load cn400");
        for (String line : lines) {
            shooting.type(line);
        }
        return shooting;
    }

    /** Time goes by. */
    public Shooting later(int minutes) {
        now = now.plusMinutes(minutes);
        return this;
    }

    /** The clock is set to a time and an offset. */
    public Shooting clock(String time) {
        now = OffsetDateTime.parse(time);
        return this;
    }

    public OffsetDateTime now() {
        return now;
    }

    /** Milliseconds that go by as the time of day does: nobody sets the clock while the program runs. */
    private long ticks() {
        return now.toInstant().toEpochMilli();
    }

    private Outcome read(String line) {
        return session.read(line, now, ticks()).outcome();
    }

    /** A line that does something; what is said then. */
    public String type(String line) {
        Outcome outcome = read(line);
        if (outcome instanceof Outcome.Accepted does) {
            last = does.answer();
            return last.text();
        }
        return Assertions.fail("\"" + line + "\" should do something, but " + outcome);
    }

    /** A line that does something, and a question about it is answered with yes. */
    public String typeSurely(String line) {
        Outcome outcome = read(line);
        if (outcome instanceof Outcome.Accepted does) {
            last = does.answer();
            return last.text();
        }
        return type("yes");
    }

    /** A line that is refused: why. Nothing has changed. */
    public String refused(String line) {
        ShootState before = situation();
        Outcome outcome = read(line);
        Assertions.assertEquals(before, situation());
        if (outcome instanceof Outcome.Rejected refused) {
            Assertions.assertFalse(refused.why().isBlank(), "a refusal says why");
            return refused.why();
        }
        return Assertions.fail("\"" + line + "\" should be refused, but " + outcome);
    }

    /** A line that is questioned; nothing has changed, and {@code yes} would do it. */
    String asked(String line) {
        Outcome outcome = read(line);
        if (outcome instanceof Outcome.NeedsConfirmation asked) {
            return asked.question();
        }
        return Assertions.fail("\"" + line + "\" should be questioned, but " + outcome);
    }

    /** A line that does something and asks something behind it: what it asks. */
    public String askedBehind(String line) {
        Outcome outcome = read(line);
        if (outcome instanceof Outcome.Accepted does && does.thenAsks().isPresent()) {
            last = does.answer();
            return does.thenAsks().get().question();
        }
        return Assertions.fail("\"" + line + "\" should ask something, but " + outcome);
    }

    public ShootState situation() {
        return session.state();
    }

    Outcome.Answer answer() {
        return last;
    }

    /** The codes of what was warned of with the last answer, with a blank between. */
    public String warnings() {
        return String.join(
                " ", last.warnings().stream().map(it -> it.code().toString()).toList());
    }

    /** What stands on the screen as a word now. */
    public String standing() {
        return String.join(
                " ",
                StandingWarnings.of(situation().asOf(now), now).stream()
                        .map(Object::toString)
                        .toList());
    }

    public Roll roll() {
        return situation().rollInHand().orElseThrow();
    }

    public Roll roll(String id) {
        return situation().rolls().get(RollId.parse(id).orElseThrow());
    }

    /** The newest frame of the roll in hand. */
    Frame frame() {
        return roll().newest().orElseThrow();
    }

    Frame frame(int number) {
        return roll().frames().get(roll().indexOf(number));
    }

    CameraSetup inHand() {
        return situation().inHand();
    }

    Setting setting() {
        return inHand().setting();
    }

    /** The pair in hand as it prints: {@code f/4 1/125}; a point for what is not known. */
    String pair() {
        return pair(setting());
    }

    public static String pair(Setting setting) {
        return setting.aperture().map(Object::toString).orElse(".") + " "
                + setting.time().map(Object::toString).orElse(".");
    }

    /** The pair of a frame. */
    public static String pair(Frame frame) {
        return pair(frame.exposure().setting());
    }

    /** The frames of the roll in hand: number, kind if it is not exposed, pair. */
    String frames() {
        return frames(roll());
    }

    public static String frames(Roll roll) {
        return String.join(
                ", ",
                roll.frames().stream()
                        .map(it -> it.number()
                                + (it.was().isPresent() ? "(" + it.was().getAsInt() + ")" : "")
                                + (it.kind() == Frame.Kind.EXPOSED ? "" : " " + it.kind())
                                + (pair(it).equals(". .") ? "" : " " + pair(it)))
                        .toList());
    }

    /** The light of the day, EV at ISO 100. */
    double ev() {
        return situation().day().light().orElseThrow().ev100().stops();
    }

    /** The error of the newest frame in stops. */
    OptionalDouble error() {
        return ExposureResult.of(roll(), frame()).errorStops();
    }
}
