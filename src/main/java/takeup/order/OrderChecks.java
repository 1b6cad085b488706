package takeup.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.text.English;

/**
 * What is looked at before an order goes. Blocking: a roll without a frame, a roll number that is there twice, a
 * process that the film does not belong in, an index above the box speed without a push. All else is a remark.
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
     * All that the checks find, what blocks the order first.
     *
     * @param rolls the rolls of the order
     * @param loaded rolls that are still in a camera and not in the order
     * @param earlier the orders so far
     */
    public static List<OrderCheck> of(
            List<ExposedRoll> rolls,
            List<LeftInCamera> loaded,
            Lab lab,
            List<Order> earlier,
            OrderInstructions instructions) {
        OrderChecks checks = new OrderChecks(rolls);
        List<Order> valid = earlier.stream().filter(it -> !it.withdrawn()).toList();
        rolls.forEach(checks::blank);
        checks.duplicates(valid);
        rolls.forEach(checks::process);
        rolls.forEach(checks::development);
        rolls.forEach(checks::loaded);
        loaded.forEach(it -> checks.note("left-in-camera", it.roll(), it.words()));
        checks.mixed();
        if (instructions.flies()) {
            checks.flight();
        }
        if (!anyScansAreBack(valid)) {
            checks.firstOrders(lab, valid);
        }
        checks.unknownProcesses(lab);
        lab.form().needs().forEach(it -> checks.need(it, lab, instructions));
        checks.found.sort(Comparator.comparing(it -> !it.isBlocking()));
        return List.copyOf(checks.found);
    }

    private void stop(String code, ExposedRoll roll, String text) {
        add(code, true, List.of(roll), roll.roll() + " " + text);
    }

    private void note(String code, ExposedRoll roll, String text) {
        note(code, List.of(roll), roll.roll() + " " + text);
    }

    private void note(String code, List<ExposedRoll> about, String text) {
        add(code, false, about, text);
    }

    private void add(String code, boolean isBlocking, List<ExposedRoll> about, String text) {
        found.add(new OrderCheck(code, isBlocking, numbers(about), text));
    }

    private static List<String> numbers(List<ExposedRoll> rolls) {
        return rolls.stream().map(ExposedRoll::roll).distinct().toList();
    }

    /** These rolls as the beginning of a sentence: {@code R0001, R0002 are}. */
    private static String subject(List<ExposedRoll> rolls) {
        return String.join(", ", rolls.stream().map(ExposedRoll::roll).toList())
                + English.agree(rolls.size(), " is", " are");
    }

    private void blank(ExposedRoll roll) {
        if (roll.exposures().expected() == 0) {
            stop("no-frames", roll, "holds no exposed frame, and a blank roll is charged too");
        }
    }

    private void loaded(ExposedRoll roll) {
        if (roll.isLoaded()) {
            note("in-camera", roll, "is still in a camera: unload it before it goes");
        }
    }

    private void duplicates(List<Order> earlier) {
        Map<String, List<ExposedRoll>> byNumber = new LinkedHashMap<>();
        rolls.forEach(it ->
                byNumber.computeIfAbsent(it.roll(), number -> new ArrayList<>()).add(it));
        byNumber.forEach((number, same) -> {
            ExposedRoll roll = same.get(0);
            if (same.size() > 1) {
                stop("duplicate", roll, "stands on " + same.size() + " rolls: the lab could not tell them apart");
            }
            earlier.stream()
                    .filter(it -> it.holds(number))
                    .forEach(it -> stop("duplicate", roll, "is in " + it.order() + " already"));
        });
    }

    private void process(ExposedRoll roll) {
        LabDevelopment development = roll.development();
        String kind = roll.film().kind();
        if (!development.fits(kind)) {
            String why = development.chemistry() == LabDevelopment.Chemistry.UNKNOWN
                    ? ", a process that is not known here"
                    : ": it does not belong in there";
            stop(
                    "process",
                    roll,
                    "is " + kind.replace('-', ' ') + " film and ordered as " + PrintedText.of(development.process())
                            + why);
        } else if (kind.equals("bw-negative") && development.chemistry() == LabDevelopment.Chemistry.C41) {
            note(
                    "bw-in-c41",
                    roll,
                    "is black-and-white and ordered as C-41: only chromogenic film tolerates that, so look at the "
                            + "cassette (" + PrintedText.of(roll.film().stock()) + ")");
        }
    }

    private void development(ExposedRoll roll) {
        LabDevelopment development = roll.development();
        double above = development.aboveBox();
        double push = development.pushStops();
        if (push <= 0 && above > THIRD) {
            String stops = PrintedText.tenths(above);
            stop(
                    "no-push",
                    roll,
                    "was rated " + stops + (stops.equals("1") ? " stop" : " stops")
                            + " above its box speed and is ordered " + development.words() + ": it comes back thin");
        } else if (push > 0 && above - push > THIRD) {
            note(
                    "push-mismatch",
                    roll,
                    "was rated further above its box speed than it is pushed: " + development.words());
        } else if (push > 0 && above < 0.01 || push < 0 && above > -0.01) {
            note(
                    "push-mismatch",
                    roll,
                    "is to be developed otherwise, and its rating does not ask for it: " + development.words());
        }
    }

    private void mixed() {
        List<ExposedRoll> black = having(LabDevelopment.Chemistry.BW);
        if (!black.isEmpty() && !having(LabDevelopment.Chemistry.C41).isEmpty()) {
            note(
                    "bw-among-c41",
                    black,
                    subject(black) + " traditional black-and-white among C-41, which would ruin it: put it in a bag of "
                            + "its own and mark it");
        }
    }

    private List<ExposedRoll> having(LabDevelopment.Chemistry chemistry) {
        return rolls.stream()
                .filter(it -> it.development().chemistry() == chemistry)
                .toList();
    }

    private void flight() {
        List<ExposedRoll> sensitive = rolls.stream()
                .filter(it ->
                        Math.max(it.development().index(), it.development().boxSpeed()) >= FAST
                                || it.development().pushStops() > 0)
                .toList();
        if (sensitive.isEmpty()) {
            note(
                    "flies",
                    rolls,
                    "This film will fly: never in checked baggage, and ask for inspection by hand where a CT "
                            + "scanner stands");
        } else {
            note(
                    "flies",
                    sensitive,
                    subject(sensitive)
                            + " fast or pushed and will fly: never in checked baggage, and ask for inspection "
                            + "by hand instead of X-rays or CT");
        }
    }

    private static boolean anyScansAreBack(List<Order> earlier) {
        return earlier.stream()
                .anyMatch(it -> it.rolls().stream()
                        .anyMatch(roll -> it.stage(roll.roll()).compareTo(Stage.SCANS) >= 0));
    }

    private void firstOrders(Lab lab, List<Order> earlier) {
        int all = rolls.size()
                + earlier.stream().mapToInt(it -> it.rolls().size()).sum();
        if (all > AT_FIRST) {
            note(
                    "many-at-first",
                    List.of(),
                    "No scans are back yet, and this makes " + all
                            + " rolls: common practice is two to four until they are");
        }
        if (!earlier.isEmpty()) {
            Order last = earlier.get(earlier.size() - 1);
            if (!last.lab().key().equals(lab.key())) {
                note(
                        "another-lab",
                        List.of(),
                        "No scans are back yet, and " + last.order() + " went to "
                                + PrintedText.of(last.lab().name())
                                + ": with one lab at a time it shows what comes from whom");
            }
        }
    }

    private void unknownProcesses(Lab lab) {
        Set<String> seen = new LinkedHashSet<>();
        for (ExposedRoll roll : rolls) {
            String process = roll.development().process();
            if (!lab.processes().isEmpty() && lab.wordFor(process).isEmpty() && seen.add(process)) {
                note(
                        "lab-process",
                        List.of(roll),
                        PrintedText.of(lab.name()) + " lists no process " + PrintedText.of(process)
                                + ": ask before it goes");
            }
        }
    }

    /** What the lab's form needs to know of the whole order: a wish, or the photographer's reference. */
    private void need(String need, Lab lab, OrderInstructions instructions) {
        Optional<Wish> wish = Wish.named(need);
        Optional<String> given = wish.isPresent() ? instructions.wishes().of(wish.get()) : instructions.reference();
        if (given.isEmpty()) {
            note(
                    "lab-needs",
                    List.of(),
                    PrintedText.of(lab.name()) + " wants to know the "
                            + wish.map(Wish::words).orElse(need) + ": say it with "
                            + wish.map(Wish::option).orElse("--" + need));
        }
    }
}
