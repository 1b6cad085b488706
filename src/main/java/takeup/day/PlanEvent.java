package takeup.day;

import java.util.List;
import java.util.Optional;
import takeup.roll.Place;
import takeup.roll.RollId;

/** What was planned for the shoot: its name, its key moments, the film for it. */
public sealed interface PlanEvent extends DayEvent {
    /** A shoot was opened; one that was open is closed. */
    record ShootOpened(ShootInfo info) implements PlanEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(info);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.shootOpened(this);
        }
    }

    /** Who and where on the frames to come was said. */
    record SceneSet(List<String> people, Place place) implements PlanEvent {
        public SceneSet {
            people = List.copyOf(people);
        }

        @Override
        public Day appliedTo(Day day) {
            return day.with(day.scene().with(people).with(place));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sceneSet(this);
        }
    }

    /** A key moment came into the plan, or one of the same number was changed. */
    record MomentPlanned(KeyMoment moment) implements PlanEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.plan().with(moment));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.momentPlanned(this);
        }
    }

    /** A key moment was dropped from the plan. */
    record MomentDropped(int moment) implements PlanEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.plan().without(moment));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.momentDropped(this);
        }
    }

    /** Rolls came into the bag or, where negative, out of it; into a camera where a roll is named. */
    record BagChanged(FilmLot lot, int rolls, Optional<RollId> into) implements PlanEvent {
        @Override
        public Day appliedTo(Day day) {
            Bag bag = day.bag();
            return day.with(into.isPresent() ? bag.into(into.get(), lot) : bag.plus(lot, rolls));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.bagChanged(this);
        }
    }

    /** Rolls came into the fridge or, where negative, out of it. */
    record FridgeChanged(FilmLot lot, int rolls) implements PlanEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.fridge().plus(lot, rolls));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.fridgeChanged(this);
        }
    }
}
