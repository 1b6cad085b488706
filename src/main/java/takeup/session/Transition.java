package takeup.session;

import java.util.List;

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
}
