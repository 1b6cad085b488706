package takeup.history;

import java.time.LocalDate;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * All that happened, step by step in the order of the step numbers, and the questions asked about it. What it adds up
 * to is {@link ShootState}.
 */
public record History(List<JournalStep> steps) {
    public static final History EMPTY = new History(List.of());

    public History {
        steps = GrowingList.of(steps);
    }

    /** Steps in any order; the parts of one step that were written to several files become one again. */
    public static History of(Collection<JournalStep> steps) {
        TreeMap<Long, JournalStep> inOrder = new TreeMap<>();
        for (JournalStep step : steps) {
            JournalStep part = inOrder.put(step.step(), step);
            if (part != null) {
                List<JournalEntry> both = new ArrayList<>(part.entries());
                both.addAll(step.entries());
                inOrder.put(step.step(), new JournalStep(part.step(), part.at(), both));
            }
        }
        return new History(new ArrayList<>(inOrder.values()));
    }

    /** The same and one step more. */
    public History and(JournalStep step) {
        return new History(GrowingList.of(steps).and(step));
    }

    public boolean isEmpty() {
        return steps.isEmpty();
    }

    /** The last step. */
    public Optional<JournalStep> newest() {
        return isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
    }

    /** The step of that number. */
    public Optional<JournalStep> step(long number) {
        for (JournalStep step : steps) {
            if (step.step() == number) {
                return Optional.of(step);
            }
        }
        return Optional.empty();
    }

    /** All steps, the newest in front. */
    public List<JournalStep> newestFirst() {
        return new AbstractList<>() {
            @Override
            public JournalStep get(int index) {
                return steps.get(steps.size() - 1 - index);
            }

            @Override
            public int size() {
                return steps.size();
            }
        };
    }

    /** The steps that stand, the newest in front; what lies behind the one that is found is not looked at. */
    public Stream<JournalStep> standingNewestFirst() {
        return newestFirst().stream().filter(new StandingSteps()::isStanding);
    }

    /** The steps of one day. */
    public History on(LocalDate date) {
        return only(it -> it.at().toLocalDate().equals(date));
    }

    /** The steps of a day and of those after it. */
    public History since(LocalDate date) {
        List<JournalStep> later = new ArrayList<>();
        for (JournalStep step : steps) {
            if (!step.at().toLocalDate().isBefore(date)) {
                later.add(step);
            }
        }
        return new History(later);
    }

    /** The steps before one of them. */
    public History before(JournalStep step) {
        List<JournalStep> earlier = new ArrayList<>();
        for (JournalStep one : steps) {
            if (one.step() < step.step()) {
                earlier.add(one);
            }
        }
        return new History(earlier);
    }

    /** The steps that stand: those that were taken back left out. */
    public History withoutUndone() {
        Set<Long> undone = undone();
        return only(it -> !undone.contains(it.step()));
    }

    private History only(Predicate<JournalStep> wanted) {
        return new History(steps.stream().filter(wanted).toList());
    }

    /** The numbers of the steps that are taken back now. */
    public Set<Long> undone() {
        Set<Long> undone = new HashSet<>();
        for (JournalStep step : steps) {
            for (JournalEntry entry : step.entries()) {
                if (entry.undoes().isPresent()) {
                    undone.add(entry.undoes().get());
                } else if (entry.redoes().isPresent()) {
                    undone.remove(entry.redoes().get());
                }
            }
        }
        return undone;
    }

    /** All that is written down, the oldest in front. */
    public Stream<JournalEntry> entries() {
        return steps.stream().flatMap(it -> it.entries().stream());
    }

    /** All that is written down, the newest in front. */
    public Stream<JournalEntry> entriesNewestFirst() {
        return newestFirst().stream().flatMap(JournalStep::entriesNewestFirst);
    }

    /** All that happened of one kind, the oldest in front. */
    public <E> Stream<E> events(Class<E> kind) {
        return entries().flatMap(it -> it.as(kind).stream());
    }

    /** What is written down on one roll, as the roll reads it. */
    List<RollRecord> recordsOf(RollId roll) {
        List<RollRecord> records = new ArrayList<>();
        for (JournalStep step : steps) {
            for (JournalEntry entry : step.entries()) {
                if (entry.isOn(roll)) {
                    records.add(record(step, (JournalEntry.OnRoll) entry));
                }
            }
        }
        return records;
    }

    private static RollRecord record(JournalStep step, JournalEntry.OnRoll entry) {
        return new RollRecord(step.step(), step.at(), entry.event());
    }

    /** What is written down on each roll, as the roll reads it. */
    Map<RollId, List<RollRecord>> rollRecords() {
        Map<RollId, List<RollRecord>> records = new TreeMap<>();
        for (JournalStep step : steps) {
            for (JournalEntry entry : step.entries()) {
                if (entry instanceof JournalEntry.OnRoll onRoll) {
                    records.putIfAbsent(onRoll.roll(), new ArrayList<>());
                    records.get(onRoll.roll()).add(record(step, onRoll));
                }
            }
        }
        return records;
    }
}
