package takeup.shoot;

import java.util.List;

/**
 * The model after a message, and what it asks of the outside.
 *
 * @param shoot the model
 * @param effects in the order in which they are to be done
 */
public record Step(Shoot shoot, List<Effect> effects) {
    public Step {
        effects = List.copyOf(effects);
    }
}
