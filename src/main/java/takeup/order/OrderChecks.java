package takeup.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import takeup.text.English;

/**
 * What is looked at before an order goes. Blocking: a roll without a frame, a roll number that is there twice, a
 * process that the film does not belong in, an index above the box speed without a push. All else is a line.
 */
public final class OrderChecks {
    /** Rolls that a first order holds at most. Common practice: two to four until the first scans are back. */
    static final int AT_FIRST = 4;
    /** An index so many stops above the box speed asks for a push; the warning push-mismatch has the same limit. */
    private static final double THIRD = 1 / 3.0 + 0.01;
    /**
     * From this speed on film is to be inspected by hand (a public reply of the US screening authority of February
     * 2020).
     */
    private static final double FAST = 800;

    private final List<ExposedRoll> rolls;
    private final List<OrderCheck> found = new ArrayList<>();

    private OrderChecks(List<ExposedRoll> rolls) {
        this.rolls = rolls;
    }

    /**
     * All that is to be said, blocking things first.
     *
     * @param rolls the rolls of the order
     * @param loaded rolls that are still in a camera and not in the order
     * @param earlier the orders so far
     */
    public static List<OrderCheck> of(
            List<ExposedRoll> rolls,
            List<ExposedRoll> loaded,
            Lab lab,
            List<Order> earlier,
            Optional<String> reference,
            Wishes wishes,
            boolean flies) {
        OrderChecks checks = new OrderChecks(rolls);
        List<Order> valid = earlier.stream().filter(it -> !it.withdrawn()).toList();
        checks.each(
                it -> it.exposures().expected() == 0,
                "no-frames",
                true,
                "holds no exposed frame, and a blank roll is charged too");
        checks.twice(valid);
        checks.process();
        checks.development();
        checks.each(ExposedRoll::isLoaded, "in-camera", false, "is still in a camera: unload it before it goes");
        for (ExposedRoll roll : loaded) {
            checks.say(
                    "left-in-camera",
                    false,
                    List.of(roll),
                    roll.roll() + " is still in " + roll.camera().printed() + ", and not in this order");
        }
        checks.mixed();
        checks.travel(flies);
        checks.learning(lab, valid);
        checks.lab(lab, reference, wishes);
        List<OrderCheck> all = new ArrayList<>(
                checks.found.stream().filter(OrderCheck::isBlocking).toList());
        checks.found.stream().filter(it -> !it.isBlocking()).forEach(all::add);
        return List.copyOf(all);
    }

    private void say(String code, boolean isBlocking, List<ExposedRoll> about, String text) {
        found.add(new OrderCheck(
                code,
                isBlocking,
                about.stream().map(ExposedRoll::roll).distinct().toList(),
                text));
    }

    private void each(Predicate<ExposedRoll> wrong, String code, boolean isBlocking, String text) {
        rolls.stream().filter(wrong).forEach(it -> say(code, isBlocking, List.of(it), it.roll() + " " + text));
    }

    private void twice(List<Order> earlier) {
        Map<String, List<ExposedRoll>> byNumber = new LinkedHashMap<>();
        rolls.forEach(it ->
                byNumber.computeIfAbsent(it.roll(), number -> new ArrayList<>()).add(it));
        byNumber.forEach((number, same) -> {
            if (same.size() > 1) {
                say(
                        "duplicate",
                        true,
                        same,
                        number + " stands on " + same.size() + " rolls: the lab could not tell them apart");
            }
            earlier.stream()
                    .filter(it -> it.holds(number))
                    .forEach(it -> say("duplicate", true, same, number + " is in " + it.order() + " already"));
        });
    }

    private void process() {
        for (ExposedRoll roll : rolls) {
            LabDevelopment development = roll.development();
            if (!development.fits(roll.film().kind())) {
                say(
                        "process",
                        true,
                        List.of(roll),
                        roll.roll() + " is " + roll.film().kind().replace('-', ' ') + " film and ordered as "
                                + PrintedText.of(development.process())
                                + (development.chemistry() == LabDevelopment.Chemistry.UNKNOWN
                                        ? ", a process that is not known here"
                                        : ": it does not belong in there"));
            } else if (roll.film().kind().equals("bw-negative")
                    && development.chemistry() == LabDevelopment.Chemistry.C41) {
                say(
                        "bw-in-c41",
                        false,
                        List.of(roll),
                        roll.roll()
                                + " is black-and-white and ordered as C-41: only chromogenic film bears that, "
                                + "so look at the cassette ("
                                + PrintedText.of(roll.film().stock()) + ")");
            }
        }
    }

    private void development() {
        for (ExposedRoll roll : rolls) {
            LabDevelopment development = roll.development();
            double above = development.aboveBox();
            if (development.pushStops() <= 0 && above > THIRD) {
                say(
                        "no-push",
                        true,
                        List.of(roll),
                        roll.roll() + " was rated " + PrintedText.tenths(above)
                                + (PrintedText.tenths(above).equals("1") ? " stop" : " stops")
                                + " above its box speed and is ordered " + development.words()
                                + ": it comes back thin");
            } else if (development.pushStops() > 0 && above - development.pushStops() > THIRD) {
                say(
                        "push-mismatch",
                        false,
                        List.of(roll),
                        roll.roll() + " was rated further above its box speed than it is pushed: "
                                + development.words());
            } else if (development.pushStops() > 0 && above < 0.01 || development.pushStops() < 0 && above > -0.01) {
                say(
                        "push-mismatch",
                        false,
                        List.of(roll),
                        roll.roll() + " is to be developed otherwise, and its rating does not ask for it: "
                                + development.words());
            }
        }
    }

    private void mixed() {
        List<ExposedRoll> black = rolls.stream()
                .filter(it -> it.development().chemistry() == LabDevelopment.Chemistry.BW)
                .toList();
        if (!black.isEmpty()
                && rolls.stream().anyMatch(it -> it.development().chemistry() == LabDevelopment.Chemistry.C41)) {
            say(
                    "bw-among-c41",
                    false,
                    black,
                    numbers(black) + English.agree(black.size(), " is", " are")
                            + " traditional black-and-white among C-41, which would ruin it: put it in a bag of "
                            + "its own and mark it");
        }
    }

    private void travel(boolean flies) {
        List<ExposedRoll> tender = rolls.stream()
                .filter(it -> it.development().index() >= FAST
                        || it.development().boxSpeed() >= FAST
                        || it.development().pushStops() > 0)
                .toList();
        if (flies && !tender.isEmpty()) {
            say(
                    "flies",
                    false,
                    tender,
                    numbers(tender) + English.agree(tender.size(), " is", " are")
                            + " fast or pushed and will fly: never in checked baggage, and ask for inspection "
                            + "by hand instead of X-rays or CT");
        } else if (flies) {
            say(
                    "flies",
                    false,
                    rolls,
                    "This film will fly: never in checked baggage, and ask for inspection by hand where a CT "
                            + "scanner stands");
        }
    }

    private void learning(Lab lab, List<Order> earlier) {
        boolean learning = earlier.stream()
                .allMatch(it -> it.rolls().stream()
                        .noneMatch(roll -> it.stage(roll.roll()).compareTo(Stage.SCANS) >= 0));
        if (!learning) {
            return;
        }
        int sent = earlier.stream().mapToInt(it -> it.rolls().size()).sum();
        if (sent + rolls.size() > AT_FIRST) {
            say(
                    "many-at-first",
                    false,
                    List.of(),
                    "No scans are back yet, and this makes " + (sent + rolls.size())
                            + " rolls: common practice is two to four until they are");
        }
        if (!earlier.isEmpty()) {
            Order last = earlier.get(earlier.size() - 1);
            if (!last.lab().key().equals(lab.key())) {
                say(
                        "another-lab",
                        false,
                        List.of(),
                        "No scans are back yet, and " + last.order() + " went to "
                                + PrintedText.of(last.lab().name())
                                + ": with one lab at a time it shows what comes from whom");
            }
        }
    }

    private void lab(Lab lab, Optional<String> reference, Wishes wishes) {
        List<String> odd = new ArrayList<>();
        for (ExposedRoll roll : rolls) {
            String process = roll.development().process();
            if (!lab.processes().isEmpty() && lab.wordFor(process).isEmpty() && !odd.contains(process)) {
                odd.add(process);
                say(
                        "lab-process",
                        false,
                        List.of(roll),
                        PrintedText.of(lab.name()) + " lists no process " + PrintedText.of(process)
                                + ": ask before it goes");
            }
        }
        for (String need : lab.form().needs()) {
            boolean isSaid = need.equals("reference")
                    ? reference.isPresent()
                    : wishes.of(Wish.named(need).orElseThrow()).isPresent();
            if (!isSaid) {
                String option = need.equals("reference")
                        ? "--reference"
                        : Wish.named(need).orElseThrow().option();
                say(
                        "lab-needs",
                        false,
                        List.of(),
                        PrintedText.of(lab.name()) + " wants to know the "
                                + (need.equals("reference")
                                        ? need
                                        : Wish.named(need).orElseThrow().words()) + ": say it with " + option);
            }
        }
    }

    private static String numbers(List<ExposedRoll> rolls) {
        return String.join(", ", rolls.stream().map(ExposedRoll::roll).toList());
    }
}
