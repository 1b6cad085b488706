package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import takeup.message.Effect;

/**
 * The model after a message, and what it asks of the outside.
 *
 * @param session the model
 * @param effects in the order in which they are to be done
 */
public record Transition(Session session, List<Effect> effects) {
    public Transition {
        effects = List.copyOf(effects);
    }

    static Transition to(Session session, Effect... effects) {
        return new Transition(session, List.of(effects));
    }

    /** The same, with another transition from where this one ends. */
    Transition then(Function<Session, Transition> next) {
        Transition after = next.apply(session);
        if (effects.isEmpty()) {
            return after;
        }
        List<Effect> all = new ArrayList<>(effects);
        all.addAll(after.effects());
        return new Transition(after.session(), all);
    }
}
