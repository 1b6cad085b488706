package takeup.framing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.history.UndoHistory;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.report.RollText;
import takeup.report.WarningText;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.SettingPatch;

/** Undo and redo: a further event for each; nothing is erased. */
final class StepUndo {
    static Outcome undo(CommandContext context) {
        return turn(
                context,
                new UndoHistory(context.state().history())
                        .undo()
                        .orElseThrow(() -> new CommandRejected("nothing to undo")),
                true);
    }

    static Outcome redo(CommandContext context) {
        return turn(
                context,
                new UndoHistory(context.state().history())
                        .redo()
                        .orElseThrow(() -> new CommandRejected(
                                "nothing to redo: another line came after the undo, or nothing was undone")),
                false);
    }

    private static Outcome turn(CommandContext context, long target, boolean back) {
        JournalStep step = context.state().history().step(target).orElseThrow();
        Set<RollId> rolls = new LinkedHashSet<>();
        Set<RollId> settle = new LinkedHashSet<>();
        boolean onDay = false;
        boolean unloads = false;
        // A shoot that was opened names rolls in many cameras, and none of them was in hand for it.
        boolean opens = step.entries().stream()
                .anyMatch(
                        it -> it instanceof JournalEntry.OnDay entry && entry.event() instanceof DayEvent.ShootOpened);
        Optional<String> camera = Optional.empty();
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll && onRoll.event() instanceof RollEvent.Dropped) {
                // Frames that were moved: the roll they left was in hand then.
                rolls.add(onRoll.roll());
            }
        }
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll) {
                rolls.add(onRoll.roll());
                unloads |= onRoll.event() instanceof RollEvent.Unloaded;
            } else if (entry instanceof JournalEntry.OnDay day) {
                onDay |= day.event().isStep();
                if (day.event() instanceof DayEvent.RollClosed touched) {
                    rolls.add(touched.roll());
                    settle.add(touched.roll());
                } else if (day.event() instanceof DayEvent.CameraSetupChanged changed) {
                    camera = Optional.of(changed.camera());
                }
            }
        }
        for (RollId id : rolls) {
            context.roll(id);
        }
        List<JournalEntry> entries = new ArrayList<>();
        List<RollId> inOrder = new ArrayList<>(rolls);
        if (!back) {
            // A move done again: written where the frames go before they leave, so that a crash in between loses none.
            Collections.reverse(inOrder);
        }
        for (RollId id : inOrder) {
            entries.add(
                    new JournalEntry.OnRoll(id, back ? new RollEvent.Undone(target) : new RollEvent.Redone(target)));
        }
        if (onDay) {
            entries.add(new JournalEntry.OnDay(back ? new DayEvent.Undone(target) : new DayEvent.Redone(target)));
        }
        place(context, opens ? Set.of() : rolls, camera)
                .filter(it -> !context.state().placeInHand().equals(Optional.of(it)))
                .ifPresent(it -> entries.add(new JournalEntry.OnDay(new DayEvent.CameraSelected(it))));
        ShootState after = context.after(entries);
        for (RollId id : rolls) {
            needsRoom(context, after.rolls().get(id), unloads);
        }
        Optional<Roll> roll = rolls.stream()
                .filter(it -> !opens)
                .findFirst()
                .map(it -> after.rolls().get(it));
        String where = roll.map(it -> " in " + it.place())
                .orElse(camera.map(it -> " on " + it).orElse(""));
        String text = (back ? "Undone: " : "Done again: ") + describe(step, roll) + where + "."
                + roll.map(StepUndo::standing).orElse("");
        Json.Obj fields = Json.object()
                .and("what", describe(step, roll))
                .and("roll", roll.map(Roll::id))
                .and("frame", roll.map(Roll::next))
                .and("framesLeft", roll.map(Roll::framesLeft))
                .and("camera", after.placeInHand().map(CameraPlace::camera))
                .and("back", after.placeInHand().flatMap(CameraPlace::back));
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        back ? "undo" : "redo",
                        text,
                        fields,
                        context.unsilenced(WarningText.begunBetween(context.state(), after, context.now()))),
                List.copyOf(settle));
    }

    /** A roll that comes back into a camera needs its place empty. */
    private static void needsRoom(CommandContext context, Roll now, boolean unloads) {
        CameraPlace place = CameraPlace.of(now);
        if (now.state() == Roll.State.OPEN && context.roll(now.id()).state() != Roll.State.OPEN) {
            context.state().rollIn(place).ifPresent(it -> {
                throw new CommandRejected("undoing the " + (unloads ? "unload" : "rewinding") + " of " + now.id()
                        + " needs " + place + " empty, and " + it.id() + " is in it: unload that first");
            });
        }
    }

    private static String standing(Roll roll) {
        return switch (roll.state()) {
            case WITHDRAWN -> " " + roll.id() + " is withdrawn; its number is not given again.";
            case FINISHED -> " " + roll.id() + " is finished.";
            case REWOUND -> " " + roll.id() + " is rewound, to be loaded again.";
            default -> " Next is frame " + roll.next() + ", " + RollText.left(roll) + ".";
        };
    }

    private static Optional<CameraPlace> place(CommandContext context, Set<RollId> rolls, Optional<String> camera) {
        if (!rolls.isEmpty()) {
            return Optional.of(CameraPlace.of(context.roll(rolls.iterator().next())));
        }
        if (camera.isPresent()
                && context.state()
                        .placeInHand()
                        .map(it -> it.camera().equals(camera.get()))
                        .orElse(false)) {
            return Optional.empty();
        }
        return camera.flatMap(it -> context.state().camera(it)).map(it -> context.place(List.of(it.key())));
    }

    /** What a step did, in words. */
    private static String describe(JournalStep step, Optional<Roll> roll) {
        String on = roll.map(it -> " of " + it.id()).orElse("");
        int from = Integer.MAX_VALUE;
        int to = Integer.MIN_VALUE;
        String words = "";
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll) {
                RollEvent event = onRoll.event();
                if (event instanceof RollEvent.Added added) {
                    from = Math.min(from, added.frame().number());
                    to = Math.max(to, added.frame().number());
                }
                words = words(event, on, words);
            } else if (entry instanceof JournalEntry.OnDay onDay
                    && words.isEmpty()
                    && onDay.event().isStep()) {
                words = words(onDay.event());
            }
        }
        return from <= to && words.isEmpty() ? CommandContext.numbers(from, to) + on : words;
    }

    private static String words(RollEvent event, String on, String before) {
        return event.match(new RollEvent.Cases<String>() {
            @Override
            public String loaded(RollEvent.Loaded loaded) {
                return "loading " + loaded.id();
            }

            @Override
            public String added(RollEvent.Added added) {
                return added.origin() == RollEvent.Origin.INSERTED
                        ? "the insertion of frame " + added.frame().number() + on
                        : before;
            }

            @Override
            public String doubleAnnounced(RollEvent.DoubleAnnounced doubled) {
                return "double" + on;
            }

            @Override
            public String exposedAgain(RollEvent.ExposedAgain again) {
                return "the second exposure" + on;
            }

            @Override
            public String corrected(RollEvent.Corrected corrected) {
                boolean isNote = corrected.change().and(SettingPatch.note("")).equals(SettingPatch.note(""));
                return (isNote ? "the note on " : "the correction of ")
                        + CommandContext.numbers(corrected.from(), corrected.to())
                        + on;
            }

            @Override
            public String dropped(RollEvent.Dropped dropped) {
                return (dropped.movedTo().isPresent() ? "moving " : "dropping ")
                        + CommandContext.numbers(dropped.from(), dropped.to())
                        + on;
            }

            @Override
            public String counterShown(RollEvent.CounterShown shown) {
                return "counter " + shown.shown() + on;
            }

            @Override
            public String rollCorrected(RollEvent.RollCorrected corrected) {
                return "what was said" + on;
            }

            @Override
            public String noted(RollEvent.Noted noted) {
                return "a note on the roll" + on;
            }

            @Override
            public String conditionNoted(RollEvent.ConditionNoted conditioned) {
                return "the condition" + on;
            }

            @Override
            public String shootAssigned(RollEvent.ShootAssigned assigned) {
                return before;
            }

            @Override
            public String loadChecked(RollEvent.LoadChecked checked) {
                return "the answer to the load routine" + on;
            }

            @Override
            public String rewound(RollEvent.Rewound rewound) {
                return "rewinding" + on;
            }

            @Override
            public String reloaded(RollEvent.Reloaded again) {
                return "loading again" + on;
            }

            @Override
            public String unloaded(RollEvent.Unloaded unloaded) {
                return "unloading" + on;
            }

            @Override
            public String undone(RollEvent.Undone back) {
                return before;
            }

            @Override
            public String redone(RollEvent.Redone again) {
                return before;
            }

            @Override
            public String unknown(RollEvent.Unknown unknown) {
                return "something that this version does not know (" + unknown.kind() + ")" + on;
            }
        });
    }

    private static String words(DayEvent event) {
        if (event instanceof DayEvent.LightMetered lit) {
            return "the reading " + lit.light().typed();
        }
        if (event instanceof DayEvent.FlashMetered lit) {
            return "the reading " + lit.flash().typed();
        }
        if (event instanceof DayEvent.MeterSelected metered) {
            return "the choice of meter " + metered.meter();
        }
        if (event instanceof DayEvent.WarningSilenced quieted) {
            return "quiet " + quieted.code();
        }
        if (event instanceof DayEvent.ShootOpened opened) {
            return "shoot " + opened.info().name();
        }
        if (event instanceof DayEvent.MomentPlanned planned) {
            return planned.moment().name() + " in the plan";
        }
        if (event instanceof DayEvent.MomentDropped unplanned) {
            return "plan drop " + unplanned.moment();
        }
        if (event instanceof DayEvent.BagChanged bagged) {
            return "bag " + (bagged.rolls() < 0 ? "take " : "add ") + Math.abs(bagged.rolls()) + " "
                    + bagged.lot().stock() + " " + bagged.lot().size();
        }
        if (event instanceof DayEvent.RoutineSet set) {
            return "routine " + (set.on() ? "on" : "off");
        }
        return "what was set";
    }
}
