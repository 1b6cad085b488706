package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * A key and what it does: one table, read by the handling of keys, the footer, help and {@code takeup keys}.
 *
 * @param key the key
 * @param description what it does, in a few words
 * @param word the word that does the same; empty where there is none
 * @param when whether it works on an empty prompt only, while something is typed only, or always
 * @param pages in which views it works
 * @param whyNot why it cannot act now; empty if it can
 * @param action what it does
 */
record KeyBinding(
        Key key,
        String description,
        String word,
        When when,
        List<Session.Page> pages,
        Function<Session, Optional<String>> whyNot,
        Consumer<Update> action) {
    /** When a key works. */
    enum When {
        EMPTY,
        TYPED,
        ALWAYS
    }

    private static final List<Session.Page> EVERYWHERE = List.of(Session.Page.values());
    private static final List<Session.Page> SHOOT = List.of(Session.Page.SHOOT);
    private static final List<Session.Page> ELSEWHERE = List.of(
            Session.Page.FRAMES,
            Session.Page.ROLLS,
            Session.Page.PLAN,
            Session.Page.BAG,
            Session.Page.DAY_END,
            Session.Page.HELP);
    private static final Function<Session, Optional<String>> ALWAYS = shoot -> Optional.empty();

    /** All keys, the usual ones first. */
    static final List<KeyBinding> ALL = all();

    /** The binding that takes a key now. */
    static Optional<KeyBinding> of(Key key, Session shoot) {
        for (KeyBinding binding : ALL) {
            if (binding.key.equals(key) && binding.isHere(shoot)) {
                return Optional.of(binding);
            }
        }
        return Optional.empty();
    }

    boolean isHere(Session shoot) {
        boolean fits = switch (when) {
            case EMPTY -> shoot.prompt().isEmpty();
            case TYPED -> !shoot.prompt().isEmpty();
            case ALWAYS -> true;
        };
        return fits && pages.contains(shoot.view().page());
    }

    private static List<KeyBinding> all() {
        List<KeyBinding> all = new ArrayList<>();
        Function<Session, Optional<String>> camera = shoot -> Need.camera(shoot.afterPending());
        Function<Session, Optional<String>> film = shoot -> Need.film(shoot.afterPending());
        Function<Session, Optional<String>> advice =
                shoot -> shoot.choices().isEmpty() && PickList.of(shoot).rows().isEmpty()
                        ? Optional.of("no suggestions yet: load a film, then a reading (m 5.6 125)")
                        : Optional.empty();
        Function<Session, Optional<String>> round = shoot -> camera.apply(shoot)
                .or(() -> shoot.afterPending().asOf(shoot.now()).placesInUse().size() < 2
                        ? Optional.of("one camera or back in use today: cam and a key takes up another")
                        : Optional.empty());
        Function<Session, Optional<String>> oldest =
                shoot -> shoot.prompt().past().isEmpty()
                        ? Optional.of("nothing was typed yet")
                        : shoot.prompt().isOldest() ? Optional.of("nothing older was typed") : Optional.empty();
        Function<Session, Optional<String>> newest =
                shoot -> shoot.prompt().recall() == 0 ? Optional.of("nothing newer was typed") : Optional.empty();

        all.add(new KeyBinding(Key.typed(" "), "same again: one frame", ".", When.EMPTY, SHOOT, film, Update::space));
        all.add(new KeyBinding(Key.typed(" "), "next page", "", When.EMPTY, ELSEWHERE, ALWAYS, page(1)));
        all.add(new KeyBinding(
                Key.of(Key.Name.ENTER),
                "does what stands on the prompt",
                "",
                When.TYPED,
                EVERYWHERE,
                ALWAYS,
                Update::enter));
        all.add(new KeyBinding(
                Key.of(Key.Name.ENTER),
                "takes the highlighted choice, says yes to the load routine, or says what Space does",
                "",
                When.EMPTY,
                EVERYWHERE,
                ALWAYS,
                Update::enter));
        all.add(new KeyBinding(
                Key.of(Key.Name.TAB), "next camera or back in use", "cam", When.EMPTY, SHOOT, round, round(1)));
        all.add(new KeyBinding(
                Key.of(Key.Name.SHIFT_TAB), "the one before", "cam", When.EMPTY, SHOOT, round, round(-1)));
        all.add(new KeyBinding(
                Key.of(Key.Name.TAB), "completes the word", "", When.TYPED, EVERYWHERE, ALWAYS, Update::complete));
        all.add(new KeyBinding(Key.of(Key.Name.UP), "choice above", "", When.EMPTY, SHOOT, advice, choose(-1)));
        all.add(new KeyBinding(Key.of(Key.Name.DOWN), "choice below", "", When.EMPTY, SHOOT, advice, choose(1)));
        all.add(new KeyBinding(Key.of(Key.Name.UP), "line up", "", When.ALWAYS, ELSEWHERE, ALWAYS, scroll(-1)));
        all.add(new KeyBinding(Key.of(Key.Name.DOWN), "line down", "", When.ALWAYS, ELSEWHERE, ALWAYS, scroll(1)));
        all.add(new KeyBinding(
                Key.ctrl('t'),
                "counts a frame that is written down later",
                "tally",
                When.EMPTY,
                SHOOT,
                film,
                Update::tally));
        all.add(new KeyBinding(Key.ctrl('z'), "undo", "undo", When.ALWAYS, EVERYWHERE, why("undo"), runApart("undo")));
        all.add(new KeyBinding(Key.ctrl('y'), "redo", "redo", When.ALWAYS, EVERYWHERE, why("redo"), runApart("redo")));
        all.add(new KeyBinding(
                Key.of(Key.Name.ESCAPE),
                "clears the prompt, skips the load routine, ends the guide, or goes back",
                "shoot",
                When.ALWAYS,
                EVERYWHERE,
                ALWAYS,
                Update::escape));
        all.add(new KeyBinding(
                Key.of(Key.Name.PAGE_UP),
                "what was cleared or typed before",
                "",
                When.ALWAYS,
                SHOOT,
                oldest,
                recall(1)));
        all.add(new KeyBinding(
                Key.of(Key.Name.PAGE_DOWN), "the line after it", "", When.ALWAYS, SHOOT, newest, recall(-1)));
        all.add(new KeyBinding(Key.of(Key.Name.PAGE_UP), "page up", "", When.ALWAYS, ELSEWHERE, ALWAYS, page(-1)));
        all.add(new KeyBinding(Key.of(Key.Name.PAGE_DOWN), "page down", "", When.ALWAYS, ELSEWHERE, ALWAYS, page(1)));
        all.add(new KeyBinding(
                Key.of(Key.Name.F1), "help", "help", When.ALWAYS, EVERYWHERE, ALWAYS, turnTo(Session.Page.HELP)));
        all.add(new KeyBinding(
                Key.typed("?"), "help", "help", When.EMPTY, EVERYWHERE, ALWAYS, turnTo(Session.Page.HELP)));
        all.add(new KeyBinding(
                Key.of(Key.Name.F2),
                "frames of this roll",
                "frames",
                When.ALWAYS,
                EVERYWHERE,
                film,
                turnTo(Session.Page.FRAMES)));
        all.add(new KeyBinding(
                Key.of(Key.Name.F3),
                "all rolls",
                "rolls",
                When.ALWAYS,
                EVERYWHERE,
                ALWAYS,
                turnTo(Session.Page.ROLLS)));
        all.add(new KeyBinding(
                Key.of(Key.Name.F4),
                "the day's plan",
                "plan",
                When.ALWAYS,
                EVERYWHERE,
                ALWAYS,
                turnTo(Session.Page.PLAN)));
        all.add(new KeyBinding(
                Key.of(Key.Name.F5),
                "film in the bag",
                "bag",
                When.ALWAYS,
                EVERYWHERE,
                ALWAYS,
                turnTo(Session.Page.BAG)));
        all.add(new KeyBinding(
                Key.of(Key.Name.F6),
                "end of the day: where every roll is",
                "day-end",
                When.ALWAYS,
                EVERYWHERE,
                ALWAYS,
                Update::endDay));
        all.add(new KeyBinding(
                Key.of(Key.Name.F9), "next theme", "theme", When.ALWAYS, EVERYWHERE, ALWAYS, Update::nextTheme));
        all.add(new KeyBinding(
                Key.of(Key.Name.F10), "big counter", "big", When.ALWAYS, EVERYWHERE, ALWAYS, Update::big));
        all.add(new KeyBinding(
                Key.ctrl('l'), "paints the screen afresh", "", When.ALWAYS, EVERYWHERE, ALWAYS, Update::repaint));
        all.add(new KeyBinding(
                Key.ctrl('c'),
                "clears the prompt; twice: leaves",
                "quit",
                When.ALWAYS,
                EVERYWHERE,
                ALWAYS,
                Update::leave));
        all.add(edit(Key.of(Key.Name.BACKSPACE), "deletes the character before", PromptLine::backspace));
        all.add(edit(Key.of(Key.Name.DELETE), "deletes the character under the cursor", PromptLine::delete));
        all.add(edit(Key.of(Key.Name.LEFT), "cursor left", PromptLine::left));
        all.add(edit(Key.of(Key.Name.RIGHT), "cursor right", PromptLine::right));
        all.add(edit(Key.of(Key.Name.HOME), "to the start of the line", PromptLine::home));
        all.add(edit(Key.ctrl('a'), "to the start of the line", PromptLine::home));
        all.add(edit(Key.of(Key.Name.END), "to the end of the line", PromptLine::end));
        all.add(edit(Key.ctrl('e'), "to the end of the line", PromptLine::end));
        all.add(edit(Key.ctrl('u'), "clears the prompt; PgUp brings it back", PromptLine::cleared));
        all.add(edit(Key.ctrl('w'), "deletes the word before the cursor", PromptLine::wordErased));
        return List.copyOf(all);
    }

    // Each arrow of the table would be a class of its own to make at the start; these are shared.

    private static Consumer<Update> page(int way) {
        return it -> it.page(way);
    }

    private static Consumer<Update> round(int way) {
        return it -> it.round(way);
    }

    private static Consumer<Update> choose(int way) {
        return it -> it.choose(way);
    }

    private static Consumer<Update> scroll(int way) {
        return it -> it.scroll(way);
    }

    private static Consumer<Update> recall(int way) {
        return it -> it.recall(way);
    }

    private static Consumer<Update> runApart(String word) {
        return it -> it.runApart(word);
    }

    private static Consumer<Update> turnTo(Session.Page page) {
        return it -> it.turnTo(page);
    }

    private static Function<Session, Optional<String>> why(String word) {
        return shoot -> Need.of(word, shoot);
    }

    private static KeyBinding edit(Key key, String does, UnaryOperator<PromptLine> change) {
        return new KeyBinding(key, does, "", When.TYPED, EVERYWHERE, ALWAYS, it -> it.edit(change));
    }
}
