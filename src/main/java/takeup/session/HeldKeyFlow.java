package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.framing.RatingCommand;
import takeup.history.ShootState;
import takeup.kit.Suggestion;
import takeup.message.Effect;
import takeup.message.HeldKey;
import takeup.message.HeldKey.Kind;
import takeup.message.Key;
import takeup.message.PendingLines.From;
import takeup.text.English;

/**
 * Space and Ctrl-T log a frame, and a held key logs no more than the first. A Space that comes alone is a frame at
 * once; one soon after another, or in a burst of bytes, waits for a moment and is a frame only if it does not come
 * again within that.
 */
final class HeldKeyFlow {
    /** So many frames a line logs at most. */
    private static final int MOST_FRAMES = 99;

    private HeldKeyFlow() {}

    static Transition frame(Session session) {
        if (EnterKey.isJustDenied(session)) {
            // A note was begun with n, and not a frame fired on film that is not right.
            return Transition.to(session.with(session.prompt().with("n ")));
        }
        long ticks = session.clock().ticks();
        return session.heldKey().isFirst(ticks)
                ? oneFrame(session.with(HeldKey.actedOn(ticks)))
                : pressed(session, Kind.FRAME);
    }

    static Transition tally(Session session) {
        return pressed(session, Kind.TALLY);
    }

    private static Transition pressed(Session session, Kind kind) {
        HeldKey held = session.heldKey().pressed(kind, session.clock().ticks());
        return Transition.to(session.with(held), new Effect.Wake(HeldKey.REPEAT_MILLIS));
    }

    /** A key that came with others in one read: no Space of it is acted on at once. */
    static Session inABurst(Session session) {
        return session.with(session.heldKey().inABurst(session.clock().ticks()));
    }

    /** Before a key is acted on: what waits is settled, unless this is the same key once more. */
    static Transition beforeKey(Session session, Key key) {
        HeldKey held = session.heldKey();
        return held.isWaiting() && !held.isRepeatedBy(key, session.clock().ticks())
                ? settle(session)
                : Transition.to(session);
    }

    /** After a moment without a key. */
    static Transition onTick(Session session) {
        HeldKey held = session.heldKey();
        return held.isWaiting() && held.isOver(session.clock().ticks()) ? settle(session) : Transition.to(session);
    }

    /** No key will come any more: a single press is a frame. */
    static Transition onEnd(Session session) {
        return session.heldKey().isWaiting() && !session.heldKey().isHeld() ? settle(session) : Transition.to(session);
    }

    private static Transition settle(Session session) {
        HeldKey held = session.heldKey();
        Session free = session.with(held.settled());
        if (held.kind() == Kind.TALLY) {
            return held.isHeld() ? Transition.to(heldTally(free, held.count())) : LineFlow.take(free, "tally");
        }
        if (held.isHeld()) {
            Optional<String> setting = session.highlighted().map(it -> typed(session, it));
            return Transition.to(heldSpace(free.withoutChoice(), held.count(), setting));
        }
        return oneFrame(free);
    }

    private static Transition oneFrame(Session session) {
        Optional<String> setting = session.highlighted().map(it -> typed(session, it));
        Session free = session.withoutChoice();
        if (today(free).timerInHand().isPresent()) {
            // The shutter is open: this Space closes it, and what the watch says is what the frame got.
            return LineFlow.take(free, From.SPACE, List.of("time", RatingCommand.space(today(free))));
        }
        return setting.isPresent()
                ? LineFlow.take(free, From.SUGGESTION, List.of(setting.get()))
                : LineFlow.take(free, From.SPACE, List.of(RatingCommand.space(today(free))));
    }

    private static ShootState today(Session session) {
        return session.afterPending().asOf(session.now());
    }

    private static Session heldTally(Session session, int count) {
        int frames = Math.min(MOST_FRAMES, count);
        return session.with(session.prompt().withSelected("tally x" + frames))
                .say(
                        LastAnswer.Tone.REFUSAL,
                        "Ctrl-T was held. Enter counts " + English.count(frames, "frame") + ", Esc none");
    }

    private static Session heldSpace(Session session, int count, Optional<String> setting) {
        int frames = Math.min(MOST_FRAMES, count);
        String line = setting.map(it -> it + " ").orElse("") + "x" + frames;
        return session.with(session.prompt().withSelected(line))
                .say(
                        LastAnswer.Tone.REFUSAL,
                        "Space was held. Enter logs " + English.count(frames, "frame") + " more, Esc none"
                                + (count > MOST_FRAMES
                                        ? " (" + count + " came in; one line logs up to " + MOST_FRAMES + ")"
                                        : ""));
    }

    /** A suggestion as it is typed; a time past the dial is one by the watch. */
    static String typed(Session session, Suggestion suggestion) {
        boolean isOnDial = session.afterPending()
                .shutterInHand()
                .filter(it -> suggestion.time().map(it.marks()::contains).orElse(false))
                .isPresent();
        return suggestion.aperture()
                + suggestion
                        .time()
                        .map(it -> " " + (!isOnDial && it.seconds() >= 1 ? "b" : "") + it)
                        .orElse("");
    }
}
