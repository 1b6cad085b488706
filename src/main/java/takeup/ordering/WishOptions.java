package takeup.ordering;

import java.util.EnumMap;
import java.util.Map;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.order.Lab;
import takeup.order.Wish;
import takeup.order.Wishes;

/** The options of {@code takeup order new} that say how the lab is to scan, cut and send. */
final class WishOptions {
    @Option(names = "--scan-size", paramLabel = "WORDS", description = "One of the lab's scan sizes.")
    String scanSize;

    @Option(names = "--file-type", paramLabel = "WORDS", description = "One of the lab's file types.")
    String fileType;

    @Option(names = "--border", paramLabel = "WORDS", description = "The border of the scans: none, black.")
    String border;

    @Option(names = "--colour", paramLabel = "WORDS", description = "A preference in colour.")
    String colour;

    @Option(names = "--density", paramLabel = "WORDS", description = "A preference in density.")
    String density;

    @Option(names = "--test", description = "A test order: no density correction, so that the scans show the exposure.")
    boolean test;

    @Option(names = "--negatives", paramLabel = "WORDS", description = "What becomes of them: returned.")
    String negatives;

    @Option(names = "--cutting", paramLabel = "WORDS", description = "uncut, cut in sixes.")
    String cutting;

    @Option(names = "--sleeves", paramLabel = "WORDS", description = "sleeved, rolled.")
    String sleeves;

    @Option(names = "--prints", paramLabel = "WORDS", description = "Prints, and how many.")
    String prints;

    @Option(names = "--delivery", paramLabel = "WORDS", description = "How it comes back.")
    String delivery;

    @Option(names = "--notes", paramLabel = "WORDS", description = "Anything else.")
    String notes;

    /** The usual wishes of a lab with those that were typed; what the lab does not do ends the command. */
    Wishes with(Lab lab) {
        Wishes wishes = test ? lab.usual().with(Wish.DENSITY, "no density correction") : lab.usual();
        for (Map.Entry<Wish, String> each : typed().entrySet()) {
            lab.whyNot(each.getKey(), each.getValue()).ifPresent(it -> {
                throw new CommandFailed(2, it);
            });
            try {
                wishes = wishes.with(each.getKey(), each.getValue());
            } catch (IllegalArgumentException e) {
                throw new CommandFailed(2, e.getMessage());
            }
        }
        return wishes;
    }

    private Map<Wish, String> typed() {
        Map<Wish, String> typed = new EnumMap<>(Wish.class);
        String[] inOrder = {
            scanSize, fileType, border, colour, density, negatives, cutting, sleeves, prints, delivery, notes
        };
        for (Wish wish : Wish.values()) {
            if (inOrder[wish.ordinal()] != null) {
                typed.put(wish, inOrder[wish.ordinal()]);
            }
        }
        return typed;
    }
}
