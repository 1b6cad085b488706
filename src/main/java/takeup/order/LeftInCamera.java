package takeup.order;

import java.util.Optional;

/**
 * A roll that was not unloaded and is not in an order.
 *
 * @param roll the roll
 * @param since the first roll that was loaded into the same camera and back after it; empty while it is the last one
 */
public record LeftInCamera(ExposedRoll roll, Optional<String> since) {
    /** Where it may be now: {@code R0002 is still in 35mm, and not in this order}. */
    String words() {
        String camera = roll.camera().printed();
        if (roll.state().equals("rewound")) {
            return "was rewound in " + camera + " to be loaded again, and is not in this order"
                    + since.map(it -> "; " + it + " was loaded since").orElse("");
        }
        return since.map(it -> "is not in this order and was never unloaded, but " + it + " was loaded into " + camera
                        + " since: look for it, and unload it")
                .orElse("is still in " + camera + ", and not in this order");
    }
}
