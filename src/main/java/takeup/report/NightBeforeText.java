package takeup.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.day.FilmLot;
import takeup.day.ShootInfo;
import takeup.roll.Roll;
import takeup.text.ClockText;
import takeup.text.English;

/** The night-before list, to read and to tick off. */
public final class NightBeforeText {
    /** Whether the client of the shoot is named: only to those who asked for it. */
    public enum ClientName {
        SHOWN,
        HIDDEN
    }

    private NightBeforeText() {}

    /** The film in the bag, the cameras, and the check list. */
    public static List<CheckList.Section> sections(NightBefore night, ClientName client) {
        List<CheckList.Section> all = new ArrayList<>();
        night.day().shoot().ifPresent(it -> all.add(CheckList.Section.of("Shoot", List.of(shoot(it, client)))));
        all.add(new CheckList.Section("Film in the bag", film(night)));
        if (night.day().fridge().kept()) {
            all.add(new CheckList.Section(
                    "In the fridge", lots(night.day().fridge().filled(), night.today())));
        }
        all.add(new CheckList.Section("In the cameras", cameras(night)));
        budget(night).ifPresent(it -> all.add(new CheckList.Section("Enough for the plan?", List.of(it))));
        all.add(new CheckList.Section(
                "To check",
                checks(night).stream()
                        .map(it -> new CheckList.Item("[ ] " + it.text(), it.caution()))
                        .toList()));
        return all;
    }

    private static String shoot(ShootInfo shoot, ClientName client) {
        return shoot.name() + ", " + shoot.date()
                + shoot.place()
                        .name()
                        .or(() -> shoot.place().shared().map(Object::toString))
                        .map(it -> ", at " + it)
                        .orElse("")
                + shoot.client()
                        .filter(it -> client == ClientName.SHOWN)
                        .map(it -> ", for " + it)
                        .orElse("");
    }

    private static List<CheckList.Item> film(NightBefore night) {
        if (!night.day().bag().kept()) {
            return List.of(CheckList.Item.plain("no bag is kept: bag add 10 cn400 120 expires 2027-03 price 6.20"));
        }
        return lots(night.day().bag().filled(), night.today());
    }

    private static List<CheckList.Item> lots(List<Map.Entry<FilmLot, Integer>> filled, LocalDate today) {
        List<CheckList.Item> items = new ArrayList<>();
        for (Map.Entry<FilmLot, Integer> lot : filled) {
            boolean isExpired = lot.getKey().isExpired(today);
            items.add(new CheckList.Item(
                    lot.getValue() + " × " + lot.getKey() + (isExpired ? ": EXPIRED, test a roll first" : ""),
                    isExpired));
        }
        return items.isEmpty() ? List.of(CheckList.Item.caution("none left")) : items;
    }

    private static List<CheckList.Item> cameras(NightBefore night) {
        List<CheckList.Item> items = new ArrayList<>();
        for (NightBefore.InCamera one : night.cameras()) {
            items.add(new CheckList.Item(
                    one.place() + ": "
                            + one.roll()
                                    .map(it -> filmAndIndex(it) + ", next frame " + it.next() + ", " + RollText.left(it)
                                            + ", since " + since(it, night.today()))
                                    .orElse("no film"),
                    one.roll().isEmpty()));
        }
        for (Roll roll : night.rewound()) {
            items.add(CheckList.Item.plain(filmAndIndex(roll) + ", rewound after frame " + roll.lastPassed() + ", "
                    + RollText.left(roll) + ": load " + roll.id().typed() + " goes on with it"));
        }
        return items.isEmpty() ? List.of(CheckList.Item.plain("no camera in use yet: cam and its key")) : items;
    }

    private static String filmAndIndex(Roll roll) {
        return roll.id() + ", " + roll.film().stock().key() + " EI "
                + roll.film().index();
    }

    private static String since(Roll roll, LocalDate today) {
        LocalDate loaded = roll.loadedAt().toLocalDate();
        return loaded.isBefore(today) ? loaded.toString() : ClockText.clock(roll.loadedAt());
    }

    private static Optional<CheckList.Item> budget(NightBefore night) {
        return FilmBudgetText.words(night.budget())
                .map(it -> new CheckList.Item(
                        English.capitalised(it),
                        night.budget().isShort() || !night.budget().isBagKept()));
    }

    /** What to check before leaving the house. */
    static List<CheckList.Item> checks(NightBefore night) {
        List<String> speeds = night.loaded().stream()
                .map(it -> it.film().index() + " for " + it.id() + " in " + it.place())
                .toList();
        return List.of(
                CheckList.Item.plain("batteries, and spare ones: "
                        + (night.powered().isEmpty()
                                ? "each camera and the meter"
                                : String.join(", ", night.powered()))),
                new CheckList.Item(
                        "the meter's speed: "
                                + (speeds.isEmpty() ? "that of the first roll" : String.join(", ", speeds)),
                        speeds.size() > 1),
                CheckList.Item.plain("each back that has no film: loaded, or known to be empty"),
                CheckList.Item.plain("a pen for the rolls, a pocket for those that are exposed"));
    }

    /** The fridge in one sentence, for a pipe. */
    public static String fridgeSentence(NightBefore night) {
        if (!night.day().fridge().kept()) {
            return "No fridge is kept: fridge add 20 cn400 120 batch 4711 expires 2027-03.";
        }
        List<String> film = lots(night.day().fridge().filled(), night.today()).stream()
                .map(CheckList.Item::text)
                .toList();
        return "In the fridge: " + String.join("; ", film) + ".";
    }

    /** The bag in one sentence, for a pipe. */
    public static String bagSentence(NightBefore night) {
        List<String> film = film(night).stream().map(CheckList.Item::text).toList();
        return "In the bag: " + String.join("; ", film) + "."
                + budget(night).map(it -> " " + it.text() + ".").orElse("");
    }
}
