package takeup.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.day.Bag;
import takeup.day.FilmLot;
import takeup.day.PlanEvent;
import takeup.history.JournalEntry;
import takeup.kit.Warning;
import takeup.roll.Condition;
import takeup.roll.Film;
import takeup.roll.NoteEvent;
import takeup.roll.RollId;
import takeup.roll.RollLabel;

/**
 * What the bag gives for a roll that is loaded. Where no bag is kept it gives nothing and says nothing.
 *
 * @param entries the roll that is taken out of it, and that it is expired, which the lab must know
 * @param label the batch of that roll
 * @param warnings what there is to say of that roll, or of its absence
 */
public record BagUse(List<JournalEntry> entries, RollLabel label, List<Warning> warnings) {
    public BagUse {
        entries = List.copyOf(entries);
        warnings = List.copyOf(warnings);
    }

    /** For a roll of which the batch may be said; else what expires first is taken. */
    public static BagUse of(RollId roll, Film film, Optional<String> batch, CommandContext context) {
        Bag bag = context.state().day().bag();
        if (!bag.kept()) {
            return new BagUse(List.of(), RollLabel.NONE, List.of());
        }
        String key = film.stock().key();
        String what = key + " " + film.size();
        Optional<FilmLot> lot =
                batch.flatMap(it -> bag.ofBatch(key, film.size(), it)).or(() -> bag.next(key, film.size()));
        if (lot.isEmpty()) {
            return new BagUse(
                    List.of(),
                    RollLabel.NONE,
                    List.of(new Warning(
                            Warning.Code.BAG_LOW,
                            "no " + what + " is left in the bag: this roll is not counted in it (bag add)")));
        }
        List<Warning> warnings = new ArrayList<>();
        List<JournalEntry> entries = new ArrayList<>();
        entries.add(new JournalEntry.OnDay(new PlanEvent.BagChanged(lot.get(), -1, Optional.of(roll))));
        if (lot.get().isExpired(context.now().toLocalDate())) {
            warnings.add(new Warning(Warning.Code.EXPIRED, FilmAge.words(lot.get(), context)));
            String words = "expired " + lot.get().expires().orElseThrow();
            entries.add(new JournalEntry.OnRoll(
                    roll, new NoteEvent.ConditionNoted(new Condition(Condition.Kind.OTHER, Optional.of(words)))));
        }
        if (bag.rolls(key, film.size()) == 1) {
            warnings.add(new Warning(Warning.Code.BAG_LOW, "that was the last " + what + " in the bag"));
        }
        return new BagUse(entries, new RollLabel(Optional.empty(), lot.get().batch()), warnings);
    }
}
