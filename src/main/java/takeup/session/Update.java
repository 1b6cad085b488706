package takeup.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.BulbTimer;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Message;

/**
 * What each message makes of the model: a key is looked up in {@link KeyBindings}, the answers of the disk move what it
 * holds, and time goes on.
 */
public final class Update implements Message.Cases<Transition> {
    private final Session session;

    private Update(Session session) {
        this.session = session;
    }

    /** The model after a message, and what it asks of the outside. */
    public static Transition update(Session session, Message message) {
        return message.match(new Update(session));
    }

    @Override
    public Transition pressed(Message.Pressed message) {
        Key key = message.key();
        Session then = at(message.at(), message.ticks());
        Optional<Session> answered = AnswerKeys.rest(then, key);
        if (answered.isPresent()) {
            return ringing(Transition.to(answered.get()));
        }
        Session now = then.with(then.lastAnswer().read());
        boolean isAlone = message.arrival() == Message.Arrival.ALONE;
        return ringing(SaveFlow.retry(isAlone ? now : HeldKeyFlow.inABurst(now))
                .then(it -> HeldKeyFlow.beforeKey(it, key))
                .then(it -> act(key.equals(Key.ctrl('c')) ? it : QuitFlow.forgetCtrlC(it), key, message.arrival())));
    }

    private static Transition act(Session before, Key key, Message.Arrival arrival) {
        Session session = PromptKeys.onSelected(AnswerKeys.beforeOther(before, key), key);
        if (ActionKeys.wants(session, key)) {
            return ActionKeys.typed(session, key.text());
        }
        Optional<KeyBinding> binding = KeyBindings.of(key, session);
        // What comes with other bytes in one read is pasted: its first letter is no answer.
        boolean isPasted = binding.isPresent()
                && binding.get().when() == KeyBinding.When.QUESTIONED
                && arrival != Message.Arrival.ALONE;
        if (binding.isPresent() && !isPasted) {
            Optional<String> whyNot = KeyObstacle.of(binding.get().action(), session);
            return whyNot.isPresent()
                    ? Transition.to(session.say(LastAnswer.Tone.REFUSAL, whyNot.get()))
                    : KeyActions.act(binding.get().action(), session);
        }
        return Transition.to(
                switch (key.name()) {
                    case PASTE -> PromptKeys.pasted(session, key.text());
                    case CHARACTER -> PromptKeys.typed(session, key.text());
                    default -> session;
                });
    }

    @Override
    public Transition ticked(Message.Ticked message) {
        return ringing(HeldKeyFlow.onTick(at(message.at(), message.ticks())));
    }

    private Session at(OffsetDateTime now, long ticks) {
        return session.with(session.clock().at(now, ticks));
    }

    /** At one place, so that the class archive, which is made without a tick, holds it. */
    private Transition ringing(Transition done) {
        return done.then(this::ring);
    }

    /**
     * Rings once for each timed exposure whose time came since the last message, and asks to be woken for one that is
     * near.
     */
    private Transition ring(Session after) {
        List<Effect> effects = new ArrayList<>();
        for (BulbTimer timer : after.saved().day().timers().values()) {
            if (timer.targetSeconds().isEmpty()) {
                continue;
            }
            double target = timer.targetSeconds().getAsDouble();
            double left = target - timer.elapsed(after.now());
            if (left <= 0 && timer.elapsed(session.now()) < target) {
                effects.add(new Effect.Bell());
            } else if (left > 0 && left < 1 && !after.heldKey().isWaiting()) {
                effects.add(new Effect.Wake((long) Math.ceil(left * 1000)));
            }
        }
        return new Transition(after, effects);
    }

    @Override
    public Transition saved(Message.Saved message) {
        if (!session.saveQueue().expects(message.step())) {
            return Transition.to(session);
        }
        return SaveFlow.write(SaveFlow.saved(session, message.export()))
                .then(QuitFlow::whenSaved)
                .then(ViewFlow::listIfShown);
    }

    @Override
    public Transition saveFailed(Message.SaveFailed message) {
        if (!session.saveQueue().expects(message.step())) {
            return Transition.to(session);
        }
        Session failed = session.with(session.saveQueue().failed(message.why()));
        return switch (session.pendingLines().leaving()) {
            case ANYWAY -> QuitFlow.quit(failed);
            case WHEN_SAVED -> LineFlow.giveUp(failed.say(LastAnswer.Tone.REFUSAL, QuitFlow.STILL_NOT_SAVED));
            case NO, CTRL_C_ONCE -> Transition.to(failed);
        };
    }

    @Override
    public Transition notice(Message.Notice message) {
        return Transition.to(session.say(LastAnswer.Tone.REFUSAL, message.text()));
    }

    @Override
    public Transition fetched(Message.Fetched message) {
        return LineFlow.fetched(session, message);
    }

    @Override
    public Transition listed(Message.Listed message) {
        return Transition.to(session.with(session.view().listing(message)));
    }

    @Override
    public Transition orderRead(Message.OrderRead message) {
        return Transition.to(OrderFlow.read(session, message));
    }

    @Override
    public Transition orderWritten(Message.OrderWritten message) {
        return Transition.to(OrderFlow.written(session, message));
    }

    @Override
    public Transition orderMarked(Message.OrderMarked message) {
        return Transition.to(OrderFlow.marked(session, message));
    }

    @Override
    public Transition found(Message.Found message) {
        Session shown = session.with(session.view().finding(message.frames()));
        return Transition.to(
                message.frames().problems().isEmpty()
                        ? shown.saysNothing()
                        : shown.say(
                                LastAnswer.Tone.REFUSAL,
                                message.frames().problems().get(0)));
    }

    @Override
    public Transition resized(Message.Resized message) {
        return Transition.to(session);
    }

    @Override
    public Transition ended(Message.Ended message) {
        return HeldKeyFlow.onEnd(session).then(QuitFlow::leaveAnyway);
    }
}
