package takeup.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.day.Bag;
import takeup.day.DayEvent;
import takeup.day.FilmLot;
import takeup.day.PlanEvent;
import takeup.history.JournalEntry;
import takeup.kit.Warning;
import takeup.roll.Film;
import takeup.roll.RollId;
import takeup.roll.RollLabel;

/**
 * What the bag gives for a roll that is loaded. Where no bag is kept it gives nothing and says nothing.
 *
 * @param entry the roll that is taken out of it
 * @param label the batch of that roll
 * @param warnings what there is to say of that roll, or of its absence
 */
public record BagUse(Optional<JournalEntry> entry, RollLabel label, List<Warning> warnings) {
    /** For a roll of which the batch may be said; else what expires first is taken. */
    public static BagUse of(RollId roll, Film film, Optional<String> batch, CommandContext context) {
        Bag bag = context.state().day().bag();
        if (!bag.kept()) {
            return new BagUse(Optional.empty(), RollLabel.NONE, List.of());
        }
        String key = film.stock().key();
        String what = key + " " + film.size();
        Optional<FilmLot> lot =
                batch.flatMap(it -> bag.ofBatch(key, film.size(), it)).or(() -> bag.next(key, film.size()));
        if (lot.isEmpty()) {
            return new BagUse(
                    Optional.empty(),
                    RollLabel.NONE,
                    List.of(new Warning(
                            Warning.Code.BAG_LOW,
                            "no " + what + " is left in the bag: this roll is not counted in it (bag add)")));
        }
        List<Warning> warnings = new ArrayList<>();
        if (lot.get().isExpired(context.now().toLocalDate())) {
            warnings.add(new Warning(Warning.Code.EXPIRED, FilmAge.words(lot.get(), context)));
        }
        if (bag.rolls(key, film.size()) == 1) {
            warnings.add(new Warning(Warning.Code.BAG_LOW, "that was the last " + what + " in the bag"));
        }
        DayEvent taken = new PlanEvent.BagChanged(lot.get(), -1, Optional.of(roll));
        return new BagUse(
                Optional.of(new JournalEntry.OnDay(taken)),
                new RollLabel(Optional.empty(), lot.get().batch()),
                warnings);
    }
}
