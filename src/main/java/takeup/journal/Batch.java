package takeup.journal;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import takeup.day.DayEvent;
import takeup.records.DayEventJson;
import takeup.records.RollEventJson;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** What of one step goes where: rolls in the order in which they must be written. */
public final class Batch {
    private final long step;
    private final OffsetDateTime at;
    private final List<DayEvent> day = new ArrayList<>();
    private final Map<RollId, List<RollEvent>> rolls = new LinkedHashMap<>();

    /** A batch for a step. */
    public Batch(long step, OffsetDateTime at) {
        this.step = step;
        this.at = at;
    }

    /** An event of the day. */
    public void add(DayEvent event) {
        day.add(event);
    }

    /** An event of a roll. */
    public void add(RollId roll, RollEvent event) {
        rolls.computeIfAbsent(roll, it -> new ArrayList<>()).add(event);
    }

    long step() {
        return step;
    }

    OffsetDateTime at() {
        return at;
    }

    /**
     * The events as text, by the journals that they go to, in the order in which those are written: the day first, but
     * behind a roll that begins.
     */
    Map<Path, List<String>> texts(DataLayout layout) {
        Map<Path, List<String>> texts = new LinkedHashMap<>();
        Path journal = layout.day(at.toLocalDate());
        if (!beginsRoll()) {
            texts.put(journal, dayTexts());
        }
        rollTexts().forEach((roll, events) -> texts.put(layout.open(roll), events));
        texts.putIfAbsent(journal, dayTexts());
        texts.values().removeIf(List::isEmpty);
        return texts;
    }

    Set<RollId> rolls() {
        return rolls.keySet();
    }

    /** Whether a roll begins with it. */
    private boolean beginsRoll() {
        return rolls.values().stream().anyMatch(it -> it.get(0) instanceof RollEvent.Loaded);
    }

    /** The events of the day as text, often none. */
    private List<String> dayTexts() {
        return day.stream().map(DayEventJson::text).toList();
    }

    /** The events of each roll as text. */
    private Map<RollId, List<String>> rollTexts() {
        Map<RollId, List<String>> texts = new LinkedHashMap<>();
        rolls.forEach((roll, events) ->
                texts.put(roll, events.stream().map(RollEventJson::text).toList()));
        return texts;
    }
}
