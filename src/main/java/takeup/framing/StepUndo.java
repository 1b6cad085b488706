package takeup.framing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.day.PlanEvent;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/**
 * Undo and redo of one step: a further event on each roll that it touched, and on the day; nothing is erased.
 *
 * @param step what is taken back, or done again
 * @param direction which of the two
 */
record StepUndo(JournalStep step, Direction direction) {
    /** Which way. */
    enum Direction {
        BACK,
        AGAIN
    }

    Outcome.Accepted run(CommandContext context) {
        List<RollId> rolls = rolls();
        rolls.forEach(context::roll);
        Optional<RollId> inHand = rolls.stream().filter(it -> !opensShoot()).findFirst();
        List<JournalEntry> entries = entries(rolls);
        place(inHand, context)
                .filter(it -> !context.state().placeInHand().equals(Optional.of(it)))
                .ifPresent(it -> entries.add(new JournalEntry.OnDay(new CameraEvent.CameraSelected(it))));
        Reply reply = context.reply(entries);
        rolls.forEach(it -> refuseTakenPlace(reply.roll(it), context));
        Optional<Roll> roll = inHand.map(reply::roll);
        String what = StepText.of(step, roll);
        String where = roll.map(it -> " in " + it.place())
                .or(() -> camera().map(it -> " on " + it))
                .orElse("");
        Optional<CameraPlace> place = reply.after().placeInHand();
        return reply.event(direction == Direction.BACK ? "undo" : "redo")
                .says(
                        (direction == Direction.BACK ? "Undone: " : "Done again: ") + what,
                        where + "." + roll.map(StepUndo::standing).orElse(""))
                .fields(Json.object()
                        .and("what", what)
                        .and("roll", roll.map(Roll::id))
                        .and("frame", roll.map(Roll::next))
                        .and("framesLeft", roll.map(Roll::framesLeft))
                        .and("camera", place.map(CameraPlace::camera))
                        .and("back", place.flatMap(CameraPlace::back)))
                .warningsBegun()
                .exports(step.events(DayEvent.RollClosed.class)
                        .map(DayEvent.RollClosed::roll)
                        .distinct()
                        .toList())
                .accepted();
    }

    /** The rolls that it touched; of frames that were moved the roll that they left, which was in hand, first. */
    private List<RollId> rolls() {
        Set<RollId> rolls = new LinkedHashSet<>();
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll && onRoll.event() instanceof RollEvent.Dropped) {
                rolls.add(onRoll.roll());
            }
        }
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll) {
                rolls.add(onRoll.roll());
            }
            entry.as(DayEvent.RollClosed.class).ifPresent(it -> rolls.add(it.roll()));
        }
        return List.copyOf(rolls);
    }

    /** A shoot that was opened names rolls in many cameras, and none of them was in hand for it. */
    private boolean opensShoot() {
        return step.has(PlanEvent.ShootOpened.class);
    }

    private Optional<String> camera() {
        return step.events(CameraEvent.CameraSetupChanged.class)
                .map(CameraEvent.CameraSetupChanged::camera)
                .reduce((first, last) -> last);
    }

    private List<JournalEntry> entries(List<RollId> rolls) {
        boolean isBack = direction == Direction.BACK;
        List<RollId> inOrder = new ArrayList<>(rolls);
        if (!isBack) {
            // A move done again: written where the frames go before they leave, so that a crash in between loses none.
            Collections.reverse(inOrder);
        }
        List<JournalEntry> entries = new ArrayList<>();
        long number = step.step();
        for (RollId id : inOrder) {
            entries.add(
                    new JournalEntry.OnRoll(id, isBack ? new RollEvent.Undone(number) : new RollEvent.Redone(number)));
        }
        if (step.events(DayEvent.class).anyMatch(DayEvent::isStep)) {
            entries.add(new JournalEntry.OnDay(isBack ? new DayEvent.Undone(number) : new DayEvent.Redone(number)));
        }
        return entries;
    }

    /** Where it happened. */
    private Optional<CameraPlace> place(Optional<RollId> roll, CommandContext context) {
        if (roll.isPresent()) {
            return roll.map(context::roll).map(CameraPlace::of);
        }
        Optional<CameraPlace> now = context.state().placeInHand();
        return camera().filter(it -> now.isEmpty() || !now.get().camera().equals(it))
                .flatMap(it -> context.state().camera(it))
                .map(it -> context.place(List.of(it.key())));
    }

    /** A roll that comes back into a camera needs its place empty. */
    private void refuseTakenPlace(Roll now, CommandContext context) {
        CameraPlace place = CameraPlace.of(now);
        if (now.state() == Roll.State.OPEN && context.roll(now.id()).state() != Roll.State.OPEN) {
            String what = step.has(RollEvent.Unloaded.class) ? "unload" : "rewinding";
            context.state().rollIn(place).ifPresent(it -> {
                throw new CommandRejected("undoing the " + what + " of " + now.id() + " needs " + place + " empty, and "
                        + it.id() + " is in it: unload that first");
            });
        }
    }

    private static String standing(Roll roll) {
        return switch (roll.state()) {
            case WITHDRAWN -> " " + roll.id() + " is withdrawn; its number is not given again.";
            case FINISHED -> " " + roll.id() + " is finished.";
            case REWOUND -> " " + roll.id() + " is rewound, to be loaded again.";
            case OPEN -> " Next is frame " + roll.next() + ", " + RollText.left(roll) + ".";
        };
    }
}
