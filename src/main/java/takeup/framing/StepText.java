package takeup.framing;

import java.util.IntSummaryStatistics;
import java.util.Optional;
import takeup.command.FrameNumbering;
import takeup.day.CameraEvent;
import takeup.day.DayEvent;
import takeup.day.FilmLot;
import takeup.day.PlanEvent;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.SettingPatch;

/** What a step did, in words: {@code frames 3 to 5 of R0001}, {@code the reading m ev11.3}. */
final class StepText {
    private StepText() {}

    static String of(JournalStep step, Optional<Roll> roll) {
        String on = roll.map(it -> " of " + it.id()).orElse("");
        String words = "";
        for (JournalEntry entry : step.entries()) {
            if (entry instanceof JournalEntry.OnRoll onRoll) {
                words = words(onRoll.event(), on, words);
            } else if (entry instanceof JournalEntry.OnDay onDay
                    && words.isEmpty()
                    && onDay.event().isStep()) {
                words = words(onDay);
            }
        }
        if (step.has(PlanEvent.FridgeChanged.class) && step.has(PlanEvent.BagChanged.class)) {
            boolean isPacked = step.events(PlanEvent.BagChanged.class).allMatch(it -> it.rolls() > 0);
            return isPacked ? "packing the bag" : "unpacking the bag";
        }
        IntSummaryStatistics added = step.events(RollEvent.Added.class)
                .mapToInt(it -> it.frame().number())
                .summaryStatistics();
        return words.isEmpty() && added.getCount() > 0
                ? FrameNumbering.words(added.getMin(), added.getMax()) + on
                : words;
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
                        + FrameNumbering.words(corrected.from(), corrected.to())
                        + on;
            }

            @Override
            public String dropped(RollEvent.Dropped dropped) {
                return (dropped.movedTo().isPresent() ? "moving " : "dropping ")
                        + FrameNumbering.words(dropped.from(), dropped.to())
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
            public String noted(NoteEvent.Noted noted) {
                return "a note on the roll" + on;
            }

            @Override
            public String developed(NoteEvent.Developed developed) {
                return "the development" + on;
            }

            @Override
            public String costNoted(NoteEvent.CostNoted noted) {
                return "the costs" + on;
            }

            @Override
            public String released(NoteEvent.Released released) {
                return "the release" + on;
            }

            @Override
            public String conditionNoted(NoteEvent.ConditionNoted conditioned) {
                return "the condition" + on;
            }

            @Override
            public String shootAssigned(NoteEvent.ShootAssigned assigned) {
                return before.isEmpty() ? "the shoot" + on : before;
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
            public String backMoved(RollEvent.BackMoved moved) {
                return "moving back " + moved.back() + on;
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

    private static String words(JournalEntry.OnDay entry) {
        return entry.as(CameraEvent.LightMetered.class)
                .map(it -> "the reading " + it.light().typed())
                .or(() -> entry.as(CameraEvent.FlashMetered.class)
                        .map(it -> "the reading " + it.flash().typed()))
                .or(() -> entry.as(CameraEvent.MeterSelected.class).map(it -> "the choice of meter " + it.meter()))
                .or(() -> entry.as(DayEvent.WarningSilenced.class).map(it -> "quiet " + it.code()))
                .or(() -> entry.as(PlanEvent.ShootOpened.class)
                        .map(it -> "shoot " + it.info().name()))
                .or(() -> entry.as(PlanEvent.SceneSet.class).map(it -> "who and where"))
                .or(() -> entry.as(PlanEvent.MomentPlanned.class)
                        .map(it -> it.moment().name() + " in the plan"))
                .or(() -> entry.as(PlanEvent.MomentDropped.class).map(it -> "plan drop " + it.moment()))
                .or(() -> entry.as(PlanEvent.BagChanged.class).map(it -> words("bag", it.rolls(), it.lot())))
                .or(() -> entry.as(PlanEvent.FridgeChanged.class).map(it -> words("fridge", it.rolls(), it.lot())))
                .or(() -> entry.as(DayEvent.RoutineSet.class).map(it -> "routine " + (it.on() ? "on" : "off")))
                .orElse("what was set");
    }

    private static String words(String place, int rolls, FilmLot lot) {
        return place + (rolls < 0 ? " take " : " add ") + Math.abs(rolls) + " " + lot.stock() + " " + lot.size();
    }
}
