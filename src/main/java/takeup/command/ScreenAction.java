package takeup.command;

import java.util.Optional;
import java.util.Set;
import takeup.roll.RollId;
import takeup.search.FindQuery;

/** What a line does to the screen alone, with all that the screen needs for it. */
public sealed interface ScreenAction {
    /** Shows a view. */
    record Show(View view) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.show(this);
        }
    }

    /** Shows help: of everything, or of one word of the table. */
    record ShowHelp(Optional<String> word) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.showHelp(this);
        }
    }

    /** Shows the end of the day, with the rolls in the photographer's hand, where they were named. */
    record ShowDayEnd(Optional<Set<RollId>> heldRolls) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.showDayEnd(this);
        }
    }

    /** Lays a sheet over the screen to be photographed. */
    record ShowSheet(Sheet sheet) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.showSheet(this);
        }
    }

    /** Shows the last answer once more, whole. */
    record ShowAgain() implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.showAgain(this);
        }
    }

    /** Changes the theme: to one by name, or to the next. */
    record ChangeTheme(Optional<String> name) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.changeTheme(this);
        }
    }

    /** The counter across the room, or back from it. */
    record ToggleBigCounter() implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.toggleBigCounter(this);
        }
    }

    /** Makes the lab order: shows it, or does to it what the words say. */
    record MakeOrder(String words) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.makeOrder(this);
        }
    }

    /** Looks for frames in all rolls, and shows them. */
    record Find(FindQuery query) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.find(this);
        }
    }

    /** Lays the scans of a folder beside a roll. */
    record OpenScans(RollId roll, String folder) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.openScans(this);
        }
    }

    /** Leaves the program. */
    record Quit(Leaving leaving) implements ScreenAction {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.quit(this);
        }
    }

    /** The views that a word shows. */
    enum View {
        SHOOT,
        FRAMES,
        ROLLS,
        PLAN,
        BAG
    }

    /** Sheets for another camera: the slate of the roll in hand, or the time of day. */
    enum Sheet {
        SLATE,
        CLOCK
    }

    /** When the program may be left. */
    enum Leaving {
        WHEN_SAVED,
        ANYWAY
    }

    <R> R match(Cases<R> cases);

    /** One method for each kind. */
    interface Cases<R> {
        R show(Show action);

        R showHelp(ShowHelp action);

        R showDayEnd(ShowDayEnd action);

        R showSheet(ShowSheet action);

        R showAgain(ShowAgain action);

        R changeTheme(ChangeTheme action);

        R toggleBigCounter(ToggleBigCounter action);

        R makeOrder(MakeOrder action);

        R find(Find action);

        R openScans(OpenScans action);

        R quit(Quit action);
    }
}
