package takeup.ordering;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.order.Lab;
import takeup.order.Wish;
import takeup.order.Wishes;

/** The options of {@code takeup order new} that say what the lab is to do, and how. */
final class WishOptions {
    @Option(
            names = "--service",
            paramLabel = "WORDS",
            description = "What is to be done: develop, scan, prints, contact sheet.")
    String service;

    @Option(names = "--scan-size", paramLabel = "WORDS", description = "One of the lab's scan sizes.")
    String scanSize;

    @Option(names = "--file-type", paramLabel = "WORDS", description = "One of the lab's file types.")
    String fileType;

    @Option(names = "--border", paramLabel = "WORDS", description = "The border of the scans: none, black.")
    String border;

    @Option(names = "--colour", paramLabel = "WORDS", description = "A preference in colour.")
    String colour;

    @Option(
            names = "--colour-reference",
            paramLabel = "WORDS",
            description = "What the colours are to match: a print that goes along, an earlier order.")
    String colourReference;

    @Option(names = "--density", paramLabel = "WORDS", description = "A preference in density.")
    String density;

    @Option(names = "--test", description = "A test order: no density correction, so that the scans show the exposure.")
    boolean test;

    @Option(names = "--negatives", paramLabel = "WORDS", description = "What becomes of them: returned.")
    String negatives;

    @Option(names = "--cutting", paramLabel = "WORDS", description = "uncut, cut in sixes.")
    String cutting;

    @Option(
            names = "--may-be-cut",
            paramLabel = "WORDS",
            description = "Whether the lab may cut into the film, as for a clip test: no.")
    String mayBeCut;

    @Option(names = "--sleeves", paramLabel = "WORDS", description = "sleeved, rolled.")
    String sleeves;

    @Option(names = "--prints", paramLabel = "WORDS", description = "Prints, and how many.")
    String prints;

    @Option(names = "--mounts", paramLabel = "WORDS", description = "Mounts for slides: unmounted, plastic mounts.")
    String mounts;

    @Option(names = "--delivery", paramLabel = "WORDS", description = "How it comes back.")
    String delivery;

    @Option(names = "--wanted-by", paramLabel = "WORDS", description = "The day by which you need it: 2026-09-20.")
    String wantedBy;

    @Option(names = "--payment", paramLabel = "WORDS", description = "How it is paid: invoice, on collection.")
    String payment;

    @Option(names = "--price-limit", paramLabel = "WORDS", description = "Above what price the lab asks first.")
    String priceLimit;

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
        typed.put(Wish.SERVICE, service);
        typed.put(Wish.SCAN_SIZE, scanSize);
        typed.put(Wish.FILE_TYPE, fileType);
        typed.put(Wish.BORDER, border);
        typed.put(Wish.COLOUR, colour);
        typed.put(Wish.COLOUR_REFERENCE, colourReference);
        typed.put(Wish.DENSITY, density);
        typed.put(Wish.NEGATIVES, negatives);
        typed.put(Wish.CUTTING, cutting);
        typed.put(Wish.MAY_CUT, mayBeCut);
        typed.put(Wish.SLEEVES, sleeves);
        typed.put(Wish.PRINTS, prints);
        typed.put(Wish.MOUNTS, mounts);
        typed.put(Wish.DELIVERY, delivery);
        typed.put(Wish.WANTED_BY, wantedBy);
        typed.put(Wish.PAYMENT, payment);
        typed.put(Wish.PRICE_LIMIT, priceLimit);
        typed.put(Wish.NOTES, notes);
        typed.values().removeIf(Objects::isNull);
        return typed;
    }
}
